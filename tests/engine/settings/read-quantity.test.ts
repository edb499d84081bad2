import fc from "fast-check";
import Fraction from "fraction.js";
import { describe, expect, test } from "vitest";
import { type ReadQuantity, readQuantity } from "../../../src/engine/settings/read-quantity.ts";
import { sayQuantity } from "../../../src/engine/settings/say-quantity.ts";
import { unitNamed } from "../../../src/engine/settings/unit-named.ts";
import { UNITS } from "../../../src/engine/settings/unit-table.ts";
import { SEED } from "../../helpers/seed.ts";

const read = (typed: string, expected: string): ReadQuantity =>
  readQuantity(typed, expected === "" ? undefined : unitNamed(expected));

// what is typed, the unit expected ("" for none), the value as a fraction, its unit
const READ: [string, string, string, string][] = [
  ["0.76 mm", "in", "19/25", "mm"],
  [".76mm", "in", "19/25", "mm"],
  ["30 thou", "in", "30", "thou"],
  ["1 1/2 in", "", "3/2", "in"],
  ['1-1/2"', "", "3/2", "in"],
  ['7/64"', "", "7/64", "in"],
  ["1½ in", "", "3/2", "in"],
  ["No. 42 drill", "in", "187/2000", "in"],
  ["#42", "mm", "187/2000", "in"],
  ["E drill", "", "1/4", "in"],
  ["letter E", "", "1/4", "in"],
  ["7/64 drill", "", "7/64", "in"],
  [".250 drill", "", "1/4", "in"],
  ["3 mm drill", "in", "3", "mm"],
  ["35 ft-lb", "", "35", "ft-lb"],
  ["35 lbs", "ft-lb", "35", "ft-lb"],
  ["12 notches", "", "12", "notches"],
  ["3 pegs", "pegs", "3", "pegs"],
  ["10 deg F", "", "10", "deg F"],
  ["10°F", "", "10", "deg F"],
  ["-4 °C", "", "-4", "°C"],
  ["−4 °C", "", "-4", "°C"],
  ["5 BTDC", "", "5", "deg BTDC"],
  ["2 ATDC", "deg BTDC", "2", "deg ATDC"],
  ["5 deg", "deg BTDC", "5", "deg BTDC"],
  ["5 deg", "deg ATDC", "5", "deg ATDC"],
  ["TDC", "deg BTDC", "0", "deg BTDC"],
  ["2 1/4 turns", "", "9/4", "turns"],
  ["1° 30'", "", "3/2", "deg"],
  ["-1 deg 30 min", "deg", "-3/2", "deg"],
  ["4 US qt", "L", "4", "US qt"],
  ["6 fl oz", "fl oz", "6", "fl oz"],
  ["7/64 in (0.109375 in)", "", "7/64", "in"],
  ["25.4 mm (1 in)", "", "127/5", "mm"],
  // A comma.
  ["0,5 mm", "", "1/2", "mm"],
  ["1,250 rpm", "", "1250", "rpm"],
  ["1,250", "rpm", "1250", "rpm"],
  ["12,000 miles", "", "12000", "miles"],
  // A number alone.
  ["30", "mm", "30", "mm"],
  ["4", "US qt", "4", "US qt"],
  ["5", "deg BTDC", "5", "deg BTDC"],
  ["12", "pegs", "12", "pegs"],
  ["0.030", "in", "3/100", "in"],
  ["7/64", "in", "7/64", "in"],
  ["9 1/2", "in", "19/2", "in"],
  ["0", "in", "0", "in"],
  // Feet and inches.
  [`12'6"`, "in", "150", "in"],
  ["12′ 6 1/2″", "", "301/2", "in"],
  ["5 ft 2 in", "mm", "62", "in"],
  [`-5 feet 2 inches`, "", "-62", "in"],
  [`5' - 2"`, "", "62", "in"],
  ["-273.15 °C", "", "-5463/20", "°C"],
  ["-500 F°", "", "-500", "F° difference"],
  ["-500 deg F", "F° difference", "-500", "F° difference"],
  // A letter alone.
  ["E", "in", "1/4", "in"],
  ["e", "mm", "1/4", "in"],
];
test.each(READ)("'%s' where '%s' is expected: %s %s", (typed, expected, value, unit) => {
  const quantity = read(typed, expected);
  expect(quantity).toMatchObject({ as: "quantity", unit: { id: unit }, openLow: false, openHigh: false });
  if (quantity.as !== "quantity") return;
  expect([quantity.low, quantity.high].map((limit) => limit.toFraction())).toEqual([value, value]);
});

describe("two gauges give a window", () => {
  // what is typed, from, to but not at it, in inches
  test.each([
    ["drill 55 goes, 51 does not", "13/250", "67/1000"],
    ["goes 55 not 51", "13/250", "67/1000"],
    ["7/64 goes, 1/8 does not", "7/64", "1/8"],
    ["1.5 mm goes, 1.6 mm does not", "15/254", "8/127"],
  ])("'%s'", (typed, low, high) => {
    const window = read(typed, "in");
    expect(window).toMatchObject({ as: "quantity", openLow: false, openHigh: true, unit: { id: "in" } });
    if (window.as !== "quantity") return;
    expect([window.low.toFraction(), window.high.toFraction()]).toEqual([low, high]);
  });
});

describe("what can be read in more than one way is asked", () => {
  // what is typed, the unit expected, the texts to choose from
  const CASES: [string, string, string[]][] = [
    ["30", "in", ["No. 30", "30 thou", "30 in"]],
    ["100", "in", ["100 thou", "100 in"]],
    ["7/64", "mm", ["7/64 in", "7/64 mm"]],
    ["1,250 mm", "", ["1250 mm", "1.25 mm"]],
    // Which quart is asked every time, even where US quarts are expected.
    ["4 qt", "US qt", ["4 US qt", "4 imp qt"]],
    ["6 oz", "", ["6 oz weight", "6 US fl oz", "6 imp fl oz"]],
    ["12 lb", "", ["12 lb mass", "12 ft-lb", "12 in-lb", "12 lbf", "12 psi"]],
    ["6 mil", "", ["6 thou", "6 mm"]],
    ["35 lb", "N·m", ["35 ft-lb", "35 in-lb"]],
    // Colder than nothing is, in degrees Celsius.
    ["-300 deg", "", ["-300 deg of angle", "-300 deg F", "-300 deg BTDC"]],
  ];
  test.each(CASES)("'%s' where '%s' is expected", (typed, expected, choices) => {
    const choice = read(typed, expected);
    expect(choice.as).toBe("choice");
    if (choice.as !== "choice") return;
    expect(choice.choices.map((it) => it.typed)).toEqual(choices);
    for (const it of choice.choices) expect([it.typed, read(it.typed, expected).as]).toEqual([it.typed, "quantity"]);
  });
});

describe("what can't be taken says what to mend", () => {
  // what is typed, the unit expected, what is said
  const CASES: [string, string, string][] = [
    ["35 psi", "in", "'35 psi' is a pressure; this setting is a length in in."],
    ["12 teeth", "notches", "'12 teeth' is a count of teeth; this setting is a count of notches."],
    ["#12", "notches", "'#12' is a length; this setting is a count of notches."],
    ["18 F°", "deg F", "'18 F°' is a temperature difference; this setting is a temperature in deg F."],
    ["30", "", "'30' has no unit. Add one, such as 30 mm."],
    ["5 flurbs", "in", "'flurbs' in '5 flurbs' is no unit known here."],
    ["20 mPa", "kPa", "'mPa' in '20 mPa' is no unit known here. Did you mean 'MPa'?"],
    ["mm", "in", "'mm' has no number. Type one, such as '12 in'."],
    ["E", "", "'E' has no number. Type one, such as '12 mm'."],
    ["Infinity", "in", "'Infinity' has no number. Type one, such as '12 in'."],
    ["NaN mm", "in", "'NaN mm' has no number. Type one, such as '12 in'."],
    ["7/0 in", "in", "'7/0' is no number that can be read, such as 35, 0.76, 7/64 or 1 1/2."],
    ["1e5 mm", "in", "'e5 mm' in '1e5 mm' is no unit known here."],
    ["No. 95 drill", "in", "There is no drill '95'."],
    ["drill", "in", "Which drill? Type it as 'No. 42', 'letter E' or '7/64 in'."],
    [
      "51 goes, 55 does not",
      "in",
      "'51' (0.067 in) can't go in where '55' (0.052 in) does not. Is it the other way round?",
    ],
    ["7/64 in (0.11 in)", "in", "'7/64 in' and '0.11 in' are not the same."],
    [" ", "in", "Nothing was typed."],
    ["-500 deg F", "deg F", "'-500 deg F' is below absolute zero, -459.67 deg F."],
    ["-300 °C", "deg F", "'-300 °C' is below absolute zero, -273.15 °C."],
    ["-1 K", "", "'-1 K' is below absolute zero, 0 K."],
    ["-900 deg", "K", "'-900 deg' is below absolute zero."],
    ["5 ft 2", "", "'5 ft 2' looks like feet and inches. Type them as '5 ft 2 1/2 in', with less than 12 inches."],
    [
      "5 ft 14 in",
      "",
      "'5 ft 14 in' looks like feet and inches. Type them as '5 ft 2 1/2 in', with less than 12 inches.",
    ],
    ["-0.05 in goes, 0.06 in does not", "in", "'-0.05 in' is below zero, and no gauge is."],
    ["0.925 in..", "in", "'0.925 in..' is a window; one value is needed here."],
    ["30-40 ft-lb", "ft-lb", "'30-40 ft-lb' is a window; one value is needed here."],
    ["1".repeat(61), "in", "That is longer than 60 characters."],
  ];
  test.each(CASES)("'%s' where '%s' is expected", (typed, expected, why) => {
    expect(read(typed, expected)).toEqual({ as: "refused", why });
  });
});

const value = fc.oneof(
  fc.integer({ min: -99_999, max: 99_999 }).map((n) => new Fraction(n)),
  fc
    .tuple(fc.integer({ min: -9_999_999, max: 9_999_999 }), fc.nat(6))
    .map(([n, places]) => new Fraction(n, 10 ** places)),
  fc
    .tuple(fc.integer({ min: -6400, max: 6400 }), fc.constantFrom(2, 4, 8, 16, 32, 64, 3, 7))
    .map(([n, d]) => new Fraction(n, d)),
);

test("what is said reads back as the same", () => {
  fc.assert(
    fc.property(value, fc.constantFrom(...UNITS, unitNamed("pegs")), (size, unit) => {
      const said = sayQuantity(size, unit);
      const again = readQuantity(said, unit);
      if (unit.zero && size.lt(unit.zero.neg())) {
        expect([said, again.as]).toEqual([said, "refused"]);
        return;
      }
      expect([said, again.as]).toEqual([said, "quantity"]);
      if (again.as !== "quantity") return;
      expect([again.low.toFraction(), again.unit.id]).toEqual([size.toFraction(), unit.id]);
    }),
    { seed: SEED, numRuns: 1500 },
  );
});

test("whatever is typed, it answers, and every choice reads back as one quantity", () => {
  const word = fc.constantFrom(
    "12",
    "0.5",
    "7/64",
    "1,250",
    "-",
    ".",
    "in",
    "mm",
    "lb",
    "qt",
    "drill",
    "goes",
    "not",
    "E",
    "#",
    "°",
    "'",
    "(",
    ")",
  );
  const typed = fc.oneof(
    fc.string({ maxLength: 70, unit: "binary" }),
    fc.array(word, { maxLength: 6 }).map((words) => words.join(" ")),
  );
  fc.assert(
    fc.property(typed, fc.option(fc.constantFrom(...UNITS), { nil: undefined }), (text, expected) => {
      const answer = readQuantity(text, expected);
      if (answer.as === "refused") expect(answer.why.length).toBeGreaterThan(5);
      if (answer.as === "quantity" && expected) expect(answer.unit.dimension).toBe(expected.dimension);
      if (answer.as === "choice")
        for (const choice of answer.choices)
          expect(readQuantity(choice.typed, expected)).toMatchObject({ as: "quantity" });
    }),
    { seed: SEED, numRuns: 600 },
  );
});
