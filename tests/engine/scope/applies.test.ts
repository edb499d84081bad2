import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { applies } from "../../../src/engine/scope/applies.ts";
import { NONE } from "../../../src/engine/scope/diagram.ts";
import { fleetSpace } from "../../helpers/listed-fleet.ts";
import { askedSet, carsIn, setOf } from "../../helpers/random-sets.ts";
import { SEED } from "../../helpers/seed.ts";

describe("whether a scope holds for the car at hand", () => {
  const space = fleetSpace();

  test("is what asking car by car says", () => {
    fc.assert(
      fc.property(askedSet, askedSet, (known, about) => {
        const [cars, scope] = [setOf(space, known), setOf(space, about)];
        const inside = new Set(carsIn(scope));
        const possible = carsIn(cars);
        const holding = possible.filter((car) => inside.has(car)).length;
        const plain =
          possible.length === 0
            ? "no such car"
            : holding === 0
              ? "no"
              : holding === possible.length
                ? "yes"
                : "look first";
        expect(applies(space.sets, cars, scope)).toBe(plain);
      }),
      { seed: SEED, numRuns: 2000 },
    );
  });

  test("knowing more never turns yes into no, nor no into yes", () => {
    fc.assert(
      fc.property(askedSet, askedSet, askedSet, (known, more, about) => {
        const cars = setOf(space, known);
        const fewer = space.sets.and(cars, setOf(space, more));
        const scope = setOf(space, about);
        const before = applies(space.sets, cars, scope);
        const after = applies(space.sets, fewer, scope);
        if (fewer !== NONE && before !== "look first") expect(after).toBe(before);
      }),
      { seed: SEED, numRuns: 2000 },
    );
  });
});
