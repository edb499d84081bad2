/** Sets of cars as plain lists, to be sent to a page: each branch once, after the ones it leads to. */
import { ALL, type CarSet, isBranch, NONE } from "./diagram.ts";
import type { Space } from "./space.ts";

/** Per branch its trait, then for each piece its first value and what follows: 0 no car, 1 every car, n + 2 branch n. */
export type PackedSet = readonly (readonly number[])[];

export function packSet(set: CarSet): PackedSet {
  const packed: number[][] = [];
  const places = new Map<CarSet, number>([
    [NONE, 0],
    [ALL, 1],
  ]);
  const place = (at: CarSet): number => {
    const known = places.get(at);
    if (known !== undefined || !isBranch(at)) return known ?? 0;
    const pieces = at.starts.flatMap((start, i) => [start, place(at.next[i] as CarSet)]);
    packed.push([at.trait, ...pieces]);
    places.set(at, packed.length + 1);
    return packed.length + 1;
  };
  const top = place(set);
  // The last entry is the set itself, also where it is no branch.
  return isBranch(set) ? packed : [[-1, top]];
}

export function unpackSet(space: Space, packed: PackedSet): CarSet {
  const made: CarSet[] = [NONE, ALL];
  for (const [trait = -1, ...pieces] of packed) {
    if (trait < 0) return made[pieces[0] ?? 0] ?? NONE;
    const [, last] = space.span(trait);
    let set: CarSet = NONE;
    for (let i = 0; i < pieces.length; i += 2) {
      const values = [[pieces[i] as number, (pieces[i + 2] ?? last + 1) - 1]] as const;
      set = space.sets.or(set, space.sets.and(space.where(trait, values), made[pieces[i + 1] as number] ?? NONE));
    }
    made.push(set);
  }
  return made.at(-1) ?? NONE;
}
