/** The whole way of a sheet, on the disk: tried, mapped, written, rejected, mended, and once more. */
import { cpSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { type ImportOptions, importSheets } from "../../../src/build/tables/import-sheets.ts";
import { onDisk, TINY } from "../../helpers/tiny-folder.ts";

interface Desk {
  readonly folder: string;
  run(files: string[], more?: Partial<ImportOptions>): Promise<{ code: number; out: string }>;
  read(path: string): string;
  write(path: string, text: string): void;
}

/** A data folder beside some sheets. */
async function deskWith(sheets: Record<string, string | Uint8Array>): Promise<Desk> {
  const data = Object.fromEntries(Object.entries(TINY).map(([path, text]) => [`data/${path}`, text]));
  const folder = await onDisk({ ...data, ...sheets });
  const at = (path: string): string => join(folder, path);
  return {
    folder,
    read: (path) => readFileSync(at(path), "utf8"),
    write: (path, text) => writeFileSync(at(path), text),
    run: async (files, more = {}) => {
      const said: string[] = [];
      const paths = Object.fromEntries(
        (["map", "propose", "rejects"] as const).flatMap((name) => (more[name] ? [[name, at(more[name])]] : [])),
      );
      const options = { data: at("data"), write: false, overwrite: false, ...more, ...paths };
      const code = await importSheets(files.map(at), options, (line) => said.push(line));
      return { code, out: said.join("\n").replaceAll(`${folder}/`, "") };
    },
  };
}

/** Every file below a folder with its bytes. */
function bytesOf(folder: string): Record<string, string> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  return Object.fromEntries(
    files.map((entry) => [
      join(entry.parentPath, entry.name),
      readFileSync(join(entry.parentPath, entry.name), "latin1"),
    ]),
  );
}

const GOOD =
  "record,place,part,scope\nHY59-01,pump gasket,HT-290,line=B; my<=1958\nHY59-01,pump gasket,HT-999,line=B; my>=1959\n";

test("a trial shows everything and writes nothing", async () => {
  const desk = await deskWith({ "built.csv": GOOD });
  const before = bytesOf(desk.folder);
  const { code, out } = await desk.run(["built.csv"]);
  expect(code).toBe(1);
  expect(out).toBe(
    `built.csv (utf-8, comma): 2 rows
'built' is read as the table 'built'
changed  changes/1959/HY59-01.md
           + built 4: place pump gasket, part HT-290, scope line=B; my<=1958
rejected built.csv, row 3: no part is called 'HT-999'; add it to parts/, or mend the name

2 rows: 1 written, 0 unchanged, 1 rejected
0 new files, 1 changed file. Nothing was written yet: this was a trial. --write writes.`,
  );
  expect(bytesOf(desk.folder)).toEqual(before);
});

test("written, mended and imported again, nothing is lost; once more, not a byte changes", async () => {
  const desk = await deskWith({ "built.csv": GOOD });
  expect((await desk.run(["built.csv"], { write: true })).code).toBe(1);
  const rejected = desk.read("built.rejected.csv");
  expect(rejected).toMatch(/^rejected because,record,place,part,scope\n"?no part is called 'HT-999'/);
  desk.write("built.rejected.csv", rejected.replace(",HT-999,", ",HT-290,"));
  const mended = await desk.run(["built.rejected.csv"], { write: true });
  expect(mended.out).toMatch(
    /\n1 row: 1 written, 0 unchanged, 0 rejected\n0 new files, 1 changed file in data\. Next: npm run check$/,
  );
  expect(mended.code).toBe(0);
  const before = bytesOf(desk.folder);
  expect((await desk.run(["built.csv"], { write: true })).out).toContain("2 rows: 0 written, 1 unchanged, 1 rejected");
  expect((await desk.run(["built.rejected.csv"], { write: true })).code).toBe(0);
  const after = bytesOf(desk.folder);
  // The first sheet still has its bad row, and its rejects do not go over the file that was mended.
  expect(Object.keys(after).filter((path) => after[path] !== before[path])).toEqual([
    join(desk.folder, "built.rejected-2.csv"),
  ]);
});

test("what is guessed is not written before a person has looked it over", async () => {
  const sheet = "Record ID;Where;Part no.;Cars;Clerk\nHY59-01;pump gasket;HT-290;line=B;Jo\n";
  const desk = await deskWith({ "list.csv": sheet });
  const before = bytesOf(join(desk.folder, "data"));
  const refused = await desk.run(["list.csv"], { write: true });
  expect(refused.code).toBe(1);
  expect(refused.out).toContain("Nothing was written: what is guessed or goes nowhere has to be settled first.");
  const proposed = await desk.run(["list.csv"], { propose: "list.map.yaml" });
  expect(proposed.out).toContain("The mapping is in list.map.yaml.");
  expect((await desk.run(["list.csv"], { propose: "list.map.yaml" })).out).toContain("list.map.yaml is there already");
  expect(bytesOf(join(desk.folder, "data"))).toEqual(before);
  const mapping = `sheets:
  - sheet: list
    table: built
    columns: { record: Record ID, place: Where, part: Part no., scope: Cars }
    leave-out: [Clerk]
`;
  desk.write("list.map.yaml", mapping.replace("table: built", "table: bilt"));
  expect((await desk.run(["list.csv"], { map: "list.map.yaml", write: true })).out).toContain("did you mean 'built'?");
  desk.write("list.map.yaml", mapping);
  const written = await desk.run(["list.csv"], { map: "list.map.yaml", write: true });
  expect(written.out).toContain("1 row: 1 written, 0 unchanged, 0 rejected");
  expect(desk.read("data/changes/1959/HY59-01.md")).toMatch(/place: pump gasket\s+part: HT-290\s+scope: line=B\n/);
});

test("a value is only written over when that was said", async () => {
  const desk = await deskWith({ "records.csv": "id,title\nFR58-01,Frame drilled\n" });
  const kept = await desk.run(["records.csv"], { write: true, rejects: "no.csv" });
  expect(kept.out).toContain("rejected records.csv, row 2: 'title' already says 'Frame drilled for a winch'");
  expect(desk.read("no.csv")).toContain("already says");
  const changed = await desk.run(["records.csv"], { write: true, overwrite: true });
  expect(changed.out).toContain("title: Frame drilled for a winch -> Frame drilled");
  expect(desk.read("data/changes/1958/FR58-01.md")).toBe(
    (TINY["changes/1958/FR58-01.md"] as string).replace("Frame drilled for a winch", "Frame drilled"),
  );
});

test("a folder with faults of its own says so, and a sheet that cannot be read stops everything", async () => {
  const desk = await deskWith({ "built.csv": GOOD, "marks.csv": "a,a\n" });
  desk.write("data/changes/1958/FR58-01.md", (TINY["changes/1958/FR58-01.md"] as string).replace("my>=", "mx>="));
  expect((await desk.run(["built.csv"])).out).toContain(
    "The data folder has 1 error of its own (npm run check); rows answer only for new ones.",
  );
  const { code, out } = await desk.run(["built.csv", "marks.csv"], { write: true });
  expect(code).toBe(1);
  expect(out).toContain("marks.csv, row 1: two columns are called 'a'; give one of them another name");
  expect(out).toMatch(/Nothing was done\.$/);
});

test("signs that would play with the terminal are shown as blanks", async () => {
  const desk = await deskWith({ "built.csv": "record,place,part,scope\nHY\u009b59,a,b,c\nHY\u202e59,a,b,c\n" });
  const { out } = await desk.run(["built.csv"]);
  expect(out).toContain("no record 'HY 59' is in the folder or among the rows");
  expect(out).not.toMatch(/[\u009b\u202e]/);
});

test("a folder that cannot be written is left as it was", async () => {
  const desk = await deskWith({ "records.csv": "id,customer,file\nFR58-01,Nothing to do.,\n" });
  const before = bytesOf(join(desk.folder, "data"));
  // A folder lies where the new text would be made ready.
  cpSync(join(desk.folder, "data", "parts"), join(desk.folder, `data/changes/1958/.FR58-01.md.${process.pid}.next`), {
    recursive: true,
  });
  const { code, out } = await desk.run(["records.csv"], { write: true });
  expect(code).toBe(1);
  expect(out).toMatch(/\nEISDIR: [^\n]*\. Nothing was written\.$/);
  const after = bytesOf(join(desk.folder, "data"));
  for (const path of Object.keys(before)) expect(after[path]).toBe(before[path]);
});

const PUMP = "data/parts/pump.yaml";

test("a byte order mark stays, and so does what somebody noted behind a set in braces", async () => {
  const desk = await deskWith({ "marks.csv": "component,part,mark,value\npump,HT-102,bore,20\n" });
  const text = `\uFEFF${desk.read(PUMP).replace("{ ribs: two, bore: none }", "{ ribs: two } # still to be seen")}`;
  desk.write(PUMP, text);
  expect((await desk.run(["marks.csv"], { write: true })).code).toBe(0);
  expect(desk.read(PUMP)).toBe(text.replace("{ ribs: two }", "{ ribs: two, bore: 20 }"));
});

test("a comment that cannot stay is named before anything is written", async () => {
  const desk = await deskWith({ "parts.csv": "component,number,aliases\npump,HT-102,long pump\n" });
  const text = desk
    .read(PUMP)
    .replace("    name: pump, long\n", "    name: pump, long\n    aliases: [ # none so far\n    ]\n");
  desk.write(PUMP, text);
  const { out } = await desk.run(["parts.csv"], { overwrite: true });
  expect(out).toContain("\nlost     parts/pump.yaml: the comment '# none so far'\n");
  expect(desk.read(PUMP)).toBe(text);
});

test("what somebody saves while rows are looked at is not written over", async () => {
  const desk = await deskWith({ "records.csv": "id,customer\nFR58-01,Come in.\n" });
  const path = "data/changes/1958/FR58-01.md";
  const his = `${desk.read(path)}\nHis.\n`;
  const said: string[] = [];
  const options = { data: join(desk.folder, "data"), write: true, overwrite: false };
  const code = await importSheets([join(desk.folder, "records.csv")], options, (line) => {
    said.push(line);
    if (line.startsWith("changed")) desk.write(path, his);
  });
  expect(code).toBe(1);
  expect(said.at(-1)).toMatch(/FR58-01\.md was changed meanwhile: run the command again\. Nothing was written\.$/);
  expect(desk.read(path)).toBe(his);
});
