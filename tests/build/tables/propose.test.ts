import { expect, test } from "vitest";
import { propose } from "../../../src/build/tables/propose.ts";
import { sheetOf } from "./tiny-import.ts";

test("a sheet called like a table, with its headers, leaves nothing to guess", () => {
  const proposal = propose(sheetOf("built", "record,place,part,scope", "HY59-01,pump,HT-101,line=B"));
  expect(proposal).toMatchObject({ guesses: [], unmatched: [], missing: [] });
  expect(proposal?.mapping.table).toBe("built");
});

test.each([
  // headers, table
  ["Record ID;Old part;New part", "supersedes"],
  ["Record;Place;Part;Scope", "built"],
  ["Component;Part;Feature;Value", "marks"],
  ["Part number;Name;Castings;Component", "parts"],
  ["record;name;window;unit;conditions;scope", "settings"],
  ["kind;from;to;why", "moved"],
])("%s are the headers of %s", (headers, table) => {
  const proposal = propose(sheetOf("sheet 1", headers, headers.replaceAll(/[^;]+/g, "x")));
  expect(proposal?.table.name).toBe(table);
  expect(proposal?.guesses).toContain(`the rows are taken for rows of the table '${table}'`);
});

test("what no header means, and what is missing, is said", () => {
  const proposal = propose(sheetOf("built", "record,place,Clerk", "a,b,c"));
  expect(proposal).toMatchObject({ unmatched: ["Clerk"], missing: ["part", "scope"] });
});

test("a sheet of something else is no table", () => {
  expect(propose(sheetOf("x", "%%,??", "milk,bread"))).toBeUndefined();
});

test.each([
  // table, column, cells, how it is said to be written
  ["supersedes", "with", ["HT-201, HT-290", "HT-201"], { split: "," }],
  ["supersedes", "with", ["HT-201 | HT-290"], {}],
  ["supersedes", "with", ['"HT-201;HT-290"'], { split: ";" }],
  [
    "stands-in",
    "verdict",
    ["Y", "must not be used", "yes"],
    { translate: { Y: "yes", "must not be used": "must-not-be-used" } },
  ],
  ["records", "issued", ["3.2.1959", "14.2.1959"], { dates: "day.month.year" }],
  ["records", "issued", ["2/14/1959"], { dates: "month/day/year" }],
  ["records", "issued", ["1959-02-14"], {}],
  ["settings", "nominal", ["0,5", "1"], { comma: true }],
  ["marks", "value", ["0,5", "two"], { comma: true }],
  ["settings", "nominal", ["0,500"], { comma: true }],
  ["settings", "nominal", ["1.300,5"], { comma: true }],
  ["settings", "window", ["3,5..3,62"], { comma: true }],
  ["settings", "nominal", ["1,300"], {}],
  ["settings", "component", ["4411,4412"], {}],
])("of %s, %s written as %j is read with %j", (table, column, cells, how) => {
  // Tabs between the cells, so that a cell may hold any of the signs that lists are split at.
  const proposal = propose(sheetOf(table, `${column}\tclerk`, ...cells.map((cell) => `${cell}\tx`)));
  expect(proposal?.mapping.columns[column]).toEqual({ column, ...how });
});

test("days that may be read in two ways are not guessed at", () => {
  const proposal = propose(sheetOf("records", "issued\tclerk", "1.2.1959\tx"));
  expect(proposal?.mapping.columns.issued).toEqual({ column: "issued" });
  expect(proposal?.guesses).toEqual([
    "'issued': its days are written day.month.year or month/day/year: say which with dates:",
  ]);
});

test("a value that is none of a choice is pointed out", () => {
  const proposal = propose(sheetOf("stands-in", "verdict\tclerk", "perhaps\tx"));
  expect(proposal?.guesses).toEqual([
    "'verdict': 'perhaps' is no value of 'verdict' (yes, on-conditions, does-not-go-on, must-not-be-used): translate it",
  ]);
});

test("a comma that may stand before thousands is not guessed at", () => {
  expect(propose(sheetOf("settings", "nominal\tclerk", "1,300\tx"))?.guesses).toEqual([
    "'nominal': '1,300' has a comma as the decimal sign, or before three figures: say comma: true, or take it out",
  ]);
});
