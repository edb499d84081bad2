/**
 * "Which mark do I look at next?" The most telling first.
 *
 *   The outcomes of a look at a mark are
 *     the values on record for the parts that are still possible,
 *     nothing there, where it wears off,
 *     something else, where it does not wear off and is not on record for some of these parts.
 *   Each part is as likely as the next one. A part shows
 *     the value on record for it; a measure also as the measure of another part that a tool cannot tell from it;
 *     where nothing is on record, any of the outcomes, each as likely as the next one.
 *   The mark of which most is to be expected comes first (`information-gain.ts`); of equal ones the one that is easier to see; then
 *   the order of the data.
 *   Missing paint proves nothing, so it leaves as much open as there was: paint counts only for what its presence would tell.
 *   A mark of which no outcome rules out a part is not looked at.
 */
import Fraction from "fraction.js";
import { informationGain } from "./information-gain.ts";
import type { Mark, MarkTable, Row, Value } from "./mark-table.ts";
import { isAbsent, rulesOut, type Seen } from "./possible-parts.ts";

export interface Outcome {
  readonly seen: Seen;
  /** The parts that it leaves possible. */
  readonly leaves: readonly string[];
}

export interface Look {
  readonly mark: Mark;
  /** In bits. */
  readonly gain: number;
  readonly outcomes: readonly Outcome[];
}

/** All marks that may tell something about the parts of the table, the best first; without those in `done`. */
export function nextMarks({ marks, parts }: MarkTable, done: ReadonlySet<string> = new Set()): Look[] {
  return marks
    .filter((mark) => !done.has(mark.id))
    .map((mark) => lookAt(mark, parts))
    .filter(({ outcomes }) => outcomes.some((outcome) => outcome.leaves.length < parts.length))
    .sort((a, b) => rounded(b.gain) - rounded(a.gain) || a.mark.effort - b.mark.effort);
}

/** Sums that ought to be equal differ in their last digits. */
function rounded(gain: number): number {
  return Math.round(gain * 1e9);
}

function lookAt(mark: Mark, parts: readonly Row[]): Look {
  const outcomes = outcomesOf(mark, parts);
  return {
    mark,
    gain: gainOf(mark, parts, outcomes),
    outcomes: outcomes.map((seen) => ({
      seen,
      leaves: parts.filter((part) => !rulesOut(mark, part.marks.get(mark.id), seen)).map((part) => part.number),
    })),
  };
}

function outcomesOf(mark: Mark, parts: readonly Row[]): Seen[] {
  const stated = new Map<string, Seen>();
  for (const part of parts) {
    const value = part.marks.get(mark.id);
    if (value !== undefined) stated.set(key(value), showing(value));
  }
  const outcomes = [...stated.values()];
  const isOpen = parts.some((part) => !part.marks.has(mark.id));
  if (mark.wearsOff) return outcomes.some((it) => isAbsent(mark, it)) ? outcomes : [...outcomes, { is: "absent" }];
  return isOpen ? [...outcomes, { is: "something else" }] : outcomes;
}

function key(value: Value): string {
  return value instanceof Fraction ? value.toFraction() : `'${value}'`;
}

/** What is seen of a part that shows just what is on record for it. */
function showing(value: Value): Seen {
  return value instanceof Fraction ? { is: "measured", low: value, high: value } : { is: "value", value };
}

function gainOf(mark: Mark, parts: readonly Row[], outcomes: readonly Seen[]): number {
  const before = parts.map(() => 1);
  const weights = outcomes.map(() => parts.map(() => 0));
  parts.forEach((part, column) => {
    const shows = outcomes.map((seen) => mayShow(mark, part.marks.get(mark.id), seen));
    const share = 1 / shows.filter(Boolean).length;
    shows.forEach((it, row) => {
      if (it) (weights[row] as number[])[column] = share;
    });
  });
  const told = weights.map((row, i) => {
    if (!mark.wearsOff || !isAbsent(mark, outcomes[i] as Seen)) return row;
    const expected = row.reduce((sum, weight) => sum + weight, 0);
    return before.map((weight) => (weight * expected) / parts.length);
  });
  return Math.max(0, informationGain(before, told));
}

function mayShow(mark: Mark, stated: Value | undefined, seen: Seen): boolean {
  if (rulesOut(mark, stated, seen)) return false;
  // As if the paint were still there: how likely it is to be gone is not on record.
  if (!mark.wearsOff || stated === undefined) return true;
  return seen.is === "value" ? seen.value === stated : stated === mark.absent;
}
