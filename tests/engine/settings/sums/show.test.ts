import { expect, test } from "vitest";
import { show } from "../../../../src/engine/settings/sums/show.ts";
import type { Rounding } from "../../../../src/engine/settings/sums/sum.ts";

const torque: Rounding = { steps: { "ft-lb": 1 }, digits: 2, words: "" };
const play: Rounding = { steps: { in: 0.001, mm: 0.01 }, digits: 1, words: "" };
const rpm: Rounding = { steps: { rpm: 50 }, digits: 1, words: "" };
const four: Rounding = { digits: 4, words: "" };

// value, unit, rounding, shown
const CASES: [number, string, Rounding, string][] = [
  [54.4, "ft-lb", torque, "54"],
  [8.26, "ft-lb", torque, "8.3"],
  [7.4567, "kgf·m", torque, "7.46"],
  [0.1 + 0.2, "in", play, "0.300"],
  [-0.004, "in", play, "-0.004"],
  [0.0005, "in", play, "0.0005"],
  [0.125, "mm", play, "0.13"],
  [0, "in", play, "0.000"],
  [1394.23, "rpm", rpm, "1400"],
  [1374.9, "rpm", rpm, "1350"],
  [33.3, "rpm", rpm, "30"],
  [730, "rpm", four, "730"],
  [33.33333, "rpm", four, "33.33"],
  [123456, "rpm", four, "123456"],
  [-0, "", four, "0"],
  // To one side, the computer's dust left out.
  [0.0152, "in", { ...play, side: "up" }, "0.016"],
  [0.0158, "in", { ...play, side: "down" }, "0.015"],
  [-0.0152, "in", { ...play, side: "up" }, "-0.015"],
  [-0.0152, "in", { ...play, side: "down" }, "-0.016"],
  [0.1 + 0.2, "in", { ...play, side: "up" }, "0.300"],
  [0.3 - 0.1, "in", { ...play, side: "down" }, "0.200"],
  [1.23412, "rpm", { ...four, side: "up" }, "1.235"],
];

test.each(CASES)("%s %s", (value, unit, rounding, shown) => {
  expect(show(value, unit, rounding)).toBe(shown);
});

test("finer by one place", () => {
  expect(show(0.00321, "in", play, 1)).toBe("0.0032");
  expect(show(33.33333, "rpm", four, 1)).toBe("33.333");
});
