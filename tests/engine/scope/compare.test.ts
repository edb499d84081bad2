import fc from "fast-check";
import { expect, test } from "vitest";
import { compare } from "../../../src/engine/scope/compare.ts";
import { fleetSpace } from "../../helpers/listed-fleet.ts";
import { askedSet, carsIn, setOf } from "../../helpers/random-sets.ts";
import { SEED } from "../../helpers/seed.ts";

test("two scopes lie to each other as listing their cars says, and an example is shown where there is one", () => {
  const space = fleetSpace();
  fc.assert(
    fc.property(askedSet, askedSet, askedSet, (built, one, other) => {
      const cars = setOf(space, built);
      const [inA, inB] = [one, other].map((asked) => new Set(carsIn(space.sets.and(cars, setOf(space, asked))))) as [
        Set<unknown>,
        Set<unknown>,
      ];
      const both = [...inA].some((car) => inB.has(car));
      const onlyA = [...inA].some((car) => !inB.has(car));
      const onlyB = [...inB].some((car) => !inA.has(car));
      const plain =
        !onlyA && !onlyB ? "equal" : !both ? "disjoint" : !onlyB ? "covers" : !onlyA ? "is covered" : "overlaps";
      const found = compare(space, cars, setOf(space, one), setOf(space, other));
      expect(found.verdict).toBe(plain);
      expect([found.both, found.onlyA, found.onlyB].map((car) => car !== undefined)).toEqual([both, onlyA, onlyB]);
    }),
    { seed: SEED, numRuns: 2000 },
  );
});
