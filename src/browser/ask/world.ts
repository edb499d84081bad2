/** What questions are read and ranked with, loaded as it is needed: the words first, then what a question may be about. */

import { cardAddress } from "../../engine/ask/card.ts";
import { cardFiles } from "../../engine/ask/card-files.ts";
import type { Card } from "../../engine/ask/card-shape.ts";
import { type Chosen, type Found, findRecords, systemsFor, systemsOfNumbers } from "../../engine/ask/find-records.ts";
import { keepPicked } from "../../engine/ask/keep-picked.ts";
import { namesOf } from "../../engine/ask/names.ts";
import { type Numbered, type Numbers, plainNumber, runsAt, shelfOf } from "../../engine/ask/numbers.ts";
import { isCommon, type Query } from "../../engine/ask/rank.ts";
import { NO_NUMBERS, type Reading, readQuestion } from "../../engine/ask/read-question.ts";
import { shelfFile } from "../../engine/ask/shelf-file.ts";
import { mayBeShortNumber } from "../../engine/ask/short-numbers.ts";
import { tokensOf } from "../../engine/ask/tokens.ts";
import type { Vocabulary } from "../../engine/ask/vocabulary-shape.ts";
import { fetchJson } from "../car/fetch-json.ts";
import type { Asked } from "./address.ts";
import { TextSearch } from "./text-search.ts";

/** A question that was read, with all that it takes to find its records again, as when an answer says which ones carry it. */
export interface Heard {
  /** What was read, and what is left of it once chips are taken away. */
  readonly whole: Reading;
  readonly reading: Reading;
  readonly cards: readonly Card[];
  readonly query: Query;
  find(carriedBy?: readonly string[]): Found;
  /** The text search could not be loaded: only what the records are called was looked at. */
  readonly withoutText: boolean;
}

export class World {
  readonly vocabulary: Vocabulary;
  readonly text: TextSearch;
  readonly #root: URL;
  readonly #files = new Map<string, Promise<unknown>>();

  private constructor(root: URL, vocabulary: Vocabulary) {
    this.#root = root;
    this.vocabulary = vocabulary;
    this.text = new TextSearch(root);
  }

  static async load(root: URL): Promise<World> {
    return new World(root, await fetchJson<Vocabulary>(new URL("data/vocabulary.json", root)));
  }

  /** What the question is about by the names that it holds and by what records are called. The text search is asked after that. */
  async hear({ question, picks, chosen }: Asked): Promise<Heard> {
    const { vocabulary } = this;
    const numbers = await this.#numbersIn(question);
    const whole = readQuestion(vocabulary, question, numbers);
    const reading = keepPicked(whole, picks);
    const systems = systemsFor(reading, vocabulary, systemsOfNumbers(reading, numbers));
    const cards = await this.#cardsOf(systems);
    return heard({ whole, reading, cards }, vocabulary, chosen, new Map());
  }

  /** The same question with what the text search finds for the words that nothing was read from. */
  async hearText(before: Heard, { chosen }: Asked): Promise<Heard> {
    const { reading, cards } = before;
    const words = reading.rest.split(" ").filter((word) => word !== "" && !isCommon(word, this.vocabulary));
    const wanted = [...new Set([...words, ...reading.phrases])];
    if (wanted.length === 0) return before;
    const held = await this.text.holders(wanted).catch(() => undefined);
    if (!held) return { ...before, withoutText: true };
    const pages = new Map(cards.flatMap((card) => (card.page === undefined ? [] : [[card.page, cardAddress(card)]])));
    const holders = new Map([...held].map(([word, ids]) => [word, new Set([...ids].map((id) => pages.get(id) ?? id))]));
    return heard(before, this.vocabulary, chosen, holders);
  }

  async #cardsOf(systems: readonly string[]): Promise<Card[]> {
    const all = await Promise.all(
      cardFiles(systems).map((id) => this.#load<readonly Card[]>(`data/ask/systems/${encodeURIComponent(id)}.json`)),
    );
    return [...new Map(all.flat().map((card) => [cardAddress(card), card])).values()];
  }

  /** The numbers that begin like one that may stand in the question. */
  async #numbersIn(question: string): Promise<Numbers> {
    const names = namesOf(this.vocabulary);
    // The words as they are read: what stands beside a short number tells whether it is one.
    const words = tokensOf(question, names, NO_NUMBERS).tokens.map(({ word }) => word);
    const plainAt = (at: number): string[] => [
      ...runsAt(words, at).map(({ plain }) => plain),
      ...(mayBeShortNumber(words, at, names) ? [plainNumber(words[at] as string)] : []),
    ];
    const shelves = new Set(words.flatMap((_, at) => plainAt(at).map(shelfOf)));
    const wanted = [...shelves].filter((shelf) => this.vocabulary.shelves.includes(shelf));
    const found = await Promise.all(
      wanted.map((shelf) => this.#load<Record<string, Numbered[]>>(`data/ask/numbers/${shelfFile(shelf)}`)),
    );
    return new Map(found.flatMap((shelf) => Object.entries(shelf)));
  }

  #load<T>(path: string): Promise<T> {
    const known = this.#files.get(path) as Promise<T> | undefined;
    if (known) return known;
    const coming = fetchJson<T>(new URL(path, this.#root));
    this.#files.set(path, coming);
    coming.catch(() => this.#files.delete(path)); // On a bad network the next question tries again.
    return coming;
  }
}

const NOWHERE: ReadonlySet<string> = new Set();

function heard(
  { whole, reading, cards }: Pick<Heard, "whole" | "reading" | "cards">,
  vocabulary: Vocabulary,
  chosen: Chosen,
  holders: ReadonlyMap<string, ReadonlySet<string>>,
): Heard {
  const query: Query = { reading, vocabulary, holders: (word) => holders.get(word) ?? NOWHERE };
  const known = new Map<string, Found>();
  const find = (carriedBy: readonly string[] = []): Found => {
    const key = carriedBy.join();
    const found = known.get(key) ?? findRecords(cards, query, { chosen, carriedBy });
    known.set(key, found);
    return found;
  };
  return { whole, reading, cards, query, find, withoutText: false };
}
