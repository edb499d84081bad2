import { join } from "node:path";
import { utils, write } from "@e965/xlsx";
import { expect, test } from "vitest";
import { openSheets } from "../../../src/build/tables/open-sheets.ts";
import { writeXlsx } from "../../../src/build/tables/write-xlsx.ts";
import { onDisk } from "../../helpers/tiny-folder.ts";

const NONE = { sheets: [], leaveOut: [] };

test("every sheet with anything in it is opened, and how it was read is said", async () => {
  const book = await writeXlsx("b", [
    { name: "one", rows: [["A title"], [], ["a", "b"], ["1", "2"]] },
    { name: "two", rows: [] },
    { name: "three", rows: [["a"]] },
  ]);
  const folder = await onDisk({ "a.csv": "a;b\n1;2\n", "b.xlsx": book });
  const said: string[] = [];
  const sheets = await openSheets(
    [join(folder, "a.csv"), join(folder, "b.xlsx")],
    { ...NONE, leaveOut: ["three"] },
    {},
    (line) => said.push(line.replace(folder, "")),
  );
  expect(sheets?.map(({ grid }) => grid.name)).toEqual(["a", "one"]);
  expect(said).toEqual([
    "/a.csv (utf-8, semicolon): 1 row",
    "/b.xlsx, sheet 'one': 1 row, headers in row 3",
    "/b.xlsx, sheet 'two': empty",
  ]);
});

test("when one cannot be read, every fault is said and none is opened", async () => {
  const folder = await onDisk({ "a.csv": "a,a\n", "b.csv": "a\n1\n", "c.csv": 'a\n"x\n' });
  const said: string[] = [];
  const paths = ["a.csv", "b.csv", "c.csv"].map((name) => join(folder, name));
  expect(await openSheets(paths, NONE, {}, (line) => said.push(line.replace(folder, "")))).toBeUndefined();
  expect(said).toEqual([
    "/a.csv, row 1: two columns are called 'a'; give one of them another name",
    "/b.csv (utf-8, comma): 1 row",
    '/c.csv, row 2: a quote is opened and never closed; close it, or write "" for a quote within a cell',
    "Nothing was done.",
  ]);
});

test("a hidden sheet is read only where the mapping names it, and a sheet that is not there is said", async () => {
  const book = utils.book_new();
  utils.book_append_sheet(book, utils.aoa_to_sheet([["a"], ["1"]]), "now");
  utils.book_append_sheet(book, utils.aoa_to_sheet([["a"], ["2"]]), "old");
  book.Workbook = { Sheets: [{ name: "now" }, { name: "old", Hidden: 1 }] };
  const folder = await onDisk({ "b.xlsx": write(book, { type: "buffer", bookType: "xlsx" }) });
  const open = async (...names: string[]) => {
    const said: string[] = [];
    const mappings = names.map((sheet) => ({ sheet, table: "built", columns: {}, constants: {}, "leave-out": [] }));
    const sheets = await openSheets([join(folder, "b.xlsx")], { sheets: mappings, leaveOut: ["nowhere"] }, {}, (line) =>
      said.push(line.replace(folder, "")),
    );
    return [sheets?.map(({ grid }) => grid.name), said];
  };
  const nowhere = "The mapping speaks of a sheet 'nowhere', which is in none of these files.";
  expect(await open()).toEqual([
    ["now"],
    [
      "/b.xlsx, sheet 'now': 1 row",
      "/b.xlsx, sheet 'old': hidden, so it is not read; show it in the workbook, or name it in a mapping file",
      nowhere,
    ],
  ]);
  expect(await open("old", "ald")).toEqual([
    ["now", "old"],
    [
      "/b.xlsx, sheet 'now': 1 row",
      "/b.xlsx, sheet 'old': 1 row",
      "The mapping speaks of a sheet 'ald', which is in none of these files.",
      nowhere,
    ],
  ]);
});
