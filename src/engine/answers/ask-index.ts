/** Everything that questions in words are read and ranked with, made from a catalog once. */
import { cardsOf, wordsOf } from "../ask/card.ts";
import type { Card } from "../ask/card-shape.ts";
import { type Numbers, numbersOf } from "../ask/numbers.ts";
import { recordText } from "../ask/record-text.ts";
import { holdersOf, type TextIndex, textIndexOf } from "../ask/stems.ts";
import { vocabularyOf } from "../ask/vocabulary.ts";
import type { Vocabulary } from "../ask/vocabulary-shape.ts";
import { address } from "../graph/node.ts";
import type { Catalog } from "../records/catalog.ts";
import { UNITS } from "../settings/unit-table.ts";

export interface AskIndex {
  readonly vocabulary: Vocabulary;
  readonly numbers: Numbers;
  readonly cards: readonly Card[];
  readonly text: TextIndex;
}

const indexes = new WeakMap<Catalog, AskIndex>();

export function askIndexOf(catalog: Catalog): AskIndex {
  const known = indexes.get(catalog);
  if (known) return known;
  const cards = cardsOf(catalog);
  const index = {
    vocabulary: vocabularyFor(catalog, cards),
    numbers: numbersOf(catalog),
    cards,
    text: textIndexOf(textsOf(catalog)),
  };
  indexes.set(catalog, index);
  return index;
}

/** What text search looks through: the address of each record and bulletin, and its text. */
export function textsOf(catalog: Catalog): [address: string, text: string][] {
  return [
    ...[...catalog.records.values()].map((it): [string, string] => [address("record", it.id), recordText(catalog, it)]),
    ...[...catalog.bulletins.values()].map(({ id, facts }): [string, string] => [
      address("bulletin", id),
      `${facts.title}.\n${facts.about}\n${facts.text}`,
    ]),
  ];
}

/** The words of a catalog's questions, with those of its texts and of its units. */
export function vocabularyFor(catalog: Catalog, cards: readonly Card[] = cardsOf(catalog)): Vocabulary {
  const words = new Map<string, number>();
  for (const record of catalog.records.values())
    for (const word of wordsOf([recordText(catalog, record)]))
      if (!/\d/.test(word)) words.set(word, (words.get(word) ?? 0) + 1);
  const units = UNITS.flatMap(({ id, says }) => [id, ...says]).filter((unit) => !unit.includes(" "));
  const stated = [...catalog.records.values()].flatMap(({ facts }) => facts.settings.map(({ unit }) => unit));
  const sorted = Object.fromEntries([...words].sort(([a], [b]) => (a < b ? -1 : 1)));
  return vocabularyOf(catalog, { words: sorted, units: [...new Set([...units, ...stated])].sort() }, cards);
}

export function recordsWith({ text }: AskIndex, word: string): ReadonlySet<string> {
  return holdersOf(text, word);
}
