import fc from "fast-check";
import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { convertTo } from "../../../src/engine/settings/convert.ts";
import { unitNamed } from "../../../src/engine/settings/unit-named.ts";
import { UNITS, type Unit } from "../../../src/engine/settings/unit-table.ts";
import { SEED } from "../../helpers/seed.ts";

// value, unit, other unit, value there
const CASES: [string, string, string, string][] = [
  ["1", "in", "mm", "25.4"],
  ["30", "thou", "in", "0.03"],
  ["1", "ft-lb", "in-lb", "12"],
  ["1", "ft-lb", "N·m", "1.3558179483314004"],
  ["-40", "deg F", "°C", "-40"],
  ["212", "deg F", "°C", "100"],
  ["0", "°C", "K", "273.15"],
  ["18", "F° difference", "C° difference", "10"],
  ["1", "turns", "deg", "360"],
  ["90", "arcmin", "deg", "1.5"],
  ["5", "deg BTDC", "deg ATDC", "-5"],
  ["1", "US gal", "US qt", "4"],
  ["1", "imp gal", "L", "4.54609"],
  ["1", "cu in", "cc", "16.387064"],
  ["60", "mph", "km/h", "96.56064"],
];
test.each(CASES)("%s %s in %s are %s", (value, from, to, expected) => {
  const converted = convertTo(new Fraction(value), unitNamed(from), unitNamed(to));
  expect(converted.equals(new Fraction(expected))).toBe(true);
});

test.each([
  ["ft-lb", "lbf"],
  ["deg F", "F° difference"],
  ["deg", "deg BTDC"],
  ["notches", "teeth"],
  ["kites", "pegs"],
])("%s are no %s", (from, to) => {
  expect(() => convertTo(new Fraction(1), unitNamed(from), unitNamed(to))).toThrow(RangeError);
});

test("there and back is the same to the last digit, by way of any unit", () => {
  const pairs: [Unit, Unit][] = UNITS.flatMap((a) =>
    UNITS.filter((b) => b.dimension === a.dimension).map((b): [Unit, Unit] => [a, b]),
  );
  fc.assert(
    fc.property(
      fc.constantFrom(...pairs),
      fc.bigInt(-(10n ** 9n), 10n ** 9n),
      fc.integer({ min: 1, max: 4096 }),
      (pair, over, under) => {
        const [a, b] = pair;
        const value = new Fraction(over, BigInt(under));
        expect(convertTo(convertTo(value, a, b), b, a).equals(value)).toBe(true);
      },
    ),
    { seed: SEED, numRuns: 1500 },
  );
});
