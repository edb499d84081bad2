import fc from "fast-check";
import { expect, test } from "vitest";
import { cutBy } from "../../../src/engine/interchange/cut-by.ts";
import { NONE } from "../../../src/engine/scope/diagram.ts";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import { SEED } from "../../helpers/seed.ts";
import { tractorSpace } from "../../helpers/tractor-space.ts";

const space = tractorSpace();
const YEARS = [1957, 1958, 1959, 1960, 1961];

function ofYears(years: readonly number[]) {
  const read = readScope(space, years.map((year) => `my=${year}`).join(" || "));
  if ("slips" in read) throw new Error(read.slips[0]?.message);
  return read.scope.cars;
}

test("every car is in one piece, with the items whose sets hold it, in their order", () => {
  const years = fc.subarray(YEARS, { minLength: 1 });
  fc.assert(
    fc.property(years, fc.array(years, { maxLength: 4 }), (all, sets) => {
      const held = sets.map((its, item) => ({ item, cars: ofYears(its) }));
      const pieces = cutBy(space, ofYears(all), held);
      for (const year of YEARS) {
        const mine = pieces.filter((piece) => space.sets.meet(piece.cars, ofYears([year])));
        const expected = sets.flatMap((its, item) => (its.includes(year) ? [item] : []));
        expect(mine.map((piece) => piece.items)).toEqual(all.includes(year) ? [expected] : []);
      }
      expect(new Set(pieces.map((piece) => `${piece.items}`)).size).toBe(pieces.length);
    }),
    { seed: SEED, numRuns: 300 },
  );
});

test("no cars, no pieces", () => {
  expect(cutBy(space, NONE, [{ item: 1, cars: ofYears([1957]) }])).toEqual([]);
});
