/**
 * "Which parts can this still be?"
 *
 *   A part is ruled out by what was seen of a mark
 *     if the value on record for it is another one: counted, cast, machined, stamped, shaped or coloured, read both ways;
 *     if it is measured, and the reading is further from the measure on record than the tolerance and the tool's error together.
 *   A part is never ruled out
 *     by a mark that is not on record for it,
 *     by a mark that could not be seen,
 *     because paint or print is missing: it wears off. Paint that is there, and that the part does not have, does rule it out. Of two
 *     stripes one may be gone: fewer of them than the part has prove as little as none.
 *   The tolerance has in it what a workshop's usual tool cannot tell; a tool's error that somebody states comes on top.
 *   A reading at the limit is inside.
 */
import Fraction from "fraction.js";
import type { Mark, MarkTable, Row, Value } from "./mark-table.ts";

export type Seen =
  | { readonly is: "value"; readonly value: string }
  /** In the unit of the mark. A gauge may only give a window; else both ends are the same. */
  | { readonly is: "measured"; readonly low: Fraction; readonly high: Fraction; readonly error?: Fraction | undefined }
  /** Looked at, and nothing is there. */
  | { readonly is: "absent" }
  /** Looked at, and it is none of the values on record. */
  | { readonly is: "something else" }
  | { readonly is: "not seen" };

export interface Observation {
  readonly mark: string;
  readonly seen: Seen;
}

export function possibleParts({ marks, parts }: MarkTable, observations: readonly Observation[]): Row[] {
  const byId = new Map(marks.map((mark) => [mark.id, mark]));
  return parts.filter((part) =>
    observations.every(({ mark: id, seen }) => {
      const mark = byId.get(id);
      return mark === undefined || !rulesOut(mark, part.marks.get(id), seen);
    }),
  );
}

/** Whether what was seen of a mark rules out a part with this value on record. */
export function rulesOut(mark: Mark, stated: Value | undefined, seen: Seen): boolean {
  if (stated === undefined || seen.is === "not seen") return false;
  if (isAbsent(mark, seen)) return !mark.wearsOff && stated !== mark.absent;
  switch (seen.is) {
    case "something else":
      return true;
    case "value":
      return stated !== seen.value && !(mark.wearsOff && isFewer(seen.value, stated));
    case "measured":
      return !(stated instanceof Fraction) || isFurther(mark, stated, seen);
    case "absent":
      return false;
  }
}

/** Nothing there; whether it was said so or by the value that stands for it. */
export function isAbsent(mark: Mark, seen: Seen): boolean {
  return seen.is === "absent" || (seen.is === "value" && seen.value === mark.absent);
}

const COUNTS = ["none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

/** Whether both are counts, and the first is the smaller one. */
function isFewer(seen: string, stated: Value): boolean {
  const [a, b] = [countOf(seen), typeof stated === "string" ? countOf(stated) : undefined];
  return a !== undefined && b !== undefined && a < b;
}

function countOf(value: string): number | undefined {
  if (/^\d+$/.test(value)) return Number(value);
  const count = COUNTS.indexOf(value);
  return count < 0 ? undefined : count;
}

function isFurther(mark: Mark, stated: Fraction, { low, high, error }: Extract<Seen, { is: "measured" }>): boolean {
  const reach = (mark.tolerance ?? new Fraction(0)).add(error ?? 0);
  return stated.compare(low.sub(reach)) < 0 || stated.compare(high.add(reach)) > 0;
}
