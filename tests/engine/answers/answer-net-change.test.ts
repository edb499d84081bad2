import { describe, expect, test } from "vitest";
import type { answerNetChange } from "../../../src/engine/answers/answer-net-change.ts";
import { QuestionError } from "../../../src/engine/answers/question-error.ts";
import { answerQuestion } from "../../../src/engine/answers/questions.ts";
import { lawfulAnswer } from "../../helpers/answer-laws.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const knowledge = tinyKnowledge();
type Answer = ReturnType<typeof answerNetChange>;
const ask = (asked: Record<string, unknown>): Answer =>
  lawfulAnswer(knowledge, { question: "net-change", ...asked }) as unknown as Answer;
const inShort = ({ changes }: Answer): string[] =>
  changes.map(({ name, from, to, verdict }) =>
    [name, from.map((it) => it.value).join(" or "), to.map((it) => it.value).join(" or "), verdict].join(" | "),
  );

describe("what changed against the year that somebody knows", () => {
  test("for a car whose number is known", () => {
    const answer = ask({ from: 1958, plate: "B9K0500" });
    expect([answer.verdict, answer.from, answer.to]).toEqual(["changed", 1958, 1959]);
    expect(inShort(answer)).toEqual([
      "pump | HT-101 | HT-102 | changed",
      "Frame drilled for a winch | holds | does not hold | changed",
    ]);
    expect(answer.changes[0]).toMatchObject({ trap: true, records: ["HY59-01"], steps: [{ year: 1959 }] });
    expect(answer.leftAlone).toEqual([{ record: "HY59-01", what: "The reservoir was looked at and stayed." }]);
    expect(answer.because.map((it) => it.statement)).toContain("built 2");
  });

  test("for a car that is known in part: what to look at, and what each outcome would be", () => {
    const answer = ask({ from: 1958, facts: { line: "B", my: 1959, plant: "K" } });
    expect(answer.verdict).toBe("look first");
    const [pump] = answer.changes;
    expect([pump?.name, pump?.verdict, pump?.ask?.trait]).toEqual(["pump", "look first", "number"]);
    expect(pump?.ask?.outcomes.map(({ words, means }) => [words, means])).toEqual([
      ["0000 to 0411", "HT-101"],
      ["0412 to 9999", "HT-102"],
    ]);
    expect(answer.ask).toEqual(pump?.ask);
  });

  test("backwards", () => {
    expect(inShort(ask({ from: 1960, facts: { line: "B", my: 1958, plant: "K" } }))).toContain(
      "pump | HT-102 | HT-101 | changed",
    );
  });

  test("nothing between a year and itself", () => {
    expect(ask({ from: 1958, facts: { line: "B", my: 1958 } })).toMatchObject({
      verdict: "no change on record",
      changes: [],
    });
  });

  test("no such car in that year: which facts stand in the way", () => {
    const answer = ask({ from: 1957, facts: { line: "H", my: 1960 } });
    expect(answer.verdict).toBe("no such car in that year");
    expect(answer.conflict?.map(({ text }) => text)).toEqual(["line=H", "my=1957"]);
  });

  test("no such car at all", () => {
    expect(ask({ from: 1958, to: 1959, facts: { line: "H", my: 1957 } }).verdict).toBe("no such car");
  });
});

// what is asked, what is said
test.each([
  [{ from: 1958, facts: { line: "B" } }, /^The model year of the car is not known\./],
  [{ from: 1900, facts: { my: 1958 } }, /^Model year 1900 is not on record\. Years run from 1957 to 1961\.$/],
  [{ from: 1958, to: 1958.5 }, /"to": a year\. It was given 1958\.5\.$/],
])("%j is refused", (asked, message) => {
  expect(() => answerQuestion(knowledge, { question: "net-change", ...asked })).toThrow(QuestionError);
  expect(() => answerQuestion(knowledge, { question: "net-change", ...asked })).toThrow(message);
});
