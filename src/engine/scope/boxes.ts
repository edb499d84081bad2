/**
 * A set of cars cut into boxes, for asking which of very many clauses can hold in which of them. A box allows some values of
 * each trait:
 *
 *   trait      box 0     box 1     box 2
 *   line       A         A, B      C
 *   year       1971..    1970      1970..1972
 *
 * Boxes follow the branches of the set from the top. A box that reached an end is exact; where there would be too many, one
 * stops half way and allows whatever follows. Then single cars are added as boxes of their own.
 */
import { BITS, type ClauseTable, FROM, OTHER, RANGE, WORD } from "./clause-table.ts";
import { ALL, type CarSet, isBranch, NONE } from "./diagram.ts";
import { type Car, pick } from "./pick.ts";
import type { Ranges } from "./ranges.ts";
import type { Clause, FlagsClause, PointClause } from "./scope.ts";
import type { Space } from "./space.ts";

const MOST_BOXES = 512;
const SINGLE_CARS = 64;

export const NEVER = 0;
export const SOMETIMES = 1;
export const ALWAYS = 2;

interface Box {
  readonly rest: CarSet;
  /** The trait that was cut last and its values, then the box that it was cut from. A trait that is not named may have any value. */
  readonly trait: number;
  readonly values: Ranges;
  readonly within: Box | undefined;
  /** One car and no other. */
  readonly isCar: boolean;
}

/** The boxes with one plant in the order of production, and row by row the boxes from a place on. */
interface Production {
  readonly years: Float64Array;
  readonly ats: Float64Array;
  readonly words: Int32Array;
}

export class Boxes {
  /** So many words of bits hold a bit for every box. */
  readonly words: number;
  /** The boxes of which every combination is a car of the set, and all boxes. */
  readonly exact: Int32Array;
  readonly every: Int32Array;
  /** The boxes of one car. */
  readonly single: Int32Array;
  readonly #size: number;
  readonly #spans: readonly (readonly [number, number])[];
  readonly #roles: Readonly<Record<"plant" | "year", number>>;
  /** By trait with few values: word by word for each value the boxes that allow it. */
  readonly #withValue: Int32Array[] = [];
  /** By trait: first and last value in each box, and in all of them. */
  readonly #lows: Float64Array[] = [];
  readonly #highs: Float64Array[] = [];
  readonly #low: number[] = [];
  readonly #high: number[] = [];
  /** By trait with few values: the values of all boxes together, as bits. */
  readonly #bits: number[] = [];

  readonly #productions = new Map<number, Production>();

  constructor(space: Space, cars: CarSet) {
    this.#spans = space.traits.map((_, trait) => space.span(trait));
    this.#roles = { plant: space.role("plant") ?? -1, year: space.role("year") ?? -1 };
    const below = chance();
    const parts = cut(space, cars, (trait) => this.#isSmall(trait));
    const boxes = mixed([...parts, ...singleCars(space, cars, below)], below);
    this.#size = boxes.length;
    this.words = Math.ceil(boxes.length / WORD);
    this.exact = new Int32Array(this.words);
    this.every = new Int32Array(this.words);
    this.single = new Int32Array(this.words);
    boxes.forEach(({ rest, isCar }, box) => {
      mark(this.every, 0, box);
      if (!isBranch(rest)) mark(this.exact, 0, box);
      if (isCar) mark(this.single, 0, box);
    });
    const any = this.#spans.map((span): Ranges => [span]);
    const values = any.map((all) => boxes.map(() => all));
    boxes.forEach((box, i) => {
      for (let part: Box | undefined = box; part; part = part.within)
        if (part.trait >= 0) (values[part.trait] as Ranges[])[i] = part.values;
    });
    this.#spans.forEach((span, trait) => {
      this.#keep(values[trait] as Ranges[], trait, span);
    });
  }

  #isSmall(trait: number): boolean {
    const [first, last] = this.#spans[trait] as readonly [number, number];
    return last - first < WORD;
  }

  #keep(boxes: readonly Ranges[], trait: number, span: readonly [number, number]): void {
    const [first, last] = span;
    const small = this.#isSmall(trait);
    const withValue = new Int32Array(small ? (last - first + 1) * this.words : 0);
    const lows = new Float64Array(boxes.length);
    const highs = new Float64Array(boxes.length);
    boxes.forEach((own, box) => {
      lows[box] = own[0]?.[0] ?? first;
      highs[box] = own[own.length - 1]?.[1] ?? last;
      if (!small) return;
      for (const [from, to] of own)
        for (let value = from; value <= to; value++) mark(withValue, (value - first) * this.words, box);
    });
    this.#withValue.push(withValue);
    this.#lows.push(lows);
    this.#highs.push(highs);
    this.#low.push(lows.reduce((least, low) => Math.min(least, low)));
    this.#high.push(highs.reduce((most, high) => Math.max(most, high)));
    let bits = 0;
    for (let value = 0; value * this.words < withValue.length; value++)
      if (withValue.subarray(value * this.words, (value + 1) * this.words).some((word) => word !== 0))
        bits |= 1 << value;
    this.#bits.push(bits);
  }

  /**
   * For each clause whether it can hold in no box, in some, or holds in all whatever the values are. "In some" is said where
   * first and last values alone do not show that it is none or all.
   */
  holds({ clauses, kinds, traits, a, b, plants, bits }: ClauseTable): Uint8Array {
    const result = new Uint8Array(kinds.length);
    const own = Int32Array.from(this.#bits);
    const lows = Float64Array.from(this.#low);
    const highs = Float64Array.from(this.#high);
    const roles = this.#roles;
    const [lowPlant, highPlant] = [lows[roles.plant] as number, highs[roles.plant] as number];
    const [lowYear, highYear] = [lows[roles.year] as number, highs[roles.year] as number];
    for (let i = 0; i < result.length; i++) {
      const kind = kinds[i] as number;
      if (kind === BITS) {
        const here = own[traits[i] as number] as number;
        const wanted = bits[i] as number;
        result[i] = (here & wanted) === 0 ? NEVER : (here & ~wanted) === 0 ? ALWAYS : SOMETIMES;
        continue;
      }
      if (kind === OTHER) {
        result[i] = this.#other(clauses[i] as Exclude<Clause, PointClause>);
        continue;
      }
      const [low, high] = [lows[traits[i] as number] as number, highs[traits[i] as number] as number];
      const [first, last] = [a[i] as number, b[i] as number];
      let most = SOMETIMES;
      if (kind === RANGE) {
        if (last < low || high < first) most = NEVER;
        else if (first <= low && high <= last) most = ALWAYS;
      } else {
        const plant = plants[i] as number;
        if (plant < lowPlant || highPlant < plant) continue;
        const from = kind === FROM;
        // Whether the latest and the earliest car there can be is at the point or behind it.
        const latest = highYear > first || (highYear === first && high >= last);
        const earliest = lowYear > first || (lowYear === first && low >= last);
        if (from ? !latest : earliest) most = NEVER;
        else if (lowPlant === highPlant && (from ? earliest : !latest)) most = ALWAYS;
      }
      result[i] = most;
    }
    return result;
  }

  #other(clause: Exclude<Clause, PointClause>): number {
    if (clause.type === "values") {
      const { trait, values } = clause;
      const [low, high] = [this.#low[trait] as number, this.#high[trait] as number];
      if (values.some(([from, to]) => from <= low && high <= to)) return ALWAYS;
      return values.some(([from, to]) => from <= high && low <= to) ? SOMETIMES : NEVER;
    }
    const only = (trait: number, value: 0 | 1): boolean => this.#low[trait] === value && this.#high[trait] === value;
    const [some, none] = clause.side === "any" ? [ALWAYS, NEVER] : [NEVER, ALWAYS];
    if (clause.traits.some((trait) => only(trait, 1))) return some;
    return clause.traits.every((trait) => only(trait, 0)) ? none : SOMETIMES;
  }

  /** The boxes of a word that have a value for a clause; exactly those. */
  where({ clauses, kinds, traits, a, b, plants, bits }: ClauseTable, number: number, word: number): number {
    const kind = kinds[number] as number;
    const trait = traits[number] as number;
    if (kind === BITS) return this.#withValues(trait, bits[number] as number, word);
    const [first, last] = [a[number] as number, b[number] as number];
    if (kind === RANGE) return this.#inRange(trait, first, last, word);
    if (kind !== OTHER) return this.#atPoint(kind, plants[number] as number, trait, first, last, word);
    const clause = clauses[number] as Exclude<Clause, PointClause>;
    if (clause.type === "flags") return this.#withFlags(clause, word);
    return clause.values.reduce((boxes, [from, to]) => boxes | this.#inRange(clause.trait, from, to, word), 0);
  }

  #withValues(trait: number, values: number, word: number): number {
    const withValue = this.#withValue[trait] as Int32Array;
    let boxes = 0;
    for (let rest = values, at = word; rest !== 0 && at < withValue.length; rest >>>= 1, at += this.words)
      if ((rest & 1) !== 0) boxes |= withValue[at] as number;
    return boxes;
  }

  #inRange(trait: number, first: number, last: number, word: number): number {
    const [lows, highs] = [this.#lows[trait] as Float64Array, this.#highs[trait] as Float64Array];
    const end = Math.min(this.#size, (word + 1) * WORD);
    let boxes = 0;
    for (let box = word * WORD; box < end; box++)
      if (first <= (highs[box] as number) && (lows[box] as number) <= last) boxes |= 1 << (box & 31);
    return boxes;
  }

  #withFlags({ side, traits }: FlagsClause, word: number): number {
    const value = side === "any" ? 1 : 0;
    let [some, all] = [0, -1];
    for (const trait of traits) {
      const boxes = (this.#withValue[trait] as Int32Array)[value * this.words + word] as number;
      some |= boxes;
      all &= boxes;
    }
    return side === "any" ? some : all;
  }

  /** Boxes in the order of their latest (earliest) car at the plant: a point holds in those from some place on. */
  #atPoint(kind: number, plant: number, by: number, year: number, at: number, word: number): number {
    const { years, ats, words } = this.#production(plant, kind === FROM, by);
    // The first place whose car is at the point or behind it.
    let low = 0;
    let high = years.length;
    while (low < high) {
      const middle = (low + high) >>> 1;
      const there = years[middle] as number;
      if (there > year || (there === year && (ats[middle] as number) >= at)) high = middle;
      else low = middle + 1;
    }
    // Row n of the words has the boxes from place n on; before a point it has those up to it.
    const behind = words[low * this.words + word] as number;
    return kind === FROM ? behind : (words[word] as number) & ~behind;
  }

  #production(plant: number, latest: boolean, by: number): Production {
    const key = (plant * this.#spans.length + by) * 2 + (latest ? 1 : 0);
    const known = this.#productions.get(key);
    if (known) return known;
    const ends = latest ? this.#highs : this.#lows;
    const [year, at] = [ends[this.#roles.year] as Float64Array, ends[by] as Float64Array];
    const withPlant = this.#boxesOf(this.#roles.plant, plant);
    const order = Array.from({ length: this.#size }, (_, box) => box)
      .filter(withPlant)
      .sort((a, b) => (year[a] as number) - (year[b] as number) || (at[a] as number) - (at[b] as number));
    const words = new Int32Array((order.length + 1) * this.words);
    for (let place = order.length - 1; place >= 0; place--) {
      words.copyWithin(place * this.words, (place + 1) * this.words, (place + 2) * this.words);
      mark(words, place * this.words, order[place] as number);
    }
    const made = {
      years: Float64Array.from(order, (box) => year[box] as number),
      ats: Float64Array.from(order, (box) => at[box] as number),
      words,
    };
    this.#productions.set(key, made);
    return made;
  }

  #boxesOf(trait: number, value: number): (box: number) => boolean {
    const [lows, highs] = [this.#lows[trait] as Float64Array, this.#highs[trait] as Float64Array];
    if (!this.#isSmall(trait)) return (box) => (lows[box] as number) <= value && value <= (highs[box] as number);
    const begin = (value - (this.#spans[trait] as readonly [number, number])[0]) * this.words;
    const words = this.#withValue[trait] as Int32Array;
    return (box) => ((words[begin + (box >>> 5)] as number) & (1 << (box & 31))) !== 0;
  }
}

/** Level by level, as long as there are not too many. Values with few neighbours that go on alike share a box. */
function cut(space: Space, cars: CarSet, isSmall: (trait: number) => boolean): Box[] {
  let boxes: Box[] = [{ rest: cars, trait: -1, values: [], within: undefined, isCar: false }];
  for (;;) {
    const trait = Math.min(...boxes.map(({ rest }) => rest.trait));
    if (trait === Number.POSITIVE_INFINITY) return boxes;
    const next = boxes.flatMap((box) => {
      if (!isBranch(box.rest) || box.rest.trait !== trait) return [box];
      return space.sets.pieces(box.rest).flatMap(([values, rest]) => {
        if (rest === NONE) return [];
        const parts = isSmall(trait) ? [values] : values.map((pair) => [pair]);
        return parts.map((part) => ({ rest, trait, values: part, within: box, isCar: false }));
      });
    });
    if (next.length > MOST_BOXES) return boxes;
    boxes = next;
  }
}

/** Cars here and there in the set. */
function singleCars(space: Space, cars: CarSet, below: Below): Box[] {
  return Array.from({ length: SINGLE_CARS }, () => {
    const like = new Map(
      space.traits.map((_, trait) => {
        const [first, last] = space.span(trait);
        return [trait, first + below(last - first + 1)] as const;
      }),
    );
    const car = new Map([...like, ...(pick(cars, like) as Car)]);
    return [...car].reduce<Box | undefined>(
      (within, [trait, value]) => ({ rest: ALL, trait, values: [[value, value]], within, isCar: true }),
      undefined,
    ) as Box;
  });
}

/** In any order: neighbours are much alike, and the first few boxes shall be of all sorts. */
function mixed(boxes: Box[], below: Below): Box[] {
  for (let i = boxes.length - 1; i > 0; i--) {
    const other = below(i + 1);
    [boxes[i], boxes[other]] = [boxes[other] as Box, boxes[i] as Box];
  }
  return boxes;
}

/** A whole number from 0 to below the size. */
type Below = (size: number) => number;

/** As if by chance, but the same ones every time. */
function chance(): Below {
  let state = 1;
  return (size) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * size);
  };
}

function mark(words: Int32Array, begin: number, box: number): void {
  const place = begin + (box >>> 5);
  words[place] = (words[place] as number) | (1 << (box & 31));
}
