import fc from "fast-check";
import { expect, test } from "vitest";
import { count } from "../../../src/engine/scope/count.ts";
import { ALL, NONE } from "../../../src/engine/scope/diagram.ts";
import { FLEET, fleetSpace } from "../../helpers/listed-fleet.ts";
import { askedSet, carsIn, setOf } from "../../helpers/random-sets.ts";
import { SEED } from "../../helpers/seed.ts";

test("a set holds as many cars as can be listed", () => {
  const space = fleetSpace();
  expect(count(space, NONE)).toBe(0);
  expect(count(space, ALL)).toBe(FLEET.length);
  fc.assert(
    fc.property(askedSet, (asked) => {
      const set = setOf(space, asked);
      expect(count(space, set)).toBe(carsIn(set).length);
    }),
    { seed: SEED, numRuns: 1000 },
  );
});

test("what is fitted today is not counted", () => {
  const space = fleetSpace();
  expect(count(space, space.where(space.fitted("HT-101"), [[1, 1]]))).toBe(FLEET.length);
});
