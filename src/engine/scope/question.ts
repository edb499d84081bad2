/**
 * What to look at next. Of the traits that would settle the matter, the one whose answers leave the fewest cars possible on
 * average: an answer that fits n of N cars comes up n times in N and leaves n. Of those that are equal in this, the one with
 * the least effort, then the one that people ask for first. Values that lead to the same are one answer.
 */
import { type Applies, applies } from "./applies.ts";
import { count } from "./count.ts";
import { decidingTraits } from "./deciding.ts";
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
export function nextLook(space: Space, cars: CarSet, scope: CarSet): NextLook | undefined {
  if (applies(space.sets, cars, scope) !== "look first") return undefined;
  const deciding = decidingTraits(space, cars, scope);
  const all = count(space, cars);
  const ranked = deciding
    .map((trait) => {
      const pieces = piecesBy(space, cars, scope, trait);
      const left = pieces.reduce((sum, piece) => sum + (count(space, piece.cars) / all) ** 2, 0);
      return { trait, pieces, left };
    })
    .sort(
      (a, b) =>
        nearly(a.left, b.left) || space.trait(a.trait).effort - space.trait(b.trait).effort || a.trait - b.trait,
    );
  const best = ranked[0];
  if (!best) return undefined;
  return { trait: best.trait, outcomes: best.pieces.map(({ values, verdict }) => ({ values, verdict })), deciding };
}

/** Counts of large sets are rounded, so that tiny differences say nothing. */
function nearly(a: number, b: number): number {
  return Math.abs(a - b) < 1e-9 ? 0 : a - b;
}

interface Piece extends Outcome {
  readonly cars: CarSet;
}

/** The possible values of a trait, those with the same consequence together, and what each would mean. */
function piecesBy(space: Space, cars: CarSet, scope: CarSet, trait: number): Piece[] {
  const { sets } = space;
  const only = new Set([trait]);
  const byMeaning = new Map<string, { values: [number, number][]; cars: CarSet; verdict: Applies }>();
  for (const [from, to] of cutAlike(space, cars, scope, trait)) {
    const here = sets.and(cars, space.where(trait, [[from, to]]));
    if (here === NONE) continue;
    const verdict = applies(sets, here, scope);
    const rest = [sets.forget(sets.and(here, scope), only).id, sets.forget(sets.minus(here, scope), only).id];
    // Two values mean the same when they give the same verdict, or leave the same cars in doubt.
    const key = verdict === "look first" ? `${verdict} ${rest.join()}` : verdict;
    const same = byMeaning.get(key);
    if (same) {
      same.values.push([from, to]);
      same.cars = sets.or(same.cars, here);
    } else byMeaning.set(key, { values: [[from, to]], cars: here, verdict });
  }
  return [...byMeaning.values()].map((piece) => ({ ...piece, values: ranges(piece.values) }));
}

/** The domain of a trait cut where either set changes with it; inside a piece all values are alike to both. */
function cutAlike(space: Space, cars: CarSet, scope: CarSet, trait: number): [number, number][] {
  const cuts = new Set<number>();
  for (const set of [cars, scope]) for (const start of space.sets.startsOf(set, trait)) cuts.add(start);
  const possible = space.sets.valuesOf(cars, trait);
  const [lo, hi] = [possible[0]?.[0] ?? 0, possible.at(-1)?.[1] ?? -1];
  const starts = [...new Set([lo, ...possible.map(([from]) => from), ...possible.map(([, to]) => to + 1), ...cuts])]
    .filter((start) => start >= lo && start <= hi)
    .sort((a, b) => a - b);
  return starts.map((start, i) => [start, (starts[i + 1] ?? hi + 1) - 1]);
}
