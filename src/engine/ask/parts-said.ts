/**
 * Which part numbers of a question are asked about, and which are only said of the car.
 *
 *   "with 12-3456", "12-3456 fitted"                 it is on the car, or goes along
 *   "without 12-3456", "keeping 12-3456"             it is to be left out
 *   "A instead of B", "A in place of B", "A for B", "does A replace B", "replace B with A"      A is asked about, B is what belongs there
 *   any other                                        it is asked about
 */
import { DENYING, LITTLE, WITH } from "./little-words.ts";
import type { Chip, Reading } from "./read-question.ts";

export interface PartsSaid {
  readonly asked: readonly string[];
  readonly onCar: readonly string[];
  readonly leftOut: readonly string[];
  /** What the parts asked about would take the place of. */
  readonly against: readonly string[];
}

const KEEPING = new Set(["keep", "keeping", "kept", "reuse", "reusing"]);
const FITTED = new Set(["fitted", "installed", "mounted"]);

export function partsSaid({ words, chips, asked }: Reading): PartsSaid {
  const said = { asked: [] as string[], onCar: [] as string[], leftOut: [] as string[], against: [] as string[] };
  const parts = chips.filter(({ kind }) => kind === "part");
  const replaced = replacedBy(words, parts, asked);
  for (const chip of parts) {
    const before = wordBefore(words, chip.at);
    const after = words[chip.at + chip.length] ?? "";
    if (chip === replaced) said.against.push(...chip.ids);
    else if (DENYING.has(before) || KEEPING.has(before)) said.leftOut.push(...chip.ids);
    else if (isAside(words, parts, chip) && (WITH.has(before) || FITTED.has(after))) said.onCar.push(...chip.ids);
    else said.asked.push(...chip.ids);
  }
  return said.asked.length > 0 ? said : { ...said, asked: said.onCar, onCar: [] };
}

/** With another part in the question, this one may be said only by the way; "replace A with B" is no such way. */
function isAside(words: readonly string[], parts: readonly Chip[], chip: Chip): boolean {
  return parts.length > 1 && !words.slice(0, chip.at).some((word) => word.startsWith("replac"));
}

function replacedBy(words: readonly string[], parts: readonly Chip[], asked: Reading["asked"]): Chip | undefined {
  const [first, second, ...more] = parts;
  if (!first || !second || more.length > 0) return undefined;
  if (words.slice(first.at + first.length, second.at).join(" ") === "for") return second;
  const way = asked.find((it) => it.asked === "replaces");
  if (!way) return undefined;
  if (way.at > first.at && way.at < second.at) {
    // "A replaced by B": B is the new one.
    return words.slice(way.at, second.at).includes("by") ? first : second;
  }
  const isBetween = (word: string): boolean => words.slice(first.at + first.length, second.at).includes(word);
  return way.at < first.at && (isBetween("with") || isBetween("by")) ? first : undefined;
}

function wordBefore(words: readonly string[], at: number): string {
  let i = at - 1;
  while (i >= 0 && LITTLE.has(words[i] as string) && !WITH.has(words[i] as string)) i--;
  return words[i] ?? "";
}
