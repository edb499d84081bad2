import { expect, test } from "vitest";
import { readCar } from "../../../src/engine/answers/car.ts";
import { readFactText } from "../../../src/engine/answers/fact-text.ts";
import { onThisCar } from "../../../src/engine/answers/on-this-car.ts";
import { knowledgeOf } from "../../helpers/one-record.ts";

const knowledge = knowledgeOf(`built:
  - { place: pump, part: HT-101, scope: line=B; my<=1959 }
  - { place: pump, part: HT-102, scope: line=B; my>=1960 }
  - { place: lift arms, part: HT-102, scope: line=H }
mixed:
  - { place: pump, parts: [HT-101, HT-102], scope: line=H; my=1959 }
stands-in:
  - { part: HT-102, for: HT-101, verdict: "yes", scope: my>=1958 }
  - { part: HT-101, for: HT-102, verdict: must-not-be-used, why: it runs dry }
  - { part: HT-201, for: HT-102, verdict: "yes" }`);

// part, car, place, whether the plant built it in, whether it may stand in
test.each<[string, string, string | undefined, string, boolean]>([
  ["HT-101", "line=B; my=1958", undefined, "yes", false],
  ["HT-101", "line=B; my=1960", undefined, "no", false],
  ["HT-101", "line=B", undefined, "perhaps", false],
  ["HT-102", "line=B; my=1958", undefined, "no", true],
  ["HT-102", "line=B; my=1957", undefined, "no", false],
  ["HT-102", "line=H; my=1959", undefined, "yes", true],
  ["HT-102", "line=H; my=1959", "pump", "perhaps", true],
  ["HT-101", "line=H; my=1959", "lift arms", "no", false],
  ["HT-201", "line=B; my=1960", undefined, "unknown", true],
  ["HT-201", "line=B; my=1958", undefined, "unknown", false],
  ["HT-290", "line=B; my=1958", undefined, "unknown", false],
])("%s on %s (%s): %s, %s", (part, facts, place, builtHere, mayStandIn) => {
  const { cars } = readCar(knowledge, { facts: Object.fromEntries(facts.split("; ").map(readFactText)) });
  expect(onThisCar(knowledge, { part, place, cars })).toMatchObject({ builtHere, mayStandIn });
});

test("what refuses it on the car, and where else the car has it, is told", () => {
  const told = (part: string, facts: Record<string, string>, place: string) => {
    const { refusals, elsewhere } = onThisCar(knowledge, { part, place, cars: readCar(knowledge, { facts }).cars });
    return [refusals.map((it) => `${it.for} ${it.verdict}`), elsewhere];
  };
  expect(told("HT-101", { line: "B", my: "1960" }, "pump")).toEqual([["HT-102 must-not-be-used"], []]);
  expect(told("HT-102", { line: "H", my: "1959" }, "pump")).toEqual([[], ["lift arms"]]);
  expect(told("HT-101", { line: "B", my: "1958" }, "pump")).toEqual([[], []]);
});
