import fc from "fast-check";
import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { convertTo } from "../../../src/engine/settings/convert.ts";
import {
  inOtherUnits,
  significantDigits,
  valueInOtherUnits,
  windowIn,
} from "../../../src/engine/settings/in-other-units.ts";
import { unitNamed } from "../../../src/engine/settings/unit-named.ts";
import { UNITS, type Unit } from "../../../src/engine/settings/unit-table.ts";
import { SEED } from "../../helpers/seed.ts";

test("a window, one limit, one value", () => {
  expect(inOtherUnits("60", "70", "ft-lb")).toEqual({ low: "81.4", high: "94.9", unit: "N·m" });
  expect(inOtherUnits(undefined, "0.005", "in")).toEqual({ low: undefined, high: "0.127", unit: "mm" });
  expect(valueInOtherUnits(72, "in-lb")).toEqual({ value: "8.13", unit: "N·m" });
  expect(inOtherUnits("1", "2", "rpm")).toBeUndefined();
  expect(significantDigits("0.0300")).toBe(3);
});

test("a unit that counts the other way turns the window round", () => {
  const turned = windowIn(new Fraction(5), new Fraction(8), unitNamed("deg BTDC"), unitNamed("deg ATDC"), 3);
  expect(turned).toEqual({ low: "-8.00", high: "-5.00", unit: "deg ATDC" });
});

test("in no unit does a converted window admit what the original refuses, and it stays open", () => {
  const pairs: [Unit, Unit][] = UNITS.flatMap((a) =>
    UNITS.filter((b) => b !== a && b.dimension === a.dimension).map((b): [Unit, Unit] => [a, b]),
  );
  const limit = fc
    .tuple(fc.integer({ min: -99_999, max: 99_999 }), fc.nat(4))
    .map(([n, places]) => new Fraction(n, 10 ** places));
  fc.assert(
    fc.property(fc.constantFrom(...pairs), limit, limit, fc.integer({ min: 1, max: 5 }), ([from, to], a, b, digits) => {
      fc.pre(!a.equals(b));
      const [low, high] = a.lt(b) ? [a, b] : [b, a];
      const window = windowIn(low, high, from, to, digits);
      const [first, last] = [window.low, window.high].map((text) => new Fraction(text ?? "0")) as [Fraction, Fraction];
      expect(first.lt(last)).toBe(true);
      for (const inside of [first, last]) {
        const back = convertTo(inside, to, from);
        expect(back.gte(low) && back.lte(high)).toBe(true);
      }
    }),
    { seed: SEED, numRuns: 1500 },
  );
});
