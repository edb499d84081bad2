/**
 * From a question in the trade's words to what it is about.
 *
 *   what changed on the breaks of the 74 Alder    →    asked: what changed; system Brakes; line Alder; year 1974; no words left
 *
 * 1. Words are folded: case, accents, punctuation and a plural s do not count.
 * 2. A word that nobody knows is exchanged for the word it was most likely meant to be (corrections.ts); equally near ones are a choice.
 * 3. What people say is exchanged for the word of the records (breaks for brakes), unless a name of more words begins there.
 * 4. From left to right, at each word the first that applies:
 *      a number of a part or record, however written;
 *      a number with its unit, which is no year;
 *      years: 1974, '74, 72-74, since 72, before the 74s;
 *      the longest run of words that is a name, or a way to ask. Where two names are the same words, the chip holds both;
 *      a word that names nothing, which is dropped;
 *      any other word, which is left for a search of the text.
 * 5. A yes/no trait is there unless "without" or the like stands before it. Where its words name a thing too, the thing is meant,
 *    unless "with" or "without" stands before.
 */
import { ASKED, type Asked } from "./asked.ts";
import { corrections } from "./corrections.ts";
import { keyOf, type Names, namesOf } from "./names.ts";
import { findNumber, type Numbered, type Numbers, runsAt } from "./numbers.ts";
import { serialAt } from "./serials.ts";
import { fold, split } from "./split.ts";
import type { ChipKind, Name, Vocabulary } from "./vocabulary-shape.ts";
import { yearsAt } from "./years.ts";

export interface Chip {
  readonly kind: ChipKind;
  /** Usually one; several where the same words name several things, or for a run of years. */
  readonly ids: readonly string[];
  readonly label: string;
  /** The words of the question that were read so. */
  readonly said: string;
  /** The number of its first word in the question. */
  readonly at: number;
  /** What each id is called, where the same words name several. */
  readonly options?: readonly { readonly id: string; readonly label: string }[];
  /** The word that a misspelt one was taken for. */
  readonly readAs?: string;
  /** It is said of the car that a part comes from: "off a 75". */
  readonly donor?: true;
}

export interface AskedChip {
  readonly asked: Asked;
  readonly label: string;
  readonly said: string;
  readonly at: number;
}

export interface Reading {
  readonly chips: readonly Chip[];
  readonly asked: readonly AskedChip[];
  /** What is left for a search of the text. */
  readonly rest: string;
  /** Two words each that stand side by side in the question, of which none was read as something else. */
  readonly phrases: readonly string[];
  /** Every word that it was read with, folded. */
  readonly words: readonly string[];
  /** Numbers with their units, as typed. */
  readonly figures: readonly string[];
  /** Words that nobody knows, and what was read for each; several are equally near. */
  readonly corrected: readonly { readonly said: string; readonly readAs: readonly string[] }[];
}

/** A word of the question on its way: what is read, and what was typed for it. */
interface Token {
  readonly word: string;
  readonly typed: string;
  readonly at: number;
  readonly readAs?: string;
}

export const NO_NUMBERS: Numbers = new Map();

export function readQuestion(vocabulary: Vocabulary, question: string, numbers: Numbers = NO_NUMBERS): Reading {
  const names = namesOf(vocabulary);
  const typed = split(question.replaceAll(/(\d)\+/g, "$1 onwards"));
  const { tokens: corrected, corrections: found } = correct(typed, names, numbers);
  const tokens = exchange(corrected, names);
  return { ...walk(tokens, names, numbers), corrected: found };
}

function correct(typed: readonly string[], names: Names, numbers: Numbers) {
  const found: { said: string; readAs: string[] }[] = [];
  const tokens = typed.map((word, at): Token => {
    const folded = fold(word);
    const isNumber = () => runsAt(typed, at).some(({ plain }) => findNumber(numbers, plain).length > 0);
    if (isPartOfName(typed, at, names) || isNumber()) return { word, typed: word, at };
    const readAs = corrections(keyOf([folded]), names);
    const [best] = readAs;
    if (best === undefined) return { word, typed: word, at };
    found.push({ said: word, readAs });
    return { word: best, typed: word, at, readAs: best };
  });
  return { tokens, corrections: found };
}

/** "dip stick" is a name though "dip" is not: a word beside another, of which the two are one. */
function isPartOfName(words: readonly string[], at: number, names: Names): boolean {
  return [at - 1, at].some((from) => {
    const pair = words.slice(Math.max(0, from), from + 2);
    if (from < 0 || pair.length < 2) return false;
    const key = keyOf(pair.map(fold));
    return names.byKey.has(key) || names.mean.has(key) || names.known.has(key);
  });
}

function exchange(tokens: readonly Token[], names: Names): Token[] {
  const result: Token[] = [];
  for (let i = 0; i < tokens.length; ) {
    const said = longestRun(tokens, i, names.mean, names.longest);
    const named = longestRun(tokens, i, names.byKey, names.longest);
    const length = Math.max(1, said, named);
    const run = tokens.slice(i, i + length);
    const first = run[0] as Token;
    if (said > 0 && said >= named) {
      const typed = run.map((token) => token.typed).join(" ");
      const meant = split(names.mean.get(keyOf(run.map(({ word }) => fold(word)))) as string);
      // What was typed goes with the first of the words meant, so that it is shown once.
      result.push(...meant.map((word, n): Token => ({ ...first, word, typed: n === 0 ? typed : "" })));
    } else result.push(...run);
    i += length;
  }
  return result;
}

/** How many words from a place on are the longest run that is known; none where no run is. */
function longestRun(tokens: readonly Token[], at: number, known: { has(key: string): boolean }, most: number): number {
  const folded = tokens.slice(at, at + most).map(({ word }) => fold(word));
  while (folded.length > 0 && !known.has(keyOf(folded))) folded.pop();
  return folded.length;
}

const askedKeys = new Map<string, Asked>();
for (const [asked, { say }] of Object.entries(ASKED) as [Asked, { say: readonly string[] }][])
  for (const phrase of say) {
    const key = keyOf(split(phrase).map(fold));
    if (!askedKeys.has(key)) askedKeys.set(key, asked);
  }
const LONGEST_ASKED = 5;

const WITH = new Set(["with", "w", "having", "has"]);
const WITHOUT = new Set(["without", "no", "non", "not", "less", "minus"]);

function walk(tokens: readonly Token[], names: Names, numbers: Numbers): Omit<Reading, "corrected"> {
  const chips: Chip[] = [];
  const asked: AskedChip[] = [];
  const rest: string[] = [];
  const figures: string[] = [];
  /** Numbers of the words that nothing was read from, dropped ones included. */
  const left = new Set<number>();
  const words = tokens.map(({ word }) => word);
  const donors = donorsIn(words);
  const add = (chip: Chip, i: number): void => {
    const isOfCar = ["line", "year", "trait"].includes(chip.kind);
    addChip(chips, isOfCar && donors.has(i) ? { ...chip, donor: true } : chip);
  };
  for (let i = 0; i < tokens.length; ) {
    const token = tokens[i] as Token;
    const said = (length: number): string =>
      tokens
        .slice(i, i + length)
        .flatMap(({ typed }) => (typed === "" ? [] : [typed]))
        .join(" ");
    const number = numberAt(words, i, numbers);
    if (number) {
      addChip(chips, { ...numberChip(number.found), said: said(number.length), at: token.at });
      i += number.length;
      continue;
    }
    const serial = serialAt(words, i, names.serials);
    if (serial) {
      // The words by which the number was named have done their work.
      const called = names.serials.find(({ trait }) => serial[0]?.id.startsWith(`${trait}=`))?.called ?? [];
      while (rest.length > 0 && called.includes(fold(rest.at(-1) as string))) rest.pop();
      for (const { id, label } of serial) add({ kind: "trait", ids: [id], label, said: said(1), at: token.at }, i);
      i++;
      continue;
    }
    const figure = figureAt(words, i, names);
    // A name may hold a figure: "60 A alternator".
    if (figure > 0 && longestRun(tokens, i, names.byKey, names.longest) <= figure) {
      for (let n = 0; n < figure; n++) left.add(i + n);
      figures.push(words.slice(i, i + figure).join(" "));
      rest.push(...words.slice(i, i + figure));
      i += figure;
      continue;
    }
    const years = yearsAt(words, i, names.years);
    if (years && years.years.length > 0) {
      const [first] = years.years;
      const label = years.years.length === 1 ? (first as string) : `${first} to ${years.years.at(-1)}`;
      add({ kind: "year", ids: years.years, label, said: said(years.length), at: token.at }, i);
      i += years.length;
      continue;
    }
    const named = longestRun(tokens, i, names.byKey, names.longest);
    const way = longestRun(tokens, i, askedKeys, LONGEST_ASKED);
    const found = named > 0 && named >= way ? meantBy(names, tokens, i, named) : undefined;
    if (found && (way < named || found[0]?.kind !== "kind")) {
      const slip = tokens.slice(i, i + named).find((it) => it.readAs !== undefined)?.readAs;
      const isWhich = fold(words[i - 1] ?? "") === "which" && found[0]?.kind === "component";
      if (isWhich && !asked.some((it) => it.asked === "tell-apart"))
        asked.push({
          asked: "tell-apart",
          label: ASKED["tell-apart"].label,
          said: words[i - 1] as string,
          at: token.at - 1,
        });
      const readAs = slip === undefined ? {} : { readAs: slip };
      add({ ...nameChip(found), said: said(named), at: token.at, ...readAs }, i);
      // "Automatic transmission" says which car it is, and what it is about.
      const system = found[0]?.kind === "trait" ? systemOf(names, words.slice(i, i + named)) : undefined;
      if (system) addChip(chips, { ...nameChip([system]), said: said(named), at: token.at });
      i += named;
    } else if (way > 0) {
      const kind = askedKeys.get(keyOf(words.slice(i, i + way).map(fold))) as Asked;
      if (!asked.some((it) => it.asked === kind))
        asked.push({ asked: kind, label: ASKED[kind].label, said: said(way), at: token.at });
      i += way;
    } else {
      left.add(i);
      const isOfTrait = WITHOUT.has(fold(token.word)) && longestRun(tokens, i + 1, names.byKey, names.longest) > 0;
      if (!names.ignore.has(fold(token.word)) && !isSideWord(token.word) && !isOfTrait) rest.push(token.word);
      i++;
    }
  }
  return {
    chips,
    asked,
    rest: rest.join(" "),
    figures,
    phrases: phrasesOf(tokens, left, names),
    words: words.map(fold),
  };
}

/** Pairs of neighbours among the words that are left, with those that name nothing between them: "runs up", "out of gear". */
function phrasesOf(tokens: readonly Token[], left: ReadonlySet<number>, names: Names): string[] {
  return tokens.slice(1).flatMap(({ word }, i) => {
    const before = tokens[i] as Token;
    const isLeft = (at: number) => left.has(at);
    const speaks = [before.word, word].some((one) => !names.ignore.has(fold(one)));
    return isLeft(i) && isLeft(i + 1) && speaks ? [`${before.word} ${word}`] : [];
  });
}

/** Words that speak of the car a part comes from: those after "off", "from" or "out of", up to the next little word. */
function donorsIn(words: readonly string[]): Set<number> {
  const found = new Set<number>();
  let inside = false;
  words.forEach((word, i) => {
    const said = fold(word);
    const next = fold(words[i + 1] ?? "");
    if (said === "off" || (said === "from" && next !== "") || (said === "out" && next === "of")) inside = true;
    else if (["on", "in", "into", "onto", "to", "for", "fit", "go"].includes(said)) inside = false;
    else if (inside) found.add(i);
  });
  return found;
}

/** "With" and "without" have done their work once the trait is read. */
function isSideWord(word: string): boolean {
  const folded = fold(word);
  return WITH.has(folded) || folded === "without" || folded === "non";
}

function numberAt(words: readonly string[], at: number, numbers: Numbers) {
  for (const { plain, length } of runsAt(words, at)) {
    const found = findNumber(numbers, plain);
    if (found.length > 0) return { found, length };
  }
  return undefined;
}

/** A number and its unit, in two words or in one ("16 psi", "16psi"): how many words that are. */
function figureAt(words: readonly string[], at: number, names: Names): number {
  const word = words[at] ?? "";
  if (/^\d+([./]\d+)?(-\d+([./]\d+)?)?$/.test(word) && names.units.has(fold(words[at + 1] ?? ""))) return 2;
  const [, unit = ""] = /^\d+(?:[./]\d+)?([a-z-]+)$/i.exec(word) ?? [];
  return unit !== "" && unit !== "s" && names.units.has(fold(unit)) ? 1 : 0;
}

/** The names that a run of words may mean; of a thing and a trait with the same words, which one is told by the word before. */
function meantBy(names: Names, tokens: readonly Token[], at: number, length: number): readonly Name[] {
  const run = tokens.slice(at, at + length).map(({ word }) => fold(word));
  const found = names.byKey.get(keyOf(run)) ?? [];
  const before = fold(tokens[at - 1]?.word ?? "");
  const isSaid = WITH.has(before) || WITHOUT.has(before);
  const traits = found.filter(({ kind }) => kind === "trait");
  const things = found.filter(({ kind }) => kind !== "trait");
  const isFlag = traits.some(({ id }) => /=(yes|no)$/.test(id));
  // "A six" is the engine of the car, "the power steering" a thing that one may ask about.
  const kept = traits.length > 0 && (isSaid || things.length === 0 || !isFlag) ? traits : things;
  const [first] = kept;
  const same = kept.filter(({ kind }) => kind === first?.kind);
  if (!WITHOUT.has(before)) return same;
  return same.map((name) =>
    name.kind === "trait" && name.id.endsWith("=yes")
      ? { ...name, id: name.id.replace(/yes$/, "no"), label: `no ${name.label}` }
      : name,
  );
}

function systemOf(names: Names, words: readonly string[]): Name | undefined {
  return names.byKey.get(keyOf(words.map(fold)))?.find(({ kind }) => kind === "system");
}

function nameChip(found: readonly Name[]): Pick<Chip, "kind" | "ids" | "label" | "options"> {
  const [first] = found as [Name, ...Name[]];
  const options = found.map(({ id, label }) => ({ id, label }));
  return {
    kind: first.kind,
    ids: found.map(({ id }) => id),
    label: [...new Set(options.map(({ label }) => label))].join(" or "),
    ...(options.length > 1 ? { options } : {}),
  };
}

function numberChip(found: readonly Numbered[]): Pick<Chip, "kind" | "ids" | "label" | "options"> {
  const { kind } = found[0] as Numbered;
  const ids = [...new Set(found.filter((it) => it.kind === kind).map(({ id }) => id))];
  return {
    kind,
    ids,
    label: ids.join(" or "),
    ...(ids.length > 1 ? { options: ids.map((id) => ({ id, label: id })) } : {}),
  };
}

/** The same words said twice are one chip. */
function addChip(chips: Chip[], chip: Chip): void {
  const same = chips.find((one) => one.kind === chip.kind && one.ids.join() === chip.ids.join());
  if (!same) chips.push(chip);
}
