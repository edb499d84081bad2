import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import type { ReadFolder } from "../../../src/build/data/read-folder.ts";
import { MAX_BYTES } from "../../../src/build/data/source.ts";
import { mentionsOf } from "../../../src/build/write/mentions.ts";
import { type NotRenamed, type Renamed, renameId } from "../../../src/build/write/rename-id.ts";
import type { RenamedKind } from "../../../src/build/write/what-to-rename.ts";
import { type Folder, readTexts, sourceOf, spoiled } from "../../helpers/tiny-folder.ts";

/** The tiny folder with its ids in comments, texts and citations too. */
const FOLDER: Folder = {
  ...spoiled({
    "bulletins/TB-1.md": [
      "See [[HY59-01]],",
      "# HT-102\n\nSee TB-1, [[HY59-01|HY59-01 of 1959]], [it](/records/HY59-01/), [that](/components/pump/),",
    ],
    "cautions.yaml": ["text: Lower", "text: After HY59-01 lower"],
    "changes/1958/FR58-01.md": [
      "Four holes.",
      "Four holes, for HT-102. HY59-01 changed that; HY59-011 and HT-102L are others.",
    ],
  }),
  "parts/pump.yaml": `\uFEFF# HT-102 came with HY59-01.\r\n${spoiled({ "parts/pump.yaml": ["castings:", "castings:"] })
    ["parts/pump.yaml"]?.replaceAll("\n", "\r\n")
    .replace('"4411"', "HT-102")}`,
};

const sourcesOf = (folder: Folder): ReadFolder["sources"] =>
  new Map(Object.entries(folder).map(([path, text]) => [path, sourceOf(path, text)]));
const rename = (folder: Folder, old: string, next: string, kind?: RenamedKind) => {
  const whole = readTexts(folder);
  const read = { ...whole, sources: sourcesOf(folder), findings: whole.complaints } as unknown as ReadFolder;
  return renameId("data", read, new Map(Object.entries(folder)), { old, next, kind, why: "Renamed." });
};
const applied = (folder: Folder, renamed: ReturnType<typeof rename>): Folder => {
  if ("refused" in renamed) throw new Error(renamed.refused);
  const after: Record<string, string> = { ...folder };
  for (const path of renamed.gone.keys()) delete after[path];
  return { ...after, ...Object.fromEntries(renamed.files) };
};
const movedIn = (folder: Folder): string[] =>
  parse(folder["moved.yaml"] as string).moved.map(
    (move: Record<string, string>) => `${move.kind} ${move.from} ${move.to ?? "-"}`,
  );

/** The slow twin: word by word, and a word is what stands between signs that no id has. */
const everyWord = (text: string, old: string, next: string): string =>
  text
    .split(/([\p{L}\p{N}_.-]+)/u)
    .map((word) => (word === old || word === `${old}.` ? word.replace(old, next) : word))
    .join("");

// kind, old, new, files that get another name
const IDS: [RenamedKind, string, string, string[]][] = [
  ["record", "HY59-01", "HY60-7", ["changes/1959/HY59-01.md"]],
  ["record", "FR58-01", "4411", ["changes/1958/FR58-01.md"]],
  ["part", "HT-102", "99", []],
  ["part", "HT-101", "HT.101", []],
  ["part", "HT-201", "1e5", []],
  ["bulletin", "TB-1", "TB-01", ["bulletins/TB-1.md"]],
  ["component", "pump", "oil-pump", ["parts/pump.yaml"]],
  ["component", "gasket", "seal", ["parts/gasket.yaml"]],
  ["component", "lift", "1", []],
  ["system", "hydraulics", "oil", ["components/hydraulics.yaml"]],
];

describe("everything that has an id can be renamed", () => {
  test.each(IDS)("%s %s to %s", (kind, old, next, gone) => {
    const renamed = rename(FOLDER, old, next) as Renamed;
    const after = applied(FOLDER, renamed);
    expect([...renamed.gone.keys()]).toEqual(gone);
    expect(readTexts(after).complaints).toEqual([]);
    expect(movedIn(after).at(-1)).toBe(`${kind} ${old} ${next}`);
    const { catalog } = readTexts(after);
    const all = {
      record: catalog?.records,
      part: catalog?.parts,
      component: catalog?.components,
      bulletin: catalog?.bulletins,
    };
    const ids = kind === "system" ? catalog?.systems.map(({ id }) => id) : [...(all[kind]?.keys() ?? [])];
    expect(ids).toContain(next);
    expect(ids).not.toContain(old);
  });

  test("of an id that is no word, no mention is left but the ones that say so", () => {
    for (const [kind, old, next] of IDS.filter(([kind]) => kind !== "component" && kind !== "system")) {
      const renamed = rename(FOLDER, old, next) as Renamed;
      const after = applied(FOLDER, renamed);
      for (const [path, text] of Object.entries(FOLDER)) {
        if (path === "moved.yaml") continue;
        const place = renamed.gone.get(path) ?? path;
        const left = renamed.mentions.filter((mention) => mention.file === path && mention.as === "left");
        expect(mentionsOf(after[place] as string, old), `${kind} ${path}`).toHaveLength(left.length);
        const quoted = /^[\d.e]+$/.test(next) ? text : everyWord(text, old, next);
        if (left.length === 0 && quoted !== text) expect(after[place]).toBe(quoted);
        if (mentionsOf(text, old).length === 0) expect(after[place]).toBe(text);
      }
    }
  });

  test("each mention is shown with its place and what it is", () => {
    const { mentions } = rename(FOLDER, "HT-102", "HT-103") as Renamed;
    const shown = mentions.map(({ file, line, column, as, why }) =>
      [`${file}:${line}:${column}`, as, why].filter(Boolean).join(" "),
    );
    expect(shown).toContain("bulletins/TB-1.md:8:3 text");
    expect(shown).toContain("parts/pump.yaml:1:3 text");
    expect(shown).toContain("parts/pump.yaml:10:13 reference");
    expect(shown).toContain("parts/pump.yaml:12:16 left what is read off the part itself");
    expect(shown).toContain("changes/1959/HY59-01.md:11:26 reference");
    expect(shown.filter((line) => line.includes(" citation"))).toHaveLength(1);
  });

  test("a part that a scope wants on the car", () => {
    const path = "changes/1959/HY59-01.md";
    const folder = spoiled({
      [path]: ["scope: fitted=HT-201", 'scope: "line=B; fitted!=HT-101,HT-201 || fitted = HT-201"'],
    });
    const after = applied(folder, rename(folder, "HT-201", "HT-211"));
    expect(after[path]).toContain('"line=B; fitted!=HT-101,HT-211 || fitted = HT-211"');
  });
});

describe("moved.yaml", () => {
  const twice = applied(FOLDER, rename(FOLDER, "HY59-01", "HY59-02"));

  test("every older id leads to the newest in one step", () => {
    const after = applied(twice, rename(twice, "HY59-02", "HY59-03"));
    expect(readTexts(after).complaints).toEqual([]);
    expect(movedIn(after)).toEqual([
      "record HY-1 HY59-03",
      "part HT-099 -",
      "record HY59-01 HY59-03",
      "record HY59-02 HY59-03",
    ]);
  });

  test("an id that is used again leads nowhere, and all that was changed is as before", () => {
    const back = rename(twice, "HY59-02", "HY59-01");
    const after = applied(twice, back);
    expect((back as Renamed).moved).toContain("'HY59-01' is used again, so it no longer leads to 'HY59-02'");
    expect(movedIn(after)).toEqual(["record HY-1 HY59-01", "part HT-099 -", "record HY59-02 HY59-01"]);
    expect({ ...after, "moved.yaml": "" }).toEqual({ ...FOLDER, "moved.yaml": "" });
  });

  test("is made where there is none", () => {
    const { "moved.yaml": _, ...folder } = FOLDER;
    const after = applied(folder, rename(folder, "TB-1", "TB-2"));
    expect(after["moved.yaml"]).toContain("# yaml-language-server: $schema=");
    expect(movedIn(after)).toEqual(["bulletin TB-1 TB-2"]);
  });
});

test("what would not hold afterwards is refused, with the findings, and so is a folder with errors", () => {
  const { refused, findings } = rename(FOLDER, "HT-101", "none") as NotRenamed;
  expect(refused).toBe("the folder would not hold afterwards, so nothing was changed");
  expect(findings.map(({ file }) => file)).toContain("parts/pump.yaml");
  const broken = rename(spoiled({ "maker.yaml": ["name:", "nome:"] }), "HY59-01", "HY59-02") as NotRenamed;
  expect(broken.refused).toBe("the folder has errors: mend them first");
  expect(broken.findings.length).toBeGreaterThan(0);
  expect((rename(FOLDER, "HY59-01", "FR58-01") as NotRenamed).refused).toBe("a record is called 'FR58-01' already");
});

test("where a part and a component have one id, only what surely means the one is changed", () => {
  const both = spoiled({
    "components/frame.yaml": ["order: 2\n", "order: 2\ncomponents: [{ id: HT-101, name: beam }]\n"],
    "bulletins/TB-1.md": ["[[pump]]", "[[HT-101]], HT-101, [it](/components/HT-101/)"],
    "cautions.yaml": ["components: [pump]", "components: [HT-101]"],
  });
  const component = applied(both, rename(both, "HT-101", "beam", "component"));
  expect(component["bulletins/TB-1.md"]).toContain("[[HT-101]], HT-101, [it](/components/beam/)");
  expect(component["components/frame.yaml"]).toContain("id: beam");
  expect(component["cautions.yaml"]).toContain("components: [beam]");
  expect(component["parts/pump.yaml"]).toBe(both["parts/pump.yaml"]);
  const part = applied(both, rename(both, "HT-101", "HT-111", "part"));
  expect(part["bulletins/TB-1.md"]).toContain("[[HT-111]], HT-101, [it](/components/HT-101/)");
  expect(part["cautions.yaml"]).toBe(both["cautions.yaml"]);
});

test("a file that the reader would no longer take is not written", () => {
  const path = "changes/1958/FR58-01.md";
  const text = FOLDER[path] as string;
  const long = text.replace("\n", `\n# ${"x".repeat(MAX_BYTES - text.length - 3)}\n`);
  const refused = rename({ ...FOLDER, [path]: long }, "HT-102", "HT-1002") as NotRenamed;
  expect(refused.refused).toBe(`${path} would be larger than 1000000 bytes, and would not be read any more`);
});

test("what means the id without being it is shown as left, in its order, and so are the addresses of others", () => {
  const path = "bulletins/TB-1.md";
  const text = `${FOLDER[path]}\n[x](../changes/1959/HY59-01.md) HY59-01 hy59-01 HY59\u201101\nhttps://other.example/docs/HY59-01\n`;
  const renamed = rename({ ...FOLDER, [path]: text }, "HY59-01", "HY59-02") as Renamed;
  const line = text.split("\n").length - 2;
  const shown = renamed.mentions.filter((mention) => mention.file === path && mention.line >= line);
  expect(shown.map(({ column, as, why }) => [column, as, why].join(" ").trim())).toEqual([
    "21 left the name of a file",
    "33 text",
    "41 left other capitals",
    "49 left another dash",
    "28 left in another address",
  ]);
  expect(
    renamed.files
      .get(path)
      ?.split("\n")
      .slice(line - 1),
  ).toEqual(["[x](../changes/1959/HY59-01.md) HY59-02 hy59-01 HY59\u201101", "https://other.example/docs/HY59-01", ""]);
});

test("a comment that goes from moved.yaml is said", () => {
  const moved = "moved: [ # none so far\n]\n";
  const renamed = rename({ ...FOLDER, "moved.yaml": moved }, "HY59-01", "HY59-02") as Renamed;
  expect(renamed.moved).toContain("the comment '# none so far' goes");
});
