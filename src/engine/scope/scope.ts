/**
 * A scope is the set of cars that a statement is about. It keeps both faces of that: the clauses as the editor
 * wrote them, for words on a page, and the set in its normal form, for every decision.
 */
import type { CarSet } from "./diagram.ts";
import type { Ranges } from "./ranges.ts";

/** The trait has one of these values. `written` is how the editor put it, which the words on the page follow. */
export interface ValuesClause {
  readonly type: "values";
  readonly trait: number;
  readonly values: Ranges;
  readonly written: "one of" | "none of" | "from" | "after" | "up to" | "before";
}
/** Built at this plant from (or before) this point on: the sequence number or date in this model year, or any later (earlier) year. */
export interface PointClause {
  readonly type: "point";
  readonly side: "from" | "before";
  readonly plant: number;
  readonly year: number;
  readonly by: "sequence" | "date";
  readonly at: number;
}
/** Has (or has not) any of several yes/no traits. */
export interface FlagsClause {
  readonly type: "flags";
  readonly side: "any" | "none";
  readonly traits: readonly number[];
}
export type Clause = ValuesClause | PointClause | FlagsClause;

/** All clauses of an alternative must hold; one alternative is enough. */
export type Alternative = readonly Clause[];

export interface Scope {
  readonly text: string;
  readonly alternatives: readonly Alternative[];
  readonly cars: CarSet;
}
