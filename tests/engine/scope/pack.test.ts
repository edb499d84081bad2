import fc from "fast-check";
import { expect, test } from "vitest";
import { ALL, NONE } from "../../../src/engine/scope/diagram.ts";
import { packSet, unpackSet } from "../../../src/engine/scope/pack.ts";
import { fleetSpace } from "../../helpers/listed-fleet.ts";
import { askedSet, setOf } from "../../helpers/random-sets.ts";
import { SEED } from "../../helpers/seed.ts";

test("a packed set comes back as the same set, also through JSON and in another space", () => {
  const space = fleetSpace();
  for (const set of [NONE, ALL]) expect(unpackSet(space, packSet(set))).toBe(set);
  fc.assert(
    fc.property(askedSet, (asked) => {
      const packed = JSON.parse(JSON.stringify(packSet(setOf(space, asked))));
      expect(unpackSet(space, packed)).toBe(setOf(space, asked));
      const elsewhere = fleetSpace();
      expect(unpackSet(elsewhere, packed)).toBe(setOf(elsewhere, asked));
    }),
    { seed: SEED, numRuns: 1000 },
  );
});
