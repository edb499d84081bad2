/** The relations of the graph. Each has a direction; `forward` and `backward` are its words when read from either end. */
import type { StandInVerdict } from "../records/statement.ts";

export const RELATIONS = {
  changes: { forward: "changes", backward: "changed by", about: "a change record and the component it changes" },
  concerns: {
    forward: "concerns",
    backward: "has the change",
    about: "a change record and a model line or year with cars in its scope",
  },
  "belongs-to": {
    forward: "belongs to",
    backward: "includes",
    about: "a part and its component, a component and its system or larger component",
  },
  brings: {
    forward: "brings",
    backward: "brought by",
    about: "a change record and a part that it says was built in, or exists for repair",
  },
  supersedes: {
    forward: "supersedes",
    backward: "superseded by",
    about: "who orders the second part gets the first; a delivery rule, no promise that it fits",
  },
  "stands-in-for": {
    forward: "may stand in for",
    backward: "may be replaced by",
    about: "the first part may be used where the second belongs, inside its scope and conditions",
  },
  "not-interchangeable-with": {
    forward: "must not stand in for",
    backward: "must not be replaced by",
    about: "the first part does not go where the second belongs, or must not be used there",
  },
  "retrofittable-to": {
    forward: "may be retrofitted to",
    backward: "may be retrofitted with",
    about: "a part and a model line whose cars may get it later",
  },
  "goes-with": {
    forward: "needs",
    backward: "needed with",
    about: "the first part may only be fitted together with the second",
  },
  contains: { forward: "contains", backward: "comes in", about: "a kit and a part in it" },
  cancels: {
    forward: "cancels",
    backward: "cancelled by",
    about: "the first record ends an instruction of the second",
  },
  "links-to": { forward: "read along", backward: "read along from", about: "a record names another one to read along" },
  cites: { forward: "cites", backward: "cited by", about: "a bulletin cites a record, part or component" },
} as const satisfies Record<string, { forward: string; backward: string; about: string }>;

export type Relation = keyof typeof RELATIONS;

export interface RelationFacts {
  readonly relation: Relation;
  /** The change record or bulletin that says so; nothing where the parts list itself does. */
  readonly from: string | undefined;
  /** The scope as written; nothing where the statement has none. */
  readonly scope: string | undefined;
  readonly verdict: StandInVerdict | undefined;
}
