import { expect, test } from "vitest";
import { answerQuestion } from "../../../src/engine/answers/questions.ts";
import type { BuiltAnswer } from "../../../src/engine/answers/shapes/built.ts";
import { lawfulAnswer } from "../../helpers/answer-laws.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const knowledge = tinyKnowledge();
const ask = (place: string, car: object): BuiltAnswer =>
  lawfulAnswer(knowledge, { question: "built", place, car }) as unknown as BuiltAnswer;

// place, car, verdict, parts, perhaps not on record
const CASES: [string, object, string, string[], boolean][] = [
  ["pump", { plate: "B9K0411" }, "known", ["HT-101"], false],
  ["PUMP ", { plate: "B9K0412" }, "known", ["HT-102"], false],
  ["hydraulic pump", { plate: "B9K0412" }, "known", ["HT-102"], false], // its component has one place
  ["pump", { facts: { line: "B", my: 1959, plant: "K" } }, "look first", ["HT-101", "HT-102"], false],
  ["pump", { facts: { line: "H", my: 1959 } }, "mixed stretch", ["HT-101", "HT-102"], false],
  ["pump", { facts: { line: "H", my: 1960 } }, "not on record", [], true],
  ["pump", { facts: { line: "H" } }, "look first", ["HT-101", "HT-102"], true],
  ["pump", { facts: { line: "B", my: 1960, plant: "D" } }, "not on record", [], true], // the change says nothing about this plant
  ["lift arms", { facts: { line: "H" } }, "nothing fitted", ["none"], false],
  ["pump", { facts: { line: "H", my: 1957 } }, "no such car", [], false],
];
test.each(CASES)("%s, %j: %s %j", (place, car, verdict, parts, perhapsNotOnRecord) => {
  expect(ask(place, car)).toMatchObject({ verdict, parts, perhapsNotOnRecord });
});

test("a part put in since does not change what the car was built with", () => {
  expect(ask("pump", { plate: "B9K0411", fitted: ["HT-102"] }).parts).toEqual(["HT-101"]);
});

test("a place that nobody knows is refused, with the nearest name", () => {
  const asking = (place: string) => () => answerQuestion(knowledge, { question: "built", place });
  expect(asking("pmup")).toThrow("No place is called 'pmup'. Did you mean 'pump'?");
  expect(asking("steering wheel")).toThrow("No place is called 'steering wheel'.");
});
