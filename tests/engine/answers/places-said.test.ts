import { describe, expect, test } from "vitest";
import { placesSaid } from "../../../src/engine/answers/places-said.ts";

const STEPS = ["step, left", "step, right"];
const HUBS = ["hub, front left", "hub, front right", "hub, rear left", "hub, rear right"];

describe("the places that a question speaks of", () => {
  // words of the question, places of the part, places meant
  const CASES: [string, string[], string[]][] = [
    ["step on the left", STEPS, ["step, left"]],
    ["step on the right", STEPS, ["step, right"]],
    ["step", STEPS, STEPS],
    ["left and right", STEPS, STEPS],
    ["which is right", STEPS, STEPS], // the correct one
    ["the right part", STEPS, STEPS],
    ["all right on the left", STEPS, ["step, left"]],
    ["front hub", HUBS, ["hub, front left", "hub, front right"]],
    ["rear hub right", HUBS, ["hub, rear right"]],
    ["right rear hub", HUBS, ["hub, rear right"]],
    ["upper step left", STEPS, ["step, left"]], // no step is upper or lower
    ["lower step", STEPS, STEPS],
    ["left", ["pump"], ["pump"]],
    ["left", [], []],
  ];
  test.each(CASES)("%s of %j", (question, places, meant) => {
    expect(placesSaid(places, { words: question.split(" ") })).toEqual(meant);
  });

  test("a side is a word of its own in the name of a place", () => {
    expect(placesSaid(["leftover tank", "tank, left"], { words: ["left"] })).toEqual(["tank, left"]);
  });

  test("the list that was given stays as it is", () => {
    const places = [...STEPS];
    placesSaid(places, { words: ["left"] });
    expect(places).toEqual(STEPS);
  });
});
