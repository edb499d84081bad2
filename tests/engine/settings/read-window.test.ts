import { expect, test } from "vitest";
import { readWindow } from "../../../src/engine/settings/read-window.ts";

// what is typed, from, to, unit
const CASES: [string, string, string, string][] = [
  ["30..40 ft-lb", "30", "40", "ft-lb"],
  ["30 ft-lb..40 ft-lb", "30", "40", "ft-lb"],
  ["30 to 40 ft-lb", "30", "40", "ft-lb"],
  ["30 – 40 ft-lb", "30", "40", "ft-lb"],
  ["0.5 mm .. 1 in", "1/2", "127/5", "mm"],
  ["-5..5 °C", "-5", "5", "°C"],
  ["7/64..1/8 in", "7/64", "1/8", "in"],
  ["0.186..0.188 in", "93/500", "47/250", "in"],
  ["5 lb mass to 6 lb mass", "5", "6", "lb"],
  ["1-1/2 in", "3/2", "3/2", "in"],
];
test.each(CASES)("'%s' is %s to %s %s", (typed, low, high, unit) => {
  const window = readWindow(typed);
  expect(window).toMatchObject({ as: "quantity", unit: { id: unit } });
  if (window.as !== "quantity") return;
  expect([window.low.toFraction(), window.high.toFraction()]).toEqual([low, high]);
});

test.each([
  ["40..30 ft-lb", "'40..30 ft-lb' begins above its end."],
  ["30..40", "'40' has no unit. Add one, such as 40 mm."],
  ["30 psi..40 mm", "'30 psi' is a pressure; this setting is a length in mm."],
])("'%s' is refused", (typed, why) => {
  expect(readWindow(typed)).toEqual({ as: "refused", why });
});

test("a window in quarts asks which", () => {
  expect(readWindow("3..4 qt")).toMatchObject({ as: "choice" });
});
