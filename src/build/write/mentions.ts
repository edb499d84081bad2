/** Where an id stands in a text as a whole: not as a piece of a longer id, number or word. */

/** Letters and digits end an id only when nothing that could belong to it goes on behind them: 'A-1.' is A-1, 'A-1.5' is not. */
export function mentionsOf(text: string, id: string): number[] {
  if (!text.includes(id)) return [];
  const letter = "[\\p{L}\\p{N}_]";
  const whole = new RegExp(`(?<!${letter}[.-]?)${id.replaceAll(".", "\\.")}(?![.-]?${letter})`, "gu");
  return [...text.matchAll(whole)].map((match) => match.index);
}

/** A place, and how much of the text is meant there. */
export interface NearMention {
  readonly at: number;
  readonly length: number;
  readonly why: string;
}

const DASH = "(?:[-\\u2010-\\u2013\\u2212]|&#(?:45|x2d|820[89]|8211);|&(?:hyphen|dash|ndash|minus);)";

/**
 * What means the id for a reader though it is not it: other capitals, another dash, and the names of files that are called after it.
 * Of an id that is a mere word only files: any text is full of it in capitals.
 */
export function nearMentionsOf(text: string, id: string): NearMention[] {
  const letter = "[\\p{L}\\p{N}_]";
  const typed = id
    .split("")
    .map((sign) => (sign === "-" ? DASH : sign === "." ? "\\." : sign))
    .join("");
  const whole = new RegExp(`(?<!${letter}[.-]?)(${typed})(\\.[a-z]{2,4})?(?![.-]?${letter})`, "giu");
  return [...text.matchAll(whole)].flatMap(({ index, 0: { length }, 1: found, 2: ending }) => {
    if (ending !== undefined) return [{ at: index, length, why: "the name of a file" }];
    if (found === id || !isUnlikeWords(id)) return [];
    return [
      {
        at: index,
        length,
        why:
          found?.length === id.length && found.toLowerCase() === id.toLowerCase() ? "other capitals" : "another dash",
      },
    ];
  });
}

/**
 * Whether an id can be told from words and figures of a sentence: 'HY59-01' can, 'pump' and '4411' cannot. Only then a text that has
 * it surely means it.
 */
export function isUnlikeWords(id: string): boolean {
  return id.length >= 4 && /\p{N}/u.test(id) && /[^\p{N}.]/u.test(id);
}
