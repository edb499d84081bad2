/**
 * What a programmer would write by hand for one car of which everything is known: the clauses in typed arrays, one loop,
 * out of an alternative at the first clause that fails and out of a scope at the first alternative that holds.
 */
import type { Car } from "../../src/engine/scope/pick.ts";
import type { Clause, Scope } from "../../src/engine/scope/scope.ts";
import type { Space } from "../../src/engine/scope/space.ts";

/** Kinds of clauses: bits of which one must be the car's; bits of which none may be; a range; a point from or before. */
const ONE_OF = 0;
const NONE_OF = 1;
const RANGE = 2;
const FROM = 3;
const BEFORE = 4;

export class TypedLoop {
  readonly #space: Space;
  readonly #kinds: Uint8Array;
  /** The word of the car that holds the bits, or the trait. */
  readonly #places: Uint8Array;
  /** Bits, or the first and last value; of a point the plant's bit with the trait, the year and the number. */
  readonly #a: Int32Array;
  readonly #b: Int32Array;
  readonly #plants: Uint8Array;
  readonly #ends: Uint32Array;
  readonly #last: Uint32Array;
  readonly #flags: readonly number[];

  constructor(space: Space, scopes: readonly Scope[]) {
    this.#space = space;
    this.#flags = space.declared.flatMap((trait, index) => (trait.kind === "flag" ? [index] : []));
    const rows: number[][] = [];
    const ends: number[] = [];
    const last: number[] = [];
    for (const scope of scopes) {
      for (const alternative of scope.alternatives) {
        for (const clause of alternative) rows.push(this.#row(clause));
        ends.push(rows.length);
      }
      last.push(ends.length);
    }
    const column = (i: number): number[] => rows.map((row) => row[i] ?? 0);
    this.#kinds = Uint8Array.from(column(0));
    this.#places = Uint8Array.from(column(1));
    this.#a = Int32Array.from(column(2));
    this.#b = Int32Array.from(column(3));
    this.#plants = Uint8Array.from(column(4));
    this.#ends = Uint32Array.from(ends);
    this.#last = Uint32Array.from(last);
  }

  #row(clause: Clause): number[] {
    if (clause.type === "flags") {
      const bits = clause.traits.reduce((sum, trait) => sum | (1 << this.#flags.indexOf(trait)), 0);
      return [clause.side === "any" ? ONE_OF : NONE_OF, this.#space.declared.length, bits];
    }
    if (clause.type === "point") {
      const at = this.#space.role(clause.by) as number;
      return [clause.side === "from" ? FROM : BEFORE, at, clause.at, clause.year, clause.plant];
    }
    const [first, last] = this.#space.span(clause.trait);
    if (last - first >= 32) {
      const [from, to] = [clause.values[0]?.[0] ?? 1, clause.values.at(-1)?.[1] ?? 0];
      if (clause.values.length > 1) throw new Error("Ranges with gaps are not made here.");
      return [RANGE, clause.trait, from, to];
    }
    let bits = 0;
    for (const [from, to] of clause.values) for (let value = from; value <= to; value++) bits |= 1 << (value - first);
    return [ONE_OF, clause.trait, bits];
  }

  /** 1 for each scope that holds, 0 for the others. */
  verdicts(car: Car): Uint8Array {
    const space = this.#space;
    const value = (trait: number | undefined): number => car.get(trait as number) as number;
    const words = Int32Array.from(space.declared, (_, trait) => 1 << ((value(trait) - space.span(trait)[0]) & 31));
    const values = Int32Array.from(space.declared, (_, trait) => value(trait));
    const equipment = this.#flags.reduce((bits, trait, i) => bits | (value(trait) << i), 0);
    const all = Int32Array.from([...words, equipment]);
    const [ownPlant, ownYear] = [value(space.role("plant")), value(space.role("year"))];
    const [kinds, places, a, b, plants] = [this.#kinds, this.#places, this.#a, this.#b, this.#plants];
    const [ends, last] = [this.#ends, this.#last];
    const result = new Uint8Array(last.length);
    let alternative = 0;
    for (let scope = 0; scope < result.length; scope++) {
      const end = last[scope] as number;
      for (; alternative < end; alternative++) {
        const stop = ends[alternative] as number;
        let at = alternative === 0 ? 0 : (ends[alternative - 1] as number);
        for (; at < stop; at++) {
          const place = places[at] as number;
          const kind = kinds[at] as number;
          if (kind === ONE_OF) {
            if (((all[place] as number) & (a[at] as number)) === 0) break;
          } else if (kind === NONE_OF) {
            if (((all[place] as number) & (a[at] as number)) !== 0) break;
          } else if (kind === RANGE) {
            const own = values[place] as number;
            if (own < (a[at] as number) || own > (b[at] as number)) break;
          } else {
            if (plants[at] !== ownPlant) break;
            const years = ownYear - (b[at] as number);
            const reached = years > 0 || (years === 0 && (values[place] as number) >= (a[at] as number));
            if (reached !== (kind === FROM)) break;
          }
        }
        if (at === stop) {
          result[scope] = 1;
          alternative = end;
          break;
        }
      }
    }
    return result;
  }
}
