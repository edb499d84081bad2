import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { decimals, placesFor, type Side, stepsOf } from "../../../src/engine/settings/rounding.ts";

// value, places, side, what is written
const CASES: [string, number, Side, string][] = [
  ["1.25", 1, "nearest", "1.2"],
  ["1.35", 1, "nearest", "1.4"],
  ["-1.25", 1, "nearest", "-1.2"],
  ["-1.25", 1, "up", "-1.2"],
  ["-1.25", 1, "down", "-1.3"],
  ["1.2", 1, "up", "1.2"],
  ["1.2", 1, "down", "1.2"],
  ["1249", -2, "nearest", "1200"],
  ["1250", -2, "nearest", "1200"],
  ["1250", -2, "up", "1300"],
  ["-0.004", 2, "nearest", "0.00"],
  ["1/3", 4, "nearest", "0.3333"],
];
test.each(CASES)("%s to %i places, %s: %s", (value, places, side, written) => {
  expect(decimals(stepsOf(new Fraction(value), places, side), places)).toBe(written);
});

// value, significant digits, decimal places
test.each([
  ["25.4", 3, 1],
  ["9.99", 3, 2],
  ["0.0254", 3, 4],
  ["1000", 3, -1],
  ["1/3", 2, 2],
  ["-25.4", 3, 1],
  ["1", 1, 0],
])("%s to %i digits: %i places", (value, digits, places) => {
  expect(placesFor(new Fraction(value), digits)).toBe(places);
});
