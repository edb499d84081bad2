import { expect, test } from "vitest";
import { num, undusted } from "../../../../src/engine/settings/sums/num.ts";

test.each([
  [0, "0"],
  [-0, "0"],
  [20, "20"],
  [0.025, "0.025"],
  [1 / 3, "0.333333"],
  [1234.5678, "1234.57"],
  [12345678, "12345678"],
  [-8.5, "-8.5"],
])("%s stands on paper as %s", (value, text) => {
  expect(num(value)).toBe(text);
});

test("dust of binary fractions is wiped off", () => {
  expect(undusted(0.1 + 0.2)).toBe(0.3);
  expect(Object.is(undusted(-0), 0)).toBe(true);
});
