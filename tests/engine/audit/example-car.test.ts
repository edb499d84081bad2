import { describe, expect, test } from "vitest";
import { exampleCar } from "../../../src/engine/audit/example-car.ts";
import { type CarSet, NONE } from "../../../src/engine/scope/diagram.ts";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import { catalogOf } from "../../helpers/tiny-folder.ts";

const { space, buildable } = catalogOf();

function built(scope: string): CarSet {
  const read = readScope(space, scope);
  if ("slips" in read) throw new Error(read.slips[0]?.message);
  return space.sets.and(buildable, read.scope.cars);
}

describe("a car is told by its line, its year, and as little more as will do", () => {
  // scope, facts
  const CASES: [string, Record<string, string>][] = [
    ["line=H; my=1960", { line: "H", my: "1960" }],
    ["my=1959; plant=D", { line: "B", my: "1959", plant: "D" }],
    // A winch was only to be had from Dunmoor: with it the plant need not be said.
    ["line=H; eq=WN", { line: "H", my: "1959", WN: "yes" }],
    // Every Badger of 1957 is from Kelby.
    ["line=B; my=1957; plant=K", { line: "B", my: "1957" }],
    ["line=B; at=K59#0412+", { line: "B", my: "1959", plant: "K", number: "0412" }],
    ["fitted=HT-201; line=B; my=1958", { line: "B", my: "1958", "fitted HT-201": "yes" }],
  ];
  test.each(CASES)("%s", (scope, facts) => {
    expect(exampleCar({ cars: built(scope), among: buildable, space })?.facts).toEqual(facts);
  });
});

test("in words", () => {
  expect(exampleCar({ cars: built("line=H; eq=WN"), among: buildable, space })?.words).toBe(
    "Heron of 1959, with a winch",
  );
});

test("of no car there is none to tell", () => {
  expect(exampleCar({ cars: NONE, among: buildable, space })).toBeUndefined();
});
