import fc from "fast-check";
import { expect, test } from "vitest";
import { answerQuestion } from "../../../src/engine/answers/questions.ts";
import type { BuiltAnswer } from "../../../src/engine/answers/shapes/built.ts";
import { lawfulAnswer } from "../../helpers/answer-laws.ts";
import { asked, fits, knownInPart, saidOfCells, scopeOf, TRACTORS } from "../../helpers/listed-tractors.ts";
import { knowledgeOf } from "../../helpers/one-record.ts";
import { SEED } from "../../helpers/seed.ts";
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

/** The verdict where one thing only is said; a part is known. */
const ALONE: Readonly<Record<string, string>> = {
  "-": "not on record",
  none: "nothing fitted",
  "HT-101 HT-102": "mixed stretch",
};

/** The slow twin: what the plant fitted is looked up car by car. */
test("is what car by car was fitted to all cars that it can be", () => {
  const seen = new Map<string, number>();
  // Either part in a mixed stretch; "-" where no record says anything.
  const fitted = saidOfCells(fc.constantFrom("HT-101", "HT-102", "none", "HT-101 HT-102", "-"));
  fc.assert(
    fc.property(fitted, fc.array(knownInPart, { minLength: 4, maxLength: 4 }), (stated, cars) => {
      const state = (value: string, how: string): string => {
        const scope = scopeOf((car) => stated(car) === value);
        return scope === undefined ? "" : `\n  - { place: pump, ${how}, scope: ${scope} }`;
      };
      const built = ["HT-101", "HT-102", "none"].map((part) => state(part, `part: ${part}`)).join("");
      const mixed = state("HT-101 HT-102", "parts: [HT-101, HT-102]");
      const own = knowledgeOf(`${built ? `built:${built}` : "built: []"}\n${mixed ? `mixed:${mixed}` : "mixed: []"}`);
      for (const known of cars) {
        const values = [...new Set(TRACTORS.filter(fits(known)).map(stated))];
        const parts = [...new Set(values.filter((value) => value !== "-").flatMap((value) => value.split(" ")))];
        const [value = "", ...more] = values;
        const alone = ALONE[value] ?? "known";
        const verdict = more.length > 0 ? "look first" : alone;
        const answer = answerQuestion(own, { question: "built", place: "pump", car: asked(known) }) as BuiltAnswer;
        expect([answer.verdict, answer.parts.toSorted(), answer.perhapsNotOnRecord, answer.ask !== undefined]).toEqual([
          verdict,
          parts.sort(),
          values.includes("-"),
          verdict === "look first",
        ]);
        seen.set(verdict, (seen.get(verdict) ?? 0) + 1);
      }
    }),
    { seed: SEED, numRuns: 150 },
  );
  for (const verdict of ["known", "nothing fitted", "mixed stretch", "not on record", "look first"])
    expect(seen.get(verdict)).toBeGreaterThan(10);
});
