/**
 * Which words of the data look like slips of the pen, and which the vocabulary lacks. No dictionary is at hand: what counts is how
 * often a word stands in all texts together, and how near it lies to one that certainly is a word.
 *
 *   A word looks like a slip if
 *     it is rare: it stands once or twice, its plural counted in; and
 *     it is a stranger: no name, alias, saying, plain or ignored word holds it, nor is it a usual form (adjusted, adjusting, unadjusted)
 *       of one of those or of a word that is not rare; and
 *     it is one slip, or two in a long word, from a word that was meant:
 *       one that a name or the meaning of a saying is written with, or that stands five times as often and more,
 *       but no mere function word (quiet was not meant to be quite); and
 *     it is so long that ordinary words hardly ever lie so near to each other. What was slipped decides how long:
 *
 *       two neighbours turned round (vavle)                                        5 letters
 *       a letter doubled, or not (regullator)                                      6
 *       a letter left out (thrmostat)                                              7
 *       a letter put in (distreibutor), mistaken (distribitor), or the first one   9
 *       two of them, not the first (disstributar)                                  12
 *
 * The lengths were measured: of 21,194 English words (20 times and more in SUBTLEX-US, published word counts) that the demonstration
 * does not use, 7 would be taken for slips of its words, such as "startling" and "addictive"; with one letter less in every line
 * some 30, "charming" and "omission" among them.
 */
import { distance } from "fastest-levenshtein";
import { fold } from "./split.ts";
import type { Vocabulary } from "./vocabulary-shape.ts";

/** A text of the data, and where it stands. */
export interface PlacedText<Place> {
  readonly text: string;
  readonly place: Place;
}

/** A word as it is written, and where its letters stand in the text at a place. */
export interface PlacedWord<Place> {
  readonly word: string;
  readonly place: Place;
  readonly within: readonly [from: number, to: number];
}

export interface Slip<Place> extends PlacedWord<Place> {
  /** What was most likely meant. */
  readonly meant: string;
}

/** A word that stands in the texts and not in the vocabulary: its most frequent spelling where it first stands. */
export interface LackingWord<Place> extends PlacedWord<Place> {
  readonly count: number;
}

type Words = Pick<Vocabulary, "names" | "ignore" | "plain" | "mean">;

const RARE = 2;
const MORE_OFTEN = 5;
const [TURNED, DOUBLED, LEFT_OUT, OTHER, TWO] = [5, 6, 7, 9, 12];

/** What cannot stand for itself: it joins words that name something. */
const FUNCTION_WORDS = new Set(
  `a about above across after again against all almost along already also although always am among an and any are around as at away
  be because been before behind being below beneath beside besides between beyond both but by can cannot could did do does doing done
  down during each either else even ever every except few for from further get gets got had has have having he hence her here him his
  how however i if in instead into is isn it its itself just least less let like many may me might more most much must my near neither
  never no nor not nothing now of off often on once one only onto or other others otherwise our out over own per perhaps quite rather
  same shall she should since so some something soon still such than that the their them then there therefore these they thing this
  those though through throughout thus to together too toward towards under unless until up upon us very was way we well were what
  whatever when where whether which while who whole whom whose why will with within without would yes yet you your`
    .split(/\s+/)
    .map(fold),
);

export function slips<Place>(texts: Iterable<PlacedText<Place>>, vocabulary: Words): Slip<Place>[] {
  const families = familiesOf(texts);
  const { known, meant } = hear(vocabulary);
  const roots = new Set([...known, ...FUNCTION_WORDS].flatMap(rootsOf));
  for (const [folded, { count }] of families) if (count > RARE) for (const root of rootsOf(folded)) roots.add(root);
  const often = [...families].filter(([, { count }]) => count >= MORE_OFTEN).map(([folded]) => folded);
  const near = nearWords(new Set([...meant.keys(), ...often].filter((word) => !FUNCTION_WORDS.has(word))));
  const found: Slip<Place>[] = [];
  for (const [folded, { count, places }] of families) {
    if (count > RARE || rootsOf(folded).some((root) => roots.has(root))) continue;
    const [best] = near(folded)
      .map((word) => ({ word, slips: slipsFrom(folded, word), count: families.get(word)?.count ?? 0 }))
      .filter((it) => it.slips > 0 && (meant.has(it.word) || it.count >= count * MORE_OFTEN))
      .sort((a, b) => a.slips - b.slips || b.count - a.count || (a.word < b.word ? -1 : 1));
    if (!best) continue;
    const spellings = [...(families.get(best.word)?.spellings.keys() ?? []), ...(meant.get(best.word) ?? [])];
    for (const place of places) found.push({ ...place, meant: nearestSpelling(place.word, spellings) });
  }
  return found;
}

/** The words that no name, alias, saying, plain or ignored word holds, most frequent first, then in the order of the texts. */
export function lackingWords<Place>(texts: Iterable<PlacedText<Place>>, vocabulary: Words): LackingWord<Place>[] {
  const { known } = hear(vocabulary);
  return [...familiesOf(texts)]
    .filter(([folded]) => folded.length > 2 && !known.has(folded) && !FUNCTION_WORDS.has(folded))
    .map(([, { count, spellings, places }]) => {
      const [[word] = [""]] = [...spellings].sort(([, a], [, b]) => b - a);
      return { ...(places[0] as PlacedWord<Place>), word, count };
    })
    .sort((a, b) => b.count - a.count);
}

/** A word in all its spellings that are compared as one: upper and lower case, singular and plural. */
interface Family<Place> {
  count: number;
  readonly spellings: Map<string, number>;
  /** Where it stands first; no more places than a rare word has are kept. */
  readonly places: PlacedWord<Place>[];
}

function familiesOf<Place>(texts: Iterable<PlacedText<Place>>): Map<string, Family<Place>> {
  const families = new Map<string, Family<Place>>();
  const byWritten = new Map<string, Family<Place>>();
  for (const { text, place } of texts)
    for (const { 0: word, index } of withoutCodes(text).matchAll(WORD)) {
      let family = byWritten.get(word);
      if (!family) {
        const folded = foldOf(word);
        family = families.get(folded) ?? { count: 0, spellings: new Map(), places: [] };
        families.set(folded, family);
        byWritten.set(word, family);
      }
      const lower = word.toLowerCase();
      family.count++;
      family.spellings.set(lower, (family.spellings.get(lower) ?? 0) + 1);
      if (family.places.length < RARE) family.places.push({ word, place, within: [index, index + word.length] });
    }
  return families;
}

/** Letters without a figure beside them: what has figures in it is a number, an id or a quantity. */
const WORD = /(?<![\p{L}\p{M}\p{N}])\p{L}[\p{L}\p{M}]*(?![\p{L}\p{M}\p{N}])/gu;

/** Addresses, ids in [[ ]], what links lead to, code and figures with their signs are blanks, so that all else stays where it is. */
function withoutCodes(text: string): string {
  return text.replaceAll(
    /\b[a-z]+:\/\/\S+|\]\([^)]*\)|\[\[[^\]|]*|`[^`]*`|[\p{L}\p{N}]*\p{N}[\p{L}\p{N}]*(?:[-./#][\p{L}\p{N}]*\p{N}[\p{L}\p{N}]*)*/gu,
    (code) => " ".repeat(code.length),
  );
}

function foldOf(word: string): string {
  return fold(word.normalize("NFKD").replaceAll(/\p{M}/gu, ""));
}

/** The words that the vocabulary knows, and those that it writes names and meanings with, each with its spellings. */
function hear({ names, ignore, plain, mean }: Words): { known: Set<string>; meant: Map<string, string[]> } {
  const known = new Set<string>();
  const meant = new Map<string, string[]>();
  const wordsIn = (text: string): string[] => text.match(/[\p{L}\p{M}]+/gu) ?? [];
  for (const text of [...names.flatMap(({ say }) => say), ...mean.map(([say]) => say), ...ignore, ...plain])
    for (const word of wordsIn(text)) known.add(foldOf(word));
  for (const text of [...names.map(({ label }) => label), ...mean.map(([, word]) => word)])
    for (const word of wordsIn(text)) {
      const folded = foldOf(word);
      known.add(folded);
      meant.set(folded, [...(meant.get(folded) ?? []), word.toLowerCase()]);
    }
  return { known, meant };
}

const BEGINNING = /^(?:un|re|non|over|under|pre|mis|in|dis|out|inter)/;
const ENDINGS = ["", ..."ed er or y ly al est ing ion able ment ness less ful".split(" ")];

/** What is left of a word without a usual ending and beginning. Words that share a root are forms of one another. */
function rootsOf(word: string): string[] {
  return [word, word.replace(BEGINNING, "")].flatMap((rest) =>
    ENDINGS.filter((ending) => rest.endsWith(ending))
      .map((ending) => rest.slice(0, rest.length - ending.length))
      // Carry, carries; file, filing; fit, fitted. In longer words a doubled letter is no matter of form (regullated).
      .map((root) => root.replace(/[eiy]$|ie$/, "").replace(/^(.{1,3}?)(.)\2$/, "$1$2"))
      .filter((root) => root.length > 2),
  );
}

/**
 * How many slips lie between a written word and one that may have been meant, 1 or 2; 0 where that is no slip, or the word is
 * too short to tell.
 *
 *   rad ai tor      what both begin and end with is put aside;
 *   rad ia tor      the rest says what was slipped
 */
function slipsFrom(written: string, meant: string): 0 | 1 | 2 {
  const shorter = Math.min(written.length, meant.length);
  let same = 0;
  while (same < shorter && written[same] === meant[same]) same++;
  let end = 0;
  while (end < shorter - same && written.at(-1 - end) === meant.at(-1 - end)) end++;
  const [wrong, right] = [written.slice(same, written.length - end), meant.slice(same, meant.length - end)];
  if (wrong === right) return 0;
  const before = written[same - 1];
  const isTurned = wrong.length === 2 && right.length === 2 && wrong[0] === right[1] && wrong[1] === right[0];
  const isDoubling = wrong.length + right.length === 1 && wrong + right === before;
  const isOne = isTurned || (wrong.length <= 1 && right.length <= 1);
  if (!isOne) return same > 0 && written.length >= TWO && distance(wrong, right) === 2 ? 2 : 0;
  const fewest = same === 0 ? OTHER : isTurned ? TURNED : isDoubling ? DOUBLED : wrong === "" ? LEFT_OUT : OTHER;
  return written.length >= fewest ? 1 : 0;
}

/**
 * Finds the words that may lie within one slip of another, or two for a long one, without comparing all pairs. Whatever was slipped,
 * taking letters away from both sides leaves the same:
 *
 *   radaitor  - a  →  raditor  ←  i -  radiator
 *
 * So each word is kept under itself and under all that is left of it without one letter (a long one: without two).
 */
export function nearWords(words: ReadonlySet<string>): (written: string) => string[] {
  const byRest = new Map<string, string[]>();
  for (const word of words)
    for (const rest of restsOf(word)) {
      const sharing = byRest.get(rest);
      if (sharing) sharing.push(word);
      else byRest.set(rest, [word]);
    }
  return (written) => [...new Set([...restsOf(written)].flatMap((rest) => byRest.get(rest) ?? []))];
}

/** A word two letters shorter than the shortest that may have two slips can still be meant by one. */
function restsOf(word: string): Set<string> {
  const once = restsWithoutOne(word);
  const twice = word.length >= TWO - 2 ? once.flatMap(restsWithoutOne) : [];
  return new Set([word, ...once, ...twice]);
}

function restsWithoutOne(word: string): string[] {
  return Array.from(word, (_, i) => word.slice(0, i) + word.slice(i + 1));
}

/** Of a word's spellings (its singular, its plural) the one that what is written most likely meant. */
function nearestSpelling(written: string, spellings: readonly string[]): string {
  const lower = written.toLowerCase();
  const far = (one: string): number => distance(lower, one) + Math.abs(lower.length - one.length);
  const [best = ""] = [...new Set(spellings)].sort((a, b) => far(a) - far(b));
  return best;
}
