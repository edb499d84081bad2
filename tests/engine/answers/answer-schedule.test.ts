import fc from "fast-check";
import { expect, test } from "vitest";
import { readFactText } from "../../../src/engine/answers/fact-text.ts";
import { answerQuestion } from "../../../src/engine/answers/questions.ts";
import type { ScheduleAnswer } from "../../../src/engine/answers/shapes/setting.ts";
import { lawfulAnswer } from "../../helpers/answer-laws.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { fixtureRows } from "../../helpers/fixture-rows.ts";
import { randomCar } from "../../helpers/random-cars.ts";
import { SEED } from "../../helpers/seed.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const demo = await demoKnowledge();
const tiny = tinyKnowledge();
type Row = [string, string, string, string, string, string, string, string];
const ROWS = fixtureRows<Row>("schedules");

type Due = ScheduleAnswer["items"][number]["due"][number];

/** As the fixture writes it: "6 months or 6000 miles", "once 500 miles", "none". */
function written({ months, miles, once, none }: Due): string {
  if (none) return "none";
  const parts = [...(months ? [`${months} months`] : []), ...(miles ? [`${miles} miles`] : [])];
  return `${once ? "once " : ""}${parts.join(" or ")}`;
}

const told = new Map<string, ScheduleAnswer>();

/** Asked once of each car. */
function scheduleOf(facts: string, fitted: string, from: string): ScheduleAnswer {
  const key = [facts, fitted, from].join("|");
  const known = told.get(key);
  if (known) return known;
  const car = {
    facts: Object.fromEntries(facts.split("; ").map(readFactText)),
    fitted: fitted ? fitted.split(" ") : [],
  };
  const answer = answerQuestion(demo, { question: "schedule", ...(from ? { from } : {}), car }) as ScheduleAnswer;
  told.set(key, answer);
  return answer;
}

test.each(ROWS)("%s, fitted %s, against %s: %s is %s", (facts, fitted, from, name, verdict, due, before, change) => {
  const answer = scheduleOf(facts, fitted, from);
  const item = answer.items.find((it) => it.name === name);
  const list = (text: string): string[] => text.split(" | ").filter(Boolean).sort();
  expect(item?.verdict ?? "absent").toBe(verdict);
  if (!item) return;
  expect(item.due.map(written).sort()).toEqual(list(due));
  if (before !== "*") expect(item.before.map(written).sort()).toEqual(list(before));
  if (change !== "*") expect(item.change).toBe(change);
  expect(item.ask !== undefined).toBe(verdict === "look first");
});

test("keeps the laws of every answer, of cars known in part", () => {
  fc.assert(
    fc.property(randomCar(demo.catalog, { conflicts: true }), (car) => {
      lawfulAnswer(demo, { question: "schedule", car });
    }),
    // Shrinking asks for hundreds of cars more; the one that fails is small enough.
    { seed: SEED, numRuns: 2, endOnFailure: true },
  );
});

test("the year asked for must be one of the data, and the car one that was built", () => {
  const schedule = (asked: object): ScheduleAnswer =>
    lawfulAnswer(tiny, { question: "schedule", ...asked }) as unknown as ScheduleAnswer;
  expect(schedule({ car: { facts: { line: "B", my: 1957 } } })).toMatchObject({ verdict: "schedule" });
  expect(schedule({ car: { facts: { line: "H", my: 1957 } } }).verdict).toBe("no such car");
  expect(() => schedule({ from: 1901 })).toThrow("Model year 1901 is not on record. Years run from 1957 to 1961.");
});
