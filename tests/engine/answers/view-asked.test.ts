import { describe, expect, test } from "vitest";
import { askIndexOf } from "../../../src/engine/answers/ask-index.ts";
import type { Planned } from "../../../src/engine/answers/plan-answers.ts";
import { askPlanned } from "../../../src/engine/answers/say-planned.ts";
import { askAnswer } from "../../../src/engine/answers/shapes/ask.ts";
import { carriers, thingsOf, viewAsked } from "../../../src/engine/answers/view-asked.ts";
import type { Found } from "../../../src/engine/ask/find-records.ts";
import type { Ranked } from "../../../src/engine/ask/rank.ts";
import { readQuestion } from "../../../src/engine/ask/read-question.ts";
import { askedKnowledge } from "../../helpers/tiny-asked.ts";

const knowledge = askedKnowledge();
const { vocabulary, numbers, cards } = askIndexOf(knowledge.catalog);
const CAR = { facts: { line: "B", my: "1959" } };
const MAY_FIT: Planned = { question: "may-fit", part: "FR-2L", car: CAR };
const NO_FACETS: Found["facets"] = { system: [], line: [], year: [], kind: [] };

function ranked(id: string, more: Partial<Ranked> = {}): Ranked {
  const card = cards.find((one) => one.id === id);
  if (!card) throw new Error(`there is no card of ${id}`);
  return { card, points: 10.04, why: ["step", "step"], misses: [], step: false, ...more };
}

interface Case {
  readonly unclear?: boolean;
  readonly planned?: readonly Planned[];
  readonly found?: Partial<Found>;
}

function view(question: string, { planned = [], found = {}, unclear = false }: Case = {}) {
  const answer = viewAsked(vocabulary, {
    reading: readQuestion(vocabulary, question, numbers),
    answers: askPlanned(knowledge, { planned, sure: CAR, lost: false }),
    unclear,
    found: () => ({ records: [], facets: NO_FACETS, onRecord: true, unknown: [], ...found }),
  });
  expect(askAnswer.parse(answer)).toEqual(JSON.parse(JSON.stringify(answer)));
  return answer;
}

const STEP = { records: [ranked("FR60-01"), ranked("HY59-01", { misses: ["line"] })] };

describe("the verdict", () => {
  test("is that something was answered, with the records it rests on", () => {
    const answer = view("FR-2L on a 59 Badger", { planned: [MAY_FIT], found: STEP });
    expect(answer).toMatchObject({ verdict: "answered", words: "FR-2L may be fitted.", nearest: [] });
    expect(answer.because.map(({ record }) => record)).toEqual(["FR60-01", "FR60-01"]);
    expect(answer.answers).toMatchObject([{ verdict: "yes", says: "FR-2L may be fitted.", asked: MAY_FIT }]);
  });

  test("is the records alone where there is no answer, of which those for such a car count", () => {
    const answer = view("step", { found: STEP });
    expect(answer).toMatchObject({ verdict: "records", words: "One record for step.", answers: [] });
    expect(answer.because).toEqual([
      { record: "FR60-01", statement: "record", text: "Wider step", address: "/records/FR60-01/" },
    ]);
  });

  test("is that nothing is on record, with what comes nearest, which is no answer", () => {
    const answer = view("step of a zeppelin", { found: { ...STEP, onRecord: false, unknown: ["zeppelin"] } });
    expect(answer).toMatchObject({ verdict: "nothing on record", because: [] });
    expect(answer.nearest).toEqual(["FR60-01 Wider step", "HY59-01 Longer hydraulic pump"]);
    expect(answer.words).toBe(
      "Nothing is on record about 'zeppelin'. Silence is not permission, and not \"no change\". What comes nearest is listed below; it is no answer.",
    );
  });

  test("says what nothing is on record about", () => {
    const nothing = (question: string): string => view(question, { found: { onRecord: false } }).words;
    expect(nothing("step of a Heron")).toMatch(/^Nothing is on record about step and Heron\. Silence/);
    expect(nothing("?")).toMatch(/^Nothing is on record about this\./);
  });

  test("a word that stands in no record is said beside the answer", () => {
    expect(view("zeppelin step", { found: { ...STEP, unknown: ["zeppelin"] } }).words).toBe(
      "One record for step. No record has the word 'zeppelin'.",
    );
  });
});

test("where it is not clear which of two cars is at hand, that is asked", () => {
  const { ask, answers } = view("steps of a 59 Badger and a 60 Heron", { unclear: true });
  expect(ask?.options?.length).toBeGreaterThan(1);
  expect(answers).toEqual([]);
});

describe("which line is asked", () => {
  // question, answered, lines offered
  const CASES: [string, Case, string[] | undefined][] = [
    ["changed 60", {}, ["Badger", "Heron"]],
    ["changed 60 Badger", {}, undefined],
    ["changed on the step", {}, undefined],
    ["step 60", {}, undefined],
    ["changed 60", { planned: [MAY_FIT] }, undefined],
  ];
  test.each(CASES)("%s %j", (question, how, lines) => {
    expect(view(question, how).ask?.options).toEqual(lines);
  });
});

describe("the records", () => {
  test("are shown with what speaks for them, once, and with what they miss", () => {
    const [first, second] = view("step", { planned: [MAY_FIT], found: STEP }).records;
    expect(first).toEqual({
      id: "FR60-01",
      title: "Wider step",
      address: "/records/FR60-01/",
      trap: expect.any(Boolean),
      starts: "start of 1960",
      systems: ["frame"],
      why: ["step"],
      carries: true,
      misses: [],
      points: 10,
    });
    expect(second).toMatchObject({ id: "HY59-01", carries: false, misses: ["line"] });
  });

  test("an answer rests on those of its argument; a list of changes or of ways is no argument", () => {
    const rest = (...planned: Planned[]): string[] =>
      carriers(askPlanned(knowledge, { planned, sure: CAR, lost: false }));
    expect(rest(MAY_FIT)).toEqual(["FR60-01"]);
    expect(rest({ question: "setting", setting: "oil pressure", car: CAR }, MAY_FIT)).toEqual(["HY59-01", "FR60-01"]);
    expect(rest({ question: "retrofits", component: "step", car: CAR })).toEqual([]);
    expect(rest({ question: "net-change", from: 1959, to: 1960, about: [], car: CAR })).toEqual([]);
    expect(rest()).toEqual([]);
  });

  test("those that an answer rests on are asked to come first", () => {
    let told: readonly string[] | undefined;
    viewAsked(vocabulary, {
      reading: readQuestion(vocabulary, "step", numbers),
      answers: askPlanned(knowledge, { planned: [MAY_FIT], sure: CAR, lost: false }),
      unclear: false,
      found: (carriedBy) => {
        told = carriedBy;
        return { records: [], facets: NO_FACETS, onRecord: true, unknown: [] };
      },
    });
    expect(told).toEqual(["FR60-01"]);
  });
});

describe("the reading", () => {
  test("is shown whole, and is no part of what was given", () => {
    const reading = readQuestion(vocabulary, "what changed on the step of a 58-60 Badger", numbers);
    const shown = view("what changed on the step of a 58-60 Badger").reading;
    expect(shown.chips).toEqual(reading.chips);
    expect(shown.chips).not.toBe(reading.chips);
    expect(shown.asked.map(({ asked }) => asked)).toEqual(["changed"]);
  });

  test("names pages for what it names, but not for a long run", () => {
    const named = (question: string): string[] =>
      thingsOf(readQuestion(vocabulary, question, numbers).chips).map(({ address }) => address);
    expect(named("step FR-2L HY59-01 of a 59 Badger in the frame")).toEqual([
      "/components/step/",
      "/parts/FR-2L/",
      "/records/HY59-01/",
      "/years/1959/",
      "/lines/B/",
      "/systems/frame/",
    ]);
    expect(named("step with power take-off")).toEqual(["/components/step/"]);
    expect(named("57-61")).toEqual([]);
  });
});
