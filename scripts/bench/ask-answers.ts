/** How often the right engine question stands on top, and how often its answer says what it ought to. */
import type { AskAnswer } from "../../src/engine/answers/shapes/ask.ts";
import { standsIn } from "./ask-expected.ts";
import type { AskedQuestion } from "./ask-questions.ts";
import { mean } from "./ask-score.ts";

export interface AnswerScore {
  /** Questions that ought to be answered. */
  readonly asked: number;
  readonly rightOnTop: number;
  /** Of these, those for which a verdict, figure or number is set down. */
  readonly worded: number;
  readonly rightWords: number;
}

/** `answers` are in the order of the questions. */
export function scoreAnswers(questions: readonly AskedQuestion[], answers: readonly AskAnswer[]): AnswerScore {
  const pairs = questions
    .map((question, i) => ({ question, given: (answers[i] as AskAnswer).answers }))
    .filter(({ question }) => question.answer !== undefined);
  const worded = pairs.filter(({ question }) => question.expected !== undefined);
  return {
    asked: pairs.length,
    rightOnTop: mean(pairs.map(({ question, given }) => (given[0]?.asked.question === question.answer ? 1 : 0))),
    worded: worded.length,
    rightWords: mean(
      worded.map(({ question: { expected = "", records }, given }) =>
        standsIn(expected, given, records.flat()) ? 1 : 0,
      ),
    ),
  };
}
