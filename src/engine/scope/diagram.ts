/**
 * Sets of cars in one normal form: two sets hold the same cars exactly when they are the same object.
 *
 * A set is a decision diagram. Traits stand in one fixed order; a branch asks for one trait and sends each
 * piece of its domain on to the set of what may follow. "Linnet from 1973, or any Plover" is
 *
 *        line ── Linnet ──> year ── ..1972 ──> none
 *          │                     └─ 1973.. ──> all
 *          ├──── Plover ──> all
 *          └──── the rest > none
 *
 * Two rules make the form unique: no branch sends everything the same way, and equal branches are made once.
 * So union, exceptions and "together they cover" need no search: they are one walk down two diagrams.
 *
 * Why not lists of boxes (year × body × …)? A union of boxes has many spellings, so "is it the same set?" becomes a
 * search, and taking one list from another multiplies them.
 * Source: R. E. Bryant, "Graph-Based Algorithms for Boolean Function Manipulation", IEEE Trans. Computers C-35 (1986);
 * pieces of a domain in place of single bits are ours.
 */
import { includes, type Ranges, ranges } from "./ranges.ts";

/** Asks for one trait. `starts[i]` is the first value of piece i; the piece ends where the next one starts. */
export interface Branch {
  readonly id: number;
  readonly trait: number;
  readonly starts: readonly number[];
  readonly next: readonly CarSet[];
}
interface End {
  readonly id: 0 | 1;
  readonly trait: number;
}
export type CarSet = End | Branch;

/** The set that holds no car, and the set that holds every car. */
export const NONE: End = { id: 0, trait: Number.POSITIVE_INFINITY };
export const ALL: End = { id: 1, trait: Number.POSITIVE_INFINITY };

export function isBranch(set: CarSet): set is Branch {
  return set.id > 1;
}

type Join = "and" | "or" | "minus";

/** Makes and joins sets over traits numbered 0, 1, 2 …; `span(trait)` gives the first and last value of each. */
export class CarSets {
  readonly #span: (trait: number) => readonly [number, number];
  readonly #made = new Map<string, Branch>();
  readonly #joined: Record<Join, Map<number, CarSet>> = {
    and: new Map(),
    or: new Map(),
    minus: new Map(),
  };

  constructor(span: (trait: number) => readonly [number, number]) {
    this.#span = span;
  }

  /** The cars whose trait has one of these values. */
  where(trait: number, values: Ranges): CarSet {
    const [lo, hi] = this.#span(trait);
    const starts = new Set<number>([lo]);
    for (const [from, to] of values) {
      if (from > lo && from <= hi) starts.add(from);
      if (to >= lo && to < hi) starts.add(to + 1);
    }
    const sorted = [...starts].sort((a, b) => a - b);
    return this.#branch(
      trait,
      sorted,
      sorted.map((start) => (includes(values, start) ? ALL : NONE)),
    );
  }

  and(a: CarSet, b: CarSet): CarSet {
    return this.#join("and", a, b);
  }

  or(a: CarSet, b: CarSet): CarSet {
    return this.#join("or", a, b);
  }

  minus(a: CarSet, b: CarSet): CarSet {
    return this.#join("minus", a, b);
  }

  not(a: CarSet): CarSet {
    return this.#join("minus", ALL, a);
  }

  /** What is left of the set when these traits are no longer looked at: a car is in if some value of them puts it in. */
  forget(set: CarSet, traits: ReadonlySet<number>): CarSet {
    const seen = new Map<number, CarSet>();
    const walk = (at: CarSet): CarSet => {
      if (!isBranch(at)) return at;
      const known = seen.get(at.id);
      if (known) return known;
      const next = at.next.map(walk);
      const result = traits.has(at.trait)
        ? next.reduce((a, b) => this.or(a, b), NONE as CarSet)
        : this.#branch(at.trait, at.starts, next);
      seen.set(at.id, result);
      return result;
    };
    return walk(set);
  }

  /** The values that the trait takes somewhere in the set. */
  valuesOf(set: CarSet, trait: number): Ranges {
    const found: (readonly [number, number])[] = [];
    const seen = new Set<number>();
    const walk = (at: CarSet): void => {
      if (at === NONE || seen.has(at.id)) return;
      if (!isBranch(at) || at.trait > trait) {
        found.push(this.#span(trait));
        return;
      }
      seen.add(at.id);
      this.pieces(at).forEach(([values, next]) => {
        if (next === NONE) return;
        if (at.trait === trait) found.push(...values);
        else walk(next);
      });
    };
    walk(set);
    return ranges(found);
  }

  /** Every value at which the set begins to go on differently with this trait, somewhere in it. */
  startsOf(set: CarSet, trait: number): Set<number> {
    const found = new Set<number>();
    const seen = new Set<number>();
    const walk = (at: CarSet): void => {
      if (!isBranch(at) || at.trait > trait || seen.has(at.id)) return;
      seen.add(at.id);
      if (at.trait === trait) for (const start of at.starts) found.add(start);
      else for (const next of at.next) walk(next);
    };
    walk(set);
    return found;
  }

  /** A branch as (values, what follows), pieces that go on alike taken together, in the order of their first value. */
  pieces(branch: Branch): [Ranges, CarSet][] {
    const [, hi] = this.#span(branch.trait);
    const byNext = new Map<CarSet, [number, number][]>();
    branch.next.forEach((next, i) => {
      const piece: [number, number] = [branch.starts[i] as number, (branch.starts[i + 1] ?? hi + 1) - 1];
      const same = byNext.get(next);
      if (same) same.push(piece);
      else byNext.set(next, [piece]);
    });
    return [...byNext].map(([next, pairs]) => [ranges(pairs), next]);
  }

  /** Walks both diagrams at once, cutting each domain where either one cuts it. */
  #join(join: Join, a: CarSet, b: CarSet): CarSet {
    const settled = settle(join, a, b);
    if (settled) return settled;
    const key = a.id * 2 ** 26 + b.id;
    const known = this.#joined[join].get(key);
    if (known) return known;
    const trait = Math.min(a.trait, b.trait);
    const left = isBranch(a) && a.trait === trait ? a : undefined;
    const right = isBranch(b) && b.trait === trait ? b : undefined;
    const starts: number[] = [];
    const next: CarSet[] = [];
    let i = 0;
    let j = 0;
    let start = this.#span(trait)[0];
    while (start !== Number.POSITIVE_INFINITY) {
      starts.push(start);
      next.push(this.#join(join, left ? (left.next[i] as CarSet) : a, right ? (right.next[j] as CarSet) : b));
      const leftEnd = left?.starts[i + 1] ?? Number.POSITIVE_INFINITY;
      const rightEnd = right?.starts[j + 1] ?? Number.POSITIVE_INFINITY;
      start = Math.min(leftEnd, rightEnd);
      if (leftEnd === start) i++;
      if (rightEnd === start) j++;
    }
    const result = this.#branch(trait, starts, next);
    this.#joined[join].set(key, result);
    return result;
  }

  /** The one branch with this meaning: touching pieces that go on alike are one, and a branch with one piece is none. */
  #branch(trait: number, starts: readonly number[], next: readonly CarSet[]): CarSet {
    const keep = next.map((_, i) => i).filter((i) => i === 0 || next[i] !== next[i - 1]);
    if (keep.length === 1) return next[0] as CarSet;
    const shortStarts = keep.map((i) => starts[i] as number);
    const shortNext = keep.map((i) => next[i] as CarSet);
    const key = `${trait}:${shortStarts.join()}:${shortNext.map((set) => set.id).join()}`;
    const known = this.#made.get(key);
    if (known) return known;
    const made = { id: this.#made.size + 2, trait, starts: shortStarts, next: shortNext };
    this.#made.set(key, made);
    return made;
  }
}

function settle(join: Join, a: CarSet, b: CarSet): CarSet | undefined {
  if (join === "and") {
    if (a === NONE || b === NONE) return NONE;
    if (a === ALL || a === b) return b;
    if (b === ALL) return a;
  } else if (join === "or") {
    if (a === ALL || b === ALL) return ALL;
    if (a === NONE || a === b) return b;
    if (b === NONE) return a;
  } else {
    if (a === NONE || b === ALL || a === b) return NONE;
    if (b === NONE) return a;
  }
  return undefined;
}
