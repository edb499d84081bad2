/**
 * All records for one car after another, as a page asks after every tap: the same verdicts as `answerCar`, with the work that
 * all cars have in common done once.
 */
import type { ChangeRecord } from "../records/catalog.ts";
import { isTrap } from "../records/is-trap.ts";
import type { Applies } from "../scope/applies.ts";
import type { CarSet } from "../scope/diagram.ts";
import { type AskedTrait, traitsThatMatter } from "../scope/next-trait.ts";
import { Sweep } from "../scope/sweep.ts";
import type { CarKnowledge } from "./car-knowledge.ts";

/** A record, and whether it is a trap: that takes a look at all of its statements. */
export interface Listed {
  readonly record: ChangeRecord;
  readonly trap: boolean;
}

export class CarList {
  readonly records: readonly ChangeRecord[];
  /** The same records, in the same order. */
  readonly listed: readonly Listed[];
  readonly #knowledge: CarKnowledge;
  readonly #sweep: Sweep;

  constructor(knowledge: CarKnowledge) {
    this.records = [...knowledge.catalog.records.values()];
    this.listed = this.records.map((record) => ({ record, trap: isTrap(record) }));
    this.#knowledge = knowledge;
    this.#sweep = new Sweep(
      knowledge.catalog.space,
      this.records.map((record) => record.scope),
    );
  }

  /** The verdict on each of `records`, in their order. */
  verdicts(cars: CarSet): Applies[] {
    return this.#sweep.verdicts(cars);
  }

  /** What can still be asked, best first, one by one; `scopes` are places in `open`. */
  questions(cars: CarSet, open: readonly ChangeRecord[]): Generator<AskedTrait> {
    const scopes = open.map((record) => record.scope.cars);
    return traitsThatMatter(this.#knowledge.catalog.space, cars, scopes);
  }
}
