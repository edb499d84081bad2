import { expect, test } from "vitest";
import { readNumber } from "../../../src/engine/settings/read-number.ts";

// what is typed, its values as fractions
const CASES: [string, string[]][] = [
  ["35", ["35"]],
  ["35.", ["35"]],
  [".76", ["19/25"]],
  ["0.030", ["3/100"]],
  ["-4", ["-4"]],
  ["+5", ["5"]],
  ["7/64", ["7/64"]],
  ["1 1/2", ["3/2"]],
  ["1-1/2", ["3/2"]],
  ["-1 1/2", ["-3/2"]],
  // A comma that can only be one thing …
  ["0,5", ["1/2"]],
  [",5", ["1/2"]],
  ["12,34", ["617/50"]],
  ["0,250", ["1/4"]],
  ["1,250,000", ["1250000"]],
  ["12,345.5", ["24691/2"]],
  ["1.250,5", ["2501/2"]],
  // … and one that can be two.
  ["1,250", ["1250", "5/4"]],
  ["7/0", []],
  ["1.2.3", []],
  ["1,25,0", []],
  ["1e5", []],
  ["Infinity", []],
  ["NaN", []],
  ["1/2/3", []],
  ["0.5/2", []],
  [".", []],
  ["", []],
  ["-", []],
  ["1234567890123456", []],
];
test.each(CASES)("'%s' is %j", (text, values) => {
  expect(readNumber(text).map((value) => value.toFraction())).toEqual(values);
});
