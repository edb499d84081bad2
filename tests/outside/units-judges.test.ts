/**
 * Sizes and conversions judged from outside.
 *
 * Sizes, as exact fractions: Unicode CLDR 48, from NIST SP 811 and legal definitions (its supplemental/units.json).
 * Conversions, as floating point numbers: UnitMath.
 */
import units from "cldr-core/supplemental/units.json" with { type: "json" };
import Fraction from "fraction.js";
// @ts-expect-error Its types are no module, and its main entry does not start under this Node.
import unitmath from "unitmath/es/UnitMath.js";
import { describe, expect, test } from "vitest";
import { convertTo } from "../../src/engine/settings/convert.ts";
import { unitNamed } from "../../src/engine/settings/unit-named.ts";

const { convertUnits, unitConstants } = units.supplemental as unknown as {
  convertUnits: Record<string, { _factor?: string; _offset?: string }>;
  unitConstants: Record<string, { _value: string }>;
};

/** A factor as it is written there: a slash divides by everything after it. */
function amount(text: string): Fraction {
  const [over = "", ...under] = text.split("/");
  const product = (factors: string): Fraction =>
    factors.split("*").reduce((all, factor) => all.mul(named(factor.trim())), new Fraction(1));
  return under.reduce((all, factors) => all.div(product(factors)), product(over));
}

function named(factor: string): Fraction {
  const constant = unitConstants[factor];
  return constant ? amount(constant._value) : new Fraction(factor);
}

const one = (unit: string): Fraction => amount(convertUnits[unit]?._factor ?? "1");

// our unit, the same in their units: factors over, factors under, times a power of ten
const SIZES: [id: string, over: string[], under: string[], power?: number][] = [
  ["in", ["inch"], []],
  ["thou", ["inch"], [], -3],
  ["ft", ["foot"], []],
  ["mile", ["mile"], []],
  ["mm", ["meter"], [], -3],
  ["cm", ["meter"], [], -2],
  ["km", ["meter"], [], 3],
  ["ft-lb", ["pound-force", "foot"], []],
  ["in-lb", ["pound-force", "inch"], []],
  ["kgf·m", ["kilogram-force"], []],
  ["kgf·cm", ["kilogram-force"], [], -2],
  ["psi", ["pound-force"], ["inch", "inch"]],
  ["bar", ["bar"], []],
  ["atm", ["atmosphere"], []],
  ["kgf/cm²", ["kilogram-force"], [], 4],
  ["inHg", ["ofhg", "inch"], []],
  ["mmHg", ["ofhg"], [], -3],
  ["cmHg", ["ofhg"], [], -2],
  ["US gal", ["gallon"], []],
  ["US qt", ["quart"], []],
  ["US pt", ["pint"], []],
  ["fl oz", ["fluid-ounce"], []],
  ["imp gal", ["gallon-imperial"], []],
  ["imp qt", ["quart-imperial"], []],
  ["imp pt", ["pint-imperial"], []],
  ["imp fl oz", ["fluid-ounce-imperial"], []],
  ["cu in", ["inch", "inch", "inch"], []],
  ["L", ["liter"], []],
  ["mL", ["liter"], [], -3],
  ["cc", ["meter"], [], -6],
  ["lb", ["pound"], []],
  ["oz", ["ounce"], []],
  ["g", ["gram"], []],
  ["lbf", ["pound-force"], []],
  ["kgf", ["kilogram-force"], []],
  ["mph", ["mile"], ["hour"]],
  ["km/h", ["meter"], ["hour"], 3],
  ["hp", ["horsepower"], []],
  ["min", ["minute"], []],
  ["h", ["hour"], []],
  ["deg F", ["fahrenheit"], []],
  ["°C", ["celsius"], []],
  ["F° difference", ["fahrenheit"], []],
];
test.each(SIZES)("the size of %s", (id, over, under, power = 0) => {
  const whole = under.reduce(
    (all, unit) => all.div(one(unit)),
    over.reduce((all, unit) => all.mul(one(unit)), new Fraction(1)),
  );
  const size = power < 0 ? whole.div(10 ** -power) : whole.mul(10 ** power);
  expect(unitNamed(id).size.toFraction()).toBe(size.toFraction());
});

test("temperatures count from the same zero", () => {
  for (const [id, theirs] of [
    ["deg F", "fahrenheit"],
    ["°C", "celsius"],
  ] as const) {
    const { size, zero } = unitNamed(id);
    expect(zero?.mul(size).toFraction()).toBe(amount(convertUnits[theirs]?._offset ?? "0").toFraction());
  }
});

test("angles, against a whole turn", () => {
  const turns = unitNamed("turns").size;
  expect(unitNamed("deg").size.div(turns).toFraction()).toBe(one("degree").toFraction());
  expect(unitNamed("arcmin").size.div(turns).toFraction()).toBe(one("arc-minute").toFraction());
});

describe("conversions, as UnitMath makes them", () => {
  // our unit, our other unit, theirs, their other
  const PAIRS: [string, string, string, string][] = [
    ["in", "mm", "inch", "mm"],
    ["mile", "km", "mile", "km"],
    ["ft-lb", "N·m", "lbf ft", "N m"],
    ["in-lb", "N·m", "lbf inch", "N m"],
    ["lbf", "N", "lbf", "N"],
    ["lb", "kg", "lb", "kg"],
    ["oz", "g", "oz", "g"],
    ["psi", "kPa", "psi", "kPa"],
    ["bar", "psi", "bar", "psi"],
    ["US gal", "L", "gal", "L"],
    ["US qt", "L", "qt", "L"],
    ["US pt", "mL", "pt", "mL"],
    ["fl oz", "mL", "floz", "mL"],
    ["cu in", "cc", "inch^3", "cm^3"],
    ["mph", "km/h", "mile / hour", "km / hour"],
    ["hp", "W", "hp", "W"],
    ["deg F", "°C", "degF", "degC"],
    ["°C", "deg F", "degC", "degF"],
    ["K", "°C", "K", "degC"],
    ["h", "s", "hour", "s"],
  ];
  test.each(PAIRS)("%s to %s", (from, to, theirs, their) => {
    for (const value of [0.03, 1, 35, 72.5, 1250]) {
      const ours = convertTo(new Fraction(String(value)), unitNamed(from), unitNamed(to)).valueOf();
      const judged = unitmath(value, theirs).to(their).value as number;
      expect(Math.abs(ours - judged)).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(judged), Math.abs(value)));
    }
  });
});
