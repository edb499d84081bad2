import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readFactText } from "../../../src/engine/answers/fact-text.ts";
import { answerQuestion } from "../../../src/engine/answers/questions.ts";
import { type MayFitAnswer, mayFitAnswer } from "../../../src/engine/answers/shapes/may-fit.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const demo = await demoKnowledge();
const tiny = tinyKnowledge();
const ROWS = readFileSync("tests/fixtures/may-fit.tsv", "utf8")
  .split("\n")
  .filter((line) => line !== "" && !line.startsWith("#"))
  .slice(1)
  .map((line) => line.split("\t") as [string, string, string, string, string, string, string]);

function ask(knowledge: typeof demo, asked: Record<string, unknown>): MayFitAnswer {
  return mayFitAnswer.parse(answerQuestion(knowledge, { question: "may-fit", ...asked }));
}

test.each(ROWS)("%s (%s) on %s, found %s: %s", (part, place, facts, fitted, verdict, order, record) => {
  const answer = ask(demo, {
    part,
    ...(place ? { place } : {}),
    facts: Object.fromEntries(facts.split("; ").map(readFactText)),
    fitted: fitted ? [fitted] : [],
  });
  expect([answer.verdict, answer.order.join(" ")]).toEqual([verdict, order]);
  if (verdict !== "not on record") expect(answer.because.map((it) => it.record)).toContain(record);
});

describe("what an answer holds", () => {
  test("a decided one: the argument in order, the facts that carry it and those that do not", () => {
    const answer = ask(tiny, { part: "HT-101", facts: { line: "B", my: 1960, plant: "K", PT: true } });
    expect(answer.verdict).toBe("goes on but must not be used");
    expect(answer.because.map((it) => it.statement)).toEqual(["built 2", "stands-in 2"]);
    expect(answer.facts.map((it) => it.text)).toEqual(["line=B", "my=1960", "plant=K"]);
    expect(answer.notNeeded.map((it) => it.text)).toEqual(["PT=true"]);
    expect(answer.order).toEqual([]);
    expect(answer.places[0]?.fits.map((it) => it.belongs)).toEqual(["HT-102"]);
  });

  test("an open one: what to look at, and what each answer would mean", () => {
    const answer = ask(tiny, { part: "HT-101", facts: { line: "B", my: 1959, plant: "K" } });
    expect(answer.verdict).toBe("look first");
    expect(answer.ask?.outcomes.map(({ words, means }) => [words, means])).toEqual([
      ["0000 to 0411", "as built"],
      ["0412 to 9999", "goes on but must not be used"],
    ]);
    expect(answer.words).toMatch(/^It depends on what is not known yet\. Look at the chassis number\./);
  });

  test("a mixed stretch: only the part on the car tells", () => {
    const answer = ask(tiny, { part: "HT-101", facts: { line: "H", my: 1959 } });
    expect(answer.verdict).toBe("look first");
    expect(answer.ask).toBeUndefined();
    expect(answer.places[0]?.lookAtPart.sort()).toEqual(["HT-101", "HT-102"]);
    expect(answer.words).toBe("Only the part on the car tells: it may be HT-101 or HT-102.");
  });

  test("no such car: which facts do not go together", () => {
    const answer = ask(tiny, { part: "HT-101", facts: { line: "H", my: 1957 } });
    expect(answer.verdict).toBe("no such car");
    expect(answer.conflict?.map((it) => it.text)).toEqual(["line=H", "my=1957"]);
    expect([answer.places, answer.order]).toEqual([[], []]);
  });

  test("cautions of the parts touched", () => {
    const answer = ask(tiny, { part: "HT-102", facts: { line: "B", my: 1960 } });
    expect(answer.cautions.map((it) => it.title)).toEqual(["Oil under pressure"]);
  });
});

// typed, what is said of it
test.each([
  ["4411", "'4411' is a casting number, not a part number."],
  ["HT-999", "No part is called 'HT-999'."],
])("'%s' is no part", (part, message) => {
  expect(() => ask(tiny, { part, facts: {} })).toThrow(message);
});

test("a place that nobody knows is refused", () => {
  expect(() => ask(tiny, { part: "HT-101", place: "roof", facts: {} })).toThrow("No place is called 'roof'.");
});
