import { describe, expect, test } from "vitest";
import { readFactText } from "../../../src/engine/answers/fact-text.ts";
import { answerQuestion } from "../../../src/engine/answers/questions.ts";
import { type MayFitAnswer, mayFitAnswer } from "../../../src/engine/answers/shapes/may-fit.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { fixtureRows } from "../../helpers/fixture-rows.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const demo = await demoKnowledge();
const tiny = tinyKnowledge();
const ROWS = fixtureRows<[string, string, string, string, string, string, string]>("may-fit");

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

  test("each answer to the question, given, leads where it was said to lead", () => {
    let followed = 0;
    for (const [part, place, facts, fitted, verdict] of ROWS) {
      if (verdict !== "look first") continue;
      const asked = {
        part,
        ...(place ? { place } : {}),
        facts: Object.fromEntries(facts.split("; ").map(readFactText)),
        fitted: fitted ? [fitted] : [],
      };
      const { ask: look } = ask(demo, asked);
      for (const { values, means } of look?.outcomes ?? [])
        for (const written of values) {
          const [from, to] = written.split("..");
          const value = to === undefined ? written : { from, to };
          const told = ask(demo, { ...asked, facts: { ...asked.facts, [look?.trait ?? ""]: value } }).verdict;
          if (!means.startsWith("look")) expect([part, facts, written, told]).toEqual([part, facts, written, means]);
          followed++;
        }
    }
    expect(followed).toBeGreaterThan(3);
  });

  test("both directions of one link, and a condition that a part found on the car meets", () => {
    const car = { facts: { line: "B", my: 1960, plant: "K" } };
    expect(ask(tiny, { part: "HT-102", ...car }).verdict).toBe("as built");
    expect(ask(tiny, { part: "HT-101", ...car }).verdict).toBe("goes on but must not be used");
    const older = { facts: { line: "B", my: 1957 } };
    expect(ask(tiny, { part: "HT-101", ...older }).verdict).toBe("as built");
    // The later one needs the gasket on the car; nobody reports it.
    expect(ask(tiny, { part: "HT-102", ...older }).verdict).toBe("not on record");
    expect(ask(tiny, { part: "ht 1o2", ...older, fitted: ["HT-201"] })).toMatchObject({
      verdict: "yes, on conditions",
      part: { number: "HT-102" },
      order: expect.arrayContaining(["HT-102"]),
    });
  });

  test.todo("a part said to go where nothing is goes into no place that has nothing to do with it");
  test.todo("a part said to go where nothing is may not go where it is not on record what belongs");
  test.todo("a part told as a fact to be on the car overrules like one reported as fitted");
  test.todo(
    "a repair kit asked about while another unit is reported: look first, though the kit is a component of its own",
  );
  test.todo(
    "what belonged to the car is not simply 'as built' while a part is reported that had to bring another one with it",
  );
  test.todo("of a handed pair that replaces one number, each goes into its own place only");
  test.todo("where some of the cars at hand need more companions than others, the answer is to look first");
  test.todo("a part found on one side does not make the plant's part on the other side a wrong one");
  test.todo("a companion that the car was built with is not ordered, though it could also go into another place");

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
