import { expect, test } from "vitest";
import { answerQuestion } from "../../../src/engine/answers/questions.ts";
import type { NextQuestionAnswer } from "../../../src/engine/answers/shapes/next-question.ts";
import { lawfulAnswer } from "../../helpers/answer-laws.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const knowledge = tinyKnowledge();
const ask = (asked: object): NextQuestionAnswer =>
  lawfulAnswer(knowledge, { question: "next-question", ...asked }) as unknown as NextQuestionAnswer;

// what is asked, verdict, what to look at, for which records
const CASES: [object, string, string | undefined, string[]][] = [
  [{}, "look first", "my", ["FR58-01", "HY59-01"]], // both name the year
  [{ facts: { my: 1959 } }, "look first", "line", ["HY59-01"]],
  [{ facts: { line: "B", my: 1959, plant: "K" } }, "look first", "number", ["HY59-01"]],
  [{ facts: { line: "H" } }, "nothing to ask", undefined, []],
  [{ record: "FR58-01", facts: { line: "B" } }, "look first", "my", ["FR58-01"]],
  [{ record: "FR58-01", facts: { line: "B", my: 1959 } }, "nothing to ask", undefined, []],
  [{ facts: { line: "H", my: 1957 } }, "no such car", undefined, []],
];
test.each(CASES)("%j: %s %s", (asked, verdict, trait, opens) => {
  const answer = ask(asked);
  expect([answer.verdict, answer.ask?.trait, answer.ask?.opens ?? []]).toEqual([verdict, trait, opens]);
});

test("for one record it is the question of 'applies', with its outcomes", () => {
  const asked = { record: "HY59-01", facts: { line: "B", my: 1959 } };
  const applies = answerQuestion(knowledge, { question: "applies", ...asked }) as { ask: object };
  expect(ask(asked).ask).toEqual({ ...applies.ask, opens: ["HY59-01"] });
});

test("a record that nobody knows is refused", () => {
  expect(() => answerQuestion(knowledge, { question: "next-question", record: "x" })).toThrow(
    "No change record is called 'x'.",
  );
});
