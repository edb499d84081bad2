/**
 * Does each of very many scopes hold for the car at hand? The same answer as `applies`, scope by scope, with the work that
 * scopes have in common done once.
 *
 * Let K be the cars that the car at hand can be. K is cut into boxes: a box allows some values of each trait. Some boxes are
 * exact, every combination of their values is a car of K; the rest hold more than that. Single cars of K join them as
 * small exact boxes.
 *
 *   A clause can hold in a box when the box has a value for it. Bit by bit, a box a bit, this is worked out once a clause.
 *   If every clause of an alternative holds in all boxes, the scope is *yes*.
 *   An alternative can hold in a box only where each of its clauses can. If there is no such box for any alternative: *no*.
 *   An alternative whose clauses ask for different traits does hold for a car of an exact box where each clause can hold.
 *   A box in which no alternative can hold has a car outside the scope. A car inside and a car outside: *look first*.
 *   Whatever is still not known, a car inside or a car outside, is looked for in the sets themselves.
 *
 * Every shortcut is a proof, so nothing is lost by taking it. Why not ask the sets for every scope? That costs some
 * microseconds each, and a page asks about thousands of records after every tap.
 */
import { APPLIES, type Applies } from "./applies.ts";
import { ALWAYS, Boxes, NEVER } from "./boxes.ts";
import { ClauseTable } from "./clause-table.ts";
import { type CarSet, NONE } from "./diagram.ts";
import type { Alternative, Clause, Scope } from "./scope.ts";
import type { Space } from "./space.ts";

export class Sweep {
  readonly #space: Space;
  readonly #scopes: readonly Scope[];
  readonly #table: ClauseTable;
  /** By alternative, whether its clauses ask for different traits. */
  readonly #apart: Uint8Array;
  /** Room for the bits of clauses, and where those of each begin; kept from one car to the next, as asking for much room anew takes long. */
  #bits = new Int32Array(1024);
  readonly #begins: Uint32Array;

  constructor(space: Space, scopes: readonly Scope[]) {
    this.#space = space;
    this.#scopes = scopes;
    this.#table = new ClauseTable(space, scopes);
    this.#begins = new Uint32Array(this.#table.clauses.length);
    const apart: number[] = [];
    for (const scope of scopes)
      for (const alternative of scope.alternatives) apart.push(areApart(space, alternative) ? 1 : 0);
    this.#apart = Uint8Array.from(apart);
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
    const { sets } = this.#space;
    const boxes = new Boxes(this.#space, cars);
    const { words, exact, every } = boxes;
    const { clauses, numbers, ends, last, longest } = this.#table;
    const holds = boxes.holds(this.#table);
    /** Where the bits of a clause begin, once they are asked for; the first place stays free. */
    const begins = this.#begins.fill(0);
    let bits = this.#bits;
    let used = words;
    const bitsOf = (clause: number): number => {
      if (used + words > bits.length) {
        this.#bits = new Int32Array(bits.length * 2);
        this.#bits.set(bits);
        bits = this.#bits;
      }
      bits.fill(0, used, used + words);
      boxes.write(clauses[clause] as Clause, bits, used);
      begins[clause] = used;
      used += words;
      return used - words;
    };
    const open = new Uint32Array(longest);
    const seen = new Int32Array(words);
    let alternative = 0;
    for (let s = 0; s < result.length; s++) {
      const end = last[s] as number;
      let all = false;
      let inside = false;
      let possible = false;
      for (; alternative < end && !all; alternative++) {
        const stop = ends[alternative] as number;
        let at = alternative === 0 ? 0 : (ends[alternative - 1] as number);
        let count = 0;
        for (; at < stop; at++) {
          const clause = numbers[at] as number;
          const here = holds[clause] as number;
          if (here === NEVER) break;
          if (here !== ALWAYS) open[count++] = clause;
        }
        if (at < stop) continue;
        if (count === 0) {
          all = true;
          continue;
        }
        for (let i = 0; i < count; i++) open[i] = begins[open[i] as number] || bitsOf(open[i] as number);
        if (!possible) seen.fill(0);
        possible = true;
        let certain = 0;
        for (let word = 0; word < words; word++) {
          let can = bits[(open[0] as number) + word] as number;
          for (let i = 1; i < count; i++) can &= bits[(open[i] as number) + word] as number;
          seen[word] = (seen[word] as number) | can;
          certain |= can & (exact[word] as number);
        }
        if (certain !== 0 && this.#apart[alternative] === 1) inside = true;
      }
      alternative = end;
      if (all) {
        result[s] = yes;
        continue;
      }
      let some = 0;
      let outside = false;
      if (possible)
        for (let word = 0; word < words; word++) {
          some |= seen[word] as number;
          if (seen[word] !== every[word]) outside = true;
        }
      if (some === 0) {
        result[s] = no;
        continue;
      }
      const scope = (this.#scopes[s] as Scope).cars;
      if (!inside && !sets.meet(cars, scope)) result[s] = no;
      else result[s] = outside || !sets.within(cars, scope) ? look : yes;
    }
    return result;
  }
}

function areApart(space: Space, alternative: Alternative): boolean {
  const seen = new Set<number>();
  let traits = 0;
  for (const clause of alternative)
    for (const trait of traitsOf(space, clause)) {
      traits++;
      seen.add(trait);
    }
  return seen.size === traits;
}

function traitsOf(space: Space, clause: Clause): readonly number[] {
  if (clause.type === "values") return [clause.trait];
  if (clause.type === "flags") return [...new Set(clause.traits)];
  return (["plant", "year", clause.by] as const).map((role) => space.role(role) as number);
}
