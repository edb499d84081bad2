import { describe, expect, test } from "vitest";
import { decide, parseScope } from "../../../src/engine/answers/answer-applies.ts";
import { readCar } from "../../../src/engine/answers/car.ts";
import { QuestionError } from "../../../src/engine/answers/question-error.ts";
import { answerQuestion } from "../../../src/engine/answers/questions.ts";
import type { AppliesAnswer } from "../../../src/engine/answers/shapes/applies.ts";
import { lawfulAnswer } from "../../helpers/answer-laws.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const knowledge = tinyKnowledge();
const ask = (asked: Record<string, unknown>): AppliesAnswer =>
  lawfulAnswer(knowledge, { question: "applies", ...asked }) as unknown as AppliesAnswer;

// what is asked of which car, verdict, the facts that carry it, what to look at
const CASES: [Record<string, unknown>, string, string[], string | undefined][] = [
  [{ record: "HY59-01", plate: "B9K0412" }, "yes", ["line=B", "my=1959", "plant=K", "number=0412"], undefined], // the limit counts
  [{ record: "HY59-01", plate: "B9K0411" }, "no", ["my=1959", "number=0411"], undefined],
  [{ record: "HY59-01", facts: { line: "H", my: 1959 } }, "no", ["line=H"], undefined],
  [{ record: "HY59-01", facts: { line: "B", my: 1957 } }, "no", ["my=1957"], undefined], // the change came later
  [
    { record: "HY59-01", facts: { line: "B", my: 1960, plant: "K" } },
    "yes",
    ["line=B", "my=1960", "plant=K"],
    undefined,
  ],
  [{ record: "HY59-01", facts: { line: "B", my: 1960, plant: "D" } }, "no", ["plant=D"], undefined], // another plant: nothing is said of it
  [{ record: "HY59-01", facts: { line: "B", my: 1959 } }, "look first", ["line=B", "my=1959"], "plant"],
  [
    { record: "HY59-01", facts: { line: "B", my: 1959, plant: "K" } },
    "look first",
    ["line=B", "my=1959", "plant=K"],
    "number",
  ],
  [{ scope: "my=1957; plant=K", facts: { line: "B", my: 1957 } }, "yes", ["my=1957"], undefined], // only one plant was there
  [{ scope: "line=B || line=H" }, "yes", [], undefined], // together they are all
  [{ scope: "plant=D", facts: { my: 1957, plant: "D" } }, "no such car", ["my=1957", "plant=D"], undefined],
];
test.each(CASES)("%j: %s", (asked, verdict, facts, trait) => {
  const answer = ask(asked);
  expect([answer.verdict, answer.facts.map(({ text }) => text).sort(), answer.ask?.trait]).toEqual([
    verdict,
    facts.sort(),
    trait,
  ]);
});

describe("in words", () => {
  test("yes, no, look first, no such car", () => {
    const words = (asked: Record<string, unknown>): string => ask(asked).words;
    expect(words({ scope: "all" })).toBe("It applies to every car that this can be.");
    expect(words({ scope: "line=B", facts: { line: "H" } })).toBe("It applies to no car that this can be.");
    expect(words({ scope: "line=B" })).toBe(
      "It depends on what is not known yet. Look at the model line. The name on the hood.",
    );
    expect(words({ scope: "all", facts: { my: 1957, plant: "D" } })).toBe(
      "No such car was built, or it is no longer as built: my=1957 and plant=D do not go together. Read the plate again, or say what was found on the car.",
    );
  });

  test("that it was cancelled", () => {
    const answer = ask({ record: "FR58-01", facts: { line: "B", my: 1959 } });
    expect([answer.verdict, answer.cancelled]).toEqual(["yes", [{ record: "HY59-01", verdict: "yes" }]]);
    expect(answer.words).toBe("HY59-01 has cancelled it. It applies to every car that this can be.");
    expect(answer.because.map(({ record, statement }) => `${record} ${statement}`)).toEqual([
      "FR58-01 record",
      "HY59-01 cancels 1",
    ]);
    expect(ask({ record: "FR58-01", facts: { my: 1959 } }).words).toMatch(
      /^HY59-01 has cancelled it for some of the cars that this can be\. /,
    );
  });
});

test("a record or a scope that is not known is refused", () => {
  const asking = (asked: object) => () => answerQuestion(knowledge, { question: "applies", ...asked });
  expect(asking({ record: "HY99-01" })).toThrow("No change record is called 'HY99-01'.");
  expect(asking({ scope: "line=X" })).toThrow(/^In 'line=X': /);
  expect(asking({ scope: "line=X" })).toThrow(QuestionError);
});

test("a scope is read once, and decided for a car that was read before", () => {
  const car = readCar(knowledge, { facts: { line: "B" } });
  expect(decide(knowledge, car, parseScope(knowledge, "line=B"), []).verdict).toBe("yes");
});
