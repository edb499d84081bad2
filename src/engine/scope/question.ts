/**
 * What to look at next. Of the traits that would settle the matter, the one whose answers leave the fewest cars possible on
 * average: an answer that fits n of N cars comes up n times in N and leaves n. Of those that are equal in this, the one with
 * the least effort, then the one that people ask for first. Values that lead to the same are one answer.
 * A running number or date of building says little by itself: it is asked after the year and the plant, where these matter too.
 */
import { type Applies, applies } from "./applies.ts";
import { count, countBy } from "./count.ts";
import { decidingTraits, withoutUnnamedParts } from "./deciding.ts";
import { type CarSet, NONE } from "./diagram.ts";
import { type Ranges, ranges } from "./ranges.ts";
import type { Space } from "./space.ts";

/** What it would mean if the trait had one of these values. */
export interface Outcome {
  readonly values: Ranges;
  readonly verdict: Applies;
}

export interface NextLook {
  readonly trait: number;
  readonly outcomes: readonly Outcome[];
  /** All traits that have to be known in the worst case, this one among them. */
  readonly deciding: readonly number[];
}

/** Nothing when nothing is open. */
export function nextLook(space: Space, known: CarSet, scope: CarSet): NextLook | undefined {
  const cars = withoutUnnamedParts(space, known, scope);
  if (applies(space.sets, cars, scope) !== "look first") return undefined;
  const deciding = decidingTraits(space, cars, scope);
  const all = count(space, cars);
  const sides = { cars, inside: space.sets.and(cars, scope), outside: space.sets.minus(cars, scope) };
  const ranked = deciding
    .map((trait) => {
      const pieces = piecesBy(space, sides, trait);
      return { trait, pieces, left: pieces.reduce((sum, piece) => sum + (piece.left / all) ** 2, 0) };
    })
    .sort(
      (a, b) =>
        turn(space, a.trait, deciding) - turn(space, b.trait, deciding) ||
        nearly(a.left, b.left) ||
        space.trait(a.trait).effort - space.trait(b.trait).effort ||
        a.trait - b.trait,
    );
  const best = ranked[0];
  if (!best) return undefined;
  return { trait: best.trait, outcomes: best.pieces.map(({ values, verdict }) => ({ values, verdict })), deciding };
}

/** 1 for a number that runs within a year and plant which are not known yet. */
function turn(space: Space, trait: number, deciding: readonly number[]): 0 | 1 {
  const roleOf = (index: number): string | undefined => space.trait(index).role;
  const runs = roleOf(trait) === "sequence" || roleOf(trait) === "date";
  return runs && deciding.some((it) => roleOf(it) === "year" || roleOf(it) === "plant") ? 1 : 0;
}

/** Counts of large sets are rounded, so that tiny differences say nothing. */
function nearly(a: number, b: number): number {
  return Math.abs(a - b) < 1e-9 ? 0 : a - b;
}

/** What is possible, and what of it is inside and outside the scope. */
interface Sides {
  readonly cars: CarSet;
  readonly inside: CarSet;
  readonly outside: CarSet;
}

interface Piece extends Outcome {
  /** How many cars it leaves. */
  readonly left: number;
}

/**
 * The possible values of a trait, those with the same consequence together, and what each would mean.
 *
 * Two values mean the same when they give the same verdict, or leave the same cars in doubt. As equal sets are the same
 * object, they leave the same cars exactly when every branch that asks for the trait sends both the same way.
 */
function piecesBy(space: Space, { cars, inside, outside }: Sides, trait: number): Piece[] {
  const [yes, no] = [space.sets.asking(inside, trait), space.sets.asking(outside, trait)];
  const branches = [...yes.branches, ...no.branches];
  const [first, last] = space.span(trait);
  const starts = [...new Set([first, ...branches.flatMap((branch) => branch.starts)])].sort((a, b) => a - b);
  const places = branches.map(() => 0);
  const byMeaning = new Map<string, { verdict: Applies; values: [number, number][] }>();
  starts.forEach((start, piece) => {
    const next = branches.map((branch, i) => {
      if (branch.starts[(places[i] as number) + 1] === start) places[i] = (places[i] as number) + 1;
      return branch.next[places[i] as number] as CarSet;
    });
    const some = yes.unasked || next.slice(0, yes.branches.length).some((set) => set !== NONE);
    const others = no.unasked || next.slice(yes.branches.length).some((set) => set !== NONE);
    if (!some && !others) return;
    const verdict = !others ? "yes" : !some ? "no" : "look first";
    const key = verdict === "look first" ? next.map((set) => set.id).join() : verdict;
    const same = byMeaning.get(key) ?? { verdict, values: [] };
    byMeaning.set(key, same);
    same.values.push([start, (starts[piece + 1] ?? last + 1) - 1]);
  });
  const pieces = [...byMeaning.values()].map(({ verdict, values }) => ({ verdict, values: ranges(values) }));
  const left = countBy(
    space,
    cars,
    trait,
    pieces.map(({ values }) => values),
  );
  return pieces.map((piece, i) => ({ ...piece, left: left[i] as number }));
}
