/**
 * Which trait to look at next when many scopes are open for one car.
 *
 *   A trait can be asked for while it has more than one value among the cars that this can be, and while it matters: it
 *   stands in the smallest deciding set of some open scope that names it.
 *   The one that the most open scopes name comes first; of equal ones the one with the least effort, then the one that people
 *   ask for first.
 *
 * Why not the deciding sets of all scopes first, and then count? A page asks this after every tap, on a phone, about thousands
 * of records: names are counted in no time, and nearly always the first one counted matters.
 */
import { decidingTraits } from "./deciding.ts";
import type { CarSet } from "./diagram.ts";
import type { Space } from "./space.ts";

export interface AskedTrait {
  readonly trait: number;
  /** The open scopes that name it, by their place in the list given. */
  readonly scopes: readonly number[];
}

/** The first trait to look at; nothing when no scope is open. `open` are the scopes that neither hold for all of `cars` nor for none. */
export function nextTrait(space: Space, cars: CarSet, open: readonly CarSet[]): AskedTrait | undefined {
  for (const asked of traitsThatMatter(space, cars, open)) return asked;
  return undefined;
}

/** All traits that can be asked for, best first, found one by one: a page stops to listen to its reader between two of them. */
export function* traitsThatMatter(space: Space, cars: CarSet, open: readonly CarSet[]): Generator<AskedTrait> {
  const { sets } = space;
  const deciding = new Map<CarSet, readonly number[]>();
  const decidingOf = (scope: CarSet): readonly number[] => {
    // Scopes that pick out the same of these cars are one question.
    const inside = sets.and(cars, scope);
    const known = deciding.get(inside) ?? decidingTraits(space, cars, scope);
    deciding.set(inside, known);
    return known;
  };
  const asked = new Set<number>();
  for (const one of byNames(space, cars, open))
    if (one.scopes.some((i) => decidingOf(open[i] as CarSet).includes(one.trait))) {
      asked.add(one.trait);
      yield one;
    }
  // What decides a scope may be a trait that it does not name: one that goes hand in hand with a named one.
  for (const [i, scope] of open.entries())
    for (const trait of decidingOf(scope))
      if (!asked.has(trait)) {
        asked.add(trait);
        yield { trait, scopes: [i] };
      }
}

/** Traits with more than one value left, by how many open scopes name them. */
function byNames(space: Space, cars: CarSet, open: readonly CarSet[]): AskedTrait[] {
  const scopes = new Map<number, number[]>();
  for (const [i, scope] of open.entries())
    for (const trait of space.sets.traitsOf(scope)) {
      const named = scopes.get(trait);
      if (named) named.push(i);
      else scopes.set(trait, [i]);
    }
  return [...scopes]
    .map(([trait, named]) => ({ trait, scopes: named }))
    .filter(({ trait }) => {
      const [first, second] = space.sets.valuesOf(cars, trait);
      return second !== undefined || (first !== undefined && first[0] !== first[1]);
    })
    .sort(
      (a, b) =>
        b.scopes.length - a.scopes.length ||
        space.trait(a.trait).effort - space.trait(b.trait).effort ||
        a.trait - b.trait,
    );
}
