import { expect, test } from "vitest";
import { cellFault, cellText, cellValue, figuresIn } from "../../../src/build/tables/cell-text.ts";
import type { CellKind, Column } from "../../../src/build/tables/table.ts";

function column(kind: CellKind, more: Partial<Column> = {}): Column {
  const bare = {
    name: "it",
    path: ["it"],
    list: false,
    required: false,
    fallback: undefined,
    options: [],
    day: false,
    window: false,
    about: "",
  };
  return { ...bare, kind, ...more };
}

test.each<[CellKind, unknown, string]>([
  // kind of cell, value, text
  ["text", "0012", "0012"],
  ["number", 0.0005, "0.0005"],
  ["number", -3, "-3"],
  ["yes-no", true, "yes"],
  ["yes-no", false, "no"],
  ["text-or-number", 18, "18"],
  ["text-or-number", "18", '"18"'],
  ["text-or-number", "1.50", '"1.50"'],
  ["text-or-number", "0012", "0012"],
  ["text-or-number", "1E5", "1E5"],
  ["text-or-number", '"so called"', '"\\"so called\\""'],
  ["text-or-number", 1e-7, "1e-7"],
])("as %s, %j stands as %s and comes back", (kind, value, text) => {
  expect(cellText(column(kind), value)).toBe(text);
  expect(cellValue(column(kind), text)).toEqual(value);
});

test.each([
  // kind of cell, text, value
  ["number", "1.50", 1.5],
  ["number", "2e3", 2000],
  ["number", "0,5", "0,5"],
  ["number", "about 3", "about 3"],
  ["text-or-number", "0.500", 0.5],
  ["text-or-number", "two", "two"],
  ["text-or-number", '"two', '"two'],
  ["yes-no", "Y", true],
  ["yes-no", "FALSE", false],
  ["yes-no", "perhaps", "perhaps"],
] as const)("as %s, %s is read as %j", (kind, text, value) => {
  expect(cellValue(column(kind), text)).toEqual(value);
});

test.each([
  // text, order, day
  ["14.2.1974", "day.month.year", "1974-02-14"],
  ["2/14/1974", "month/day/year", "1974-02-14"],
  ["2/14/1974", undefined, "2/14/1974"],
  ["1974-02-14", "month/day/year", "1974-02-14"],
] as const)("the day %s, written as %s, is %s", (text, dates, day) => {
  expect(cellValue(column("text", { day: true }), text, { dates })).toBe(day);
});

test("a comma is a decimal sign only where that was said", () => {
  expect(cellValue(column("number"), "0,5", { comma: true })).toBe(0.5);
  expect(cellValue(column("text-or-number"), "-1,25", { comma: true })).toBe(-1.25);
  expect(cellValue(column("text-or-number"), "1,2,3", { comma: true })).toBe("1,2,3");
  const window = column("text", { window: true });
  expect(cellValue(window, "3,5..3,62", { comma: true })).toBe("3.5..3.62");
  expect(cellValue(window, "..6,5", { comma: true })).toBe("..6.5");
  expect(cellValue(window, "-1.200,5 .. 1.000.000", { comma: true })).toBe("-1200.5 .. 1000000");
  expect(cellValue(window, "..6,5", {})).toBe("..6,5");
  expect(cellValue(column("text"), "4411,4412", { comma: true })).toBe("4411,4412");
  expect(cellValue(column("text"), "line=B,H; my=1960", { comma: true })).toBe("line=B,H; my=1960");
});

test("nothing stands as an empty cell, a list as its values", () => {
  expect(cellText(column("text"), undefined)).toBe("");
  expect(cellText(column("text", { list: true }), ["a", "b|c"])).toBe("a | b\\|c");
  expect(cellValue(column("text", { list: true }), "a; b", { split: ";" })).toEqual(["a", "b"]);
});

test.each([
  // kind of cell, text, value where the comma is the decimal sign
  ["number", "1.300,5", 1300.5],
  ["number", "-1.300.000", -1300000],
  ["number", "1300", 1300],
  ["text-or-number", "1.300,25", 1300.25],
  ["text-or-number", "12.34,5", "12.34,5"],
  ["text-or-number", "1.2.3", "1.2.3"],
  ["text", "1.300", "1.300"],
] as const)("as %s, %s is read as %j where the comma is the decimal sign", (kind, text, value) => {
  expect(cellFault(column(kind), text, { comma: true })).toBeUndefined();
  expect(cellValue(column(kind), text, { comma: true })).toBe(value);
});

test.each<[CellKind, Partial<Column>, string, string]>([
  // kind of cell, more of the column, text, what is in doubt
  ["number", {}, "1.300", "1.300"],
  ["number", {}, "1.3", "1.3"],
  ["number", {}, "+.5", "+.5"],
  ["text-or-number", {}, "1.300", "1.300"],
  ["text", { window: true }, "1,5..1.300", "1.300"],
])("as %s (%j), %s is in doubt where the comma is the decimal sign", (kind, more, text, figure) => {
  expect(cellFault(column(kind, more), text, { comma: true })).toMatch(
    `'${figure}' has a point where numbers are written with a comma: write ${figure.replace(".", ",")}, or leave`,
  );
  expect(cellFault(column(kind, more), text, {})).toBeUndefined();
});

test("the figures of a window", () => {
  expect(figuresIn("-1.200,5..3")).toEqual(["1.200,5", "3"]);
  expect(figuresIn("..")).toEqual([]);
});
