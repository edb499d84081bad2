/** Which part this car has where a record names one, and which figures hold. */
import { describe, expect, test } from "vitest";
import { figuresOf, hasWords, partsOf } from "../../../src/browser/car/on-this-car.ts";
import { readCar } from "../../../src/engine/answers/car.ts";
import type { CarInput } from "../../../src/engine/answers/shapes/car.ts";
import type { ChangeRecord } from "../../../src/engine/records/catalog.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const knowledge = tinyKnowledge();
const record = knowledge.catalog.records.get("HY59-01") as ChangeRecord;
const early = { line: "B", my: "1959", plant: "K", number: "0100" };

// what is known of the car, what the page says of it
const CASES: [string, CarInput, string[]][] = [
  ["before the point", { facts: early }, ["pump: HT-101"]],
  ["after it", { facts: { ...early, number: "0500" } }, ["pump: HT-102"]],
  [
    "number not known",
    { facts: { line: "B", my: "1959", plant: "K" } },
    ["pump: perhaps HT-101 or HT-102, look first"],
  ],
  [
    "in a mixed stretch; nothing fitted elsewhere",
    { facts: { line: "H", my: "1959" } },
    ["pump: HT-101 or HT-102, only looking tells", "lift arms: nothing"],
  ],
  ["another part reported on it", { facts: early, fitted: ["HT-102"] }, ["pump: found on the car: HT-102"]],
];
test.each(CASES)("a car %s", (_, car, words) => {
  expect(
    partsOf(knowledge, readCar(knowledge, car), record).map((has) => hasWords({ ...has, mark: undefined })),
  ).toEqual(words);
});

describe("the mark", () => {
  const marksOf = (made: string) => {
    const told = tinyKnowledge({ "parts/pump.yaml": ["made: cast", `made: ${made}`] });
    return ["0100", "0500"].map(
      (number) => partsOf(told, readCar(told, { facts: { ...early, number } }), record)[0]?.mark,
    );
  };
  test("is the one that is easiest to see", () => {
    expect(marksOf("cast")).toEqual(["ribs on the body: none", "ribs on the body: two"]);
  });
  test("is none that may have worn off", () => {
    expect(marksOf("painted")).toEqual(["bore of the inlet: 18 mm", "ribs on the body: two"]);
  });
});

test("figures that hold on every car that it can be, with their conditions", () => {
  const figures = (facts: Record<string, string>) => figuresOf(knowledge, readCar(knowledge, { facts }), record);
  const oil = { text: "oil change: every 12 months", conditions: undefined };
  expect(figures(early)).toEqual([{ text: "oil pressure: 120 to 135 bar", conditions: "hot" }, oil]);
  expect(figures({ my: "1959" })).toEqual([oil]);
});
