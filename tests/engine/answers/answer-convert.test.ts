import { expect, test } from "vitest";
import { answerConvert } from "../../../src/engine/answers/answer-convert.ts";
import { convertAnswer } from "../../../src/engine/answers/shapes/convert.ts";

const ask = (value: string, to?: string): ReturnType<typeof answerConvert> => {
  const answer = answerConvert(undefined, { value, ...(to === undefined ? {} : { to }) });
  return convertAnswer.parse(answer);
};

// value, to, what is said
const CONVERTED: [string, string | undefined, string][] = [
  ["30 thou", "mm", "30 thou = 0.762 mm, exactly."],
  ["0.76 mm", undefined, "0.76 mm = 0.02992 in, rounded."],
  ["35 ft-lb", undefined, "35 ft-lb = 47.45 N·m, rounded."],
  ["35 ft lbs", "in lbs", "35 ft-lb = 420 in-lb, exactly."],
  ["30..40 ft-lb", undefined, "30 to 40 ft-lb = 40.68 to 54.23 N·m, limits rounded inward."],
  ["30 to 40 ft-lb", "in-lb", "30 to 40 ft-lb = 360 to 480 in-lb, exactly."],
  ["10 deg F", "°C", "10 deg F = -12.22 °C, rounded."],
  ["18 F°", undefined, "18 F° difference = 10 C° difference, exactly."],
  ["E drill", "mm", "0.25 in = 6.35 mm, exactly."],
  ["drill 55 goes, 51 does not", "mm", "at least 0.052, below 0.067 in = at least 1.3208, below 1.7018 mm, exactly."],
  ["5..8 deg BTDC", "ATDC", "5 to 8 deg BTDC = -8 to -5 deg ATDC, exactly."],
  ["1/3 turns", undefined, "1/3 turns = 120 deg, exactly."],
  ["12 notches", undefined, "12 notches."],
  // The unit asked for tells which of the pounds and ounces is meant.
  ["12 lb", "kg", "12 lb = 5.443 kg, rounded."],
  ["16 oz", "lb", "16 oz = 1 lb, exactly."],
  ["2.65..2.85 lb", "kg", "2.65 to 2.85 lb = 1.203 to 1.292 kg, limits rounded inward."],
  ["75..95 lb", "N", "75 to 95 lbf = 333.7 to 422.5 N, limits rounded inward."],
  ["30-40 ft-lb", "in-lb", "30 to 40 ft-lb = 360 to 480 in-lb, exactly."],
  // Where a length is wanted a fraction is of an inch, and a letter a drill.
  ["7/64", "mm", "0.109375 in = 2.778125 mm, exactly."],
  ["7/64..1/8", "mm", "0.109375 to 0.125 in = 2.778125 to 3.175 mm, exactly."],
  ["15/16", "in", "0.9375 in."],
  ["E", "mm", "0.25 in = 6.35 mm, exactly."],
  [`12'6"`, undefined, "150 in = 3810 mm, exactly."],
  ["5 ft 2 in", "cm", "62 in = 157.48 cm, exactly."],
  ["-500 F°", undefined, "-500 F° difference = -277.8 C° difference, rounded."],
];
test.each(CONVERTED)("'%s' to %s", (value, to, words) => {
  const answer = ask(value, to);
  expect(answer).toMatchObject({ verdict: "converted", words, choices: [] });
  expect(answer.result?.unit).toBeDefined();
  expect([answer.factor, answer.source].every((text) => (text ?? "").length > 3)).toBe(true);
});

// value, to, what to choose from
const CHOOSE: [string, string | undefined, string[]][] = [
  ["4 qt", "L", ["4 US qt", "4 imp qt"]],
  ["4 L", "qt", ["US qt", "imp qt"]],
  ["35 lbs", "N·m", ["35 ft-lb", "35 in-lb"]],
  ["3..4 qt", "L", ["3..4 US qt", "3..4 imp qt"]],
  ["75..85 deg", "°C", ["75..85 deg F", "75..85 °C"]],
  ["30", "mm", ["No. 30", "30 thou", "30 in", "30 mm"]],
  ["30", "in", ["No. 30", "30 thou", "30 in", "30 mm"]],
  ["0.5", "mm", ["0.5 in", "0.5 mm"]],
  ["30..40", "mm", ["30..40 thou", "30..40 in", "30..40 mm"]],
];
test.each(CHOOSE)("'%s' to %s has to be asked", (value, to, typed) => {
  const answer = ask(value, to);
  expect(answer).toMatchObject({ verdict: "choose", ask: { options: typed } });
  expect(answer.choices.map((choice) => choice.typed)).toEqual(typed);
});

// value, to, what is said
const REFUSED: [string, string | undefined, string][] = [
  ["35 psi", "mm", "'mm' does not measure what '35 psi' does: that is a value of pressure."],
  ["35 psi", "kPq", "'kPq' is no unit known here. Did you mean 'kPa'?"],
  ["30", "N·m", "'30' has no unit. Add one, such as 30 mm."],
  ["..0.005 in", "mm", "'..0.005 in' has no lower limit. Type the one limit alone: '0.005 in'."],
  ["0.925 in..", "mm", "'0.925 in..' has no upper limit. Type the one limit alone: '0.925 in'."],
  ["170.. ft-lb", "N·m", "'170.. ft-lb' has no upper limit. Type the one limit alone: '170 ft-lb'."],
  ["-500 deg F", "°C", "'-500 deg F' is below absolute zero, -459.67 deg F."],
  ["-300 °C", undefined, "'-300 °C' is below absolute zero, -273.15 °C."],
  ["40..30 mm", "in", "'40..30 mm' begins above its end."],
  ["5 flurbs", undefined, "'flurbs' in '5 flurbs' is no unit known here."],
];
test.each(REFUSED)("'%s' to %s is refused", (value, to, words) => {
  expect(ask(value, to)).toMatchObject({ verdict: "refused", words });
});

test("a length names the drills around it, unless it is larger than all of them", () => {
  expect(ask("1/4 in").drills).toEqual({
    exact: [
      { name: "letter E", shown: "0.2500 in" },
      { name: "1/4 in", shown: "0.2500 in" },
    ],
    below: { name: "6.3 mm", shown: "0.2480 in" },
    above: { name: "6.4 mm", shown: "0.2520 in" },
  });
  expect(ask("5 ft").drills).toBeUndefined();
  expect(ask("5 psi").drills).toBeUndefined();
});

test("other units are of the same dimension, each once, none far too large or small", () => {
  expect(ask("35 ft-lb", "N·m").others.map((other) => other.shown)).toEqual([
    "420 in-lb",
    "4.839 kgf·m",
    "483.9 kgf·cm",
    "6720 in-oz",
  ]);
});
