/**
 * The model years that words name.
 *
 *   1974, '74, 74, 74s         that year, where only one year of the data ends so
 *   1972-74, 72 to 74          every year between, where they stand in that order
 *   since 72, 72 on, 72+       that year and every later one
 *   before 74, pre-74          every earlier year, without it
 *   up to 73, 73 and earlier   that year and every earlier one
 *   after 72                   every later year, without it
 */
import { fold } from "./split.ts";

export interface SaidYears {
  readonly years: readonly string[];
  /** How many words that took. */
  readonly length: number;
}

type Side = "from" | "after" | "until" | "before";

const BEFORE_YEAR: Readonly<Record<string, Side>> = {
  "not before": "from",
  "no earlier than": "from",
  "not earlier than": "from",
  "not after": "until",
  "no later than": "until",
  "not later than": "until",
  since: "from",
  starting: "from",
  after: "after",
  post: "after",
  "newer than": "after",
  "later than": "after",
  until: "until",
  till: "until",
  thru: "until",
  through: "until",
  "up to": "until",
  before: "before",
  pre: "before",
  "older than": "before",
  "earlier than": "before",
  "prior to": "before",
};
const AFTER_YEAR: Readonly<Record<string, Side>> = {
  onward: "from",
  onwards: "from",
  up: "from",
  plus: "from",
  "and on": "from",
  "and up": "from",
  "and later": "from",
  "and newer": "from",
  "or later": "from",
  "or newer": "from",
  "and earlier": "until",
  "and older": "until",
  "or earlier": "until",
  "or older": "until",
};
const TO = ["to", "thru", "through", "till", "until", "and"];

/** What the words from `at` on say of years; nothing where they do not begin with that. */
export function yearsAt(words: readonly string[], at: number, known: readonly string[]): SaidYears | undefined {
  if (known.length === 0) return undefined;
  const before = phraseAt(words, at, BEFORE_YEAR);
  if (before) {
    const skipped = isArticle(words[at + before.length]) ? 1 : 0;
    const [year] = oneYear(words[at + before.length + skipped], known);
    if (year === undefined) return gluedAt(words[at], known);
    return { years: sideOf(known, before.side, year), length: before.length + skipped + 1 };
  }
  const glued = gluedAt(words[at], known);
  if (glued) return glued;
  const first = yearsIn(words[at] ?? "", known);
  if (first.length === 0) return undefined;
  const [year] = first;
  if (first.length > 1 || year === undefined) return { years: first, length: 1 };
  return runFrom(words, at, year, known) ?? { years: first, length: 1 };
}

/** What follows a single year may make more of it. */
function runFrom(words: readonly string[], at: number, year: string, known: readonly string[]): SaidYears | undefined {
  const link = words[at + 1]?.toLowerCase();
  const said = fold(words[at - 1] ?? "");
  // "72 and 74" are two years, "between 72 and 74" a run.
  if (link !== undefined && TO.includes(link) && (link !== "and" || said === "between")) {
    const [last] = oneYear(words[at + 2], known);
    if (last !== undefined && year <= last) return { years: between(known, year, last), length: 3 };
  }
  const after = phraseAt(words, at + 1, AFTER_YEAR);
  if (after) return { years: sideOf(known, after.side, year), length: 1 + after.length };
  // "72 on" at the end; elsewhere "on" begins what it is about.
  if (link === "on" && at + 2 === words.length) return { years: sideOf(known, "from", year), length: 2 };
  return undefined;
}

/** pre-73, post-72 */
function gluedAt(word: string | undefined, known: readonly string[]): SaidYears | undefined {
  const [, side = "", year = ""] = /^(pre|post)-?'?(\d{2}|\d{4})$/i.exec(word ?? "") ?? [];
  const [found] = oneYear(year, known);
  return found === undefined
    ? undefined
    : { years: sideOf(known, side.toLowerCase() === "pre" ? "before" : "after", found), length: 1 };
}

function phraseAt(words: readonly string[], at: number, table: Readonly<Record<string, Side>>) {
  for (const length of [3, 2, 1]) {
    if (at + length > words.length) continue;
    const said = words
      .slice(at, at + length)
      .join(" ")
      .toLowerCase();
    if (Object.hasOwn(table, said)) return { side: table[said] as Side, length };
  }
  return undefined;
}

function isArticle(word: string | undefined): boolean {
  return word !== undefined && /^(the|a|an|model|year)$/i.test(word);
}

function sideOf(known: readonly string[], side: Side, year: string): string[] {
  switch (side) {
    case "from":
      return known.filter((it) => it >= year);
    case "after":
      return known.filter((it) => it > year);
    case "until":
      return known.filter((it) => it <= year);
    case "before":
      return known.filter((it) => it < year);
  }
}

function between(known: readonly string[], from: string, to: string): string[] {
  return known.filter((year) => from <= year && year <= to);
}

function oneYear(word: string | undefined, known: readonly string[]): string[] {
  const years = yearsIn(word ?? "", known);
  return years.length === 1 ? years : [];
}

/** The years of the data that one word names: 1974, '74, 74, 74s, 1972-74. */
function yearsIn(word: string, years: readonly string[]): string[] {
  const full = (text: string): string | undefined => {
    if (/^\d{4}$/.test(text)) return years.includes(text) ? text : undefined;
    const ending = years.filter((year) => year.endsWith(text));
    return ending.length === 1 ? ending[0] : undefined;
  };
  const one = /^'?(\d{2}|\d{4})'?s?$/.exec(word);
  if (one) {
    const year = full(one[1] as string);
    return year ? [year] : [];
  }
  const [, first = "", last = ""] = /^'?(\d{2}|\d{4})[-–/]'?(\d{2}|\d{4})$/.exec(word) ?? [];
  // Nobody writes years as 72-1974, but part numbers look so.
  if (first === "" || first.length < last.length) return [];
  const [from, to] = [full(first), full(last)];
  return from === undefined || to === undefined ? [] : between(years, from, to);
}

/** A year that words name and the data has not: 1969, '69, or short 69 where something else has to tell that it is a year. */
export function beyondYears(
  words: readonly string[],
  at: number,
  known: readonly string[],
): { year: string; short: boolean } | undefined {
  const [, first = "", last = ""] = /^'?(\d{2}|\d{4})[-–/]'?(\d{2}|\d{4})$/.exec(words[at] ?? "") ?? [];
  const isCovered = (year: string): boolean => yearsIn(year, known).length > 0;
  // A run of years of which one end lies outside of the data.
  if (first.length === 4 && isCovered(first) !== isCovered(last)) return { year: words[at] as string, short: false };
  const [, mark = "", digits = ""] = /^('?)(\d{2}|19\d{2}|20\d{2})'?s?$/.exec(words[at] ?? "") ?? [];
  if (digits === "" || known.length === 0 || yearsIn(words[at] ?? "", known).length > 0) return undefined;
  return { year: digits, short: digits.length === 2 && mark === "" };
}
