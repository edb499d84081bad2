import { expect, test } from "vitest";
import { readFactText } from "../../../src/engine/answers/fact-text.ts";
import { answerQuestion } from "../../../src/engine/answers/questions.ts";
import { type RetrofitsAnswer, retrofitsAnswer } from "../../../src/engine/answers/shapes/retrofits.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { fixtureRows } from "../../helpers/fixture-rows.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const demo = await demoKnowledge();
const tiny = tinyKnowledge();
const ROWS = fixtureRows<[string, string, string, string]>("retrofits");
const CERTAIN = fixtureRows<[string, string, string]>("retrofits-certain");

function ask(knowledge: typeof demo, asked: Record<string, unknown>): RetrofitsAnswer {
  return retrofitsAnswer.parse(answerQuestion(knowledge, { question: "retrofits", ...asked }));
}

test.each(ROWS)("on %s: %s is '%s' with %s", (facts, part, verdict, set) => {
  const answer = ask(demo, { facts: Object.fromEntries(facts.split("; ").map(readFactText)) });
  const paths = answer.paths.filter((it) => it.part === part);
  const closed = answer.blocked.filter((it) => it.part === part);
  expect([...paths, ...closed].map((it) => it.verdict)).toEqual([verdict]);
  expect(paths.map((it) => it.set.map((one) => one.part).join(" ")).join()).toBe(set);
});

test("no path and no closed way is about a part that the car was built with", () => {
  const answer = ask(demo, { facts: {} });
  for (const { part, instead, because } of [...answer.paths, ...answer.blocked]) {
    expect(instead).not.toBe(part);
    expect(because.length).toBeGreaterThan(0);
  }
});

test.each(CERTAIN)("on %s: %s is certain, whichever belongs there of %s", (facts, part, instead) => {
  const { paths } = ask(demo, { facts: Object.fromEntries(facts.split("; ").map(readFactText)) });
  const its = paths.filter((it) => it.part === part);
  expect(its.map((it) => it.instead).join(" ")).toBe(instead);
  expect(its.map((it) => it.certain)).toEqual(its.map(() => true));
});

test("one component, and the parts under it", () => {
  expect(ask(tiny, { component: "Lift", facts: { line: "B", my: 1960, plant: "K" } })).toMatchObject({
    component: "lift",
    verdict: "on record",
    blocked: [{ part: "HT-101", instead: "HT-102", verdict: "goes on but must not be used", certain: true }],
  });
});

test("no such car, and a component that nobody knows", () => {
  expect(ask(tiny, { facts: { line: "H", my: 1957 } }).verdict).toBe("no such car");
  expect(() => ask(tiny, { component: "roof" })).toThrow("No component is called 'roof'.");
});
