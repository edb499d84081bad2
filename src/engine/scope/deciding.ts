/**
 * Which traits would settle the matter? The smallest set of traits such that knowing them turns "look first" into yes or
 * no, whatever they turn out to be. Of several smallest sets the one that costs the least effort to look at; of those the
 * one whose traits people ask for first.
 *
 * A set of traits settles the matter when no car inside the scope and no car outside it look alike in all of them.
 *
 *   1. Begin with no trait at all.
 *   2. If some pair of cars, one inside and one outside, looks alike in the chosen traits, note in which other traits the
 *      two differ: every set that settles the matter has one of these.
 *   3. Choose anew the best set that has a trait from each of the notes; go on with 2 until there is no such pair.
 *
 * The set found is the best there is: any set that settles the matter has a trait from every note, and the chosen one is the
 * best of all that do. Notes are few, because each removes all sets that miss it. Nothing is sampled, no car is listed.
 */
import { ALL, type CarSet, type CarSets } from "./diagram.ts";
import { type Car, pick } from "./pick.ts";
import type { Space } from "./space.ts";
import { span } from "./trait.ts";

/**
 * A part that is fitted today is looked at only for a scope that names it: that the plant fitted it to some cars and not to others
 * says which car this is only as long as nobody has changed it.
 */
export function withoutUnnamedParts(space: Space, cars: CarSet, scope: CarSet): CarSet {
  const named = space.sets.traitsOf(scope);
  const unnamed = [...space.sets.traitsOf(cars)].filter((trait) => space.isFitted(trait) && !named.has(trait));
  return unnamed.length > 0 ? space.sets.forget(cars, new Set(unnamed)) : cars;
}

export function decidingTraits(space: Space, all: CarSet, scope: CarSet): number[] {
  const cars = withoutUnnamedParts(space, all, scope);
  const inside = space.sets.and(cars, scope);
  const outside = space.sets.minus(cars, scope);
  const effort = (trait: number): number => space.trait(trait).effort;
  const notes: number[][] = [];
  for (;;) {
    const chosen = bestCover(notes, effort);
    const difference = differingPair(space, inside, outside, chosen);
    if (!difference) return chosen;
    notes.push(difference);
  }
}

/** The traits in which one car inside and one outside differ, though they look alike in the chosen ones. */
function differingPair(space: Space, inside: CarSet, outside: CarSet, chosen: readonly number[]): number[] | undefined {
  const { sets } = space;
  const alike = pick(sets.and(sets.keep(inside, chosen), sets.keep(outside, chosen)));
  if (!alike) return undefined;
  // A chosen trait that neither side asks for is given one value for both, or the two might differ in it after all.
  const same = fix(sets, new Map(chosen.map((trait) => [trait, alike.get(trait) ?? span(space.trait(trait))[0]])));
  let a = pick(sets.and(inside, same)) as Car;
  let b = pick(sets.and(outside, same), a) as Car;
  // Each is drawn nearer to the other once: the fewer traits they differ in, the more a note says.
  a = pick(sets.and(inside, same), b) as Car;
  b = pick(sets.and(outside, same), a) as Car;
  const traits = new Set([...a.keys(), ...b.keys()]);
  // A trait that only one of the two asks for may have any value in the other: there they look alike.
  return [...traits]
    .filter((trait) => a.has(trait) && b.has(trait) && a.get(trait) !== b.get(trait))
    .sort((x, y) => x - y);
}

/** The cars that look like this one. */
function fix(sets: CarSets, car: Car): CarSet {
  return [...car].reduce((set: CarSet, [trait, value]) => sets.and(set, sets.where(trait, [[value, value]])), ALL);
}

/** The best set with a member in each of the groups: fewest members, then least effort in all, then first in order. */
export function bestCover(groups: readonly (readonly number[])[], effort: (member: number) => number): number[] {
  for (let size = 0; ; size++) {
    let best: { members: number[]; effort: number } | undefined;
    const search = (members: readonly number[]): void => {
      const missed = groups.find((group) => !group.some((member) => members.includes(member)));
      if (!missed) {
        const sorted = [...members].sort((a, b) => a - b);
        const sum = sorted.reduce((total, member) => total + effort(member), 0);
        if (!best || sum < best.effort || (sum === best.effort && comesFirst(sorted, best.members)))
          best = { members: sorted, effort: sum };
        return;
      }
      if (members.length < size) for (const member of missed) search([...members, member]);
    };
    search([]);
    if (best) return best.members;
  }
}

function comesFirst(a: readonly number[], b: readonly number[]): boolean {
  const i = a.findIndex((member, at) => member !== b[at]);
  return i >= 0 && (a[i] as number) < (b[i] as number);
}
