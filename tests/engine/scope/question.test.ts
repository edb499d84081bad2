import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { applies } from "../../../src/engine/scope/applies.ts";
import { NONE } from "../../../src/engine/scope/diagram.ts";
import { nextLook } from "../../../src/engine/scope/question.ts";
import { includes } from "../../../src/engine/scope/ranges.ts";
import { fleetSpace } from "../../helpers/listed-fleet.ts";
import { askedSet, carsIn, setOf } from "../../helpers/random-sets.ts";
import { SEED } from "../../helpers/seed.ts";

describe("what to look at next", () => {
  const space = fleetSpace();

  test("is asked only where it is open, is one of the deciding traits, and says rightly what each answer would mean", () => {
    fc.assert(
      fc.property(askedSet, askedSet, (known, about) => {
        const [cars, scope] = [setOf(space, known), setOf(space, about)];
        const next = nextLook(space, cars, scope);
        expect(next !== undefined).toBe(applies(space.sets, cars, scope) === "look first");
        if (!next) return;
        expect(next.deciding).toContain(next.trait);
        const possible = new Set(carsIn(cars).map((car) => car[next.trait]));
        const named = [...possible].filter((value) =>
          next.outcomes.some((outcome) => includes(outcome.values, value as number)),
        );
        expect(named).toHaveLength(possible.size);
        for (const { values, verdict } of next.outcomes) {
          const here = space.sets.and(cars, space.where(next.trait, values));
          expect(here).not.toBe(NONE);
          for (const value of possible) {
            if (!includes(values, value as number)) continue;
            const one = space.sets.and(cars, space.where(next.trait, [[value as number, value as number]]));
            expect(applies(space.sets, one, scope)).toBe(verdict);
          }
        }
      }),
      { seed: SEED, numRuns: 1000 },
    );
  });

  test("of two traits that are both needed the one that leaves fewer cars comes first", () => {
    // line 0 from 1958 on: three lines split the cars better than two halves of four years do (1/9+4/9 against 1/16+9/16).
    const scope = space.sets.and(space.where(0, [[0, 0]]), space.where(1, [[1958, 1960]]));
    const all = space.sets.not(NONE);
    expect(nextLook(space, all, scope)?.trait).toBe(0);
  });
});
