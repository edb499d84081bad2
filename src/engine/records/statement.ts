/** What a change record states. Each statement knows its record and its number there, so that every answer can cite it. */
import type { Scope } from "../scope/scope.ts";
import type { VERDICTS } from "./terms.ts";

export type StandInVerdict = (typeof VERDICTS)[number];

interface From {
  readonly record: string;
  /** Which one of its type in the record, from 0. */
  readonly index: number;
}

/** The plant fitted this part (`undefined`: nothing) in this place. */
export interface Built extends From {
  readonly type: "built";
  readonly place: string;
  readonly part: string | undefined;
  readonly scope: Scope;
}
/** In this stretch the plant used any of these parts. */
export interface Mixed extends From {
  readonly type: "mixed";
  readonly place: string;
  readonly parts: readonly string[];
  readonly scope: Scope;
}
/** Who orders `old` gets `new`. A delivery rule only. Without a scope: whatever the car. */
export interface Supersedes extends From {
  readonly type: "supersedes";
  readonly old: string;
  readonly new: string;
  readonly with: readonly string[];
  readonly scope: Scope | undefined;
}
/** May `part` be fitted where `for` (`undefined`: nothing) belongs? Without a scope and place: wherever `for` belongs. */
export interface StandsIn extends From {
  readonly type: "stands-in";
  readonly place?: string | undefined;
  readonly part: string;
  readonly for: string | undefined;
  readonly verdict: StandInVerdict;
  readonly with: readonly string[];
  readonly do: string | undefined;
  readonly why: string | undefined;
  readonly scope: Scope | undefined;
}
export interface Kit extends From {
  readonly type: "kit";
  readonly kit: string;
  readonly contents: readonly {
    readonly part?: string | undefined;
    readonly name?: string | undefined;
    readonly count: number;
  }[];
}
/** The part exists for repair only. */
export interface ServiceOnly extends From {
  readonly type: "service-only";
  readonly part: string;
}
export interface Setting extends From {
  readonly type: "setting";
  readonly name: string;
  readonly component: string | undefined;
  /** Limits count as inside; a missing one is no limit. Digits are kept as written. */
  readonly low: string | undefined;
  readonly high: string | undefined;
  readonly nominal: number | undefined;
  readonly stated: string | undefined;
  readonly unit: string;
  readonly conditions: string | undefined;
  readonly scope: Scope;
}
export interface Interval extends From {
  readonly type: "interval";
  readonly name: string;
  readonly months: number | undefined;
  readonly miles: number | undefined;
  readonly once: boolean;
  readonly none: boolean;
  readonly note: string | undefined;
  readonly scope: Scope;
}
export interface Procedure extends From {
  readonly type: "procedure";
  readonly when: string | undefined;
  readonly steps: string;
}
export interface Tool extends From {
  readonly type: "tool";
  readonly tool: string;
  readonly use: string;
  readonly scope: Scope | undefined;
}
export interface LeftAlone extends From {
  readonly type: "left-alone";
  readonly what: string;
}
/** The other record's instruction ended; without a scope the whole of it. */
export interface Cancels extends From {
  readonly type: "cancels";
  readonly target: string;
  readonly scope: Scope | undefined;
}

export type Statement =
  | Built
  | Mixed
  | Supersedes
  | StandsIn
  | Kit
  | ServiceOnly
  | Setting
  | Interval
  | Procedure
  | Tool
  | LeftAlone
  | Cancels;

export type StatementOf<T extends Statement["type"]> = Extract<Statement, { type: T }>;

/** Tells a statement from all others: its record, its type, and its number there. */
export function idOf({ record, type, index }: Statement): string {
  return `${record} ${type} ${index}`;
}

/** The statements of one type, in order. */
export function statementsOf<T extends Statement["type"]>(statements: readonly Statement[], type: T): StatementOf<T>[] {
  return statements.filter((statement): statement is StatementOf<T> => statement.type === type);
}

/** The parts that a statement names, each once. */
export function partsNamed(statement: Statement): string[] {
  const named = (): (string | undefined)[] => {
    switch (statement.type) {
      case "built":
      case "service-only":
        return [statement.part];
      case "mixed":
        return [...statement.parts];
      case "supersedes":
        return [statement.old, statement.new, ...statement.with];
      case "stands-in":
        return [statement.part, statement.for, ...statement.with];
      case "kit":
        return [statement.kit, ...statement.contents.map((content) => content.part)];
      default:
        return [];
    }
  };
  return [...new Set(named().filter((number) => number !== undefined))];
}
