/**
 * From a question in the trade's words to what it is about.
 *
 *   what changed on the breaks of the 74 Alder    →    asked: what changed; system Brakes; line Alder; year 1974; no words left
 *
 * The words are made ready first (tokens.ts). Then, from left to right, at each word the first that applies:
 *
 *   a number of a part or record, however written; a short one only as it is written (short-numbers.ts);
 *   a number that tells which car it is;
 *   a number with its unit, which is no year;
 *   years: 1974, '74, 72-74, since 72, before the 74s;
 *   the longest run of words that is a name, or a way to ask. Where two names are the same words, the chip holds both;
 *   a word that names nothing, which is dropped;
 *   any other word, which is left for a search of the text.
 *
 * Where the words of a yes/no trait name a thing too, the thing is meant, unless "with" or "without" stands before. What the
 * chips say of which car, and what they deny, is read from how they stand in the question (cars-said.ts).
 */

import { nearest } from "../scope/nearest.ts";
import { ASKED, type Asked } from "./asked.ts";
import { AND, COMPARING, DENYING, LITTLE, WITH } from "./little-words.ts";
import { keyOf, type Names, namesOf } from "./names.ts";
import { findNumber, type Numbered, type Numbers, plainNumber, runsAt } from "./numbers.ts";
import { serialAt } from "./serials.ts";
import { isNoNumber, shortNumberAt } from "./short-numbers.ts";
import { fold, split } from "./split.ts";
import { type Corrected, longestRun, type Token, tokensOf } from "./tokens.ts";
import type { ChipKind, Name, Vocabulary } from "./vocabulary-shape.ts";
import { beyondYears, yearsAt } from "./years.ts";

export interface Chip {
  readonly kind: ChipKind;
  /** Usually one; several where the same words name several things, or for a run of years. */
  readonly ids: readonly string[];
  readonly label: string;
  /** The words of the question that were read so. */
  readonly said: string;
  /** Where it stands among the words, and how many it takes. */
  readonly at: number;
  readonly length: number;
  /** What each id is called, where the same words name several. */
  readonly options?: readonly { readonly id: string; readonly label: string }[];
  /** The word that a misspelt one was taken for. */
  readonly readAs?: string;
}

export interface AskedChip {
  readonly asked: Asked;
  readonly label: string;
  readonly said: string;
  readonly at: number;
  readonly length: number;
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
  /** Places of words before which a comma or the like stands. */
  readonly heads: readonly number[];
  /** Numbers with their units, as typed. */
  readonly figures: readonly string[];
  /** A figure is only compared with ("more than 60 A"), or there are several: none of them is a reading. */
  readonly comparing: boolean;
  /** A sign that is no word stands in the question: 75%, $75, 75*. */
  readonly signs: boolean;
  /** What looks like a number of a part or record and is none, and the nearest one that is. */
  readonly noNumbers: readonly { readonly said: string; readonly near?: string }[];
  /** Years that the question names and the records do not cover. */
  readonly beyond: readonly string[];
  /** Words that nobody knows, and what was read for each; several are equally near. */
  readonly corrected: readonly Corrected[];
}

export const NO_NUMBERS: Numbers = new Map();

export function readQuestion(vocabulary: Vocabulary, question: string, numbers: Numbers = NO_NUMBERS): Reading {
  const names = namesOf(vocabulary);
  const { tokens, corrected } = tokensOf(question, names, numbers);
  return { ...new Walk(tokens, names, numbers).reading(), corrected, signs: /[%$€£#*~<>=|^]/.test(question) };
}

const askedKeys = new Map<string, Asked>();
for (const [asked, { say }] of Object.entries(ASKED) as [Asked, { say: readonly string[] }][])
  for (const phrase of say) {
    const key = keyOf(split(phrase).map(fold));
    if (!askedKeys.has(key)) askedKeys.set(key, asked);
  }
const LONGEST_ASKED = 5;

/** Letters and figures in two pieces with a hyphen, figures in both. */
const LIKE_A_NUMBER = /^(?=.{6,})[\p{Letter}\d]*\d[\p{Letter}\d]*-[\p{Letter}\d]*\d[\p{Letter}\d]*$/u;

/** One walk over the words. Each step reads what stands at a word and says how many words that took; none where it is not there. */
class Walk {
  readonly #tokens: readonly Token[];
  readonly #words: readonly string[];
  readonly #names: Names;
  readonly #numbers: Numbers;
  readonly #chips: Chip[] = [];
  readonly #asked: AskedChip[] = [];
  readonly #rest: string[] = [];
  readonly #figures: string[] = [];
  readonly #beyond: string[] = [];
  #comparing = false;
  readonly #noNumbers: { said: string; near?: string }[] = [];
  /** Numbers of the words that nothing was read from, dropped ones included. */
  readonly #left = new Set<number>();

  constructor(tokens: readonly Token[], names: Names, numbers: Numbers) {
    this.#tokens = tokens;
    this.#words = tokens.map(({ word }) => word);
    this.#names = names;
    this.#numbers = numbers;
  }

  reading(): Omit<Reading, "corrected" | "signs"> {
    for (let at = 0; at < this.#tokens.length; )
      at +=
        this.#number(at) || this.#serial(at) || this.#figure(at) || this.#years(at) || this.#name(at) || this.#word(at);
    return {
      chips: this.#chips,
      asked: this.#asked,
      rest: this.#rest.join(" "),
      figures: this.#figures,
      comparing: this.#comparing || this.#figures.length > 1,
      beyond: this.#beyond,
      noNumbers: this.#noNumbers,
      phrases: this.#phrases(),
      words: this.#words.map(fold),
      heads: this.#tokens.flatMap(({ head }, at) => (head ? [at] : [])),
    };
  }

  #number(at: number): number {
    for (const { plain, length } of runsAt(this.#words, at)) {
      if (length === 1 && isNoNumber(this.#words, at, this.#names)) continue;
      const found = findNumber(this.#numbers, plain);
      if (found.length === 0) continue;
      this.#add({ ...numberChip(found), said: this.#said(at, length), at, length });
      return length;
    }
    const short = shortNumberAt(this.#words, at, this.#names, this.#numbers);
    if (short.length === 0) return 0;
    this.#add({ ...numberChip(short), said: this.#said(at, 1), at, length: 1 });
    return 1;
  }

  #serial(at: number): number {
    const serial = serialAt(this.#words, at, this.#names.serials);
    if (!serial) return 0;
    // The words by which the number was named have done their work.
    const called = this.#names.serials
      .filter(({ trait }) => serial.some(({ id }) => id.startsWith(`${trait}=`)))
      .flatMap((it) => it.called);
    while (this.#rest.length > 0 && called.includes(fold(this.#rest.at(-1) as string))) this.#rest.pop();
    for (const { id, label } of serial)
      this.#add({ kind: "trait", ids: [id], label, said: this.#said(at, 1), at, length: 1 });
    return 1;
  }

  #figure(at: number): number {
    const length = figureAt(this.#words, at, this.#names);
    // A name may hold a figure: "60 A alternator".
    if (length === 0 || longestRun(this.#tokens, at, this.#names.byKey, this.#names.longest) > length) return 0;
    for (let n = 0; n < length; n++) this.#left.add(at + n);
    const words = this.#words.slice(at, at + length);
    this.#rest.push(...words);
    this.#figures.push(words.join(" "));
    if (COMPARING.has(fold(this.#words[at - 1] ?? ""))) this.#comparing = true;
    return length;
  }

  #years(at: number): number {
    const years = yearsAt(this.#words, at, this.#names.years);
    if (years?.years.length === 0) {
      this.#beyond.push(this.#said(at, years.length));
      return years.length;
    }
    if (years) {
      const { length } = years;
      if (this.#rest.at(-1) === "between") this.#rest.pop();
      const [first] = years.years;
      const label = years.years.length === 1 ? (first as string) : `${first} to ${years.years.at(-1)}`;
      this.#add({ kind: "year", ids: years.years, label, said: this.#said(at, length), at, length });
      return length;
    }
    const beyond = beyondYears(this.#words, at, this.#names.years);
    const isLine = (word: string | undefined): boolean =>
      word !== undefined && (this.#names.byKey.get(keyOf([fold(word)])) ?? []).some(({ kind }) => kind === "line");
    if (beyond === undefined || (beyond.short && !isLine(this.#words[at + 1]))) return 0;
    this.#beyond.push(beyond.year);
    return 1;
  }

  #name(at: number): number {
    const { byKey, longest } = this.#names;
    const named = longestRun(this.#tokens, at, byKey, longest);
    const way = longestRun(this.#tokens, at, askedKeys, LONGEST_ASKED);
    const found = named > 0 && named >= way ? this.#meantBy(at, named) : [];
    const [first] = found;
    if (first && (way < named || first.kind !== "kind")) {
      const slip = this.#tokens.slice(at, at + named).find((it) => it.readAs !== undefined)?.readAs;
      if (first.kind === "component" && fold(this.#words[at - 1] ?? "") === "which") this.#ask("tell-apart", at - 1, 1);
      const place = { said: this.#said(at, named), at, length: named };
      this.#add({ ...nameChip(found), ...place, ...(slip === undefined ? {} : { readAs: slip }) });
      // "Automatic transmission" says which car it is, and what it is about.
      const system = first.kind === "trait" ? this.#named(at, named).find(({ kind }) => kind === "system") : undefined;
      if (system) this.#add({ ...nameChip([system]), ...place });
      return named;
    }
    if (way === 0) return 0;
    this.#ask(askedKeys.get(keyOf(this.#words.slice(at, at + way).map(fold))) as Asked, at, way);
    return way;
  }

  #word(at: number): number {
    this.#left.add(at);
    // What is the number of nothing is no word to search for either. Without any numbers to look in nothing is known of it.
    if (this.#numbers.size > 0 && LIKE_A_NUMBER.test(this.#words[at] as string)) {
      this.#noNumber(this.#words[at] as string);
      return 1;
    }
    const word = fold(this.#words[at] as string);
    const isSteering = WITH.has(word) || DENYING.has(word);
    if (!this.#names.ignore.has(word) && !isSteering) this.#rest.push(this.#words[at] as string);
    return 1;
  }

  #noNumber(said: string): void {
    const near = nearest(plainNumber(said), [...this.#numbers.keys()]);
    const id = near === undefined ? undefined : this.#numbers.get(near)?.[0]?.id;
    this.#noNumbers.push({ said, ...(id === undefined ? {} : { near: id }) });
  }

  #named(at: number, length: number): readonly Name[] {
    return this.#names.byKey.get(keyOf(this.#words.slice(at, at + length).map(fold))) ?? [];
  }

  /** The names that a run of words may mean; of a thing and a trait with the same words, which one is told by the words before. */
  #meantBy(at: number, length: number): readonly Name[] {
    const found = this.#named(at, length);
    const traits = found.filter(({ kind }) => kind === "trait");
    const things = found.filter(({ kind }) => kind !== "trait");
    const isFlag = traits.some(({ id }) => /=(yes|no)$/.test(id));
    // "A six" is the engine of the car, "the power steering" a thing that one may ask about.
    const isTrait = traits.length > 0 && (things.length === 0 || !isFlag || this.#isOfCar(at));
    const kept = isTrait ? traits : things;
    return kept.filter(({ kind }) => kind === kept[0]?.kind);
  }

  /** "With a", "without the": what follows is said of the car. */
  #isOfCar(at: number): boolean {
    let before = at - 1;
    for (;;) {
      const said = fold(this.#words[before] ?? "");
      // "Without A/C or tow package": the second is said of the car like the first.
      const joined = this.#chips.find((chip) => chip.kind === "trait" && chip.at + chip.length - 1 === before);
      if (joined && before < at - 1) before = joined.at - 1;
      else if (LITTLE.has(said) || AND.has(said)) before--;
      else break;
    }
    const word = fold(this.#words[before] ?? "");
    return WITH.has(word) || DENYING.has(word);
  }

  #said(at: number, length: number): string {
    const tokens = this.#tokens.slice(at, at + length);
    // Words that were exchanged together were typed together.
    return tokens.flatMap(({ typed, run }, i) => (i > 0 && tokens[i - 1]?.run === run ? [] : [typed])).join(" ");
  }

  /** The same words said twice are one chip. */
  #add(chip: Chip): void {
    const same = this.#chips.find((one) => one.kind === chip.kind && one.ids.join() === chip.ids.join());
    const isOfCar = chip.kind === "line" || chip.kind === "year" || chip.kind === "trait";
    // What is said twice of cars may be said of two of them.
    if (!same || isOfCar) this.#chips.push(chip);
  }

  #ask(asked: Asked, at: number, length: number): void {
    if (!this.#asked.some((it) => it.asked === asked))
      this.#asked.push({ asked, label: ASKED[asked].label, said: this.#said(at, length), at, length });
  }

  /** Pairs of neighbours among the words that are left, with those that name nothing between them: "runs up", "out of gear". */
  #phrases(): string[] {
    const { ignore } = this.#names;
    return this.#words.slice(1).flatMap((word, i) => {
      const before = this.#words[i] as string;
      const speaks = [before, word].some((one) => !ignore.has(fold(one)));
      return this.#left.has(i) && this.#left.has(i + 1) && speaks ? [`${before} ${word}`] : [];
    });
  }
}

/**
 * A number and its unit ("16 psi", "16psi", "1 1/2 in"): how many words that are. A year or the name of an engine before "in" or
 * "a" is none: "the 74 in a 72".
 */
function figureAt(words: readonly string[], at: number, names: Names): number {
  const word = words[at] ?? "";
  const isNumber = (text: string | undefined): boolean =>
    /^(\d*\.?\d+)(\/\d+)?(-(\d*\.?\d+)(\/\d+)?)?$/.test(text ?? "");
  const isUnit = (text: string | undefined): boolean => text !== undefined && names.units.has(fold(text));
  if (isNumber(word)) {
    const isMixed = /^\d+$/.test(word) && /^\d+\/\d+$/.test(words[at + 1] ?? "");
    const unit = words[at + (isMixed ? 2 : 1)];
    if (!isUnit(unit)) return 0;
    const isWord = names.ignore.has(fold(unit as string)) || LITTLE.has(fold(unit as string));
    const isName =
      (/^\d+$/.test(word) && names.byKey.has(keyOf([word]))) || yearsAt(words, at, names.years) !== undefined;
    return isWord && isName ? 0 : isMixed ? 3 : 2;
  }
  const [, unit = ""] = /^\d*\.?\d+([a-z-]+)$/i.exec(word) ?? [];
  return unit !== "" && unit !== "s" && isUnit(unit) ? 1 : 0;
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
