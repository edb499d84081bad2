import { describe, expect, test } from "vitest";
import { tableNamed } from "../../../src/build/tables/all-tables.ts";
import {
  cellTexts,
  importRows,
  mappingFaults,
  openSheet,
  rowName,
  type Sheet,
} from "../../../src/build/tables/import-rows.ts";
import type { SheetMapping } from "../../../src/build/tables/mapping.ts";
import { type CellValue, type Form, type Grid, Percentage } from "../../../src/build/tables/sheet.ts";
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

describe("numbers", () => {
  const settings = tableNamed("settings") as Table;
  const names = ["record", "name", "window", "nominal", "unit", "scope"];
  const read = (table: Table, headers: string[], cells: CellValue[], how = {}) => {
    const sheet = openSheet("s.xlsx", XLSX, gridOf(headers, cells)) as Sheet;
    const columns = Object.fromEntries(headers.map((name) => [name, { column: name, ...how }]));
    const [row] = importRows(sheet, table, { ...MAPPING, columns, constants: {} });
    if (!row || "reason" in row) return row?.reason;
    return Object.fromEntries(row.fields.map(([{ name }, value]) => [name, value]));
  };

  test.each([
    // unit, what is read or why not
    ["%", 50],
    ["per cent", 50],
    ["bar", "'nominal' is 50 %, and the unit is 'bar'"],
    [null, "'nominal' is 50 %, and no unit says so"],
  ])("50 %% in the unit %s: %s", (unit, value) => {
    const said = read(settings, names, ["HY59-01", "glycol", "45..55", new Percentage(50), unit, "all"]);
    expect(typeof said === "string" ? said : said?.nominal).toBe(value);
    expect(read(settings, names, ["HY59-01", "glycol", "45..55", "50%", unit, "all"])).toEqual(
      typeof said === "string" ? said.replace("50 %", "50%") : said,
    );
  });

  test("a percentage in a table without units is refused, and stays as it is shown where a text stands", () => {
    const kits = ["record", "kit", "name", "count"];
    expect(read(tableNamed("kits") as Table, kits, ["HY59-01", "HT-290", "x", new Percentage(100)])).toBe(
      "'count' is 100 %, and no unit says so",
    );
    expect(read(tableNamed("kits") as Table, kits, ["HY59-01", "HT-290", new Percentage(12.5), 2])).toEqual({
      name: "12.5 %",
      count: 2,
    });
  });

  test("a day that a spreadsheet program made of something else rejects its row, also in the column that says where it belongs", () => {
    const parts = tableNamed("parts") as Table;
    const day = new Date(Date.UTC(1993, 7, 20));
    const made =
      "holds the day 1993-08-20, which the spreadsheet program made of something else; format the cell as text and type it again";
    expect(read(parts, ["component", "number", "name"], ["pump", day, "pump"])).toBe(`'number' ${made}`);
    expect(read(parts, ["component", "number", "name"], [day, "HT-300", "pump"])).toBe(`'component' ${made}`);
    const records = tableNamed("records") as Table;
    expect(read(records, ["id", "title", "issued"], ["HY60-01", "x", day])).toMatchObject({ issued: "1993-08-20" });
  });

  test("where the comma is the decimal sign, a doubtful number rejects its row with the reason", () => {
    expect(read(settings, names, ["HY59-01", "x", "1..2", "1.300", "bar", "all"], { comma: true })).toMatch(
      /^'nominal': '1\.300' has a point where numbers are written with a comma: write 1,300, or leave the point out$/,
    );
  });

  test("a number of a workbook has no decimal sign, and neither has what the mapping translates to", () => {
    const comma = { comma: true };
    expect(read(settings, names, ["HY59-01", "x", "1..2", 1.125, "bar", "all"], comma)).toMatchObject({
      nominal: 1.125,
    });
    expect(read(settings, names, ["HY59-01", "x", "1..2", new Percentage(12.5), "%", "all"], comma)).toMatchObject({
      nominal: 12.5,
    });
    const translate = { half: "0.5" };
    expect(
      read(settings, names, ["HY59-01", "x", "1..2", "half", "bar", "all"], { ...comma, translate }),
    ).toMatchObject({
      nominal: 0.5,
    });
  });
});

test("only what the mapping itself lists is translated", () => {
  const [row] = importRows(sheetOf("built", "Where,What,Cars,Clerk", "pump,constructor,all,Jo"), built, MAPPING);
  expect(row).toMatchObject({
    fields: [
      [{}, "pump"],
      [{ name: "part" }, "constructor"],
      [{}, "all"],
    ],
  });
});

test("what is translated to blanks says nothing", () => {
  const columns = { ...MAPPING.columns, part: { column: "What", translate: { X: " " } } };
  const [row] = importRows(sheetOf("built", "Where,What,Cars,Clerk", "pump,X,all,Jo"), built, { ...MAPPING, columns });
  expect(row).toMatchObject({
    fields: [
      [{ name: "place" }, "pump"],
      [{ name: "scope" }, "all"],
    ],
  });
});

test("what the cells under a header say", () => {
  expect(cellTexts(sheetOf("built", "a,b", "1, '=x", "2,"), "b")).toEqual(["'=x", ""]);
});
