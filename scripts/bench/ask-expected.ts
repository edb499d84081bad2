/**
 * Whether what a question ought to be answered with stands in the answers that it got. One answer is enough:
 *
 *   It must rest on one of the records set down: "6 months" for another fluid is not the answer. Only the number of a part, being the
 *   only one of its kind, may come from anywhere.
 *   A verdict ("yes", "no", "must not", "on conditions", "look first") must be the verdict of the answer. Of ways to improve a car
 *   the best counts; where no way is open it is "no".
 *   Anything else, a figure or a number, must stand in the sentence, word for word: 24000 as 24,000, 7 to 9 as 7–9 or 7..9.
 *   "6 months" does not stand in "36 months". Where the sentence names several parts that it may be, the right one must be among them.
 */
import type { AskAnswer } from "../../src/engine/answers/shapes/ask.ts";

export type Given = AskAnswer["answers"][number];

/** What is written in the table, and the verdicts of the engine that say so. */
const VERDICTS: Readonly<Record<string, readonly string[]>> = {
  yes: ["yes", "as built"],
  no: ["no", "does not go on"],
  "must not": ["goes on but must not be used"],
  "on conditions": ["yes, on conditions"],
  "look first": ["look first"],
  "not on record": ["not on record", "nothing on record"],
};

export function standsIn(expected: string, answers: readonly Given[], records: readonly string[]): boolean {
  const verdicts = VERDICTS[expected];
  const isNumber = verdicts === undefined && !expected.includes(" ");
  return answers
    .filter(({ because }) => isNumber || because.some(({ record }) => records.includes(record)))
    .some((given) => (verdicts ? verdicts.includes(verdictOf(given)) : holds(given.says, expected)));
}

/** Best first. */
const BEST = ["as built", "yes", "yes, on conditions"];

function verdictOf({ verdict, answer }: Given): string {
  if (verdict !== "on record" || !("paths" in answer)) return verdict;
  const paths = answer.paths as { readonly verdict: string }[];
  return BEST.find((best) => paths.some((path) => path.verdict === best)) ?? "no";
}

function holds(text: string, expected: string): boolean {
  return ` ${plainWords(text)} `.includes(` ${plainWords(expected)} `);
}

/** Words with one space between them, ranges as "7 to 9", whole numbers without commas, and no signs of the sentence. */
export function plainWords(text: string): string {
  return text
    .toLowerCase()
    .replaceAll(/(?<=\d),(?=\d{3})/g, "")
    .replaceAll(/(?<=\d)\s*(?:–|—|\.\.+|…)\s*(?=\d)/g, " to ")
    .split(/\s+/)
    .map((word) => word.replaceAll(/^[("'“‘]+|[)"'”’.,;:?!]+$/g, ""))
    .filter(Boolean)
    .join(" ");
}
