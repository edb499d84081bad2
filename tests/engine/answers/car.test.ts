/** What is on the car today beats what it was built with; what nobody reports otherwise is as built. */
import { describe, expect, test } from "vitest";
import { readCar } from "../../../src/engine/answers/car.ts";
import { QuestionError } from "../../../src/engine/answers/question-error.ts";
import type { CarInput } from "../../../src/engine/answers/shapes/car.ts";
import { applies } from "../../../src/engine/scope/applies.ts";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

/** A scope asks for HT-102 as fitted today, so that it is a trait. */
const knowledge = tinyKnowledge({
  "changes/1959/HY59-01.md": ["scope: fitted=HT-201 }", "scope: fitted=HT-102 }"],
});
const { space } = knowledge.catalog;

function verdict(car: CarInput, scope: string): string {
  const read = readScope(space, scope);
  if (!("scope" in read)) throw new Error(scope);
  return applies(space.sets, readCar(knowledge, car).cars, read.scope.cars);
}

// car, scope, verdict
const CASES: [why: string, CarInput, string, string][] = [
  ["a plate says line, year, plant and number", { plate: "B9K0412" }, "line=B; my=1959; at=K59#0412+", "yes"],
  ["a fact beside the plate counts too", { plate: "B9K0412", facts: { PT: true } }, "eq=PT", "yes"],
  ["a fact against the plate: no such car", { plate: "B9K0412", facts: { line: "H" } }, "all", "no such car"],
  ["as found comes before the plate", { plate: "B9K0412", found: { line: "H" } }, "line=H", "yes"],
  ["several values are possible", { facts: { my: [1958, 1959] } }, "my=1958", "look first"],
  ["the later pump is on the later cars, as built", { plate: "B9K0500" }, "fitted=HT-102", "yes"],
  ["and not on the earlier ones", { plate: "B9K0411" }, "fitted=HT-102", "no"],
  ["where the plant used either, only looking tells", { plate: "H9K0001" }, "fitted=HT-102", "look first"],
  [
    "nobody knows the number: look first",
    { facts: { line: "B", my: 1959, plant: "K" } },
    "fitted=HT-102",
    "look first",
  ],
  ["fitted since", { plate: "B9K0411", fitted: ["HT-102"] }, "fitted=HT-102", "yes"],
  ["the spelling of a number is forgiven", { plate: "B9K0411", fitted: [" ht 102"] }, "fitted=HT-102", "yes"],
  [
    "another part of that place was put in: the later one is off",
    { plate: "B9K0500", fitted: ["HT-101"] },
    "fitted=HT-102",
    "no",
  ],
  ["a part of another place changes nothing", { plate: "B9K0500", fitted: ["HT-201"] }, "fitted=HT-102", "yes"],
];
test.each(CASES)("%s", (_, car, scope, expected) => {
  expect(verdict(car, scope)).toBe(expected);
});

test("facts come back in words, with where they are from", () => {
  const { facts, fitted } = readCar(knowledge, {
    plate: "B9K0411",
    facts: { PT: true },
    found: { WN: "yes" },
    fitted: ["HT102"],
  });
  expect(facts.map((fact) => `${fact.text} ${fact.source}`)).toEqual([
    "line=B plate",
    "my=1959 plate",
    "plant=K plate",
    "number=0411 plate",
    "PT=true said",
    "WN=yes as found",
    "fitted=HT-102 as found",
  ]);
  expect(fitted).toEqual(["HT-102"]);
});

describe("what is not understood is refused, and what was expected is said", () => {
  const WRONG: [CarInput, RegExp][] = [
    [{ plate: "B9" }, /^No plate has 2 characters, as 'B9' has\.$/],
    [
      { plate: "X9K0412" },
      /^The plate 'X9K0412' was misread: character 1 \(model line\) cannot be 'X'; it may be B, H\.$/,
    ],
    [{ facts: { lines: "B" } }, /^No trait is called 'lines'\. Did you mean 'line'\?$/],
    [{ facts: { line: "X" } }, /^model line has no value 'X'\./],
    [{ found: { my: 1066 } }, /^model year has no value '1066'\. Values run from 1957 to 1961\.$/],
    [{ fitted: ["HT-999"] }, /^No part is called 'HT-999'\.$/],
    [{ fitted: ["4411"] }, /^'4411' is a casting number, not a part number\.$/],
  ];
  test.each(WRONG)("%j", (car, message) => {
    expect(() => readCar(knowledge, car)).toThrow(QuestionError);
    expect(() => readCar(knowledge, car)).toThrow(message);
  });
});
