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
 *   An alternative whose clauses ask for different traits does hold for a car of an exact box where each clause can hold;
 *   any alternative does in a box of one car.
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

/** What is found out about a scope: it holds for all cars; some box can have a car inside; there is one inside; there is one outside. */
const HOLDS = 1;
const POSSIBLE = 2;
const INSIDE = 4;
const OUTSIDE = 8;
const BOTH = INSIDE | OUTSIDE;

/**
 * The scopes that the values of all boxes together do not settle, one after the other: of each the alternatives that can hold,
 * and of these the clauses that do not always hold.
 */
interface Open {
  count: number;
  readonly scopes: Uint32Array;
  /** The alternatives of open scope i end at `last[i]`; the clauses of alternative a at `ends[a]`. */
  readonly last: Uint32Array;
  readonly ends: Uint32Array;
  readonly clauses: Uint32Array;
  /** By alternative, whether its clauses ask for different traits. */
  readonly apart: Uint8Array;
}

export class Sweep {
  readonly #space: Space;
  readonly #scopes: readonly Scope[];
  readonly #table: ClauseTable;
  /** By alternative, whether its clauses ask for different traits. */
  readonly #apart: Uint8Array;
  /** Kept from one car to the next, as asking for much room anew takes long. */
  readonly #open: Open;

  constructor(space: Space, scopes: readonly Scope[]) {
    this.#space = space;
    this.#scopes = scopes;
    this.#table = new ClauseTable(space, scopes);
    const apart: number[] = [];
    for (const scope of scopes)
      for (const alternative of scope.alternatives) apart.push(areApart(space, alternative) ? 1 : 0);
    this.#apart = Uint8Array.from(apart);
    const { numbers, ends } = this.#table;
    this.#open = {
      count: 0,
      scopes: new Uint32Array(scopes.length),
      last: new Uint32Array(scopes.length),
      ends: new Uint32Array(ends.length),
      clauses: new Uint32Array(numbers.length),
      apart: new Uint8Array(ends.length),
    };
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
    const found = new Uint8Array(this.#scopes.length);
    this.#settle(boxes.holds(this.#table), found);
    this.#look(boxes, found);
    for (let s = 0; s < result.length; s++) {
      const here = found[s] as number;
      const scope = (this.#scopes[s] as Scope).cars;
      if ((here & HOLDS) !== 0) result[s] = yes;
      else if ((here & POSSIBLE) === 0) result[s] = no;
      else if ((here & INSIDE) === 0 && !sets.meet(cars, scope)) result[s] = no;
      else result[s] = (here & OUTSIDE) !== 0 || !sets.within(cars, scope) ? look : yes;
    }
    return result;
  }

  /** Settles what the values of all boxes together settle, and gathers what stays open. */
  #settle(holds: Uint8Array, found: Uint8Array): void {
    const { numbers, ends, last } = this.#table;
    const apart = this.#apart;
    const { scopes: openScopes, last: openLast, ends: openEnds, clauses: openClauses, apart: openApart } = this.#open;
    let scopes = 0;
    let alternatives = 0;
    let clauses = 0;
    let alternative = 0;
    let at = 0;
    for (let s = 0; s < found.length; s++) {
      const firstAlternative = alternatives;
      const firstClause = clauses;
      const end = last[s] as number;
      let always = false;
      for (; alternative < end && !always; alternative++) {
        const begin = clauses;
        const stop = ends[alternative] as number;
        for (; at < stop; at++) {
          const clause = numbers[at] as number;
          const here = holds[clause] as number;
          if (here === NEVER) break;
          if (here !== ALWAYS) openClauses[clauses++] = clause;
        }
        if (at < stop) clauses = begin;
        else if (clauses === begin) always = true;
        else {
          openApart[alternatives] = apart[alternative] as number;
          openEnds[alternatives++] = clauses;
        }
        at = stop;
      }
      if (always) {
        found[s] = HOLDS;
        alternatives = firstAlternative;
        clauses = firstClause;
        alternative = end;
        at = ends[end - 1] as number;
      } else if (alternatives > firstAlternative) {
        openScopes[scopes] = s;
        openLast[scopes++] = alternatives;
      }
    }
    this.#open.count = scopes;
  }

  /** What the boxes show of each open scope. A word of boxes at a time, as for most scopes the first few show all there is to show. */
  #look(boxes: Boxes, found: Uint8Array): void {
    const { scopes, last, ends, clauses, apart } = this.#open;
    const left = Uint32Array.from({ length: this.#open.count }, (_, i) => i);
    let count = left.length;
    const bits = new Int32Array(this.#table.clauses.length);
    /** By clause the word that its bits are of, counted from 1. */
    const bitsOf = new Uint16Array(bits.length);
    for (let word = 0; word < boxes.words && count > 0; word++) {
      const every = boxes.every[word] as number;
      const exact = boxes.exact[word] as number;
      const single = boxes.single[word] as number;
      let kept = 0;
      for (let n = 0; n < count; n++) {
        const i = left[n] as number;
        let alternative = i === 0 ? 0 : (last[i - 1] as number);
        let at = alternative === 0 ? 0 : (ends[alternative - 1] as number);
        let here = found[scopes[i] as number] as number;
        let seen = 0;
        for (const end = last[i] as number; alternative < end; alternative++) {
          let can = -1;
          for (const stop = ends[alternative] as number; at < stop; at++) {
            const clause = clauses[at] as number;
            if (bitsOf[clause] !== word + 1) {
              bits[clause] = boxes.where(this.#table, clause, word);
              bitsOf[clause] = word + 1;
            }
            can &= bits[clause] as number;
          }
          if ((can & (apart[alternative] === 1 ? exact : single)) !== 0) here |= INSIDE;
          seen |= can;
        }
        if (seen !== 0) here |= POSSIBLE;
        if (seen !== every) here |= OUTSIDE;
        found[scopes[i] as number] = here;
        if ((here & BOTH) !== BOTH) left[kept++] = i;
      }
      count = kept;
    }
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
