import { expect, test } from "vitest";
import { windowEnds } from "../../../src/engine/settings/window-ends.ts";

// what is typed, from, to
const WINDOWS: [string, string, string][] = [
  ["30..40 ft-lb", "30", "40 ft-lb"],
  ["30…40 ft-lb", "30", "40 ft-lb"],
  ["30 to 40 ft-lb", "30", "40 ft-lb"],
  ["30-40 ft-lb", "30", "40 ft-lb"],
  ["30–40 ft-lb", "30", "40 ft-lb"],
  ["30 - 40 ft-lb", "30", "40 ft-lb"],
  ["7/64-1/8 in", "7/64", "1/8 in"],
  ["1-1/2-2 in", "1-1/2", "2 in"],
  ["1-1/2 - 2 in", "1-1/2", "2 in"],
  ["-5-5 °C", "-5", "5 °C"],
  ["A..E", "A", "E"],
  ["..0.005 in", "", "0.005 in"],
  ["0.925 in..", "0.925 in", ""],
  ["170.. ft-lb", "170 ft-lb", ""],
  ["up to 5 mm", "", "5 mm"],
  ["at least 5 mm", "5 mm", ""],
  ["..", "", ""],
];
test.each(WINDOWS)("'%s' is from '%s' to '%s'", (typed, from, to) => {
  expect(windowEnds(typed)).toEqual({ from, to });
});

test.each([
  "35 ft-lb",
  "1-1/2 in",
  "1 - 1/2 in",
  "-5 °C",
  ".5 in",
  "ft-lb",
  "12' - 6\"",
  "5 ft-2 in",
  "1/2 in",
  "30 min",
  "E",
])("'%s' is no window", (typed) => {
  expect(windowEnds(typed)).toBeUndefined();
});
