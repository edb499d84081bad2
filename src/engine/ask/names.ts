/**
 * A vocabulary, made ready to be looked up. Names and sayings are kept by their words, folded and run together, so that
 * "dip stick", "dip-stick" and "dipstick" are the same name.
 */
import { ASKED_WORDS } from "./asked.ts";
import {
  AND,
  CALENDAR,
  COMPARING,
  DENYING,
  DENYING_BEFORE,
  GRAMMAR,
  HARMLESS,
  LITTLE,
  RANGE,
  WITH,
} from "./little-words.ts";
import type { Serial } from "./serial-shape.ts";
import { fold, split } from "./split.ts";
import type { Name, Vocabulary } from "./vocabulary-shape.ts";

export interface Names {
  readonly byKey: ReadonlyMap<string, readonly Name[]>;
  /** What people say, by key, and the words of the records for it. */
  readonly mean: ReadonlyMap<string, string>;
  /** Words of the longest name or saying, and one more, for a word that was typed in two. */
  readonly longest: number;
  /** Words that name nothing: the grammar of any question, and what the data folder adds. */
  readonly ignore: ReadonlySet<string>;
  readonly years: readonly string[];
  readonly serials: readonly Serial[];
  readonly units: ReadonlySet<string>;
  /** Every word that is known, folded. It is never corrected. */
  readonly known: ReadonlySet<string>;
  /** What a slip is corrected to: words of names and sayings, and names of several words run together; then words of the texts. */
  readonly trade: readonly string[];
  readonly texts: readonly string[];
}

const prepared = new WeakMap<Vocabulary, Names>();

export function namesOf(vocabulary: Vocabulary): Names {
  const known = prepared.get(vocabulary);
  if (known) return known;
  const names = prepare(vocabulary);
  prepared.set(vocabulary, names);
  return names;
}

function prepare(vocabulary: Vocabulary): Names {
  const byKey = new Map<string, Name[]>();
  const trade = new Set<string>();
  let longest = 1;
  const hear = (text: string): string => {
    const words = split(text).map(fold);
    longest = Math.max(longest, words.length);
    for (const word of words) if (word.length > 3 && !/\d/.test(word)) trade.add(plain(word));
    const joined = keyOf(words);
    if (words.length > 1 && joined.length > 6 && !/\d/.test(joined)) trade.add(joined);
    return joined;
  };
  for (const name of vocabulary.names)
    for (const said of name.say) {
      const key = hear(said);
      const same = byKey.get(key);
      if (!same) byKey.set(key, [name]);
      else if (!same.includes(name)) same.push(name);
    }
  const mean = new Map(vocabulary.mean.map(([say, word]) => [hear(say), word]));
  for (const [, word] of vocabulary.mean) hear(word);
  const ignore = new Set([...GRAMMAR, ...vocabulary.ignore.map(fold)]);
  const asked = ASKED_WORDS.flatMap((phrase) => split(phrase).map(fold));
  const units = new Set(vocabulary.units.flatMap((unit) => split(unit).map(fold)));
  for (const word of ignore) trade.delete(word);
  const names = vocabulary.names.flatMap((name) => name.say.flatMap((said) => split(said).map(fold)));
  const sayings = vocabulary.mean.flatMap(([say, word]) => [...split(say), ...split(word)].map(fold));
  const texts = Object.keys(vocabulary.words);
  return {
    byKey,
    mean,
    longest: longest + 1,
    ignore,
    years: vocabulary.names.filter((name) => name.kind === "year").map((name) => name.id),
    serials: vocabulary.serials,
    units,
    known: new Set(
      [
        ...names,
        ...sayings,
        ...ignore,
        ...vocabulary.plain.map(fold),
        ...[WITH, DENYING, DENYING_BEFORE, LITTLE, AND, RANGE, CALENDAR, COMPARING, HARMLESS].flatMap((words) =>
          [...words].map(fold),
        ),
        ...vocabulary.serials.flatMap(({ called }) => called),
        ...asked,
        ...units,
        ...texts,
      ].flatMap((word) => [word, plain(word)]),
    ),
    trade: [...trade],
    texts: texts.filter((word) => word.length > 3),
  };
}

/** The words of a name, run together. */
export function keyOf(folded: readonly string[]): string {
  return folded.map(plain).join("");
}

function plain(word: string): string {
  return word.replaceAll(/[^\p{Letter}\p{Number}]/gu, "");
}
