import fc from "fast-check";
import { expect, test } from "vitest";
import { applies } from "../../../src/engine/scope/applies.ts";
import { decidingTraits } from "../../../src/engine/scope/deciding.ts";
import { nextTrait, traitsThatMatter } from "../../../src/engine/scope/next-trait.ts";
import { fleetSpace } from "../../helpers/listed-fleet.ts";
import { askedSet, setOf } from "../../helpers/random-sets.ts";
import { SEED } from "../../helpers/seed.ts";

const space = fleetSpace();

test("only what stands in a smallest deciding set is asked, all of it, the most named first", () => {
  let several = 0;
  fc.assert(
    fc.property(askedSet, fc.array(askedSet, { maxLength: 6 }), (known, asked) => {
      const cars = setOf(space, known);
      const open = asked
        .map((about) => setOf(space, about))
        .filter((scope) => applies(space.sets, cars, scope) === "look first");
      const deciding = open.map((scope) => decidingTraits(space, cars, scope));
      const found = [...traitsThatMatter(space, cars, open)];
      expect(found.map(({ trait }) => trait).sort()).toEqual([...new Set(deciding.flat())].sort());
      expect(nextTrait(space, cars, open)).toEqual(found[0]);
      const names = (trait: number): number => open.filter((scope) => space.sets.traitsOf(scope).has(trait)).length;
      const named = found.filter(({ trait }) => names(trait) > 0);
      const order = [...named].sort(
        (a, b) =>
          names(b.trait) - names(a.trait) ||
          space.trait(a.trait).effort - space.trait(b.trait).effort ||
          a.trait - b.trait,
      );
      // Traits that a scope names, but that matter only by another one, may come later.
      expect(found[0]).toEqual(order[0] ?? found[0]);
      if (found.length > 1) several++;
    }),
    { seed: SEED, numRuns: 2000 },
  );
  expect(several).toBeGreaterThan(300);
}, 60_000);

test("nothing open, nothing to ask", () => {
  expect(nextTrait(space, space.where(0, [[0, 0]]), [])).toBeUndefined();
});
