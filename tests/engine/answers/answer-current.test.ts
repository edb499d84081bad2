import { expect, test } from "vitest";
import { readFactText } from "../../../src/engine/answers/fact-text.ts";
import { answerQuestion } from "../../../src/engine/answers/questions.ts";
import { type CurrentAnswer, currentAnswer } from "../../../src/engine/answers/shapes/current.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { fixtureRows } from "../../helpers/fixture-rows.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const demo = await demoKnowledge();
const tiny = tinyKnowledge();
const ROWS = fixtureRows<[string, string, string, string, string]>("current");

function ask(knowledge: typeof demo, asked: Record<string, unknown>): CurrentAnswer {
  return currentAnswer.parse(answerQuestion(knowledge, { question: "current", ...asked }));
}

test.each(ROWS)("%s on %s: %s", (part, facts, verdict, order, record) => {
  const given = facts === "" ? {} : Object.fromEntries(facts.split("; ").map(readFactText));
  const answer = ask(demo, { part, facts: given });
  expect([answer.verdict, answer.order.join(" ")]).toEqual([verdict, order]);
  if (record) expect(answer.because.map((it) => it.record)).toContain(record);
});

test("from what the car was built with; delivery is not permission", () => {
  const answer = ask(tiny, { place: "pump", facts: { line: "B", my: 1957, plant: "K" } });
  expect([answer.verdict, answer.asked, answer.order]).toEqual(["superseded", ["HT-101"], ["HT-102", "HT-201"]]);
  expect(answer.because.map((it) => it.statement)).toEqual(["built 1", "supersedes 1"]);
  // Its stand-in statement asks for a gasket that this tractor has not.
  expect(answer.currents.map((it) => it.fits)).toEqual(["not on record"]);
  expect(answer.words).toBe("Who orders HT-101 for this car gets HT-102 and HT-201.");
});

test("a number that is current, and the facts that it does not need", () => {
  const answer = ask(tiny, { part: "HT-102", facts: { line: "B" } });
  expect([answer.verdict, answer.facts, answer.notNeeded.map((it) => it.text)]).toEqual(["current", [], ["line=B"]]);
});

test("an author's circle is reported", () => {
  const circle = tinyKnowledge({
    "changes/1959/HY59-01.md": [
      "{ old: HT-101, new: HT-102, with: [HT-201] }",
      "{ old: HT-101, new: HT-102 }\n  - { old: HT-102, new: HT-101 }",
    ],
  });
  const answer = ask(circle, { part: "HT-101", facts: {} });
  expect([answer.verdict, answer.order]).toEqual(["circle", []]);
  expect(answer.words).toMatch(/round in a circle/);
});

test("no such car", () => {
  expect(ask(tiny, { part: "HT-101", facts: { line: "H", my: 1957 } }).verdict).toBe("no such car");
});

// question, what is said of it
test.each<[Record<string, unknown>, string]>([
  [{ facts: {} }, "It takes either a part or a place"],
  [{ part: "HT-101", place: "pump" }, "It takes either a part or a place"],
  [{ part: "4411" }, "'4411' is a casting number, not a part number."],
  [{ place: "pump gasket" }, "No record says what this car was built with: pump gasket."],
])("%j is refused", (asked, message) => {
  expect(() => ask(tiny, asked)).toThrow(message);
});
