import { describe, expect, test } from "vitest";
import { readFactText } from "../../../src/engine/answers/fact-text.ts";
import { answerQuestion } from "../../../src/engine/answers/questions.ts";
import { type MayFitAnswer, mayFitAnswer } from "../../../src/engine/answers/shapes/may-fit.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { fixtureRows } from "../../helpers/fixture-rows.ts";
import { openSets } from "../../helpers/sets-folder.ts";
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
    fitted: fitted ? fitted.split(" ") : [],
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
        fitted: fitted ? fitted.split(" ") : [],
      };
      const { ask: look } = ask(demo, asked);
      for (const { values, means } of look?.outcomes ?? [])
        for (const written of values) {
          const [from, to] = written.split("..");
          const value = to === undefined ? written : { from, to };
          const told = ask(demo, { ...asked, facts: { ...asked.facts, [look?.trait ?? ""]: value } }).verdict;
          // Of values with several outcomes each has one of them, or all.
          const outcomes = means.split(" or ");
          const possible = outcomes.length > 1 ? [...outcomes, "look first"] : outcomes;
          expect(
            possible.some((it) => it.startsWith(told)),
            `${part}, ${facts}, ${written}: ${means}, ${told}`,
          ).toBe(true);
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

  test("a mixed stretch: only the part on the car tells", () => {
    const answer = ask(tiny, { part: "HT-101", facts: { line: "H", my: 1959 } });
    expect(answer.verdict).toBe("look first");
    expect(answer.ask).toBeUndefined();
    expect(answer.places[0]?.lookAtPart.sort()).toEqual(["HT-101", "HT-102"]);
    expect(answer.words).toBe("Only the part on the car tells: it may be HT-101 or HT-102.");
  });

  const SETS = openSets(
    [
      "place: pump, part: A-1, scope: line=B",
      "place: pump gasket, part: B-1, scope: line=B; my<=1958",
      "place: pump gasket, part: B-2, scope: line=B; my>=1959",
      "place: lift arms, part: none, scope: line=B; my<=1958",
    ],
    [
      "part: A-2, for: A-1, verdict: on-conditions, with: [B-2], scope: fitted!=C-2",
      'part: B-2, for: B-1, verdict: "yes"',
      'part: A-1, for: C-2, verdict: "yes"',
      'part: C-2, for: A-1, verdict: "yes"',
      'part: D-1, for: none, verdict: "yes"',
    ],
  ).knowledge;

  test("where some of the cars at hand need more than others, the answer is to look first", () => {
    expect(ask(SETS, { part: "A-2", facts: { line: "B", my: 1958 } })).toMatchObject({
      verdict: "yes, on conditions",
      order: ["A-2", "B-2"],
    });
    const open = ask(SETS, { part: "A-2", facts: { line: "B" } });
    expect([open.verdict, open.order, open.ask?.outcomes.map((it) => it.means)]).toEqual([
      "look first",
      [],
      ["yes, on conditions, along with B-2", "yes, on conditions, nothing more to buy"],
    ]);
  });

  test("a part told as a fact to be on the car overrules like one reported as fitted", () => {
    const facts = { line: "B", my: 1958 };
    const reported = ask(SETS, { part: "A-2", facts, fitted: ["C-2"] });
    const told = ask(SETS, { part: "A-2", facts: { ...facts, "fitted C-2": true } });
    expect([told.verdict, told.places]).toEqual([reported.verdict, reported.places]);
    expect(told.verdict).toBe("not on record");
  });

  test("a part for an empty place goes into an empty one of its component only, not where nothing is on record", () => {
    const facts = { line: "B", my: 1958 };
    expect(ask(SETS, { part: "D-1", place: "lift arms", facts }).verdict).toBe("yes");
    expect(ask(SETS, { part: "D-1", place: "lift arms", facts: { line: "B", my: 1959 } }).verdict).toBe(
      "not on record",
    );
    expect(() => ask(SETS, { part: "D-1", place: "pump gasket", facts })).toThrow("No record speaks of D-1");
  });

  test("a part on the car that no record permits there is named", () => {
    const answer = ask(SETS, { part: "A-1", facts: { line: "B", my: 1958 }, fitted: ["C-2"] });
    expect(answer.misfits).toEqual([]);
    const wrong = ask(SETS, { part: "A-2", facts: { line: "B", my: 1959 }, fitted: ["B-1"] });
    expect(wrong.misfits.map((it) => it.part)).toEqual(["B-1"]);
    expect(wrong.verdict).not.toMatch(/^yes/);
    expect(wrong.words).toContain("B-1 is on the car, where no record permits it.");
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
  ["HT-099", "'HT-099' is no longer used: never delivered"],
])("'%s' is no part", (part, message) => {
  expect(() => ask(tiny, { part, facts: {} })).toThrow(message);
});

test("a place that nobody knows is refused", () => {
  expect(() => ask(tiny, { part: "HT-101", place: "roof", facts: {} })).toThrow("No place is called 'roof'.");
});
