/** Single cars out of a set: for showing "a car that …". */
import { type CarSet, isBranch, NONE } from "./diagram.ts";
import type { Space } from "./space.ts";
import { writtenValue } from "./trait.ts";

/** Trait number to value number. A trait that the set does not ask for is left out: any value will do. */
export type Car = ReadonlyMap<number, number>;

/** The first car of a set, in the order of traits and values, as near to `like` as the set allows; nothing when the set is empty. */
export function pick(set: CarSet, like: Car = new Map()): Car | undefined {
  if (set === NONE) return undefined;
  const car = new Map<number, number>();
  let at = set;
  while (isBranch(at)) {
    const wished = like.get(at.trait);
    const near = wished === undefined ? -1 : at.starts.findLastIndex((start) => start <= wished);
    const keep = near >= 0 && at.next[near] !== NONE;
    const piece = keep ? near : at.next.findIndex((next) => next !== NONE);
    car.set(at.trait, keep ? (wished as number) : (at.starts[piece] as number));
    at = at.next[piece] as CarSet;
  }
  return car;
}

/** A car as facts that can be asked again: trait id to value. */
export function sayCar(space: Space, car: Car): Record<string, string> {
  return Object.fromEntries(
    [...car].map(([trait, value]) => [space.trait(trait).id, writtenValue(space.trait(trait), value)]),
  );
}
