/**
 * "Ask": any question in the trade's words. It is read; where it has the shape of one of the engine's questions that is answered
 * first; then come the records, the best first.
 *
 * The reading, the ranking and the answers are the same code on the site and on the command line. What differs is who says which
 * records hold a word: the site's text search there, an index of stems here (`ask/stems.ts`); a test holds the two together.
 */

import { findRecords, systemsFor, systemsOfNumbers, topRecords } from "../ask/find-records.ts";
import { keepPicked, NO_PICKS, type Picks } from "../ask/keep-picked.ts";
import type { Query } from "../ask/rank.ts";
import { readQuestion } from "../ask/read-question.ts";
import { askIndexOf, recordsWith } from "./ask-index.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { planAnswers } from "./plan-answers.ts";
import { askPlanned } from "./say-planned.ts";
import type { AskAnswer } from "./shapes/ask.ts";
import type { CarInput } from "./shapes/car.ts";
import { viewAsked } from "./view-asked.ts";

export interface AskQuestion {
  readonly text: string;
  readonly car: CarInput;
  readonly picks?: Picks;
}

export function answerAsk(knowledge: CarKnowledge, { text, car, picks = NO_PICKS }: AskQuestion): AskAnswer {
  const index = askIndexOf(knowledge.catalog);
  const { vocabulary, numbers } = index;
  const reading = keepPicked(readQuestion(vocabulary, text, numbers), picks);
  const query: Query = { reading, vocabulary, holders: (words) => recordsWith(index, words) };
  const systems = systemsFor(reading, vocabulary, systemsOfNumbers(reading, numbers));
  const cards = index.cards.filter(
    (card) => card.systems.length === 0 || card.systems.some((id) => systems.includes(id)),
  );
  const found = findRecords(cards, query);
  const plan = planAnswers(knowledge, vocabulary, reading, car, topRecords(found));
  return viewAsked(vocabulary, {
    reading,
    answers: askPlanned(knowledge, plan),
    unclear: plan.unclear,
    found: (carriedBy = []) => findRecords(cards, query, { carriedBy }),
  });
}
