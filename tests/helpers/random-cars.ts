/** Random cars of any maker, each known in part: traits and values are taken from the space of its catalog. */
import fc from "fast-check";
import type { CarInput } from "../../src/engine/answers/shapes/car.ts";
import type { Catalog } from "../../src/engine/records/catalog.ts";
import { NONE } from "../../src/engine/scope/diagram.ts";
import type { Ranges } from "../../src/engine/scope/ranges.ts";
import { FITTED } from "../../src/engine/scope/space.ts";
import { writtenValue } from "../../src/engine/scope/trait.ts";

/** What is drawn for one trait: whether it is known, which value, and how it is known. */
const draw = fc.record({
  known: fc.integer({ min: 0, max: 9 }),
  at: fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
  how: fc.integer({ min: 0, max: 19 }),
});

/** `conflicts: false` draws only cars that were built, as built. */
export function randomCar(catalog: Catalog, options: { conflicts: boolean }): fc.Arbitrary<CarInput> {
  const { space, buildable } = catalog;
  const declared = [...space.declared.keys()];
  // Parts that scopes ask for: of others nothing hangs on whether they are fitted.
  const parts = space.traits.slice(declared.length).map(({ id }) => id.slice(`${FITTED} `.length));
  return fc
    .record({
      order: fc.shuffledSubarray(declared, { minLength: 0, maxLength: declared.length }),
      draws: fc.array(draw, { minLength: declared.length, maxLength: declared.length }),
      fitted: fc.oneof(
        { weight: 3, arbitrary: fc.constant<string[]>([]) },
        fc.uniqueArray(fc.constantFrom(...parts), { maxLength: 2 }),
      ),
    })
    .map(({ order, draws, fitted }): CarInput => {
      const facts: NonNullable<CarInput["facts"]> = {};
      const found: NonNullable<CarInput["found"]> = {};
      let cars = buildable;
      for (const index of order) {
        const { known, at, how } = draws[index] as (typeof draws)[number];
        if (known < 4) continue;
        const trait = space.trait(index);
        const free = options.conflicts && how < 2;
        const possible = free ? [space.span(index)] : space.sets.valuesOf(cars, index);
        const value = valueAt(possible, at);
        const written = writtenValue(trait, value);
        if (options.conflicts && how === 2) {
          found[trait.id] = written;
          continue;
        }
        // Some facts leave two values possible.
        const other = valueAt(possible, (at * 7) % 1);
        facts[trait.id] = how > 16 ? [written, writtenValue(trait, other)] : written;
        const narrowed = space.sets.and(cars, space.where(index, [[value, value]]));
        if (narrowed !== NONE) cars = narrowed;
      }
      return options.conflicts ? { facts, found, fitted } : { facts };
    });
}

function valueAt(possible: Ranges, at: number): number {
  const size = possible.reduce((sum, [from, to]) => sum + to - from + 1, 0);
  let left = Math.floor(at * size);
  for (const [from, to] of possible) {
    if (left <= to - from) return from + left;
    left -= to - from + 1;
  }
  return possible[0]?.[0] ?? 0;
}
