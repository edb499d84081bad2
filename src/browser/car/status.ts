/** What is the case now, in one sentence, for those who hear the page rather than see it. */
import type { PlateAnswer } from "../../engine/answers/shapes/plate.ts";

export interface Standing {
  readonly nothingSaid: boolean;
  readonly plate: PlateAnswer["verdict"] | undefined;
  readonly conflicts: boolean;
  readonly lineKnown: boolean;
  /** The records of the line are there and every step was understood. */
  readonly counts: { readonly yes: number; readonly open: number; readonly no: number } | undefined;
  readonly wrongPart: boolean;
  readonly searching: boolean;
  /** What to look at next. */
  readonly next: string | undefined;
}

/**
 * A contradiction comes first: nothing holds for a car that was not built. Then a number that was not read, then how far one
 * is: no line yet, records on their way, or the verdicts with what to look at next.
 */
export function statusWords(now: Standing): string {
  if (now.nothingSaid) return "";
  if (now.conflicts) return "No verdict: what was said does not go together.";
  const unread = now.plate === "misread" || now.plate === "unknown" ? "The number on the plate was not read. " : "";
  return unread + rest(now);
}

function rest({ lineKnown, counts, wrongPart, searching, next }: Standing): string {
  if (!lineKnown) return "The model line is not known yet.";
  if (wrongPart) return "No verdict: a part that was said is not known.";
  if (!counts) return "Loading the records of this line …";
  if (searching) return "Working out what applies …";
  const question = next === undefined ? "" : ` Next: ${next}?`;
  return `${counts.yes} apply, ${counts.open} to look at first, ${counts.no} do not apply.${question}`;
}
