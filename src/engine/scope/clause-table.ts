/** Many clauses, each once, with their numbers in columns: going through tens of thousands of objects takes too long. */
import type { Ranges } from "./ranges.ts";
import type { Clause, FlagsClause, Scope, ValuesClause } from "./scope.ts";
import type { Space } from "./space.ts";

/** What the columns say of a clause: a range of values, a point from or before, values as bits, or nothing, as it does not fit them. */
export const OTHER = 0;
export const RANGE = 1;
export const FROM = 2;
export const BEFORE = 3;
export const BITS = 4;

/** A trait with no more values than a word has bits: its values are kept as bits. */
export const WORD = 32;

export class ClauseTable {
  /** The clauses by number. */
  readonly clauses: readonly Clause[];
  readonly kinds: Uint8Array;
  /** The trait of a range or of bits; of a point the one that it is counted by. */
  readonly traits: Uint16Array;
  /** First and last value of a range; year and number (or day) of a point, and its plant. */
  readonly a: Float64Array;
  readonly b: Float64Array;
  readonly plants: Float64Array;
  /** Bit n stands for the trait's value n from its first one on. */
  readonly bits: Int32Array;
  /** Numbers of clauses, alternative after alternative; `ends[a]` is where alternative a ends, `last[s]` the last one of scope s. */
  readonly numbers: Uint32Array;
  readonly ends: Uint32Array;
  readonly last: Uint32Array;

  constructor(space: Space, scopes: readonly Scope[]) {
    const byText = new Map<string, number>();
    const clauses: Clause[] = [];
    const numbers: number[] = [];
    const ends: number[] = [];
    const last: number[] = [];
    for (const scope of scopes) {
      for (const alternative of scope.alternatives) {
        for (const clause of alternative) {
          const key = keyOf(clause);
          let number = byText.get(key);
          if (number === undefined) {
            number = clauses.push(clause) - 1;
            byText.set(key, number);
          }
          numbers.push(number);
        }
        ends.push(numbers.length);
      }
      last.push(ends.length);
    }
    this.clauses = clauses;
    this.numbers = Uint32Array.from(numbers);
    this.ends = Uint32Array.from(ends);
    this.last = Uint32Array.from(last);
    this.kinds = new Uint8Array(clauses.length);
    this.traits = new Uint16Array(clauses.length);
    this.a = new Float64Array(clauses.length);
    this.b = new Float64Array(clauses.length);
    this.plants = new Float64Array(clauses.length);
    this.bits = new Int32Array(clauses.length);
    clauses.forEach((clause, i) => {
      if (clause.type === "point") {
        this.kinds[i] = clause.side === "from" ? FROM : BEFORE;
        this.traits[i] = space.role(clause.by) as number;
        [this.a[i], this.b[i], this.plants[i]] = [clause.year, clause.at, clause.plant];
        return;
      }
      const [trait, values] = valuesOf(clause);
      if (trait === undefined) return;
      this.traits[i] = trait;
      const [first, last] = space.span(trait);
      if (last - first < WORD) {
        this.kinds[i] = BITS;
        this.bits[i] = asBits(values, first);
      } else if (values.length === 1) {
        this.kinds[i] = RANGE;
        [this.a[i], this.b[i]] = values[0] as [number, number];
      }
    });
  }
}

/** The one trait that a clause asks for and the values it allows; no trait if there are several. */
function valuesOf(clause: ValuesClause | FlagsClause): [trait: number | undefined, values: Ranges] {
  if (clause.type === "values") return [clause.trait, clause.values];
  const wanted = clause.side === "any" ? 1 : 0;
  return [clause.traits.length === 1 ? clause.traits[0] : undefined, [[wanted, wanted]]];
}

/** Values from `first` on as bits; those that a word has no room for are left out. */
export function asBits(values: Ranges, first: number): number {
  let bits = 0;
  for (const [from, to] of values)
    for (let value = Math.max(first, from); value <= to && value - first < WORD; value++) bits |= 1 << (value - first);
  return bits;
}

function keyOf(clause: Clause): string {
  if (clause.type === "values") {
    let key = `v${clause.trait}`;
    for (const [from, to] of clause.values) key += `:${from},${to}`;
    return key;
  }
  if (clause.type === "flags") return `f${clause.side}:${clause.traits.join()}`;
  return `p${clause.side}:${clause.plant}:${clause.year}:${clause.by}:${clause.at}`;
}
