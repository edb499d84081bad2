/** What is known of the parts on the car today, by place. */
import type { StandsIn } from "../records/statement.ts";

/** A part that was seen where no record permits it. */
export interface Misfit {
  readonly part: string;
  /** Who refuses it; nobody where nothing is on record. */
  readonly by: readonly StandsIn[];
}

export interface Reported {
  /** Parts that somebody saw on the car. */
  readonly parts: ReadonlySet<string>;
  /** The parts in a place, where it is certain that they are there. */
  readonly at: ReadonlyMap<string, readonly string[]>;
  /** Parts that may be there: those that fit in several places, and those that had to come or go with what was seen. */
  readonly perhapsAt: ReadonlyMap<string, readonly string[]>;
  readonly misfits: readonly Misfit[];
  /** Parts that go with what ought to be where a misfit is. */
  readonly doubtful: ReadonlyMap<string, Misfit>;
  /** Traits of a component on the car whose number says that it is from another kind of car. */
  readonly foreign: ReadonlySet<number>;
}

/** Anew for each question: what is worked out for it is kept with it. */
export function nothingReported(): Reported {
  return {
    parts: new Set(),
    at: new Map(),
    perhapsAt: new Map(),
    misfits: [],
    doubtful: new Map(),
    foreign: new Set(),
  };
}
