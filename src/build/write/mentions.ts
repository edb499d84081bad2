/** Where an id stands in a text as a whole: not as a piece of a longer id, number or word. */

/** Letters and digits end an id only when nothing that could belong to it goes on behind them: 'A-1.' is A-1, 'A-1.5' is not. */
export function mentionsOf(text: string, id: string): number[] {
  if (!text.includes(id)) return [];
  const letter = "[\\p{L}\\p{N}_]";
  const whole = new RegExp(`(?<!${letter}[.-]?)${id.replaceAll(".", "\\.")}(?![.-]?${letter})`, "gu");
  return [...text.matchAll(whole)].map((match) => match.index);
}

/**
 * Whether an id can be told from words and figures of a sentence: 'HY59-01' can, 'pump' and '4411' cannot. Only then a text that has
 * it surely means it.
 */
export function isUnlikeWords(id: string): boolean {
  return id.length >= 4 && /\p{N}/u.test(id) && /[^\p{N}.]/u.test(id);
}
