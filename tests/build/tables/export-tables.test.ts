/** Out and in again gives the same catalog: for the demonstration, and for texts made to break it. */
import { cpSync, mkdirSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { isDeepStrictEqual } from "node:util";
import { describe, expect, test } from "vitest";
import { readFolder } from "../../../src/build/data/read-folder.ts";
import { TABLES } from "../../../src/build/tables/all-tables.ts";
import { cellsOf, exportTables } from "../../../src/build/tables/export-tables.ts";
import { openSheet, type Sheet } from "../../../src/build/tables/import-rows.ts";
import { importSheets } from "../../../src/build/tables/import-sheets.ts";
import { planImport } from "../../../src/build/tables/plan-import.ts";
import { propose } from "../../../src/build/tables/propose.ts";
import { readCsv } from "../../../src/build/tables/read-csv.ts";
import { type Grid, textOf } from "../../../src/build/tables/sheet.ts";
import { OUR_CSV, writeCsv } from "../../../src/build/tables/write-csv.ts";
import { type FileKindName, kindOf } from "../../../src/engine/records/file-kinds.ts";
import { readCatalog } from "../../../src/engine/records/read-catalog.ts";
import { DATA } from "../../helpers/demo-data.ts";
import { onDisk, spoiled, TINY } from "../../helpers/tiny-folder.ts";
import { rowsOf } from "./tiny-import.ts";

const textIn = (folder: string, name: string): string => readFileSync(join(folder, name), "utf8");
const quiet = (): void => {};
const isTabled = (path: string): boolean => TABLES.some(({ kind }) => kind === kindOf(path));

/** A folder with only those files of another that no table holds. */
function copyUntabled(from: string, to: string): void {
  for (const path of readdirSync(from, { recursive: true, encoding: "utf8" }).map((it) => it.replaceAll("\\", "/")))
    if (kindOf(path) && !isTabled(path)) cpSync(join(from, path), join(to, path));
}

/** Exported, and imported into an empty folder; then what the first and what the second folder say. */
async function roundTrip(data: string, to: string): Promise<{ first: string; second: string }> {
  const folder = await onDisk({ "place/keep": "" });
  const out = join(folder, to);
  expect(await exportTables({ data, to: out, tables: [], overwrite: false }, quiet)).toBe(0);
  const back = join(folder, "back");
  mkdirSync(back);
  copyUntabled(data, back);
  const files = to.endsWith(".xlsx") ? [out] : readdirSync(out).map((name) => join(out, name));
  const said: string[] = [];
  const options = { data: back, write: true, overwrite: false };
  const code = await importSheets(files, options, (line) => said.push(line));
  expect(said.filter((line) => line.startsWith("rejected"))).toEqual([]);
  expect(code).toBe(0);
  const [first, second] = [await readFolder(data), await readFolder(back)];
  expect(second.findings).toEqual([]);
  expect(second.catalog).toEqual(first.catalog);
  expect([...second.sources.keys()]).toEqual([...first.sources.keys()]);
  const again = join(folder, `again-${to}`);
  expect(await exportTables({ data: back, to: again, tables: [], overwrite: false }, quiet)).toBe(0);
  return { first: out, second: again };
}

/** Texts that spreadsheets, CSV or a formula guard could mistake for something else. */
const NASTY = spoiled({
  "changes/1958/FR58-01.md": [
    "starts: start of 1958\nscope: my>=1958\n---\n\nFour holes.",
    `words: ["=1+1", "a|b", "c\\\\d", "'=x", "0012", "1E5", "; , \\"quoted\\"", "@sum"]
starts: "-5 degrees, then"
scope: my>=1958
left-alone: ["+ nothing", "= nothing, 'as it was'", "''=twice"]
---

=HYPERLINK("x")

* a list, with a tab:\tand 'quotes' "of both" kinds; é😀 _x000D_`,
  ],
  "parts/pump.yaml": ["marks: { ribs: two, bore: none }", 'marks: { ribs: "12", bore: none }'],
});

describe("out and in again", () => {
  test("the demonstration, as CSV", async () => {
    const { catalog, sources } = await readFolder(DATA);
    const files = [...sources].map(([path, { value }]) => ({ path, kind: kindOf(path) as FileKindName, value }));
    // Its tables into a folder that has only what no table holds.
    const rows = TABLES.flatMap((table) => {
      const csv = writeCsv(
        cellsOf(table, files).map((cells) => cells.map(textOf)),
        OUR_CSV,
      );
      const { path, form, grids } = readCsv(`${table.name}.csv`, csv);
      const sheet = openSheet(path, form, grids[0] as Grid) as Sheet;
      expect(propose(sheet)).toMatchObject({ table: { name: table.name }, guesses: [], unmatched: [] });
      return rowsOf(sheet);
    });
    const untabled = files.filter(({ path }) => !isTabled(path));
    const folder = {
      files: new Map(untabled.map((file) => [file.path, file])),
      text: () => "",
      schema: () => undefined,
    };
    const { rejected, written, texts, drafts } = planImport(folder, rows, false);
    expect([rejected.size, written.length]).toEqual([0, rows.length]);
    expect([...texts.keys()].sort()).toEqual([...sources.keys()].filter(isTabled));
    const read = readCatalog([...untabled, ...drafts].sort((a, b) => (a.path < b.path ? -1 : 1)));
    expect(read.complaints).toEqual([]);
    expect(isDeepStrictEqual(read.catalog, catalog)).toBe(true);
  });

  test.each(["out", "out.xlsx"])("every statement there is, and texts made to break it: %s", async (to) => {
    await roundTrip(await onDisk(NASTY), to);
  });

  test("a second export is the first, though the first folder says what would hold anyway", async () => {
    const said = spoiled({ "changes/1959/HY59-01.md": ["name: tube of grease }", "name: tube of grease, count: 1 }"] });
    const { first, second } = await roundTrip(await onDisk(said), "out");
    for (const name of readdirSync(first)) expect([name, textIn(second, name)]).toEqual([name, textIn(first, name)]);
  });
});

test("no text of an export can be run as a formula", async () => {
  const folder = await onDisk(NASTY);
  await exportTables(
    { data: folder, to: join(folder, "out"), tables: ["records", "left-alone"], overwrite: false },
    quiet,
  );
  const csv = readFileSync(join(folder, "out", "left-alone.csv"), "utf8");
  expect(csv).toBe(
    "\uFEFFrecord,left-alone\r\nFR58-01,'+ nothing\r\nFR58-01,\"'= nothing, 'as it was'\"\r\nFR58-01,'''=twice\r\nHY59-01,The reservoir was looked at and stayed.\r\n",
  );
  expect(readdirSync(join(folder, "out"))).toEqual(["left-alone.csv", "records.csv"]);
});

test("an export writes over nothing that is there, unless told", async () => {
  const folder = await onDisk({ ...TINY, "out/built.csv": "mine" });
  const said: string[] = [];
  const options = { data: folder, to: join(folder, "out"), tables: ["built", "moved"] };
  expect(await exportTables({ ...options, overwrite: false }, (line) => said.push(line))).toBe(1);
  expect(said.join().replaceAll(folder, "")).toBe(
    "/out/built.csv: is there already; name another place, or add --overwrite",
  );
  expect(readdirSync(join(folder, "out"))).toEqual(["built.csv"]);
  expect(await exportTables({ ...options, overwrite: true }, quiet)).toBe(0);
  expect(readdirSync(join(folder, "out"))).toEqual(["built.csv", "moved.csv"]);
});

test("a folder with a file that cannot be read is not exported: the export would lack it", async () => {
  const folder = await onDisk(spoiled({ "parts/pump.yaml": "component: [" }));
  const said: string[] = [];
  expect(
    await exportTables({ data: folder, to: join(folder, "o.xlsx"), tables: [], overwrite: false }, (line) =>
      said.push(line),
    ),
  ).toBe(1);
  expect(said).toEqual(["parts/pump.yaml: cannot be read, so an export would lack it; mend it first (npm run check)"]);
});

test.each(["out", "o.xlsx"])("what the disk refuses is said, and nothing is half written: %s", async (name) => {
  const folder = await onDisk({ ...TINY, file: "no folder" });
  const said: string[] = [];
  const options = { data: folder, to: join(folder, "file", name), tables: [], overwrite: true };
  expect(await exportTables(options, (line) => said.push(line))).toBe(1);
  expect(said).toEqual([expect.stringMatching(/^ENOTDIR: .*\. Nothing was written\.$/)]);
});

test("one table goes into a CSV file that is named, several do not", async () => {
  const folder = await onDisk(TINY);
  const said: string[] = [];
  const run = (to: string, ...tables: string[]): Promise<number> =>
    exportTables({ data: folder, to: join(folder, to), tables, overwrite: false }, (line) =>
      said.push(line.replaceAll(folder, "")),
    );
  expect(await run("built.csv", "built")).toBe(0);
  expect(textIn(folder, "built.csv")).toMatch(/^\uFEFFrecord,place,part,scope\r\n/);
  expect(await run("mine.CSV", "built")).toBe(0);
  expect(await run("all.csv")).toBe(2);
  expect(await run("two.csv", "built", "moved")).toBe(2);
  expect(readdirSync(folder).filter((name) => /csv/i.test(name))).toEqual(["built.csv", "mine.CSV"]);
  expect(said.filter((line) => !/^ +\d/.test(line))).toEqual([
    "built.csv. Back again: npm run import -- /built.csv",
    "mine.CSV. Back again: npm run import -- /mine.CSV (with a mapping: --propose)",
    "--to /all.csv: one CSV file holds one table; say which with --table, or name a folder or a workbook",
    "--to /two.csv: one CSV file holds one table; say which with --table, or name a folder or a workbook",
  ]);
});
