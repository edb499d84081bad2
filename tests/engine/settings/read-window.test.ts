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
  ["30-40 ft-lb", "30", "40", "ft-lb"],
  ["1-1/2-2 in", "3/2", "2", "in"],
  ["3..4 US qt", "3", "4", "US qt"],
  ["5 ft 2 in..5 ft 4 in", "62", "64", "in"],
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
  ["..0.005 in", "'..0.005 in' has no lower limit. Type the one limit alone: '0.005 in'."],
  ["0.925 in..", "'0.925 in..' has no upper limit. Type the one limit alone: '0.925 in'."],
  ["170.. ft-lb", "'170.. ft-lb' has no upper limit. Type the one limit alone: '170 ft-lb'."],
  ["..", "'..' has no limits. Type them as '30..40 ft-lb'."],
  ["-300..5 °C", "'-300 °C' is below absolute zero, -273.15 °C."],
])("'%s' is refused", (typed, why) => {
  expect(readWindow(typed)).toEqual({ as: "refused", why });
});

// what is typed, the windows that may be meant
const ASKED: [string, string[]][] = [
  ["3..4 qt", ["3..4 US qt", "3..4 imp qt"]],
  ["9.5..10.5 fl oz", ["9.5..10.5 US fl oz", "9.5..10.5 imp fl oz"]],
  ["75..85 deg", ["75..85 deg of angle", "75..85 deg F", "75..85 °C", "75..85 deg BTDC"]],
  ["3 qt..4 L", ["3 US qt..4 L", "3 imp qt..4 L"]],
];
test.each(ASKED)("'%s' has to be asked, both limits together", (typed, windows) => {
  const read = readWindow(typed);
  expect(read.as === "choice" && read.choices.map((choice) => choice.typed)).toEqual(windows);
  for (const window of windows) expect(readWindow(window)).toMatchObject({ as: "quantity" });
});
