import { expect, test } from "vitest";
import { SheetError, textOf, unreadableSign } from "../../../src/build/tables/sheet.ts";

test.each([
  [null, ""],
  [undefined, ""],
  ["0012", "0012"],
  [12.5, "12.5"],
  [true, "yes"],
  [new Date(Date.UTC(1974, 1, 28)), "1974-02-28"],
  [new Date(Date.UTC(1974, 1, 28, 10, 30)), "1974-02-28 10:30:00"],
])("the cell %j says %j", (cell, text) => {
  expect(textOf(cell)).toBe(text);
});

test.each([
  ["a\tb\r\nc é😀", undefined],
  ["a\0b", "a NUL sign"],
  ["a\u0007b", "a control sign"],
  ["a\uD800b", "half of a sign"],
])("%j holds %s", (text, sign) => {
  expect(unreadableSign(text)).toBe(sign);
});

test("a fault names file and row, and what to do", () => {
  expect(new SheetError("a.csv", 3, "it is torn", "save it again").message).toBe(
    "a.csv, row 3: it is torn; save it again",
  );
  expect(new SheetError("a.csv", undefined, "it is torn", "save it again").message).toBe(
    "a.csv: it is torn; save it again",
  );
});
