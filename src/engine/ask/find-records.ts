/**
 * From a reading to the records that are about it, with counts to narrow them down by.
 *
 * Where it is looked: in the systems of what is named, and of words by which only records of few systems are called; where that
 * is nowhere, in all of them. A page loads no more than that.
 */

import { piecesOf } from "./card.ts";
import type { Card } from "./card-shape.ts";
import { isLittle } from "./little-words.ts";
import { findNumber, type Numbers, plainNumber } from "./numbers.ts";
import { componentWords, type Query, type Ranked, rankRecords } from "./rank.ts";
import type { Reading } from "./read-question.ts";
import type { Vocabulary } from "./vocabulary-shape.ts";

/** What may be chosen to narrow a list down by, in the order in which it is offered. */
export const FACETS = ["system", "line", "year", "kind"] as const;
export type Facet = (typeof FACETS)[number];
export type Chosen = Readonly<Partial<Record<Facet, readonly string[]>>>;

export interface Count {
  readonly id: string;
  readonly label: string;
  readonly count: number;
}

export interface Found {
  readonly records: readonly Ranked[];
  readonly facets: Readonly<Record<Facet, readonly Count[]>>;
  /** Some record is about it, and about such a car. */
  readonly onRecord: boolean;
  /** Words that stand in no record at all. */
  readonly unknown: readonly string[];
}

export function systemsFor({ chips, rest }: Reading, vocabulary: Vocabulary, ofNumbers: readonly string[]): string[] {
  const named = chips.flatMap(({ kind, ids }) => {
    if (kind === "system") return ids;
    return kind === "component" ? ids.flatMap((id) => vocabulary.components[id]?.system ?? []) : [];
  });
  const words = rest
    .split(" ")
    .flatMap((word) =>
      piecesOf(word).flatMap((piece) =>
        Object.hasOwn(vocabulary.called, piece) ? (vocabulary.called[piece] ?? []) : [],
      ),
    );
  const systems = new Set([...named, ...ofNumbers, ...words]);
  const all = vocabulary.names.filter(({ kind }) => kind === "system").map(({ id }) => id);
  return systems.size > 0 ? all.filter((id) => systems.has(id)) : all;
}

/** The systems of the parts and records that a reading names by number. */
export function systemsOfNumbers({ chips }: Reading, numbers: Numbers): string[] {
  return chips.flatMap(({ kind, ids }) =>
    kind === "part" || kind === "record"
      ? ids.flatMap((id) => findNumber(numbers, plainNumber(id)).flatMap(({ systems }) => systems))
      : [],
  );
}

/** `cards` are those of the systems for the reading. Records that an answer rests on come first. */
export function findRecords(
  cards: readonly Card[],
  query: Query,
  { chosen = {}, carriedBy = [] }: { readonly chosen?: Chosen; readonly carriedBy?: readonly string[] } = {},
): Found {
  const ranked = rankRecords(cards, query, carriedBy);
  const records = ranked.filter(({ card }) => card.kind === "record");
  const fitting = records.filter(({ misses }) => misses.length === 0);
  const unknown = unknownWords(cards, query);
  return {
    // A bulletin stays in sight: it has no line, year or kind of its own to be narrowed down by.
    records: ranked.filter(({ card }) => card.kind === "bulletin" || isChosen(card, chosen)),
    facets: facetsOf(fitting.length > 0 ? fitting : records, query.vocabulary, chosen),
    onRecord: isOnRecord(fitting, query, unknown),
    unknown,
  };
}

/** The ids of the best records, for a question that needs them. */
export function topRecords({ records }: Found): string[] {
  return records.flatMap(({ card }) => (card.kind === "record" ? [card.id] : [])).slice(0, 5);
}

function unknownWords(cards: readonly Card[], { reading, holders, vocabulary }: Query): string[] {
  const words = [...new Set(reading.rest.split(" ").filter((word) => word !== "" && !isLittle(word)))];
  const isCalled = (word: string): boolean => piecesOf(word).some((piece) => isCalledSo(piece, cards, vocabulary));
  return words.filter((word) => holders(word).size === 0 && !isCalled(word));
}

function isCalledSo(word: string, cards: readonly Card[], vocabulary: Vocabulary): boolean {
  return (
    Object.hasOwn(vocabulary.words, word) ||
    cards.some(
      ({ near, components }) =>
        near.includes(word) || components.some((id) => componentWords(vocabulary, id).has(word)),
    )
  );
}

/**
 * A word that stands nowhere may mean that something else is asked. Where the question names a component, a part or a record, these
 * are on record whatever else it says; where it does not, the best record has to hold most of the other words.
 */
function isOnRecord([best]: readonly Ranked[], { reading }: Query, unknown: readonly string[]): boolean {
  if (!best) return false;
  if (unknown.length === 0 && reading.noNumbers.length === 0) return true;
  const words = [...new Set(reading.rest.split(" ").filter(Boolean))];
  const named = reading.chips.filter(({ kind }) => kind === "component" || kind === "part" || kind === "record");
  if (named.some(({ label }) => best.why.includes(label))) return true;
  return words.filter((word) => best.why.includes(word)).length > words.length / 2;
}

function isChosen(card: Card, chosen: Chosen): boolean {
  return FACETS.every((facet) => {
    const wanted = chosen[facet] ?? [];
    return wanted.length === 0 || wanted.some((id) => valuesOf(card, facet).includes(id));
  });
}

function valuesOf(card: Card, facet: Facet): readonly string[] {
  switch (facet) {
    case "system":
      return card.systems;
    case "line":
      return Object.keys(card.on);
    case "year":
      return [...new Set(Object.values(card.on).flat().map(String))];
    case "kind":
      return card.kinds;
  }
}

/** How many of the listed records there are of each value, other facets chosen or not. */
function facetsOf(ranked: readonly Ranked[], { names }: Vocabulary, chosen: Chosen): Found["facets"] {
  const counts = (facet: Facet): Count[] => {
    const others: Chosen = { ...chosen, [facet]: [] };
    const count = new Map<string, number>();
    for (const { card } of ranked)
      if (isChosen(card, others)) for (const id of valuesOf(card, facet)) count.set(id, (count.get(id) ?? 0) + 1);
    return names
      .filter(({ kind }) => kind === facet)
      .map(({ id, label }) => ({ id, label, count: count.get(id) ?? 0 }))
      .filter(({ id, count }) => count > 0 || chosen[facet]?.includes(id));
  };
  return { system: counts("system"), line: counts("line"), year: counts("year"), kind: counts("kind") };
}
