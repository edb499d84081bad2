/**
 * Outside: @e965/xlsx (SheetJS, docs.sheetjs.com), a reader and writer of workbooks that shares no code with the ones in use here: what we write
 * it reads, and what it writes we read.
 */
import { read, utils, write } from "@e965/xlsx";
import { strToU8, unzipSync, zipSync } from "fflate";
import { expect, test } from "vitest";
import { tableNamed } from "../../src/build/tables/all-tables.ts";
import { readXlsx } from "../../src/build/tables/read-xlsx.ts";
import { type CellValue, textOf } from "../../src/build/tables/sheet.ts";
import type { Table } from "../../src/build/tables/table.ts";
import { tableRows } from "../../src/build/tables/table-rows.ts";
import { writeXlsx } from "../../src/build/tables/write-xlsx.ts";
import { filesOf } from "../build/tables/tiny-import.ts";

const ROWS: CellValue[][] = [
  ["id", "amount", "seen"],
  ["0012", 12.5, true],
  ["1E5", -3, false],
  ["77-0012", 0.1, new Date(Date.UTC(1959, 1, 28))],
  ["=1+1", null, "@sum"],
  ['two\nlines, "quotes" & <tags>', 1e-7, "é😀"],
];

test("a workbook of ours: the other reader finds every sheet, texts as texts, and no formula", async () => {
  const table = tableNamed("settings") as Table;
  const rows = tableRows(table, [...filesOf().values()]);
  const book = read(
    await writeXlsx("a.xlsx", [
      { name: "first", rows: ROWS },
      { name: table.name, rows },
    ]),
    { cellDates: true, UTC: true },
  );
  expect(book.SheetNames).toEqual(["first", "settings"]);
  const first = book.Sheets.first ?? {};
  expect(utils.sheet_to_json(first, { header: 1, defval: null, UTC: true })).toEqual(ROWS);
  expect(utils.sheet_to_json(book.Sheets.settings ?? {}, { header: 1, defval: "" })).toEqual(rows);
  const cells = Object.entries(first).filter(([address]) => /^[A-Z]/.test(address));
  expect(cells.filter(([, cell]) => cell.f !== undefined)).toEqual([]);
  expect(["A2", "A3", "A5", "B2"].map((address) => first[address].t)).toEqual(["s", "s", "s", "n"]);
});

test("a workbook of the other writer: every sheet, every kind of cell, days whatever their format", async () => {
  const book = utils.book_new();
  const sheet = utils.aoa_to_sheet([...ROWS, ["cut", 1, null]], { cellDates: true, UTC: true });
  sheet.C7 = { t: "n", v: 21609, z: "d. mmm yyyy" }; // 1959-02-28 by the count of days that workbooks use
  utils.book_append_sheet(book, sheet, "built");
  utils.book_append_sheet(book, utils.aoa_to_sheet([["a"], [1]]), "Second one");
  const { grids } = await readXlsx("b.xlsx", write(book, { type: "buffer", bookType: "xlsx", cellDates: true }));
  expect(grids.map(({ name }) => name)).toEqual(["built", "Second one"]);
  const cells = grids[0]?.rows.map((row) => row.cells.map(textOf)) ?? [];
  expect(cells.slice(0, 6)).toEqual(ROWS.map((row) => row.map(textOf)));
  expect(cells[6]).toEqual(["cut", "1", "1959-02-28"]);
});

test("its formulas are read by their results and said; without a result, and with an error, the row is marked", async () => {
  const book = utils.book_new();
  const sheet = utils.aoa_to_sheet([
    ["a", "b"],
    ["x", 1],
    ["y", 2],
    ["z", 3],
  ]);
  sheet.B2 = { t: "n", f: "1+1", v: 2 };
  sheet.B3 = { t: "e", v: 0x17 }; // #REF!
  sheet.B4 = { t: "n", f: "1+2", v: 3 };
  utils.book_append_sheet(book, sheet, "s");
  const bytes: Uint8Array = write(book, { type: "buffer", bookType: "xlsx" });
  const files = unzipSync(bytes);
  const path = "xl/worksheets/sheet1.xml";
  const xml = Buffer.from(files[path] ?? []).toString();
  const lacking = xml.replace(/(<c r="B4"[^>]*><f>1\+2<\/f>)<v>3<\/v>/, "$1");
  expect(lacking).not.toBe(xml);
  const { grids } = await readXlsx("c.xlsx", zipSync({ ...files, [path]: strToU8(lacking) }));
  expect(grids[0]?.notes).toEqual(["1 formula, read by the stored result (B2)"]);
  expect(grids[0]?.rows.map(({ cells, fault }) => [cells[1], fault])).toEqual([
    ["b", undefined],
    [2, undefined],
    [null, "cell B3 shows the error #REF!"],
    [null, "cell B4 is a formula without a stored result"],
  ]);
});

test("counted from 1904, as some programs do, days are the same days", async () => {
  const book = utils.book_new();
  utils.book_append_sheet(
    book,
    utils.aoa_to_sheet([["day"], [new Date(Date.UTC(1959, 1, 28))]], { cellDates: true, UTC: true }),
    "s",
  );
  book.Workbook = { WBProps: { date1904: true } };
  const { grids } = await readXlsx("d.xlsx", write(book, { type: "buffer", bookType: "xlsx" }));
  expect(textOf(grids[0]?.rows[1]?.cells[0])).toBe("1959-02-28");
});
