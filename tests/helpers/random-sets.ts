/** Random sets of the listed fleet: unions of a few alternatives, each with a few clauses. */
import fc from "fast-check";
import { ALL, type CarSet, NONE } from "../../src/engine/scope/diagram.ts";
import { ranges } from "../../src/engine/scope/ranges.ts";
import type { Space } from "../../src/engine/scope/space.ts";
import { span } from "../../src/engine/scope/trait.ts";
import { type Car, FLEET, FLEET_TRAITS, holds } from "./listed-fleet.ts";

/** Alternatives of clauses: which trait, which values. */
export type AskedSet = readonly (readonly (readonly [trait: number, values: readonly number[]])[])[];

const clause = fc.nat(FLEET_TRAITS.length - 1).chain((trait) => {
  const [from, to] = span(FLEET_TRAITS[trait] as (typeof FLEET_TRAITS)[number]);
  return fc.tuple(
    fc.constant(trait),
    fc.uniqueArray(fc.integer({ min: from, max: to }), { minLength: 1, maxLength: 6 }),
  );
});

export const askedSet: fc.Arbitrary<AskedSet> = fc.array(fc.array(clause, { maxLength: 3 }), {
  minLength: 1,
  maxLength: 3,
});

export function setOf(space: Space, asked: AskedSet): CarSet {
  return space.any(
    asked.map((clauses) =>
      clauses.reduce(
        (set: CarSet, [trait, values]) =>
          space.sets.and(set, space.where(trait, ranges(values.map((value) => [value, value])))),
        ALL,
      ),
    ),
  );
}

/** The cars of the fleet in a set, one by one. */
export function carsIn(set: CarSet): Car[] {
  return set === NONE ? [] : FLEET.filter((car) => holds(set, car));
}
