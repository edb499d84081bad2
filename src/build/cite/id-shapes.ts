/** What the ids of the data look like, so that they are found in running text, and what looks like one can be told from a word. */
import { isUnlikeWords } from "../write/mentions.ts";

/** Writers of letters take other dashes for the plain one, and programs do it for them. */
const DASH = "[-\\u2010-\\u2013\\u2212]";
const SIGN = "[\\p{L}\\p{N}_]";

/** Everything in a text that has exactly the shape of one of these ids: as many capitals, digits and signs in the same order. */
export function idShapes(ids: Iterable<string>): RegExp | undefined {
  const shapes = new Set([...ids].filter(isUnlikeWords).map(shapeOf));
  if (shapes.size === 0) return undefined;
  // Longer ones first: of two that begin alike the whole is meant.
  const either = [...shapes].sort((a, b) => b.length - a.length).join("|");
  return new RegExp(`(?<!${SIGN}|${SIGN}[.-])(?:${either})(?!${SIGN}|[.-]${SIGN})`, "gu");
}

/** The id as the data would write it. */
export function plainDashes(text: string): string {
  return text.replaceAll(/[\u2010-\u2013\u2212]/g, "-");
}

function shapeOf(id: string): string {
  return id.replaceAll(/([A-Z]+)|([a-z]+)|(\d+)|([.-])/g, (run, capitals, small, digits, sign) => {
    if (capitals) return `[A-Z]{${run.length}}`;
    if (small) return `[a-z]{${run.length}}`;
    if (digits) return `[0-9]{${run.length}}`;
    return sign === "-" ? DASH : "\\.";
  });
}
