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

test("a component with several places: they are offered, none is chosen", () => {
  const two = tinyKnowledge({ "components/hydraulics.yaml": ["places: [pump]", "places: [pump, second pump]"] });
  expect(() => findPlace(two, "Hydraulic pump")).toThrow(
    "No place is called 'Hydraulic pump'. Did you mean 'pump' or 'second pump'?",
  );
  expect(findPlace(two, "PUMP")).toBe("pump");
});
