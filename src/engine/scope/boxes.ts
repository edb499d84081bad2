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
import { type ClauseTable, FROM, OTHER, RANGE } from "./clause-table.ts";
import { ALL, type CarSet, isBranch, NONE } from "./diagram.ts";
import { type Car, pick } from "./pick.ts";
import type { Ranges } from "./ranges.ts";
import type { Clause, FlagsClause, PointClause } from "./scope.ts";
import type { Space } from "./space.ts";

const MOST_BOXES = 512;
const SINGLE_CARS = 256;
/** A trait with no more values than a word has bits is kept as bits, any other by its first and last value. */
const BITS = 32;

export const NEVER = 0;
export const SOMETIMES = 1;
export const ALWAYS = 2;

interface Box {
  readonly rest: CarSet;
  /** The trait that was cut last and its values, then the box that it was cut from. A trait that is not named may have any value. */
  readonly trait: number;
  readonly values: Ranges;
  readonly within: Box | undefined;
}

/** The boxes with one plant in the order of production, and row by row the boxes from a place on. */
interface Production {
  readonly order: readonly number[];
  readonly years: Float64Array;
  readonly ats: Float64Array;
  readonly words: Int32Array;
}

type PointRole = "plant" | "year" | "sequence" | "date";

export class Boxes {
  /** So many words of bits hold a bit for every box. */
  readonly words: number;
  /** The boxes of which every combination is a car of the set, and all boxes. */
  readonly exact: Int32Array;
  readonly every: Int32Array;
  readonly #size: number;
  readonly #spans: readonly (readonly [number, number])[];
  readonly #roles: Readonly<Record<PointRole, number>>;
  /** By trait with few values: word by word for each value the boxes that allow it. */
  readonly #withValue: Int32Array[] = [];
  /** By trait: first and last value in each box, and in all of them. */
  readonly #lows: Float64Array[] = [];
  readonly #highs: Float64Array[] = [];
  readonly #low: number[] = [];
  readonly #high: number[] = [];
  /** By trait with few values: the values of all boxes together, as bits. */
  readonly #bits: number[] = [];

  readonly #productions = new Map<string, Production>();

  constructor(space: Space, cars: CarSet) {
    this.#spans = space.traits.map((_, trait) => space.span(trait));
    const role = (name: PointRole): number => space.role(name) ?? -1;
    this.#roles = { plant: role("plant"), year: role("year"), sequence: role("sequence"), date: role("date") };
    const boxes = cut(space, cars, (trait) => this.#isSmall(trait));
    if (boxes.some(({ rest }) => isBranch(rest))) boxes.push(...singleCars(space, cars));
    this.#size = boxes.length;
    this.words = Math.ceil(boxes.length / BITS);
    this.exact = new Int32Array(this.words);
    this.every = new Int32Array(this.words);
    boxes.forEach(({ rest }, box) => {
      mark(this.every, 0, box);
      if (!isBranch(rest)) mark(this.exact, 0, box);
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
    return last - first < BITS;
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
  holds({ clauses, kinds, traits, a, b, plants }: ClauseTable): Uint8Array {
    const result = new Uint8Array(kinds.length);
    const lows = Float64Array.from(this.#low);
    const highs = Float64Array.from(this.#high);
    const { plant, year } = this.#roles;
    const [lowPlant, highPlant] = [lows[plant] as number, highs[plant] as number];
    const [lowYear, highYear] = [lows[year] as number, highs[year] as number];
    for (let i = 0; i < result.length; i++) {
      const kind = kinds[i] as number;
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
        const own = plants[i] as number;
        if (own < lowPlant || highPlant < own) continue;
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
      if (this.#isSmall(trait)) {
        const [own, wanted] = [this.#bits[trait] as number, this.#asBits(trait, values)];
        return (own & wanted) === 0 ? NEVER : (own & ~wanted) === 0 ? ALWAYS : SOMETIMES;
      }
      const [low, high] = [this.#low[trait] as number, this.#high[trait] as number];
      if (values.some(([from, to]) => from <= low && high <= to)) return ALWAYS;
      return values.some(([from, to]) => from <= high && low <= to) ? SOMETIMES : NEVER;
    }
    const only = (trait: number, value: 0 | 1): boolean => this.#low[trait] === value && this.#high[trait] === value;
    const [some, none] = clause.side === "any" ? [ALWAYS, NEVER] : [NEVER, ALWAYS];
    if (clause.traits.some((trait) => only(trait, 1))) return some;
    return clause.traits.every((trait) => only(trait, 0)) ? none : SOMETIMES;
  }

  /** Writes for a clause the bits of the boxes that have a value for it; exactly those. */
  write(clause: Clause, into: Int32Array, begin: number): void {
    if (clause.type === "flags") this.#writeFlags(clause, into, begin);
    else if (clause.type === "point") this.#writePoint(clause, into, begin);
    else if (this.#isSmall(clause.trait)) {
      const [first, last] = this.#spans[clause.trait] as readonly [number, number];
      for (const [from, to] of clause.values)
        for (let value = Math.max(first, from); value <= to && value <= last; value++)
          this.#add(clause.trait, value - first, into, begin);
    } else {
      const [lows, highs] = [this.#lows[clause.trait] as Float64Array, this.#highs[clause.trait] as Float64Array];
      for (const [from, to] of clause.values)
        for (let box = 0; box < this.#size; box++)
          if (from <= (highs[box] as number) && (lows[box] as number) <= to) mark(into, begin, box);
    }
  }

  #writeFlags({ side, traits }: FlagsClause, into: Int32Array, begin: number): void {
    if (side === "any") {
      for (const trait of traits) this.#add(trait, 1, into, begin);
      return;
    }
    for (let word = 0; word < this.words; word++) {
      let can = this.every[word] as number;
      for (const trait of traits) can &= (this.#withValue[trait] as Int32Array)[word] as number;
      into[begin + word] = can;
    }
  }

  /** Boxes in the order of their latest (earliest) car at the plant: a point holds in those from some place on. */
  #writePoint(point: PointClause, into: Int32Array, begin: number): void {
    const from = point.side === "from";
    const { order, years, ats, words } = this.#production(point);
    // The first place whose car is at the point or behind it.
    let low = 0;
    let high = order.length;
    while (low < high) {
      const middle = (low + high) >>> 1;
      const year = years[middle] as number;
      if (year > point.year || (year === point.year && (ats[middle] as number) >= point.at)) high = middle;
      else low = middle + 1;
    }
    // Row n of the words has the boxes from place n on; before a point it has those up to it.
    const row = low * this.words;
    for (let word = 0; word < this.words; word++)
      into[begin + word] = from
        ? (words[row + word] as number)
        : (words[word] as number) & ~(words[row + word] as number);
  }

  #production({ plant, side, by }: PointClause): Production {
    const key = `${plant} ${side} ${by}`;
    const known = this.#productions.get(key);
    if (known) return known;
    const ends = side === "from" ? this.#highs : this.#lows;
    const [year, at] = [ends[this.#roles.year] as Float64Array, ends[this.#roles[by]] as Float64Array];
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
      order,
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

  #add(trait: number, place: number, into: Int32Array, begin: number): void {
    const words = this.#withValue[trait] as Int32Array;
    for (let word = 0; word < this.words; word++)
      into[begin + word] = (into[begin + word] as number) | (words[place * this.words + word] as number);
  }

  #asBits(trait: number, values: Ranges): number {
    const first = (this.#spans[trait] as readonly [number, number])[0];
    let bits = 0;
    for (const [from, to] of values)
      for (let value = Math.max(first, from); value <= to && value - first < BITS; value++)
        bits |= 1 << (value - first);
    return bits;
  }
}

/** Level by level, as long as there are not too many. Values with few neighbours that go on alike share a box. */
function cut(space: Space, cars: CarSet, isSmall: (trait: number) => boolean): Box[] {
  let boxes: Box[] = [{ rest: cars, trait: -1, values: [], within: undefined }];
  for (;;) {
    const trait = Math.min(...boxes.map(({ rest }) => rest.trait));
    if (trait === Number.POSITIVE_INFINITY) return boxes;
    const next = boxes.flatMap((box) => {
      if (!isBranch(box.rest) || box.rest.trait !== trait) return [box];
      return space.sets.pieces(box.rest).flatMap(([values, rest]) => {
        if (rest === NONE) return [];
        const parts = isSmall(trait) ? [values] : values.map((pair) => [pair]);
        return parts.map((part) => ({ rest, trait, values: part, within: box }));
      });
    });
    if (next.length > MOST_BOXES) return boxes;
    boxes = next;
  }
}

/** Cars here and there in the set, the same ones every time. */
function singleCars(space: Space, cars: CarSet): Box[] {
  let state = 1;
  const below = (size: number): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * size);
  };
  return Array.from({ length: SINGLE_CARS }, () => {
    const like = new Map(
      space.traits.map((_, trait) => {
        const [first, last] = space.span(trait);
        return [trait, first + below(last - first + 1)] as const;
      }),
    );
    const car = new Map([...like, ...(pick(cars, like) as Car)]);
    return [...car].reduce<Box | undefined>(
      (within, [trait, value]) => ({ rest: ALL, trait, values: [[value, value]], within }),
      undefined,
    ) as Box;
  });
}

function mark(words: Int32Array, begin: number, box: number): void {
  const place = begin + (box >>> 5);
  words[place] = (words[place] as number) | (1 << (box & 31));
}
