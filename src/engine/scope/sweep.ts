/**
 * Does each of very many scopes hold for the car at hand? The same answer as `applies`, scope by scope, with the work that
 * scopes have in common done once.
 *
 * Let K be the cars that the car at hand can be.
 *
 *   Clauses that read the same are looked at once. A clause holds for none of K, for all of K, or for some.
 *   If every clause of an alternative holds for all of K, so does the alternative; if one holds for none, it does not hold.
 *   A scope with an alternative that holds for all is *yes*; one without an alternative left is *no*.
 *   For the rest, a few cars of K stand witness: where the scope holds for one witness and not for another, it is *look first*.
 *   Only where the witnesses agree and the clauses do not decide are the sets themselves joined.
 *
 * Every shortcut is a proof, so nothing is lost by taking it. Why not join the sets for every scope? That costs some
 * microseconds each, and a page asks about thousands of records after every tap.
 */
import { APPLIES, type Applies, applies } from "./applies.ts";
import { type CarSet, NONE } from "./diagram.ts";
import { type Car, pick } from "./pick.ts";
import { includes, outside, type Ranges, shared } from "./ranges.ts";
import { carsOf } from "./read-scope.ts";
import type { Clause, Scope } from "./scope.ts";
import type { Space } from "./space.ts";

/** How many cars stand witness: the bits of two words. */
const WITNESSES = 64;
const NONE_OF_THEM = 0;
const SOME_OF_THEM = 1;
const ALL_OF_THEM = 2;

export class Sweep {
  readonly #space: Space;
  readonly #scopes: readonly Scope[];
  /** Every clause once. */
  readonly #clauses: readonly Clause[];
  /** Numbers of clauses, alternative after alternative; `#ends[a]` is where alternative a ends, `#last[s]` the last one of scope s. */
  readonly #numbers: Uint32Array;
  readonly #ends: Uint32Array;
  readonly #last: Uint32Array;

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
    this.#space = space;
    this.#scopes = scopes;
    this.#clauses = clauses;
    this.#numbers = Uint32Array.from(numbers);
    this.#ends = Uint32Array.from(ends);
    this.#last = Uint32Array.from(last);
  }

  /** The verdict on each scope, in their order. */
  verdicts(cars: CarSet): Applies[] {
    return Array.from(this.verdictNumbers(cars), (number) => APPLIES[number] as Applies);
  }

  /** The same as numbers: the place of each verdict in `APPLIES`. */
  verdictNumbers(cars: CarSet): Uint8Array {
    const result = new Uint8Array(this.#scopes.length);
    if (cars === NONE) return result.fill(APPLIES.indexOf("no such car"));
    const [yes, no, look] = [APPLIES.indexOf("yes"), APPLIES.indexOf("no"), APPLIES.indexOf("look first")];
    const { holds, low, high, everyLow, everyHigh } = this.#lookAtClauses(cars);
    const numbers = this.#numbers;
    let at = 0;
    let alternative = 0;
    for (let s = 0; s < result.length; s++) {
      let all = false;
      let possible = false;
      let seenLow = 0;
      let seenHigh = 0;
      for (const end = this.#last[s] as number; alternative < end; alternative++) {
        let least = ALL_OF_THEM;
        let inLow = everyLow;
        let inHigh = everyHigh;
        for (const stop = this.#ends[alternative] as number; at < stop; at++) {
          const clause = numbers[at] as number;
          const here = holds[clause] as number;
          if (here < least) least = here;
          inLow &= low[clause] as number;
          inHigh &= high[clause] as number;
        }
        if (least === ALL_OF_THEM) all = true;
        if (least !== NONE_OF_THEM) {
          possible = true;
          seenLow |= inLow;
          seenHigh |= inHigh;
        }
      }
      if (all) result[s] = yes;
      else if (!possible) result[s] = no;
      else if ((seenLow | seenHigh) !== 0 && (seenLow !== everyLow || seenHigh !== everyHigh)) result[s] = look;
      else result[s] = APPLIES.indexOf(applies(this.#space.sets, cars, (this.#scopes[s] as Scope).cars));
    }
    return result;
  }

  /** For each clause whether it holds for none, some or all of the cars, and for which of the witnesses. */
  #lookAtClauses(cars: CarSet) {
    const size = this.#clauses.length;
    const holds = new Uint8Array(size);
    const low = new Int32Array(size);
    const high = new Int32Array(size);
    const possible = new Map<number, Ranges>();
    const valuesOf = (trait: number): Ranges => {
      const known = possible.get(trait) ?? this.#space.sets.valuesOf(cars, trait);
      possible.set(trait, known);
      return known;
    };
    this.#clauses.forEach((clause, i) => {
      holds[i] =
        clause.type === "values" ? compare(valuesOf(clause.trait), clause.values) : this.#compareSets(cars, clause);
    });
    const witnesses = this.#chooseWitnesses(cars, holds);
    this.#clauses.forEach((clause, i) => {
      // A clause that holds for all or none needs no witness.
      if (holds[i] !== SOME_OF_THEM) {
        low[i] = high[i] = holds[i] === ALL_OF_THEM ? -1 : 0;
        return;
      }
      witnesses.forEach((car, w) => {
        if (!this.#holdsFor(car, clause, valuesOf)) return;
        if (w < 32) low[i] = (low[i] as number) | (1 << w);
        else high[i] = (high[i] as number) | (1 << (w - 32));
      });
    });
    const ones = (count: number): number => (count >= 32 ? -1 : (1 << Math.max(0, count)) - 1);
    return { holds, low, high, everyLow: ones(witnesses.length), everyHigh: ones(witnesses.length - 32) };
  }

  #compareSets(cars: CarSet, clause: Clause): number {
    const verdict = applies(this.#space.sets, cars, carsOf(this.#space, clause));
    return verdict === "yes" ? ALL_OF_THEM : verdict === "no" ? NONE_OF_THEM : SOME_OF_THEM;
  }

  /** Cars that differ where clauses differ: for clauses that hold for some, one car inside and one outside, spread over all of them. */
  #chooseWitnesses(cars: CarSet, holds: Uint8Array): Car[] {
    const open = this.#clauses.filter((_, i) => holds[i] === SOME_OF_THEM);
    const step = Math.max(1, Math.floor((open.length * 2) / WITNESSES));
    const witnesses: Car[] = [];
    for (let i = 0; i < open.length && witnesses.length < WITNESSES - 1; i += step) {
      const set = carsOf(this.#space, open[i] as Clause);
      // Each is drawn near to an earlier one in turn, and far from it in the clause at hand.
      const near = witnesses[(i * 7) % Math.max(1, witnesses.length)];
      for (const side of [this.#space.sets.and(cars, set), this.#space.sets.minus(cars, set)]) {
        const car = pick(side, near);
        if (car) witnesses.push(car);
      }
    }
    return witnesses;
  }

  /** A trait that the car does not name may have any value in it; the first possible one is taken, the same for every clause. */
  #holdsFor(car: Car, clause: Clause, valuesOf: (trait: number) => Ranges): boolean {
    const value = (trait: number): number => car.get(trait) ?? valuesOf(trait)[0]?.[0] ?? 0;
    if (clause.type === "values") return includes(clause.values, value(clause.trait));
    if (clause.type === "flags") return (clause.side === "any") === clause.traits.some((trait) => value(trait) === 1);
    const [plant, year, at] = (["plant", "year", clause.by] as const).map((role) =>
      value(this.#space.role(role) as number),
    );
    if (plant !== clause.plant || year === undefined || at === undefined) return false;
    if (clause.side === "from") return year > clause.year || (year === clause.year && at >= clause.at);
    return year < clause.year || (year === clause.year && at < clause.at);
  }
}

function compare(possible: Ranges, values: Ranges): number {
  if (shared(possible, values).length === 0) return NONE_OF_THEM;
  const [first, last] = [possible[0]?.[0] ?? 0, possible.at(-1)?.[1] ?? 0];
  return shared(possible, outside(values, [first, last])).length === 0 ? ALL_OF_THEM : SOME_OF_THEM;
}

function keyOf(clause: Clause): string {
  if (clause.type === "values") return `v${clause.trait}:${clause.values.join()}`;
  if (clause.type === "flags") return `f${clause.side}:${clause.traits.join()}`;
  return `p${clause.side}:${clause.plant}:${clause.year}:${clause.by}:${clause.at}`;
}
