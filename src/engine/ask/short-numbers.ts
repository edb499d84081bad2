/**
 * Whether one word may be a short number of a part, record or bulletin: fewer than four letters and figures, as "44-1", "007", "1E5".
 *
 * So short a word may be much else, so it is only that number where it is written exactly so (capitals aside), and never
 *
 *   a name of the data ("294" may be an engine), a year of the data, or a quantity: a unit follows
 *
 *   unless it is called a number ("part 60"). And by how it looks:
 *
 *   a code, 44-1 or 007            anywhere: nobody counts so, and 44 to 1 is no range
 *   a mixture, 1E5 or A4           not where a car would stand: "on an A4", "with A4", "44-1 fit A4" may speak of a car or engine that
 *                                  is not on record, and nothing may be permitted as if that word were understood
 *   a bare number, 12, 1.5, 1-2    may be a count, so only as the whole question, or one of three figures that is asked about:
 *                                  "does 441 fit"
 *
 * A longer number stands for itself, unless it is a year of the data, or has a unit.
 */
import { ASKED, type Asked } from "./asked.ts";
import { LITTLE, WITH } from "./little-words.ts";
import { keyOf, type Names } from "./names.ts";
import { type Numbered, type Numbers, plainNumber } from "./numbers.ts";
import { fold, split } from "./split.ts";
import { yearsAt } from "./years.ts";

type Known = Pick<Names, "byKey" | "units" | "years">;

/** From so many letters and figures on a number is read however it is written. */
export const LONG = 4;

/** What is written so, sign by sign, at a place where it may be meant. */
export function shortNumberAt(
  words: readonly string[],
  at: number,
  names: Known,
  numbers: Numbers,
): readonly Numbered[] {
  const word = words[at] ?? "";
  if (!mayBeShortNumber(words, at, names)) return [];
  return (numbers.get(plainNumber(word)) ?? []).filter(
    ({ id, as }) => as === undefined && id.toUpperCase() === word.toUpperCase(),
  );
}

/** By the words alone, whatever numbers there are: a page loads them only then. */
export function mayBeShortNumber(words: readonly string[], at: number, names: Known): boolean {
  const word = words[at] ?? "";
  const { length } = plainNumber(word);
  if (length === 0 || length >= LONG || !/\d/.test(word) || isMeasure(words, at, names)) return false;
  if (isCalledNumber(words, at)) return true;
  if (names.byKey.has(keyOf([fold(word)])) || isYear(words, at, names)) return false;
  if (/\p{Letter}/u.test(word)) return !isOfCar(words, at);
  if (!isBare(word)) return true;
  return words.length === 1 || (/^\d{3}$/.test(word) && isAskedAbout(words, at));
}

/** A single word that is a year of the data or a quantity, though a number be written so. */
export function isNoNumber(words: readonly string[], at: number, names: Known): boolean {
  if (isCalledNumber(words, at)) return false;
  return isYear(words, at, names) || (/^\d+$/.test(words[at] ?? "") && isUnit(words[at + 1], names));
}

function isYear(words: readonly string[], at: number, { years }: Known): boolean {
  return (yearsAt(words.slice(at, at + 1), 0, years)?.years.length ?? 0) > 0;
}

/** "Part 60", "part number 60", "p/n 60". */
function isCalledNumber(words: readonly string[], at: number): boolean {
  const [before = "", first = ""] = [words[at - 1], words[at - 2]].map((word) => fold(word ?? ""));
  const isPart = (word: string): boolean => ["part", "pn", "p/n"].includes(word);
  return isPart(before) || (["number", "no", "num", "nr"].includes(before) && isPart(first));
}

/** A unit follows. "In" and "a" are units only after a bare number, and not before what is said of a car: "12 in a 60". */
function isMeasure(words: readonly string[], at: number, names: Known): boolean {
  const next = words[at + 1];
  if (isUnit(next, names)) return true;
  if (next === undefined || !names.units.has(fold(next)) || /\p{Letter}|-/u.test(words[at] ?? "")) return false;
  return !isBeforeCar(words[at + 2], names);
}

/** The word can be nothing but a unit. */
function isUnit(word: string | undefined, { units }: Known): boolean {
  return word !== undefined && units.has(fold(word)) && !LITTLE.has(fold(word));
}

function isBeforeCar(word: string | undefined, names: Known): boolean {
  if (word === undefined) return false;
  const isCar = names.byKey.get(keyOf([fold(word)]))?.some(({ kind }) => kind === "line" || kind === "year");
  return isCar === true || DETERMINERS.has(word.toLowerCase());
}

const DETERMINERS: ReadonlySet<string> = new Set(["a", "an", "the", "my", "our", "your", "his", "her", "this", "that"]);
const AT_CAR: ReadonlySet<string> = new Set(["on", "in", "into", "onto", "to", "for", "off", "from"]);

/** Where a car, or an engine of it, would be named. */
function isOfCar(words: readonly string[], at: number): boolean {
  const before = words[at - 1]?.toLowerCase() ?? "";
  if (WITH.has(before) || AT_CAR.has(before) || (DETERMINERS.has(before) && before !== "the")) return true;
  const isAfterNumber = words.slice(0, at - 1).some((word) => /\d/.test(word));
  return isAfterNumber && (before === "the" || endsAsking(words, at));
}

/** A count or measure: a whole number, a decimal, or two numbers, the second not the smaller. Three figures with a zero in front are none. */
function isBare(word: string): boolean {
  if (/^\d*\.?\d+$/.test(word)) return word.length < 3 || !/^0\d/.test(word);
  const [, from, to] = /^(\d+)-(\d+)$/.exec(word) ?? [];
  return from !== undefined && Number(from) <= Number(to);
}

/** Who asks so much of a number speaks of a part: nobody asks whether a hundred of a thing fit. */
function isAskedAbout(words: readonly string[], at: number): boolean {
  const before = words[at - 1]?.toLowerCase();
  const isSubject = before === undefined || ASKING.has(before);
  return isSubject && [1, 2, 3].some((length) => WAYS.has(keyOf(words.slice(at + 1, at + 1 + length).map(fold))));
}

const ASKING: ReadonlySet<string> = new Set([
  ...["does", "do", "will", "would", "can", "could", "may", "might", "should", "is", "if"],
]);

const OF_FITTING: readonly Asked[] = ["fits", "retrofit", "replaces"];
const WAYS: ReadonlySet<string> = new Set(
  OF_FITTING.flatMap((asked) => ASKED[asked].say.map((phrase) => keyOf(split(phrase).map(fold)))),
);

/** "… fit", "… go on": the words right before ask whether something goes on what follows. */
function endsAsking(words: readonly string[], at: number): boolean {
  return [1, 2, 3].some((length) => at >= length && WAYS.has(keyOf(words.slice(at - length, at).map(fold))));
}
