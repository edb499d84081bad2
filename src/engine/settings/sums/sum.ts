/** What a shop sum is: a formula of the trade, with all that a page needs to show it and to check what is put in. */
import type { SumId } from "../../records/shapes/sums.ts";

export interface SumInput {
  readonly id: string;
  readonly label: string;
  /** Its letter in the formula and in the drawing. */
  readonly letter: string;
  /** Id of the unit that `solve` wants it in; for a plain number the words behind it, or nothing. */
  readonly unit: string;
  /** It is a plain number; these words may stand behind it. */
  readonly counted?: readonly string[];
  readonly whole?: true;
  /** Limits, in `unit`. */
  readonly above?: number;
  readonly atLeast?: number;
  readonly atMost?: number;
  readonly default?: string;
  /** The sum does without it; what follows from it is left out then. */
  readonly optional?: true;
  /** It may be a window, "0.186..0.188 in"; solve gets it as <id>Low and <id>High, equal for a single value. */
  readonly window?: true;
  /** A bare number is a number drill. */
  readonly drill?: true;
  /** One of these words. solve gets its place in the list. */
  readonly choices?: readonly string[];
  readonly help?: string;
}

export interface SumResult {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
  /** It is shown in the unit in which the first of these inputs that is given was typed. */
  readonly unitOf?: readonly string[];
  readonly round: Rounding;
  /** It is one of the limits of these results, or lies between them: all are rounded finer until the first is not above the second. */
  readonly between?: readonly [low: string, high: string];
}

/**
 * How a result is rounded for show. `steps`: by unit, to whole steps, but never to fewer than `digits` significant digits. In a
 * unit without a step: to `digits`, at least three. `side`: always that way, where the nearest would lie on the wrong side.
 */
export interface Rounding {
  readonly steps?: Readonly<Record<string, number>>;
  readonly digits: number;
  readonly side?: "up" | "down";
  readonly words: string;
}

/** Several ways to give one thing: one of them is taken whole. `several`: more than one may be given, each for its own result. */
export interface Ways {
  readonly what: string;
  readonly ways: readonly (readonly string[])[];
  readonly several?: true;
}

export interface Solved {
  /** What could be worked out from what was given. */
  readonly results: Readonly<Record<string, number>>;
  /** Results that are words, such as the name of a drill. */
  readonly words?: Readonly<Record<string, string>>;
  /** The formula with the numbers put in, line by line. */
  readonly steps: readonly string[];
}

export type Values = Readonly<Record<string, number>>;

export interface Sum {
  readonly id: SumId;
  readonly name: string;
  /** When one needs it, in one line. */
  readonly about: string;
  readonly inputs: readonly SumInput[];
  readonly ways?: readonly Ways[];
  /** Where one of these is given, those are needed too. */
  readonly goesWith?: readonly { readonly given: readonly string[]; readonly needs: readonly string[] }[];
  readonly results: readonly SumResult[];
  readonly formula: string;
  readonly notes: readonly string[];
  readonly caution?: string;
  readonly source: string;
  readonly example: {
    readonly inputs: Readonly<Record<string, string>>;
    /** As shown. */
    readonly results: Readonly<Record<string, string>>;
    readonly source: string;
  };
  solve(values: Values): Solved | { readonly impossible: string };
}
