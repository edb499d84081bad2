/**
 * Converted figures judged from outside. Source: the legal definitions of the units (inch 0.0254 m, pound 0.45359237 kg, standard
 * gravity 9.80665 m/s², US gallon 231 cubic inches, conventional mercury 13595.1 kg/m³) as printed in NIST SP 811 (2008),
 * appendix B, written down here as fractions of whole numbers, and the examples of rounding in its section B.7.1.
 */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inOtherUnits, valueInOtherUnits } from "../../src/engine/settings/in-other-units.ts";
import { SEED } from "../helpers/seed.ts";

type Fraction = readonly [over: bigint, under: bigint];

// unit, unit beside it, how many of that one is: factors over, factors under
const DEFINITIONS: [unit: string, beside: string, over: bigint[], under: bigint[]][] = [
  ["in", "mm", [254n], [10n]],
  ["mm", "in", [10n], [254n]],
  ["ft-lb", "N·m", [3048n, 45359237n, 980665n], [10n ** 4n, 10n ** 8n, 10n ** 5n]],
  ["in-lb", "N·m", [254n, 45359237n, 980665n], [10n ** 4n, 10n ** 8n, 10n ** 5n]],
  ["N·m", "ft-lb", [10n ** 4n, 10n ** 8n, 10n ** 5n], [3048n, 45359237n, 980665n]],
  ["lbf", "N", [45359237n, 980665n], [10n ** 8n, 10n ** 5n]],
  ["N", "lbf", [10n ** 8n, 10n ** 5n], [45359237n, 980665n]],
  ["lb", "kg", [45359237n], [10n ** 8n]],
  ["kg", "lb", [10n ** 8n], [45359237n]],
  ["psi", "kPa", [45359237n, 980665n, 10n ** 4n, 10n ** 4n], [10n ** 8n, 10n ** 5n, 254n, 254n, 1000n]],
  ["kPa", "psi", [1000n, 10n ** 8n, 10n ** 5n, 254n, 254n], [45359237n, 980665n, 10n ** 4n, 10n ** 4n]],
  ["bar", "psi", [100_000n, 10n ** 8n, 10n ** 5n, 254n, 254n], [45359237n, 980665n, 10n ** 4n, 10n ** 4n]],
  ["inHg", "kPa", [135951n, 980665n, 254n], [10n, 10n ** 5n, 10n ** 4n, 1000n]],
  ["US qt", "L", [231n, 254n ** 3n, 1000n], [4n, 10n ** 12n]],
  ["L", "US qt", [4n, 10n ** 12n], [231n, 254n ** 3n, 1000n]],
  ["fl oz", "mL", [231n, 254n ** 3n, 10n ** 6n], [128n, 10n ** 12n]],
  ["mL", "fl oz", [128n, 10n ** 12n], [231n, 254n ** 3n, 10n ** 6n]],
  ["mile", "km", [5280n, 3048n], [10n ** 4n, 1000n]],
  ["miles", "km", [5280n, 3048n], [10n ** 4n, 1000n]],
  ["km", "miles", [10n ** 4n, 1000n], [5280n, 3048n]],
  ["mph", "km/h", [5280n, 3048n], [10n ** 4n, 1000n]],
  ["km/h", "mph", [10n ** 4n, 1000n], [5280n, 3048n]],
  ["deg F", "°C", [5n], [9n]],
  ["°C", "deg F", [9n], [5n]],
];

const UNITS = DEFINITIONS.map(([unit]) => unit);
const product = (factors: readonly bigint[]): bigint => factors.reduce((a, b) => a * b, 1n);

/** A decimal as written. */
function fraction(text: string): Fraction {
  const places = text.split(".")[1]?.length ?? 0;
  return [BigInt(text.replace(".", "")), 10n ** BigInt(places)];
}

/** What the definitions make of a figure. */
function converted(text: string, unit: string): Fraction {
  const [, , over, under] = DEFINITIONS.find(([name]) => name === unit) as (typeof DEFINITIONS)[number];
  const [a, b] = fraction(text);
  // F = C × 9/5 + 32
  const shifted: Fraction = unit === "deg F" ? [a - 32n * b, b] : [a, b];
  const [c, d]: Fraction = [shifted[0] * product(over), shifted[1] * product(under)];
  return unit === "°C" ? [c + 32n * d, d] : [c, d];
}

/** Below zero, zero or above zero, as a is below, equal to or above b. */
function compare([a, b]: Fraction, [c, d]: Fraction): bigint {
  return a * d - c * b;
}

const decimal = fc
  .record({
    digits: fc.nat(99_999_999),
    places: fc.nat(6),
    negative: fc.boolean(),
    // Many figures of a workshop are short and meet a whole step exactly.
    short: fc.nat(3),
  })
  .map(({ digits, places, negative, short }) => {
    const kept = String(digits % 10 ** (short === 3 ? 8 : 3)).padStart(places + 1, "0");
    const text = places === 0 ? kept : `${kept.slice(0, -places)}.${kept.slice(-places)}`;
    return `${negative ? "-" : ""}${text.replace(/^0+(?=\d)/, "")}`;
  });
const unit = fc.constantFrom(...UNITS);
const window = fc
  .tuple(decimal, decimal)
  .map(([a, b]): [string, string] => (compare(fraction(a), fraction(b)) <= 0n ? [a, b] : [b, a]));
/** Two limits so near each other that coarse steps leave nothing between them. */
const narrow = fc
  .tuple(fc.integer({ min: -99_999, max: 99_999 }), fc.integer({ min: 1, max: 9 }), fc.nat(4))
  .map(([whole, wide, places]): [string, string] => [
    (whole / 10 ** places).toFixed(places),
    ((whole + wide) / 10 ** places).toFixed(places),
  ]);

describe("a converted window never admits what the original refuses", () => {
  test("8,000 random windows, some with one limit only", () => {
    fc.assert(
      fc.property(fc.oneof(window, narrow), fc.nat(4), unit, ([a, b], sides, name) => {
        const [low, high] = [sides === 1 ? undefined : a, sides === 2 ? undefined : b];
        const result = inOtherUnits(low, high, name);
        expect(result?.unit).toBe(DEFINITIONS.find(([known]) => known === name)?.[1]);
        expect([result?.low === undefined, result?.high === undefined]).toEqual([
          low === undefined,
          high === undefined,
        ]);
        if (low !== undefined && high !== undefined && compare(fraction(low), fraction(high)) === 0n) {
          expect(result?.low).toBe(result?.high);
          return;
        }
        if (low !== undefined)
          expect(compare(fraction(result?.low as string), converted(low, name))).toBeGreaterThanOrEqual(0n);
        if (high !== undefined)
          expect(compare(fraction(result?.high as string), converted(high, name))).toBeLessThanOrEqual(0n);
        // … and it never closes, nor turns round.
        if (low !== undefined && high !== undefined)
          expect(compare(fraction(result?.low as string), fraction(result?.high as string))).toBeLessThan(0n);
      }),
      { seed: SEED, numRuns: 8000 },
    );
  });

  test("a limit moves inward by less than one step, and the larger one keeps three digits", () => {
    fc.assert(
      fc.property(window, unit, ([low, high], name) => {
        fc.pre(compare(fraction(low), fraction(high)) < 0n);
        const result = inOtherUnits(low, high, name);
        const texts = [result?.low as string, result?.high as string];
        const places = fraction(texts[0] as string)[1];
        expect(fraction(texts[1] as string)[1]).toBe(places);
        const digits = Math.max(...texts.map((text) => text.replaceAll(/^[-0.]+|\./g, "").length));
        expect(digits).toBeGreaterThanOrEqual(3);
        // Whole numbers may end in zeros that only keep the place.
        const step = places === 1n ? 10n ** BigInt(digits - 3) : 1n;
        for (const [i, limit] of [low, high].entries()) {
          const [moved, under] = difference(fraction(texts[i] as string), converted(limit, name));
          expect(moved * places).toBeLessThan(step * under);
        }
      }),
      { seed: SEED, numRuns: 2500 },
    );
  });

  test("the figures as written are not touched: every digit of a window that fits exactly is there again", () => {
    expect(inOtherUnits("10.00", "20.00", "in")).toEqual({ low: "254.0", high: "508.0", unit: "mm" });
    expect(inOtherUnits("25.4", "50.8", "mm")).toEqual({ low: "1.00", high: "2.00", unit: "in" });
  });
});

// low, high, unit, low and high in the other system
const WINDOWS: [string | undefined, string | undefined, string, string | undefined, string | undefined][] = [
  ["0.60", "0.65", "in", "15.3", "16.5"], // 15.24 to 16.51 mm
  ["60", "70", "ft-lb", "81.4", "94.9"], // 81.349 to 94.907 N·m
  ["72", "72", "in-lb", "8.13", "8.13"], // 8.1349 N·m
  [undefined, "0.005", "in", undefined, "0.127"], // exactly 0.127 mm: a limit on a step stays
  ["5", undefined, "in", "127", undefined],
  ["0.998", "0.999", "in", "25.35", "25.37"], // at 25.3 and 25.4 nothing would be left
  ["0", "5", "psi", "0.0", "34.4"], // 34.47 kPa
  ["0", "0", "psi", "0", "0"],
  ["-40", "-40", "deg F", "-40.0", "-40.0"],
  ["-10", "5", "°C", "14.0", "41.0"],
  ["190", "200", "deg F", "87.8", "93.3"], // 87.78 to 93.33 °C
  ["10", "10.0", "psi", "68.9", "68.9"], // one value, written in two ways: 68.948 kPa
  ["12345", "23456", "lb", "5600", "10639"], // 5599.598 to 10639.463 kg
];

test.each(WINDOWS)("%s to %s %s are %s to %s", (low, high, name, from, to) => {
  expect(inOtherUnits(low, high, name)).toMatchObject({ low: from, high: to });
});

test.each(["rpm", "V", "notches", "deg", "", "IN", "constructor", "__proto__"])(
  "'%s' has no unit beside it",
  (name) => {
    expect(inOtherUnits("1", "2", name)).toBeUndefined();
    expect(valueInOtherUnits(1, name)).toBeUndefined();
  },
);

describe("a single value is rounded to the nearest", () => {
  test("2,500 random values: no other figure with as many decimal places is nearer", () => {
    fc.assert(
      fc.property(decimal, unit, (text, name) => {
        const result = inOtherUnits(text, text, name);
        expect(result?.low).toBe(result?.high);
        expectNearest(result?.low as string, converted(text, name));
      }),
      { seed: SEED, numRuns: 2500 },
    );
  });

  // NIST SP 811, B.7.1; degrees Fahrenheit that are exactly the printed number in degrees Celsius.
  // the number in °C, the same in deg F, digits, rounded
  const PRINTED: [string, number, number, string][] = [
    ["6.974 951 5", 44.5549127, 3, "6.97"],
    ["6.974 951 5", 44.5549127, 2, "7.0"],
    ["6.974 951 5", 44.5549127, 5, "6.9750"],
    ["6.974 951 5", 44.5549127, 7, "6.974952"],
    ["6.974 950 5", 44.5549109, 7, "6.974950"],
  ];
  test.each(PRINTED)("%s, which are %f deg F, to the digit", (_, fahrenheit, digits, rounded) => {
    expect(valueInOtherUnits(fahrenheit, "deg F", digits)).toEqual({ value: rounded, unit: "°C" });
  });

  // value, unit, digits, rounded
  const VALUES: [number, string, number, string][] = [
    [0, "in", 3, "0"],
    [0.75, "in", 3, "19.0"], // 19.05: halfway, to the even one
    [2.25, "in", 3, "57.2"], // 57.15: halfway, to the even one
    [-0.75, "in", 3, "-19.0"],
    [1e21, "in", 3, "25400000000000000000000"],
    [1e-7, "in", 3, "0.00000254"],
    [30, "inHg", 10, "101.5916592"],
  ];
  test.each(VALUES)("%f %s to %i digits are %s", (value, name, digits, rounded) => {
    expect(valueInOtherUnits(value, name, digits)?.value).toBe(rounded);
  });
});

/** Twice the difference is at most one step of the last digit that can be trusted. */
function expectNearest(text: string, exact: Fraction): void {
  const [moved, under] = difference(fraction(text), exact);
  const step = fraction(text)[1];
  const zeros = step === 1n ? 10n ** BigInt((/0+$/.exec(text)?.[0] ?? "").length) : 1n;
  expect(moved * step * 2n).toBeLessThanOrEqual(zeros * under);
}

/** How far two figures are apart. */
function difference(a: Fraction, b: Fraction): Fraction {
  const over = compare(a, b);
  return [over < 0n ? -over : over, a[1] * b[1]];
}
