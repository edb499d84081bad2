import { describe, expect, test } from "vitest";
import { askIndexOf } from "../../../src/engine/answers/ask-index.ts";
import { carsAsked } from "../../../src/engine/answers/car-of-question.ts";
import type { CarInput } from "../../../src/engine/answers/shapes/car.ts";
import { readQuestion } from "../../../src/engine/ask/read-question.ts";
import { askedKnowledge } from "../../helpers/tiny-asked.ts";

const knowledge = askedKnowledge();
const { vocabulary, numbers } = askIndexOf(knowledge.catalog);

function cars(question: string, picked: CarInput = {}, ofFitting = true) {
  return carsAsked(knowledge, readQuestion(vocabulary, question, numbers), picked, ofFitting);
}

/** "line=B my=1959": the facts of a car in words, or nothing where there is no such car. */
function told(car: CarInput | undefined): string | undefined {
  return (
    car &&
    Object.entries(car.facts ?? {})
      .map(([trait, value]) => `${trait}=${[value].flat().join(",")}`)
      .sort()
      .join(" ")
  );
}

describe("one car", () => {
  // question, facts of the car
  const CASES: [string, string][] = [
    ["", ""],
    ["step of a Badger", "line=B"],
    ["step of a 59 Badger", "line=B my=1959"],
    ["steps 58-60", "my=1958,1959,1960"],
    ["step of a 58 or 60 Badger", "line=B my=1958,1960"], // it must hold for both
    ["step of a Badger and Heron", "line=B,H"],
    ["Badger with power take-off", "PT=yes line=B"],
    ["Badger without power take-off", "PT=no line=B"],
    ["Badger without the power take-off", "PT=no line=B"],
    ["Badger that has no power take-off", "PT=no line=B"],
    ["Dunmoor Heron", "line=H plant=D"],
    // What is denied is taken out of what is possible.
    ["step, not of a Badger", "line=H"],
    ["Badger, not of 60", "line=B my=1957,1958,1959,1961"],
    ["Badger before 59", "line=B my=1957,1958"],
    ["Badger not before 59", "line=B my=1959,1960,1961"],
    // A year of the calendar tells no model year.
    ["Badger first registered in 59", "line=B"],
  ];
  test.each(CASES)("%j", (question, facts) => {
    const { car, donor, unclear } = cars(question);
    expect([told(car), donor, unclear]).toEqual([facts, undefined, false]);
  });

  test("what the question says comes over what was known before, the rest stays", () => {
    const picked = { facts: { line: "B", PT: "yes" }, fitted: ["HT-101"] };
    expect(cars("59 Badger", picked).car).toEqual({ ...picked, facts: { line: "B", my: "1959", PT: "yes" } });
    expect(cars("step", picked).car).toEqual(picked);
  });
});

describe("two cars", () => {
  // question, the car at hand, the one that the part comes from
  const CASES: [string, string, string][] = [
    ["step off a 60 on a 59 Badger", "line=B my=1959", "line=B my=1960"],
    ["step off a 60 Badger on a 59", "line=B my=1959", "line=B my=1960"],
    ["step off a 60 Heron on a 59 Badger", "line=B my=1959", "line=H my=1960"],
    ["on a 59 Badger a step off a 60 Heron", "line=B my=1959", "line=H my=1960"],
    ["will a 60 step fit a 59 Badger", "line=B my=1959", "line=B my=1960"],
    ["will a 59 step fit a 60 Badger", "line=B my=1960", "line=B my=1959"],
    ["my 59 Badger, will a 60 step fit", "line=B my=1959", "line=B my=1960"], // the order is no sign
    ["can a 59 Badger take a 60 step", "line=B my=1959", "line=B my=1960"],
    ["can a 60 Badger take a 59 step", "line=B my=1960", "line=B my=1959"],
    ["will a 60 Heron step fit a 59 Badger", "line=B my=1959", "line=H my=1960"],
  ];
  test.each(CASES)("%s", (question, at, from) => {
    const { car, donor, unclear } = cars(question);
    expect([told(car), told(donor), unclear]).toEqual([at, from, false]);
  });

  test("nothing but its line is taken over from the car at hand", () => {
    const { donor } = cars("step off a 60 on a 59 Badger", { facts: { PT: "yes" }, fitted: ["HT-101"] });
    expect(donor).toEqual({ facts: { line: "B", my: "1960" } });
  });

  test("where no word tells which is at hand, it is unclear, and both stay possible", () => {
    const { car, donor, unclear } = cars("step 59 Badger, step 60 Heron");
    expect([donor, unclear]).toEqual([undefined, true]);
    expect([car.facts?.line, car.facts?.my]).toEqual([
      ["B", "H"],
      ["1959", "1960"],
    ]);
  });
});

describe("a question against the car that was picked", () => {
  const PICKED = { facts: { line: "B", my: "1960" } };

  test("in a question about fitting, what stands before the part is where it comes from", () => {
    const { car, donor } = cars("59 step", PICKED);
    expect([car, told(donor)]).toEqual([PICKED, expect.stringContaining("my=1959")]);
  });

  test("and otherwise it is unclear, and nothing of either is taken for known", () => {
    expect(cars("FR-1L on a 59", PICKED)).toEqual({ car: {}, sure: {}, donor: undefined, unclear: true, lost: false });
  });

  test("any other question is about another car, of which the picked one says nothing", () => {
    const { car, donor, unclear } = cars("oil pressure 59 Heron", { ...PICKED, fitted: ["HT-101"] }, false);
    expect([car, donor, unclear]).toEqual([{ facts: { line: "H", my: "1959" } }, undefined, false]);
  });
});

describe("what is certain of the car", () => {
  const PICKED = { facts: { PT: "yes" } };

  test("is what was understood, where every word was", () => {
    const { car, sure } = cars("step of my 59 Badger", PICKED);
    expect(sure).toEqual(car);
    expect(told(sure)).toBe("PT=yes line=B my=1959");
  });

  test("is no more than was picked, where some word was not", () => {
    for (const question of ["step of a 59 Badger wobbulated", "left or right step of a 59 Badger"])
      expect([question, cars(question, PICKED).sure]).toEqual([question, PICKED]);
  });

  test("is never more than what is taken for said", () => {
    const QUESTIONS = ["59 Badger", "step off a 60 on a 59 Badger", "not a Badger", "zeppelin 59", "Heron, Badger, 59"];
    for (const question of QUESTIONS) {
      const { car, sure } = cars(question, PICKED);
      expect(Object.entries({ ...car.facts, ...sure.facts }).sort()).toEqual(Object.entries(car.facts ?? {}).sort());
    }
  });
});
