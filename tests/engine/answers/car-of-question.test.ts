import { describe, expect, test } from "vitest";
import { askIndexOf } from "../../../src/engine/answers/ask-index.ts";
import { carsAsked } from "../../../src/engine/answers/car-of-question.ts";
import type { CarInput } from "../../../src/engine/answers/shapes/car.ts";
import { readQuestion } from "../../../src/engine/ask/read-question.ts";
import { askedKnowledge } from "../../helpers/tiny-asked.ts";

const { catalog } = askedKnowledge();
const { vocabulary, numbers } = askIndexOf(catalog);

function cars(question: string, { picked = {}, two = true }: { picked?: CarInput; two?: boolean } = {}) {
  return carsAsked(catalog.space, readQuestion(vocabulary, question, numbers), picked, two);
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
    ["Badger with power take-off", "PT=yes line=B"],
    ["Badger without power take-off", "PT=no line=B"],
    ["Dunmoor Heron", "line=H plant=D"],
  ];
  test.each(CASES)("%j", (question, facts) => {
    const { car, donor } = cars(question);
    expect([told(car), donor]).toEqual([facts, undefined]);
  });

  test("what the question says comes over what was known before, the rest stays", () => {
    const picked = { plate: "B9 K 0412", facts: { line: "H", PT: "yes" }, fitted: ["HT-101"] };
    expect(cars("59 Badger", { picked }).car).toEqual({ ...picked, facts: { line: "B", my: "1959", PT: "yes" } });
    expect(cars("step", { picked }).car).toEqual(picked);
  });

  test("where only one car can be meant, several values are all still possible", () => {
    const { car, donor } = cars("changed 58 60 Badger", { two: false });
    expect([told(car), donor]).toEqual(["line=B my=1958,1960", undefined]);
  });
});

describe("two cars", () => {
  // question, the car at hand, the one that the part comes from
  const CASES: [string, string, string][] = [
    ["step off a 60 on a 59 Badger", "line=B my=1959", "line=B my=1960"],
    ["step off a 60 Badger on a 59", "line=B my=1959", "line=B my=1960"],
    ["step off a 60 Heron on a 59 Badger", "line=B my=1959", "line=H my=1960"],
    ["step out of a 60 Heron into a 59 Badger", "line=B my=1959", "line=H my=1960"],
    ["will a 60 step fit a 59 Badger", "line=B my=1959", "line=B my=1960"],
    ["will a 59 step fit a 60 Badger", "line=B my=1960", "line=B my=1959"],
    ["will a 60 Heron step fit a 59 Badger", "line=B my=1959", "line=H my=1960"],
  ];
  test.each(CASES)("%s", (question, at, from) => {
    const { car, donor } = cars(question);
    expect([told(car), told(donor)]).toEqual([at, from]);
  });

  test("nothing but its line is taken over from the car at hand", () => {
    const { donor } = cars("step off a 60 on a 59 Badger", { picked: { facts: { PT: "yes" }, fitted: ["HT-101"] } });
    expect(donor).toEqual({ facts: { line: "B", my: "1960" } });
  });

  test("what the part comes from is no fact of the car at hand", () => {
    expect(cars("step off a 60", { picked: { facts: { line: "B", my: "1959" } } }).car).toEqual({
      facts: { line: "B", my: "1959" },
    });
  });
});
