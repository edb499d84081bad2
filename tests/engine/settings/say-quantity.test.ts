import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { endOf, inchFraction, sayNumber, sayQuantity } from "../../../src/engine/settings/say-quantity.ts";
import { unitNamed } from "../../../src/engine/settings/unit-named.ts";

// value, unit, digits, what is said
const CASES: [string, string, number | undefined, string][] = [
  ["0.76", "mm", undefined, "0.76 mm"],
  ["7/64", "in", undefined, "7/64 in (0.109375 in)"],
  ["3/2", "in", undefined, "1 1/2 in (1.5 in)"],
  ["-1/4", "in", undefined, "-1/4 in (-0.25 in)"],
  ["2", "in", undefined, "2 in"],
  ["0.03", "in", undefined, "0.03 in"],
  ["7/3", "turns", undefined, "2 1/3 turns"],
  ["7/64", "in", 3, "0.109 in"],
  ["19.05", "mm", 3, "19.0 mm"],
  ["57.15", "mm", 3, "57.2 mm"],
  ["0", "mm", 3, "0 mm"],
  ["123456", "N", 2, "120000 N"],
];
test.each(CASES)("%s %s to %s digits: %s", (value, unit, digits, said) => {
  expect(sayQuantity(new Fraction(value), unitNamed(unit), digits)).toBe(said);
});

test("the number by itself, a 64th, and where a decimal ends", () => {
  expect(sayNumber(new Fraction("1.250"))).toBe("1.25");
  expect(inchFraction(new Fraction(1, 3))).toBeUndefined();
  expect(inchFraction(new Fraction(2))).toBeUndefined();
  expect([new Fraction(1, 64), new Fraction(1, 3), new Fraction(5)].map(endOf)).toEqual([6, undefined, 0]);
});
