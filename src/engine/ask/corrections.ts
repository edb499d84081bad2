/**
 * What a word that nobody knows was most likely meant to be.
 *
 *   A known word is never corrected, nor a usual form of one (leaking, tightened), nor a number, nor a word of three letters.
 *   Wrong may be one letter of a word of four to six, two of one up to nine, three of a longer one; one more where it sounds the same.
 *   The nearest word counts; of those equally near, one that sounds the same. Words of the trade count before other words of
 *   the texts, which must be nearer to be meant.
 *   What is then still equally near is a choice for the reader.
 */
import { doubleMetaphone } from "double-metaphone";
import { slipsBetween } from "../scope/nearest.ts";
import type { Names } from "./names.ts";

const MOST = 3;

export function corrections(word: string, names: Names): string[] {
  if (word.length < 4 || /\d/.test(word) || isKnown(word, names.known)) return [];
  const trade = nearestOf(word, names.trade);
  const texts = nearestOf(word, names.texts);
  const best = texts.slips < trade.slips ? texts : trade;
  return best.words.slice(0, MOST);
}

/** A word of the vocabulary or the texts, or a usual form of one. */
export function isKnown(word: string, known: ReadonlySet<string>): boolean {
  if (known.has(word)) return true;
  return /(ing|ed|er|ers|ly|y|es|s|ness|less|able|ment)$/.test(word) && forms(word).some((form) => known.has(form));
}

function forms(word: string): string[] {
  return ["ing", "ed", "ers", "er", "ly", "y", "es", "s", "ness", "less", "able", "ment"].flatMap((ending) => {
    if (!word.endsWith(ending)) return [];
    const stem = word.slice(0, -ending.length);
    if (stem.length < 3) return [];
    return [stem, `${stem}e`, stem.replace(/(.)\1$/, "$1")];
  });
}

function nearestOf(word: string, known: readonly string[]): { words: string[]; slips: number } {
  const sound = soundOf(word);
  let fewest = Number.POSITIVE_INFINITY;
  let words: string[] = [];
  for (const one of known) {
    const allowed = Math.min(slipsAllowed(word.length), slipsAllowed(one.length));
    if (Math.abs(one.length - word.length) > allowed + 1) continue;
    const slips = slipsBetween(word, one);
    if (slips > allowed + 1) continue;
    const isAlike = soundOf(one) === sound;
    if (slips > allowed && !isAlike) continue;
    // A slip at the first letter is rare: people know how a word begins.
    if (one[0] !== word[0] && slips > 1) continue;
    // Half a slip less where it sounds the same: it comes before what is as near and sounds different.
    const weight = slips - (isAlike ? 0.5 : 0);
    if (weight > fewest) continue;
    if (weight < fewest) words = [];
    fewest = weight;
    words.push(one);
  }
  return { words, slips: fewest };
}

function slipsAllowed(length: number): number {
  return length < 7 ? 1 : length < 10 ? 2 : 3;
}

const sounds = new Map<string, string>();

function soundOf(word: string): string {
  const known = sounds.get(word);
  if (known !== undefined) return known;
  const [sound] = doubleMetaphone(word);
  sounds.set(word, sound);
  return sound;
}
