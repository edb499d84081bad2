/** Whole sheets into the tiny folder: rows are checked as the folder is, and what is written reads as the rows say. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { headersOf, tableNamed } from "../../../src/build/tables/all-tables.ts";
import { type ImportRow, rowName } from "../../../src/build/tables/import-rows.ts";
import { planImport } from "../../../src/build/tables/plan-import.ts";
import type { Table } from "../../../src/build/tables/table.ts";
import { SEED } from "../../helpers/seed.ts";
import { readTexts, spoiled, TINY } from "../../helpers/tiny-folder.ts";
import { filesOf, planOf, rejectedOf, rowsOf, sheetOf } from "./tiny-import.ts";

const byPlace = (a: ImportRow, b: ImportRow): number => (rowName(a) < rowName(b) ? -1 : 1);

const RECORDS = "id\ttitle\tissued\tkinds\tcomponents\tstarts\tscope\tstory";
const record = (id: string, more: Partial<Record<"issued" | "kinds" | "components" | "scope", string>> = {}): string =>
  [
    id,
    "New pipe",
    more.issued ?? "1960-01-01",
    more.kinds ?? "part",
    more.components ?? "pump",
    "1960",
    more.scope ?? "line=B; my=1960",
    "A pipe.",
  ].join("\t");

test("good rows are written, and the folder with them has no fault", () => {
  const plan = planOf([
    sheetOf("records", RECORDS, record("N1"), record("N2")),
    sheetOf("built", "record,place,part,scope", "N1,pump,HT-103,line=H; my=1960"),
    sheetOf("parts", "component,number,name", 'pump,HT-103,"pump, new"'),
  ]);
  expect(rejectedOf(plan)).toEqual([]);
  expect(plan.written).toHaveLength(4);
  const { catalog, complaints } = readTexts({ ...TINY, ...Object.fromEntries(plan.texts) });
  expect(complaints).toEqual([]);
  expect(catalog?.records.get("N1")?.facts).toMatchObject({ title: "New pipe", kinds: ["part"], story: "A pipe." });
  expect(catalog?.parts.get("HT-103")?.name).toBe("pump, new");
});

test.each<[string, string[], string[]]>([
  // table, rows, why they are rejected
  [
    "records",
    [RECORDS, record("N1", { issued: "1960-02-30" })],
    [
      "records 2: 'issued': there is no such day (it says '1960-02-30'); write a day as year-month-day, such as 1974-08-15: When this record was first released.",
    ],
  ],
  [
    "records",
    [RECORDS, record("N1", { kinds: "prt" })],
    ["records 2: 'prt' is no value of entry 1 of 'kinds'; did you mean 'part'?"],
  ],
  [
    "records",
    [RECORDS, record("N1", { components: "pumpp" })],
    ["records 2: no component is called 'pumpp'; did you mean 'pump'?"],
  ],
  [
    "records",
    ["id\ttitle", "N1\tNew"],
    [expect.stringMatching(/^records 2: 'issued' is missing; .*'scope' is missing; .*'story' is missing; /)],
  ],
  [
    "built",
    ["record,place,part,scope", "HY59-01,pump,HT-109,line=H", "HY59-01,pump gasket,HT-290,line=B"],
    ["built 2: no part is called 'HT-109'; did you mean 'HT-101'?"],
  ],
  // What contradicts the folder comes back too, and the row that does not is written.
  [
    "built",
    ["record,place,part,scope", "HY59-01,pump,HT-101,line=B; my=1960; plant=K", "HY59-01,pump gasket,HT-290,line=B"],
    [
      "built 2: 'pump' holds HT-101 here, and HT-102 by another line of this record on the same cars (it says 'line=B; my=1960; plant=K'); end the one scope where the other begins",
    ],
  ],
  [
    "settings",
    ["record\tname\twindow\tunit\tcomponent\tscope", "FR58-01\toil pressure\t..95\tbar\tlift\tline=H; my=1961"],
    [
      expect.stringMatching(
        /^settings 2: 'oil pressure' is \.\.90 bar here, and \.\.95 bar by FR58-01 on the same cars/,
      ),
    ],
  ],
  [
    "built",
    ["record,place,part,scope", "HY59-01,pump,,line=H"],
    [expect.stringMatching(/^built 2: 'part' is missing; /)],
  ],
  [
    "settings",
    ["record,name,window,unit,scope", "HY59-01,oil,5,bar,all"],
    ["settings 2: 'window': '5' is no window; write 5..5"],
  ],
  [
    "parts",
    ["component,number,name", "gasket,HT-101,pump"],
    ["parts 2: part 'HT-101' stands already under 'gasket'; list a part once"],
  ],
  [
    "parts",
    ["component,number,name", "pump,HT-099,pump"],
    ["parts 2: part 'HT-099' still exists; an id that moved is no longer used"],
  ],
  [
    "parts",
    ["component,number,name", "pipe,HT-300,a", "pipe,HT-301,b"],
    [
      "parts 2: no component is called 'pipe'; did you mean 'pump'?",
      "parts 3: no component is called 'pipe'; did you mean 'pump'?",
    ].map((it) => expect.stringContaining(it.slice(0, 40))),
  ],
])("%s %j: %j", (name, lines, reasons) => {
  expect(rejectedOf(planOf([sheetOf(name, ...lines)]))).toEqual(reasons);
});

test("a row that leans on a rejected one is rejected too, whatever the order of the sheets", () => {
  const plan = planOf([
    sheetOf("built", "record,place,part,scope", "N1,pump,HT-101,line=B", "HY59-01,pump,HT-103,line=H; my=1960"),
    sheetOf("parts", "component,number,name,hand", "pump,HT-103,new,up"),
    sheetOf("records", RECORDS, record("N1", { scope: "lin=B" })),
  ]);
  expect(rejectedOf(plan).sort()).toEqual([
    expect.stringMatching(/^built 2: no record 'N1' is in the folder or among the rows$/),
    expect.stringMatching(/^built 3: no part is called 'HT-103'/),
    "parts 2: 'up' is no value of 'hand'; values are left, right",
    expect.stringMatching(/^records 2: .*lin/),
  ]);
  expect([...plan.texts]).toEqual([]);
});

test("while a row spoils the shape of a file, what leans on that file is not held against other rows", () => {
  const moves = "record: HY59-01, moves: [{ setting: oil pressure, by: 1 }] }";
  const folder = spoiled({ "parts/pump.yaml": ["effort: 4, record: HY59-01 }", `effort: 4, ${moves}`] });
  const settings = ["HY59-01,oil level,5,mm,all", "HY59-01,oil flow,5..6,l/min,all"];
  const plan = planOf([sheetOf("settings", "record,name,window,unit,scope", ...settings)], { folder });
  expect(rejectedOf(plan)).toEqual(["settings 2: 'window': '5' is no window; write 5..5"]);
});

test("what was wrong before is nobody's fault now", () => {
  const folder = spoiled({ "changes/1958/FR58-01.md": ["scope: my>=1958", "scope: mi>=1958"] });
  const plan = planOf([sheetOf("parts", "component,number,name", "pump,HT-103,new")], { folder });
  expect(rejectedOf(plan)).toEqual([]);
  expect([...plan.texts.keys()]).toEqual(["parts/pump.yaml"]);
});

test("a file that cannot be read takes no rows", () => {
  const folder = spoiled({ "parts/gasket.yaml": "component: [" });
  const plan = planOf([sheetOf("parts", "component,number,name", "gasket,HT-202,flat gasket")], { folder });
  expect(rejectedOf(plan)).toEqual([
    expect.stringMatching(/^parts 2: (parts\/gasket\.yaml has a fault of its own|no file)/),
  ]);
});

test("the same rows once more change nothing, and only what differs changes in a text", () => {
  const sheets = [
    sheetOf(
      "settings",
      "record,name,conditions,scope,window,nominal,unit",
      "HY59-01,oil pressure,hot,line=B,120..140,,bar",
    ),
  ];
  expect(rejectedOf(planOf(sheets))).toEqual(["settings 2: 'window' already says '120..135'"]);
  const [[path, text] = ["", ""]] = planOf(sheets, { overwrite: true }).texts;
  expect(text).toBe((TINY[path] as string).replace("window: 120..135", "window: 120..140"));
  const again = planOf(sheets, { folder: { ...TINY, [path]: text } });
  expect([again.unchanged.length, again.written.length, again.texts.size]).toEqual([1, 0, 0]);
});

test("a file that would grow beyond what a data folder may hold is not written", () => {
  const many = Array.from({ length: 260 }, (_, i) => `HY59-01,${i} ${"x".repeat(3990)}`);
  const plan = planOf([sheetOf("left-alone", "record,left-alone", ...many)]);
  expect(plan.rejected.size).toBeGreaterThan(5);
  expect(plan.rejected.size).toBeLessThan(50);
  for (const reason of rejectedOf(plan))
    expect(reason).toMatch(/^left-alone \d+: changes\/1959\/HY59-01\.md would be larger than 1000000 bytes$/);
  expect(plan.written).toHaveLength(260 - plan.rejected.size);
});

test("whatever the rows say, none is lost, no fault is written, and a second time nothing changes", () => {
  const cell = fc.constantFrom(
    "HY59-01",
    "FR58-01",
    "N1",
    "pump",
    "lift arms",
    "HT-101",
    "HT-103",
    "none",
    "line=B",
    "my=",
    "18",
    "",
    "=1",
  );
  const rowsLike = (name: string, width: number) =>
    fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 4 }).map((rows) =>
      sheetOf(
        name,
        headersOf(tableNamed(name) as Table)
          .slice(0, width)
          .join(),
        ...rows.map((row) => row.join()),
      ),
    );
  const sheets = fc.tuple(rowsLike("built", 4), rowsLike("supersedes", 4), rowsLike("parts", 3), rowsLike("marks", 4));
  fc.assert(
    fc.property(sheets, fc.boolean(), (some, overwrite) => {
      const readable = some.flatMap((sheet) => rowsOf(sheet));
      const plan = planOf(some, { overwrite });
      expect([...plan.written, ...plan.unchanged, ...plan.rejected.keys()].toSorted(byPlace)).toEqual(
        readable.toSorted(byPlace),
      );
      const folder = { ...TINY, ...Object.fromEntries(plan.texts) };
      expect(readTexts(folder).complaints).toEqual([]);
      const again = planOf(some, { overwrite, folder });
      expect([again.written.length, again.texts.size]).toEqual([0, 0]);
    }),
    { seed: SEED, numRuns: 12 },
  );
});

test("a new file names its schema where there is one", () => {
  const plan = planImport(
    { files: filesOf(), text: () => "", schema: (path, kind) => `${kind}.json of ${path}` },
    rowsOf(sheetOf("records", RECORDS, record("N1"))),
    false,
  );
  expect(plan.texts.get("changes/1960/N1.md")).toContain("change.json of changes/1960/N1.md");
});
