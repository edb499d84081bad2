/**
 * The words of a question, made ready to be read:
 *
 *   a word that nobody knows is exchanged for the one it was most likely meant to be;
 *   what people say is exchanged for the word of the records (breaks for brakes), unless a name of more words begins there.
 */
import { corrections } from "./corrections.ts";
import { keyOf, type Names } from "./names.ts";
import { findNumber, type Numbers, runsAt } from "./numbers.ts";
import { fold, split } from "./split.ts";

/** A word on its way: what is read, and what was typed for it. */
export interface Token {
  readonly word: string;
  readonly typed: string;
  /** The place of what was typed in the question: the same for words that came of one saying. */
  readonly run: number;
  /** A comma or the like stands before it. */
  readonly head: boolean;
  /** The word that a misspelt one was taken for. */
  readonly readAs?: string;
}

export interface Corrected {
  readonly said: string;
  readonly readAs: readonly string[];
}

export function tokensOf(
  question: string,
  names: Names,
  numbers: Numbers,
): { tokens: Token[]; corrected: Corrected[] } {
  const parts = plainFigures(question)
    .split(/[,;:!?.](?=\s|$)|[()]/)
    .map(split);
  const typed = parts.flat();
  const heads = new Set<number>();
  parts.reduce((at, part) => {
    heads.add(at);
    return at + part.length;
  }, 0);
  heads.delete(0);
  const corrected: Corrected[] = [];
  const tokens = typed.map((word, at): Token => {
    const head = heads.has(at);
    const isNumber = () => runsAt(typed, at).some(({ plain }) => findNumber(numbers, plain).length > 0);
    if (isPartOfName(typed, at, names) || isNumber()) return { word, typed: word, run: at, head };
    const readAs = corrections(keyOf([fold(word)]), names);
    const [best] = readAs;
    if (best === undefined) return { word, typed: word, run: at, head };
    corrected.push({ said: word, readAs });
    return { word: best, typed: word, run: at, head, readAs: best };
  });
  return { tokens: exchange(tokens, names), corrected };
}

/** "72+" is 72 and later, "1,000" a thousand, "0,003" a decimal; a sign before a number is a word, so that it is not lost. */
function plainFigures(question: string): string {
  return question
    .replaceAll(/(\d)\+(?!\s*\d)/g, "$1 onwards ")
    .replaceAll(/(?<!\d)(\d{2}|\d{4})\s+[-–]\s+(?='?(?:\d{2}|\d{4})(?!\d))/g, "$1-")
    .replaceAll(/(?<![\d.,])0,(\d)/g, "0.$1")
    .replaceAll(/(?<![\d,])\d{1,3}(?:,\d{3}){2,}(?![\d,])|(?<![\d,])\d{1,2},\d{3}(?![\d,])/g, (number) =>
      number.replaceAll(",", ""),
    )
    .replaceAll(/(^|\s)[-−](?=\.?\d)/g, "$1minus ");
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
    if (said > 0 && said >= named) {
      const typed = run.map((token) => token.typed).join(" ");
      const meant = split(names.mean.get(keyOf(run.map(({ word }) => fold(word)))) as string);
      const first = run[0] as Token;
      result.push(...meant.map((word, n): Token => ({ ...first, word, typed, head: first.head && n === 0 })));
    } else result.push(...run);
    i += length;
  }
  return result;
}

/** How many words from a place on are the longest run that is known; none where no run is. */
export function longestRun(
  tokens: readonly Pick<Token, "word">[],
  at: number,
  known: { has(key: string): boolean },
  most: number,
): number {
  const folded = tokens.slice(at, at + most).map(({ word }) => fold(word));
  while (folded.length > 0 && !known.has(keyOf(folded))) folded.pop();
  return folded.length;
}
