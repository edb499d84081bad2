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
import { type Ranges, ranges } from "./ranges.ts";

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
  readonly #made = new MadeBranches();
  readonly #joined: Record<Join, Joined> = { and: new Joined(), or: new Joined(), minus: new Joined() };

  readonly #traitsOf = new Map<CarSet, ReadonlySet<number>>();
  /** By trait, then by set. */
  readonly #valuesOf = new Map<number, Map<CarSet, Ranges>>();

  readonly #apart = new Pairs();
  readonly #inside = new Pairs();

  constructor(span: (trait: number) => readonly [number, number]) {
    this.#span = span;
  }

  /** The cars whose trait has one of these values. */
  where(trait: number, values: Ranges): CarSet {
    const [lo, hi] = this.#span(trait);
    const pieces = new Pieces();
    let start = lo;
    for (const [from, to] of values) {
      if (to < start || from > hi) continue;
      if (from > start) pieces.add(start, NONE);
      pieces.add(Math.max(from, start), ALL);
      start = to + 1;
    }
    if (start <= hi) pieces.add(start, NONE);
    return this.#branch(trait, pieces);
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

  /** Whether some car is in both. No set is made for the answer, and the walk ends at the first such car. */
  meet(a: CarSet, b: CarSet): boolean {
    if (a === NONE || b === NONE) return false;
    if (!isBranch(a) || !isBranch(b) || a === b) return true;
    const [one, other] = a.id < b.id ? [a, b] : [b, a];
    if (this.#apart.has(one.id, other.id)) return false;
    const found = somePiece(one, other, (x, y) => this.meet(x, y));
    if (!found) this.#apart.add(one.id, other.id);
    return found;
  }

  /** Whether every car of the one is in the other. */
  within(a: CarSet, b: CarSet): boolean {
    if (a === NONE || b === ALL || a === b) return true;
    // Equal sets are the same object: whatever is neither NONE nor ALL lacks a car and has one.
    if (a === ALL || b === NONE) return false;
    if (this.#inside.has(a.id, b.id)) return true;
    const found = somePiece(a as Branch, b as Branch, (x, y) => !this.within(x, y));
    if (!found) this.#inside.add(a.id, b.id);
    return !found;
  }

  /** What is left of the set when these traits are no longer looked at: a car is in if some value of them puts it in. */
  forget(set: CarSet, traits: ReadonlySet<number>): CarSet {
    return this.#project(set, (trait) => !traits.has(trait), Number.POSITIVE_INFINITY);
  }

  /** The same, naming the traits that are still looked at. */
  keep(set: CarSet, traits: readonly number[]): CarSet {
    return this.#project(set, (trait) => traits.includes(trait), Math.max(...traits));
  }

  #project(set: CarSet, kept: (trait: number) => boolean, last: number): CarSet {
    const seen = new Map<number, CarSet>();
    const walk = (at: CarSet): CarSet => {
      if (!isBranch(at)) return at;
      // Some car follows from every branch, and nobody looks at what it is.
      if (at.trait > last) return ALL;
      const known = seen.get(at.id);
      if (known) return known;
      let result: CarSet = NONE;
      if (kept(at.trait)) {
        const pieces = new Pieces();
        at.next.forEach((next, i) => {
          pieces.add(at.starts[i] as number, walk(next));
        });
        result = this.#branch(at.trait, pieces);
      } else
        for (const next of at.next) {
          result = this.or(result, walk(next));
          if (result === ALL) break;
        }
      seen.set(at.id, result);
      return result;
    };
    return walk(set);
  }

  /** The branches of a set that ask for this trait, and whether some of its cars are in whatever the trait is. */
  asking(set: CarSet, trait: number): { branches: Branch[]; unasked: boolean } {
    const branches: Branch[] = [];
    const seen = new Set<number>();
    let unasked = false;
    const walk = (at: CarSet): void => {
      if (at === NONE) return;
      if (!isBranch(at) || at.trait > trait) {
        unasked = true;
        return;
      }
      if (seen.has(at.id)) return;
      seen.add(at.id);
      if (at.trait === trait) branches.push(at);
      else for (const next of at.next) walk(next);
    };
    walk(set);
    return { branches, unasked };
  }

  /** The values that the trait takes somewhere in the set. */
  valuesOf(set: CarSet, trait: number): Ranges {
    const asked = this.#valuesOf.get(trait) ?? new Map<CarSet, Ranges>();
    this.#valuesOf.set(trait, asked);
    const known = asked.get(set) ?? this.#findValues(set, trait);
    asked.set(set, known);
    return known;
  }

  #findValues(set: CarSet, trait: number): Ranges {
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

  /** The traits that it depends on whether a car is in the set. */
  traitsOf(set: CarSet): ReadonlySet<number> {
    const known = this.#traitsOf.get(set);
    if (known) return known;
    const found = new Set<number>();
    if (isBranch(set)) {
      found.add(set.trait);
      for (const next of set.next) for (const trait of this.traitsOf(next)) found.add(trait);
    }
    this.#traitsOf.set(set, found);
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
    // In these two the order does not matter.
    if (join !== "minus" && a.id > b.id) return this.#joinOnce(join, b, a);
    return this.#joinOnce(join, a, b);
  }

  #joinOnce(join: Join, a: CarSet, b: CarSet): CarSet {
    const known = this.#joined[join].get(a, b);
    if (known) return known;
    const trait = Math.min(a.trait, b.trait);
    const left = isBranch(a) && a.trait === trait ? a : undefined;
    const right = isBranch(b) && b.trait === trait ? b : undefined;
    const pieces = new Pieces();
    let i = 0;
    let j = 0;
    let start = (left ?? (right as Branch)).starts[0] as number;
    while (start !== Number.POSITIVE_INFINITY) {
      pieces.add(start, this.#join(join, left ? (left.next[i] as CarSet) : a, right ? (right.next[j] as CarSet) : b));
      const leftEnd = left && i + 1 < left.starts.length ? (left.starts[i + 1] as number) : Number.POSITIVE_INFINITY;
      const rightEnd =
        right && j + 1 < right.starts.length ? (right.starts[j + 1] as number) : Number.POSITIVE_INFINITY;
      start = Math.min(leftEnd, rightEnd);
      if (leftEnd === start) i++;
      if (rightEnd === start) j++;
    }
    const result = this.#branch(trait, pieces);
    this.#joined[join].set(a, b, result);
    return result;
  }

  /** The one branch with this meaning; a branch with one piece is none. */
  #branch(trait: number, { starts, next }: Pieces): CarSet {
    return next.length === 1 ? (next[0] as CarSet) : this.#made.branch(trait, starts, next);
  }
}

/** Pieces of a domain in the making: touching pieces that go on alike are one. */
class Pieces {
  readonly starts: number[] = [];
  readonly next: CarSet[] = [];

  add(start: number, next: CarSet): void {
    if (this.next.length > 0 && this.next[this.next.length - 1] === next) return;
    this.starts.push(start);
    this.next.push(next);
  }
}

/** Every branch once. A table of their numbers, each as near as can be to the place that its hash gives; half of it stays free. */
class MadeBranches {
  readonly #branches: Branch[] = [];
  readonly #hashes: number[] = [];
  #table = new Int32Array(1024).fill(-1);

  branch(trait: number, starts: readonly number[], next: readonly CarSet[]): Branch {
    let hash = trait;
    for (let i = 0; i < next.length; i++) {
      hash = Math.imul(hash ^ (starts[i] as number), 0x9e3779b1);
      hash = Math.imul((hash ^ (hash >>> 15)) + (next[i] as CarSet).id, 0x85ebca77);
    }
    hash ^= hash >>> 13;
    const mask = this.#table.length - 1;
    let place = hash & mask;
    for (; (this.#table[place] as number) >= 0; place = (place + 1) & mask) {
      const number = this.#table[place] as number;
      if (this.#hashes[number] === hash && isAlike(this.#branches[number] as Branch, trait, starts, next))
        return this.#branches[number] as Branch;
    }
    // Copies, as lists that grew keep room for more.
    const made = { id: this.#branches.length + 2, trait, starts: starts.slice(), next: next.slice() };
    this.#table[place] = this.#branches.push(made) - 1;
    this.#hashes.push(hash);
    if (this.#branches.length * 2 > this.#table.length) this.#grow();
    return made;
  }

  #grow(): void {
    const table = new Int32Array(this.#table.length * 2).fill(-1);
    const mask = table.length - 1;
    this.#hashes.forEach((hash, number) => {
      let place = hash & mask;
      while ((table[place] as number) >= 0) place = (place + 1) & mask;
      table[place] = number;
    });
    this.#table = table;
  }
}

function isAlike(branch: Branch, trait: number, starts: readonly number[], next: readonly CarSet[]): boolean {
  if (branch.trait !== trait || branch.next.length !== next.length) return false;
  for (let i = 0; i < next.length; i++) if (branch.next[i] !== next[i] || branch.starts[i] !== starts[i]) return false;
  return true;
}

const FEWEST_JOINED = 2 ** 10;
const MOST_JOINED = 2 ** 18;

/**
 * What joins came to. Each pair has one place, and a later pair takes it from an earlier one: what is forgotten is worked
 * out again, to the same object, and a page that stays open for long does not fill up.
 */
class Joined {
  #a = new Int32Array(FEWEST_JOINED);
  #b = new Int32Array(FEWEST_JOINED);
  #results: CarSet[] = new Array(FEWEST_JOINED).fill(NONE);
  #written = 0;

  get(a: CarSet, b: CarSet): CarSet | undefined {
    const place = placeOf(a.id, b.id, this.#a.length);
    return this.#a[place] === a.id && this.#b[place] === b.id ? this.#results[place] : undefined;
  }

  set(a: CarSet, b: CarSet, result: CarSet): void {
    if (++this.#written > this.#a.length && this.#a.length < MOST_JOINED) this.#grow();
    this.#put(a.id, b.id, result);
  }

  #put(a: number, b: number, result: CarSet): void {
    const place = placeOf(a, b, this.#a.length);
    this.#a[place] = a;
    this.#b[place] = b;
    this.#results[place] = result;
  }

  #grow(): void {
    const [as, bs, results] = [this.#a, this.#b, this.#results];
    this.#a = new Int32Array(as.length * 4);
    this.#b = new Int32Array(as.length * 4);
    this.#results = new Array(as.length * 4).fill(NONE);
    this.#written = 0;
    // No pair of branches has the number 0 twice: such places are free.
    as.forEach((a, i) => {
      if (a !== 0 || bs[i] !== 0) this.#put(a, bs[i] as number, results[i] as CarSet);
    });
  }
}

/** Pairs of which something was found out, kept in the same way. */
class Pairs {
  #a = new Int32Array(FEWEST_JOINED);
  #b = new Int32Array(FEWEST_JOINED);
  #written = 0;

  has(a: number, b: number): boolean {
    const place = placeOf(a, b, this.#a.length);
    return this.#a[place] === a && this.#b[place] === b;
  }

  add(a: number, b: number): void {
    if (++this.#written > this.#a.length && this.#a.length < MOST_JOINED) {
      const [as, bs] = [this.#a, this.#b];
      this.#a = new Int32Array(as.length * 4);
      this.#b = new Int32Array(as.length * 4);
      as.forEach((one, i) => {
        this.#put(one, bs[i] as number);
      });
      this.#written = 0;
    }
    this.#put(a, b);
  }

  #put(a: number, b: number): void {
    const place = placeOf(a, b, this.#a.length);
    this.#a[place] = a;
    this.#b[place] = b;
  }
}

/** Whether it is so of what follows in both for some piece of the domain that the first trait of the two has. */
function somePiece(a: Branch, b: Branch, so: (a: CarSet, b: CarSet) => boolean): boolean {
  if (a.trait < b.trait) return a.next.some((next) => so(next, b));
  if (a.trait > b.trait) return b.next.some((next) => so(a, next));
  let i = 0;
  let j = 0;
  for (;;) {
    if (so(a.next[i] as CarSet, b.next[j] as CarSet)) return true;
    const [aEnd, bEnd] = [a.starts[i + 1] ?? Number.POSITIVE_INFINITY, b.starts[j + 1] ?? Number.POSITIVE_INFINITY];
    if (aEnd === bEnd && aEnd === Number.POSITIVE_INFINITY) return false;
    if (aEnd <= bEnd) i++;
    if (bEnd <= aEnd) j++;
  }
}

function placeOf(a: number, b: number, size: number): number {
  const hash = Math.imul(Math.imul(a, 0x9e3779b1) ^ b, 0x85ebca77);
  return (hash ^ (hash >>> 15)) & (size - 1);
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
