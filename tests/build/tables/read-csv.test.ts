/** Dialects and faults; the samples of RFC 4180 and the torture set stand in tests/outside/csv.test.ts. */
import { expect, test } from "vitest";
import { MOST_COLUMNS } from "../../../src/build/tables/limits.ts";
import { type CsvManner, readCsv } from "../../../src/build/tables/read-csv.ts";

const cells = (text: string | Uint8Array, manner?: CsvManner) =>
  readCsv("deliveries.csv", Buffer.from(text), manner).grids[0]?.rows.map((row) => row.cells);

test("an inch sign within a cell is an inch sign", () => {
  expect(cells('size\n3/8" bolt\n"3/8"" bolt"\n')).toEqual([["size"], ['3/8" bolt'], ['3/8" bolt']]);
});

test("empty lines count as rows, so that numbers are those of the spreadsheet program", () => {
  const [grid] = readCsv("a.csv", Buffer.from('a,b\n\n"x\ny",2\n3,4\n')).grids;
  expect(grid?.rows.map(({ number, cells: it }) => [number, it[0]])).toEqual([
    [1, "a"],
    [2, ""],
    [3, "x\ny"],
    [4, "3"],
  ]);
});

test("the name of the sheet is the name of the file, and rejected rows are rows of the same sheet", () => {
  const name = (path: string) => readCsv(path, Buffer.from("a\n")).grids[0]?.name;
  expect([name("x/parts.csv"), name("parts.rejected.csv"), name("parts.rejected-2.txt"), name("v1.parts.csv")]).toEqual(
    ["parts", "parts", "parts", "v1.parts"],
  );
});

test("a row with a sign that no file can carry is marked, the others are read", () => {
  const [grid] = readCsv("a.csv", Buffer.from("a,b\n1,\0\n3,4\n")).grids;
  expect(grid?.rows.map(({ fault }) => fault)).toEqual([undefined, "the row holds a NUL sign", undefined]);
});

test("a guessed encoding is said", () => {
  expect(readCsv("a.csv", Uint8Array.of(0x61, 0xfc)).grids[0]?.notes).toEqual([
    "read as windows-1252, which is a guess; --encoding says another",
  ]);
});

test.each<[string, string | Uint8Array, CsvManner, string]>([
  ["nothing in it", "", {}, "deliveries.csv: the file is empty; save the sheet again"],
  [
    "an open quote",
    'a,b\n1,2\n3,"x\n4,5\n',
    {},
    'deliveries.csv, row 3: a quote is opened and never closed; close it, or write "" for a quote within a cell',
  ],
  [
    "an encoding that does not fit",
    Uint8Array.of(0xff),
    { encoding: "utf-8" },
    "deliveries.csv: it is no text in utf-8; save it as 'CSV UTF-8'",
  ],
  [
    "no such encoding",
    "a",
    { encoding: "x" },
    "deliveries.csv: no encoding is called 'x'; name one such as utf-8 or windows-1252",
  ],
  [
    "very many columns",
    ",".repeat(MOST_COLUMNS),
    {},
    `deliveries.csv, row 1: it has ${MOST_COLUMNS + 1} columns, more than ${MOST_COLUMNS}; split the sheet`,
  ],
])("%s", (_, text, manner, said) => {
  expect(() => cells(text, manner)).toThrow(said);
});

test("more rows than a person writes are refused, with the row", () => {
  expect(() => cells("a\n".repeat(200_100))).toThrow(
    "deliveries.csv, row 200002: it has more than 200000 rows; split the sheet",
  );
});
