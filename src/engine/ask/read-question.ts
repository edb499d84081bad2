/**
 * From a question in the trade's words to what it is about.
 *
 *   what changed on the breaks of the 74 Alder    →    system Brakes, line Alder, year 1974, no words left
 *
 * 1. Words are folded: case, accents, punctuation and a plural s do not count.
 * 2. What people say is exchanged for the word of the records (breaks for brakes), unless a name of more words begins there.
 * 3. From left to right the longest run of words that is a name in the vocabulary becomes a chip. Where two names are
 *    the same words, the chip holds both.
 * 4. A year may be written 1974, '74 or 74, where only one year of the data ends so; 1972-74 is every year between.
 * 5. Words that name nothing are dropped. What is left is searched as text.
 */
import type { ChipKind, Vocabulary } from "./vocabulary.ts";

export interface Chip {
  readonly kind: ChipKind;
  /** Usually one; several where the same words name several things, or for a run of years. */
  readonly ids: readonly string[];
  readonly label: string;
  /** The words of the question that were read so. */
  readonly said: string;
}

export interface Reading {
  readonly chips: readonly Chip[];
  /** What is left for a search of the text. */
  readonly rest: string;
}

interface Names {
  readonly byWords: ReadonlyMap<string, Vocabulary["names"]>;
  /** Words of the longest name or saying. */
  readonly longest: number;
  readonly ignore: ReadonlySet<string>;
  readonly mean: ReadonlyMap<string, string>;
  readonly years: readonly string[];
}

const prepared = new WeakMap<Vocabulary, Names>();

export function readQuestion(vocabulary: Vocabulary, question: string): Reading {
  const names = prepare(vocabulary);
  const words = exchange(split(question), names);
  const chips: Chip[] = [];
  const rest: string[] = [];
  for (let i = 0; i < words.length; ) {
    const [chip, length] = chipAt(words, i, names);
    if (chip) addChip(chips, chip);
    else if (!names.ignore.has(fold(words[i] as string))) rest.push(words[i] as string);
    i += length;
  }
  return { chips, rest: rest.join(" ") };
}

function prepare(vocabulary: Vocabulary): Names {
  const known = prepared.get(vocabulary);
  if (known) return known;
  const byWords = new Map<string, Vocabulary["names"]>();
  let longest = 1;
  for (const name of vocabulary.names)
    for (const said of name.say) {
      const words = split(said).map(fold);
      longest = Math.max(longest, words.length);
      const key = words.join(" ");
      const same = byWords.get(key) ?? [];
      if (!same.includes(name)) byWords.set(key, [...same, name]);
    }
  const mean = new Map(vocabulary.mean.map(([say, word]) => [split(say).map(fold).join(" "), word]));
  for (const said of mean.keys()) longest = Math.max(longest, said.split(" ").length);
  const names: Names = {
    byWords,
    longest,
    ignore: new Set(vocabulary.ignore.map(fold)),
    mean,
    years: vocabulary.names.filter((name) => name.kind === "year").map((name) => name.id),
  };
  prepared.set(vocabulary, names);
  return names;
}

/** Words of a question: runs of letters, digits and the signs that hold a word or number together, and the sign before '74. */
export function split(text: string): string[] {
  return (
    text
      .normalize("NFKD")
      .replaceAll(/\p{Mark}/gu, "")
      .replaceAll(/[‘’]/g, "'")
      .match(/(?:'(?=\p{Number}))?[\p{Letter}\p{Number}]+(?:[-./'–]'?[\p{Letter}\p{Number}]+)*/gu) ?? []
  );
}

/** A word as it is compared: lower case, without a possessive or plural s. */
export function fold(word: string): string {
  const lower = word.toLowerCase().replace(/'s$/, "");
  return lower.length > 3 && /[^su]s$/.test(lower) && !/\d/.test(lower)
    ? lower.replace(/(?<=ch|sh|x)es$|s$/, "")
    : lower;
}

function exchange(words: readonly string[], names: Names): string[] {
  const result: string[] = [];
  for (let i = 0; i < words.length; ) {
    const said = longestRun(words, i, names.mean, names.longest);
    const named = longestRun(words, i, names.byWords, names.longest);
    const length = Math.max(1, said, named);
    const typed = words.slice(i, i + length);
    result.push(...(said > 0 && said >= named ? split(names.mean.get(typed.map(fold).join(" ")) as string) : typed));
    i += length;
  }
  return result;
}

/** How many words from a place on are the longest run that is known; none where no run is. */
function longestRun(words: readonly string[], at: number, known: ReadonlyMap<string, unknown>, most: number): number {
  const folded = words.slice(at, at + most).map(fold);
  while (folded.length > 0 && !known.has(folded.join(" "))) folded.pop();
  return folded.length;
}

function chipAt(words: readonly string[], at: number, names: Names): [Chip | undefined, number] {
  const length = longestRun(words, at, names.byWords, names.longest);
  const said = words.slice(at, at + length);
  const found = names.byWords.get(said.map(fold).join(" "));
  const first = found?.[0];
  if (found && first) {
    const same = found.filter((name) => name.kind === first.kind);
    return [{ kind: first.kind, ids: same.map((name) => name.id), label: first.label, said: said.join(" ") }, length];
  }
  const years = yearsIn(words[at] as string, names.years);
  if (years.length === 0) return [undefined, 1];
  const label = years.length === 1 ? (years[0] as string) : `${years[0]} to ${years.at(-1)}`;
  return [{ kind: "year", ids: years, label, said: words[at] as string }, 1];
}

/** The years of the data that a word names: 1974, '74, 74, 74s, 1972-74. */
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
  if (from === undefined || to === undefined) return [];
  return years.filter((year) => from <= year && year <= to);
}

/**
 * What the chips ask for, kind by kind: a page must fit every kind, and of one kind any id will do.
 * "Distributor of the six" names two components, and a page about either is wanted.
 */
export function wanted(chips: readonly Chip[]): Map<ChipKind, string[]> {
  const byKind = new Map<ChipKind, string[]>();
  for (const { kind, ids } of chips) byKind.set(kind, [...new Set([...(byKind.get(kind) ?? []), ...ids])]);
  return byKind;
}

/** The same words said twice are one chip. */
function addChip(chips: Chip[], chip: Chip): void {
  const same = chips.find((one) => one.kind === chip.kind && one.ids.join() === chip.ids.join());
  if (!same) chips.push(chip);
}
