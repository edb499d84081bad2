import { expect, test } from "vitest";
import { findPlace } from "../../../src/engine/answers/find-place.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const knowledge = tinyKnowledge();

// typed, place
test.each([
  ["pump", "pump"],
  [" Pump ", "pump"],
  ["hydraulic pump", "pump"],
  ["LIFT", "lift arms"],
])("'%s' is the place '%s'", (typed, place) => {
  expect(findPlace(knowledge, typed)).toBe(place);
});

test("a place that nobody knows: the nearest one is offered", () => {
  expect(() => findPlace(knowledge, "pumb")).toThrow("No place is called 'pumb'. Did you mean 'pump'?");
  expect(() => findPlace(knowledge, "xxxxxxxx")).toThrow("No place is called 'xxxxxxxx'.");
});
