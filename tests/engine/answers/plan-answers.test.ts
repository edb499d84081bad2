import { describe, expect, test } from "vitest";
import { askIndexOf } from "../../../src/engine/answers/ask-index.ts";
import { type Plan, type Planned, planAnswers } from "../../../src/engine/answers/plan-answers.ts";
import type { CarInput } from "../../../src/engine/answers/shapes/car.ts";
import { readQuestion } from "../../../src/engine/ask/read-question.ts";
import { askedKnowledge } from "../../helpers/tiny-asked.ts";

const knowledge = askedKnowledge();
const { vocabulary, numbers } = askIndexOf(knowledge.catalog);

function whole(question: string, car: CarInput = {}, records: readonly string[] = ["FR60-01", "HY59-01"]): Plan {
  return planAnswers(knowledge, vocabulary, readQuestion(vocabulary, question, numbers), car, records);
}

function plan(question: string, car?: CarInput, records?: readonly string[]): readonly Planned[] {
  return whole(question, car, records).planned;
}

/** "may-fit FR-2L @ step, left; line=B my=1959": one question of the engine in a line. */
function inShort({ question, car, ...asked }: Planned): string {
  const { place, about, names, ...rest } = asked as Record<string, unknown>;
  const facts = Object.entries(car.facts ?? {}).map(([trait, value]) => `${trait}=${[value].flat().join(",")}`);
  const matter = [...Object.values(rest).flat(), ...(place === undefined ? [] : [`@ ${place}`])].join(" ");
  return `${question} ${matter}; ${facts.sort().join(" ")}`.replaceAll(/ (?=;)|;? $/g, "");
}

describe("which question of the engine is asked", () => {
  // question in words, questions of the engine
  const CASES: [string, string[]][] = [
    // A part named
    ["FR-2L on a 59 Badger", ["may-fit FR-2L; line=B my=1959"]],
    ["does FR-2L fit a 59 Badger", ["may-fit FR-2L; line=B my=1959"]],
    ["FR-2L", ["may-fit FR-2L"]],
    ["FR-2L on the right of a 60 Badger", ["may-fit FR-2L @ step, right; line=B my=1960"]],
    ["what replaces HT-101", ["current HT-101"]],
    ["current number for HT-101 on a Badger", ["current HT-101; line=B"]],
    ["FR-1L FR-2L tell apart", ["tell-apart FR-1L FR-2L"]],
    ["how do i know FR-1L", ["tell-apart step"]],
    // A part that comes from another car
    [
      "will a 60 step fit a 59 Badger",
      ["may-fit FR-2L @ step, left; line=B my=1959", "may-fit FR-2R @ step, right; line=B my=1959"],
    ],
    [
      "will a 59 step fit a 60 Badger",
      ["may-fit FR-1L @ step, left; line=B my=1960", "may-fit FR-1R @ step, right; line=B my=1960"],
    ],
    ["left step off a 60 Badger on a 59 Heron", ["may-fit FR-2L @ step, left; line=H my=1959"]],
    // A component
    ["retrofit step 59 Badger", ["retrofits step; line=B my=1959"]],
    ["fit a step on a 59 Badger", ["retrofits step; line=B my=1959"]],
    ["order a step 59 Badger", ["current @ step, left; line=B my=1959", "current @ step, right; line=B my=1959"]],
    ["step for a 59 Badger", ["current @ step, left; line=B my=1959", "current @ step, right; line=B my=1959"]],
    ["which step", ["tell-apart step"]],
    ["step with five holes", ["tell-apart step"]],
    ["step", []],
    // A figure
    ["step bolt torque 59 Badger", ["setting step bolt torque; line=B my=1959"]],
    ["oil pressure 125 bar Badger", ["reading oil pressure 125 bar; line=B"]],
    // What is due, which record, what changed
    ["how often oil change", ["schedule"]],
    ["does HY59-01 apply to a 59 Heron", ["applies HY59-01; line=H my=1959"]],
    ["HY59-01 Heron", ["applies HY59-01; line=H"]],
    ["HY59-01", []],
    ["changed 60 Badger", ["net-change 1959 1960; line=B my=1960"]],
    ["changed between 58 and 60 Badger", ["net-change 1958 1960; line=B my=1960"]],
    ["changed 58 60 Badger", ["net-change 1958 1960; line=B my=1960"]],
    ["changed 57 Badger", []], // there is no year before
    ["changed 60", []], // which line is asked first
    // Nothing of the kind
    ["Badger", []],
    ["zeppelin", []],
    ["", []],
  ];
  test.each(CASES)("%s", (question, planned) => {
    expect(plan(question).map(inShort)).toEqual(planned);
  });
});

describe("the car that is asked about", () => {
  const KNOWN: CarInput = { facts: { PT: "yes" }, fitted: ["HT-101"] };

  test("is what was known before, with what the question says", () => {
    for (const question of [
      "FR-2L on a 60 Heron",
      "retrofit step 60 Heron",
      "step bolt torque 60 Heron",
      "HY59-01 60 Heron",
    ])
      expect(plan(question, KNOWN).map(({ car }) => car)).toEqual([
        { ...KNOWN, facts: { PT: "yes", line: "H", my: "1960" } },
      ]);
  });

  test("may be known by its plate alone", () => {
    expect(plan("changed 59", { plate: "B9 K 0412" })).toMatchObject([
      { question: "net-change", from: 1958, to: 1959 },
    ]);
  });

  test("has the part of which a due is asked", () => {
    expect(plan("how often is HT-102 changed", KNOWN)).toMatchObject([
      { question: "schedule", car: { fitted: ["HT-101", "HT-102"] } },
    ]);
  });
});

describe("what the question is about", () => {
  test("is the component of the best record, where the question has words of its own and names none", () => {
    expect(plan("retrofit tread", {}, ["FR60-01"])).toMatchObject([{ question: "retrofits", component: "step" }]);
    expect(plan("retrofit tread", {}, ["HY59-01"])).toMatchObject([{ question: "retrofits", component: "pump" }]);
    expect(plan("retrofit", {}, ["FR60-01"])).toEqual([]);
  });

  test("are the systems and components of a change", () => {
    expect(plan("changed 60 Badger frame")).toMatchObject([{ about: ["frame"] }]);
    expect(plan("changed 60 Badger step")).toMatchObject([{ about: ["step"] }]);
  });

  test("a list of many places or many parts is no answer", () => {
    for (const [question] of [
      ["FR-1L FR-1R FR-2L FR-2R HT-101 HT-102 60 Badger"],
      ["HT-101 HT-102 FR-1L FR-1R FR-2L order"],
    ])
      expect(plan(question as string).length).toBeLessThanOrEqual(4);
  });
});
