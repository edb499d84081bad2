import { describe, expect, test } from "vitest";
import { tableNamed } from "../../../src/build/tables/all-tables.ts";
import { importRows, mappingFaults, openSheet, rowName } from "../../../src/build/tables/import-rows.ts";
import type { SheetMapping } from "../../../src/build/tables/mapping.ts";
import type { CellValue, Form, Grid } from "../../../src/build/tables/sheet.ts";
import type { Table } from "../../../src/build/tables/table.ts";
import { sheetOf } from "./tiny-import.ts";

const XLSX: Form = { format: "xlsx" };
const built = tableNamed("built") as Table;
const gridOf = (...rows: CellValue[][]): Grid => ({
  name: "s",
  notes: [],
  rows: rows.map((cells, i) => ({ number: i + 1, cells })),
});
const MAPPING: SheetMapping = {
  sheet: "built",
  table: "built",
  columns: {
    place: { column: "Where" },
    part: { column: "What", translate: { "-": "none" } },
    scope: { column: "Cars" },
  },
  constants: { record: "HY59-01" },
  "leave-out": ["Clerk"],
};

describe("headers", () => {
  test.each<[string, CellValue[][], number | undefined, string[], number]>([
    // what, rows, row that was asked for, headers, row with the headers
    [
      "the first row",
      [
        ["a", "b"],
        ["1", "2"],
      ],
      undefined,
      ["a", "b"],
      1,
    ],
    ["below a title", [["Deliveries of 1959"], [], ["a", "b", "c"], ["1", "2", "3"]], undefined, ["a", "b", "c"], 3],
    [
      "where it was said",
      [
        ["x", "y"],
        ["a", "b"],
      ],
      2,
      ["a", "b"],
      2,
    ],
    ["one column", [["a"], ["1"]], undefined, ["a"], 1],
    [
      "an empty one over something, none over nothing",
      [
        ["a", "b", null, null],
        ["1", "2", "3", null],
      ],
      undefined,
      ["a", "b", "column C"],
      1,
    ],
    [
      "reasons of an earlier rejection",
      [
        ["Rejected because", "a"],
        ["x", "1"],
      ],
      undefined,
      ["a"],
      1,
    ],
  ])("%s", (_, rows, asked, headers, at) => {
    const sheet = openSheet("s.xlsx", XLSX, gridOf(...rows), asked);
    expect(sheet?.headers.map(({ name }) => name)).toEqual(headers);
    expect(sheet?.headerRow).toBe(at);
  });

  test("nothing at all is no sheet", () => {
    expect(openSheet("s.xlsx", XLSX, gridOf([null], [" "]))).toBeUndefined();
  });

  test.each<[CellValue[][], number | undefined, string]>([
    [
      [["a", "b", "a"]],
      undefined,
      "s.xlsx, sheet 's', row 1: two columns are called 'a'; give one of them another name",
    ],
    [[["a"]], 4, "s.xlsx, sheet 's', row 4: no headers stand there; say in which row with header:"],
  ])("%j is refused", (rows, asked, said) => {
    expect(() => openSheet("s.xlsx", XLSX, gridOf(...rows), asked)).toThrow(said);
  });
});

test("cells are translated, constants fill in, guards come off, nothing stays nothing", () => {
  const sheet = sheetOf("built", "Where,What,Cars,Clerk", "pump,-,'=x,Jo", "pump,HT-101,,");
  expect(importRows(sheet, built, MAPPING)).toMatchObject([
    {
      parents: ["HY59-01"],
      fields: [
        [{ name: "place" }, "pump"],
        [{ name: "part" }, "none"],
        [{ name: "scope" }, "=x"],
      ],
    },
    {
      parents: ["HY59-01"],
      fields: [
        [{ name: "place" }, "pump"],
        [{ name: "part" }, "HT-101"],
      ],
    },
  ]);
});

test.each([
  // rows, reasons
  [
    ["record,place", "HY59-01,pump,more"],
    ["the row has 3 cells and the headers 2: a quote or a separator is missing or too many"],
  ],
  [
    ["record,place", "HY59-01"],
    ["the row has 1 cells and the headers 2: a quote or a separator is missing or too many"],
  ],
  [["record,place", ",pump"], ["'record' is empty; say in which the row belongs"]],
  [["record,place", "HY59-01,pu\0mp"], ["the row holds a NUL sign"]],
  [["record,place", ",", "  ,"], []],
])("%j: rejected because %j", (lines, reasons) => {
  const columns = { record: { column: "record" }, place: { column: "place" } };
  const rows = importRows(sheetOf("built", ...lines), built, { ...MAPPING, columns, constants: {} });
  expect(rows.map((row) => "reason" in row && row.reason)).toEqual(reasons);
});

test("a row of records says which it is", () => {
  const columns = { title: { column: "title" }, id: { column: "id" } };
  const [row] = importRows(sheetOf("records", "id,title", ",Pumps"), tableNamed("records") as Table, {
    ...MAPPING,
    columns,
  });
  expect(row).toMatchObject({ reason: "'id' is empty; nothing else says which it is" });
});

test("a mapping and its sheet have to know the same columns", () => {
  expect(mappingFaults(sheetOf("built", "Where,What,Car,Clerk", "a,b,c,d"), MAPPING)).toEqual([
    "the mapping names the column 'Cars', which is not there; did you mean 'Car'?",
    "the column 'Car' goes nowhere; map it, or list it under leave-out",
  ]);
});

test("a row is called by its file, its sheet and its number", () => {
  const csv = sheetOf("built", "a", "b");
  const row = { number: 2, cells: [] };
  expect(rowName({ sheet: csv, row })).toBe("built.csv, row 2");
  expect(rowName({ sheet: { ...csv, path: "x/b.xlsx", form: XLSX }, row })).toBe("b.xlsx, sheet 'built', row 2");
});
