/**
 * Drill sizes judged from outside. Source: the table of number and letter sizes of ASME B94.11M (ANSI B94.11M), from memory. Whoever
 * wrote the points down had seen the table that the code was written from, so they find slips in the code, but no error that both
 * share. Number and letter sizes follow no formula; fractions are k/64 in and metric sizes k/10 mm, and are held against that.
 */
import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { DRILLS, drillCalled, drillsNear } from "../../src/engine/settings/drills.ts";

// drill, inches
const POINTS: [string, string][] = [
  ["80", "0.0135"],
  ["75", "0.0210"],
  ["70", "0.0280"],
  ["69", "0.0292"],
  ["65", "0.0350"],
  ["60", "0.0400"],
  ["56", "0.0465"],
  ["55", "0.0520"],
  ["53", "0.0595"],
  ["52", "0.0635"],
  ["50", "0.0700"],
  ["43", "0.0890"],
  ["40", "0.0980"],
  ["36", "0.1065"],
  ["30", "0.1285"],
  ["29", "0.1360"],
  ["25", "0.1495"],
  ["21", "0.1590"],
  ["20", "0.1610"],
  ["16", "0.1770"],
  ["10", "0.1935"],
  ["7", "0.2010"],
  ["3", "0.2130"],
  ["1", "0.2280"],
  ["A", "0.2340"],
  ["E", "0.2500"],
  ["F", "0.2570"],
  ["I", "0.2720"],
  ["N", "0.3020"],
  ["Q", "0.3320"],
  ["U", "0.3680"],
  ["Z", "0.4130"],
];
test.each(POINTS)("drill %s is %s in", (name, inches) => {
  expect(drillCalled(name)?.inches.equals(new Fraction(inches))).toBe(true);
});

test("numbers run from 80 to 1 and letters from A to Z, each larger than the one before", () => {
  const names = [...Array.from({ length: 80 }, (_, i) => String(80 - i)), ..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"];
  const sizes = names.map((name) => drillCalled(name)?.inches as Fraction);
  expect(sizes.every((size, i) => i === 0 || size.gt(sizes[i - 1] as Fraction))).toBe(true);
  expect(["0", "81", "AA", "-1", ""].map(drillCalled)).toEqual(Array(5).fill(undefined));
});

test("fractions are every 64th up to an inch, metric sizes every tenth of a millimetre from 0.3 to 13 mm", () => {
  const of = (kind: string): Fraction[] => DRILLS.filter((drill) => drill.kind === kind).map((drill) => drill.inches);
  expect(of("fraction").map((inches) => inches.mul(64).valueOf())).toEqual(Array.from({ length: 64 }, (_, i) => i + 1));
  expect(of("metric").map((inches) => inches.mul(254).valueOf())).toEqual(Array.from({ length: 128 }, (_, i) => i + 3));
});

test("the drills around a size", () => {
  const near = (inches: string): (string | undefined)[] => {
    const { exact, below, above } = drillsNear(new Fraction(inches));
    return [below?.name, exact.map((drill) => drill.name).join(", "), above?.name];
  };
  expect(near("0.25")).toEqual(["6.3 mm", "letter E, 1/4 in", "6.4 mm"]);
  expect(near("0.0001")).toEqual([undefined, "", "0.3 mm"]);
  expect(near("2")).toEqual(["1 in", "", undefined]);
  expect(near("0.0400")).toEqual(["1 mm", "No. 60", "No. 59"]);
});
