/** Yearmark's own searches that are scored: the whole of "ask", and the part of it that looks for plain words. */
import { answerAsk } from "../../src/engine/answers/answer-ask.ts";
import { askIndexOf, recordsWith } from "../../src/engine/answers/ask-index.ts";
import type { CarKnowledge } from "../../src/engine/answers/car-knowledge.ts";
import type { AskAnswer } from "../../src/engine/answers/shapes/ask.ts";
import { rankRecords } from "../../src/engine/ask/rank.ts";
import { type Reading, readQuestion } from "../../src/engine/ask/read-question.ts";
import { split } from "../../src/engine/ask/split.ts";
import type { Vocabulary } from "../../src/engine/ask/vocabulary-shape.ts";
import type { Catalog } from "../../src/engine/records/catalog.ts";
import type { SearchResult } from "./ask-score.ts";

/** No car is picked: all that is known of it the question says. */
export function askWhole(knowledge: CarKnowledge, text: string): AskAnswer {
  return answerAsk(knowledge, { text, car: {} });
}

export function resultOf({ verdict, records }: AskAnswer): SearchResult {
  return { records: records.map(({ id }) => id), saysNothing: verdict === "nothing on record" };
}

/**
 * The words of the question as they stand, ranked by the same code as always: no name of a part, line or year is understood, no word
 * is exchanged or corrected, nothing is asked, and no step is gone from one record to the next.
 */
export function openWordsAlone(catalog: Catalog): (text: string) => SearchResult {
  const index = askIndexOf(catalog);
  const cards = index.cards.filter(({ kind }) => kind === "record");
  const vocabulary: Vocabulary = {
    ...index.vocabulary,
    names: [],
    ignore: [],
    plain: [],
    mean: [],
    serials: [],
    components: {},
  };
  return (text) => {
    const ranked = rankRecords(cards, {
      reading: wordsAlone(vocabulary, text),
      vocabulary,
      holders: (words) => recordsWith(index, words),
    });
    return { records: ranked.filter(({ step }) => !step).map(({ card }) => card.id) };
  };
}

function wordsAlone(vocabulary: Vocabulary, text: string): Reading {
  const words = split(text);
  return {
    ...readQuestion(vocabulary, ""),
    rest: words.join(" "),
    phrases: words.slice(1).map((word, i) => `${words[i]} ${word}`),
    words,
  };
}
