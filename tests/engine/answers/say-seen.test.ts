import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { sayOutcome, saySeen, sayValue } from "../../../src/engine/answers/say-seen.ts";
import { markOf } from "../../../src/engine/lookalikes/mark-table.ts";
import type { Seen } from "../../../src/engine/lookalikes/possible-parts.ts";
import type { Feature } from "../../../src/engine/records/catalog.ts";

const feature = (made: Feature["made"], more: Partial<Feature> = {}): Feature => ({
  id: "m",
  name: "mark",
  made,
  where: "on the car",
  effort: 1,
  record: "R",
  ...more,
});
const measured = (low: string, high = low, error?: string): Seen => ({
  is: "measured",
  low: new Fraction(low),
  high: new Fraction(high),
  ...(error && { error: new Fraction(error) }),
});
const INCHES = feature("measured", { unit: "in" });

// mark, what was seen, in words
test.each<[Feature, Seen, string]>([
  [feature("cast"), { is: "value", value: "three" }, "three"],
  [feature("cast"), { is: "absent" }, "none"],
  [feature("counted"), { is: "absent" }, "0"],
  [feature("painted", { absent: "bare" }), { is: "absent" }, "bare"],
  [feature("cast"), { is: "not seen" }, "not seen"],
  [feature("cast"), { is: "something else" }, "something else"],
  [INCHES, measured("0.18"), "0.18 in"],
  [INCHES, measured("0.18", "0.18", "0.001"), "0.18 in ± 0.001"],
  [INCHES, measured("0.052", "0.06"), "0.052 to 0.06 in"],
  [INCHES, measured("1/3"), "0.333333 in"],
  [feature("measured"), measured("7"), "7"],
])("%o: %o is '%s'", (mark, seen, words) => {
  expect(saySeen(mark, seen)).toBe(words);
});

test("to choose from: what wears off proves nothing, and something else is none of these", () => {
  const paint = feature("painted");
  expect(sayOutcome(paint, markOf(paint), { is: "absent" })).toBe("none, or worn off: proves nothing");
  expect(sayOutcome(paint, markOf(paint), { is: "value", value: "green" })).toBe("green");
  expect(sayOutcome(feature("cast"), markOf(feature("cast")), { is: "something else" })).toBe("none of these");
});

test("what is on record", () => {
  expect([sayValue(INCHES, new Fraction("0.18")), sayValue(INCHES, "none"), sayValue(INCHES, undefined)]).toEqual([
    "0.18 in",
    "none",
    "nothing",
  ]);
});
