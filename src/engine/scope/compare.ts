/** How two scopes lie to each other, among the cars that were built. */
import { type CarSet, NONE } from "./diagram.ts";
import { type Car, pick } from "./pick.ts";
import type { Space } from "./space.ts";

export const COMPARED = ["equal", "covers", "is covered", "overlaps", "disjoint"] as const;
export type Compared = (typeof COMPARED)[number];

export interface Comparison {
  readonly verdict: Compared;
  /** Cars that show it: in both, only in the first, only in the second; where there is one. */
  readonly both: Car | undefined;
  readonly onlyA: Car | undefined;
  readonly onlyB: Car | undefined;
}

export function compare(space: Space, built: CarSet, a: CarSet, b: CarSet): Comparison {
  const { sets } = space;
  const inA = sets.and(built, a);
  const inB = sets.and(built, b);
  const both = sets.and(inA, inB);
  const onlyA = sets.minus(inA, inB);
  const onlyB = sets.minus(inB, inA);
  const verdict = ((): Compared => {
    if (onlyA === NONE && onlyB === NONE) return "equal";
    if (both === NONE) return "disjoint";
    if (onlyB === NONE) return "covers";
    return onlyA === NONE ? "is covered" : "overlaps";
  })();
  return { verdict, both: pick(both), onlyA: pick(onlyA), onlyB: pick(onlyB) };
}
