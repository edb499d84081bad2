/** How many cars a set holds, counted over the traits that the data declares. Only for comparing sets: large counts are rounded. */
import { type Branch, type CarSet, isBranch, NONE } from "./diagram.ts";
import { type Ranges, shared, size } from "./ranges.ts";
import type { Space } from "./space.ts";

export function count(space: Space, set: CarSet): number {
  return counter(space).count(set, 0);
}

/**
 * The same for the cars with each of several groups of values of one trait. A branch that asks for the trait is reached in
 * so many ways, and a value of it leads on to so many cars; cars that it is not asked of are there with every value.
 */
export function countBy(space: Space, set: CarSet, trait: number, groups: readonly Ranges[]): number[] {
  const counts = counter(space);
  // "Fitted today" is not counted: the same car with either value is one car.
  if (trait >= counts.declared)
    return groups.map((values) => count(space, space.sets.and(set, space.where(trait, values))));
  const [first, last] = space.span(trait);
  const ways = new Map<Branch, number>();
  let unasked = 0;
  /** So many cars, as told apart by the traits before `from`, go on with `next`. */
  const lead = (next: CarSet, cars: number, from: number): void => {
    if (next === NONE) return;
    if (isBranch(next) && next.trait <= trait)
      ways.set(next, (ways.get(next) ?? 0) + cars * counts.skipped(from, next.trait));
    else unasked += (cars * counts.count(next, from)) / (last - first + 1);
  };
  lead(set, 1, 0);
  for (const branch of branchesUpTo(set, trait - 1))
    branch.next.forEach((next, i) => {
      lead(next, (ways.get(branch) as number) * pieceSize(space, branch, i), branch.trait + 1);
    });
  return groups.map((values) => {
    let sum = unasked * size(values);
    for (const [branch, cars] of ways) {
      if (branch.trait !== trait) continue;
      branch.next.forEach((next, i) => {
        const from = branch.starts[i] as number;
        const here = next === NONE ? [] : shared(values, [[from, from + pieceSize(space, branch, i) - 1]]);
        if (here.length > 0) sum += cars * size(here) * counts.count(next, trait + 1);
      });
    }
    return sum;
  });
}

/** The branches of a set that ask for this trait or an earlier one, each before those that it leads to. */
function branchesUpTo(set: CarSet, trait: number): Branch[] {
  const found = new Set<Branch>();
  const walk = (at: CarSet): void => {
    if (!isBranch(at) || at.trait > trait || found.has(at)) return;
    found.add(at);
    at.next.forEach(walk);
  };
  walk(set);
  return [...found].sort((a, b) => a.trait - b.trait);
}

function pieceSize(space: Space, { trait, starts }: Branch, piece: number): number {
  return (starts[piece + 1] ?? space.span(trait)[1] + 1) - (starts[piece] as number);
}

/** What was counted is kept for as long as the space is: the sets that a page asks about are much the same after every answer. */
class Counter {
  readonly declared: number;
  readonly #space: Space;
  /** For each declared trait how many combinations it makes with all later ones; 1 behind the last. */
  readonly #products = [1];
  /** By the id of a branch, the cars told apart by its trait and the later ones. */
  readonly #below = new Map<number, number>();

  constructor(space: Space) {
    this.#space = space;
    const sizes = space.declared.map((_, trait) => space.span(trait)[1] - space.span(trait)[0] + 1);
    this.declared = sizes.length;
    for (const own of sizes.reverse()) this.#products.unshift((this.#products[0] as number) * own);
  }

  /** How many combinations the traits make from `from` on and before `until`. */
  skipped(from: number, until: number): number {
    if (from >= this.declared) return 1;
    return (this.#products[from] as number) / (this.#products[Math.min(until, this.declared)] as number);
  }

  /** The cars of a set, told apart by the traits from `from` on. */
  count(at: CarSet, from: number): number {
    if (at === NONE) return 0;
    if (!isBranch(at)) return this.skipped(from, this.declared);
    let own = this.#below.get(at.id);
    if (own === undefined) {
      const below = at.next.map((next) => this.count(next, at.trait + 1));
      own =
        at.trait < this.declared
          ? below.reduce((sum, cars, i) => sum + pieceSize(this.#space, at, i) * cars, 0)
          : // A set that asks for what is fitted today counts as far as either value goes.
            Math.max(...below);
      this.#below.set(at.id, own);
    }
    return this.skipped(from, at.trait) * own;
  }
}

const COUNTERS = new WeakMap<Space, Counter>();

function counter(space: Space): Counter {
  const known = COUNTERS.get(space) ?? new Counter(space);
  COUNTERS.set(space, known);
  return known;
}
