import { describe, expect, test } from "vitest";
import { openPartIndex } from "../../../src/engine/interchange/part-index.ts";
import { builtPlaces, isOtherHand, placesOf, placesToAsk, sitsAt } from "../../../src/engine/interchange/places.ts";
import { openSets } from "../../helpers/sets-folder.ts";

const BUILT = [
  "place: pump, part: A-1, scope: line=B",
  "place: lift arms, part: C-1, scope: line=B; my<=1958",
  "place: lift arms, part: C-2, scope: line=B; my>=1959",
  'place: "arm, left", part: E-1, scope: line=B; my<=1958',
  'place: "arm, right", part: E-1, scope: line=B; my<=1958',
  'place: "arm, left", part: E-2L, scope: line=B; my>=1959',
];

function open(...standIns: readonly string[]) {
  return openPartIndex(openSets(BUILT, standIns).catalog);
}

describe("where a part sits", () => {
  test("where the plant put it, and where it may go, by a chain too", () => {
    const index = open('part: A-2, for: B-1, verdict: "yes"', 'part: B-1, for: A-1, verdict: "yes"');
    expect(sitsAt(index, "A-1")).toEqual(["pump"]);
    expect(builtPlaces(index, "A-2")).toEqual([]);
    expect(sitsAt(index, "A-2")).toEqual(["pump"]);
    expect(sitsAt(index, "D-1")).toEqual([]);
  });

  test("a refusal makes a place to ask about, not one to sit in", () => {
    const index = open("part: C-1, for: A-1, verdict: does-not-go-on, why: x");
    expect(sitsAt(index, "C-1")).toEqual(["lift arms"]);
    expect(placesOf(index, "C-1")).toEqual(["lift arms", "pump"]);
  });

  test("a part of which no record names a place is asked about without one", () => {
    expect(placesToAsk(open('part: D-1, for: none, verdict: "yes"'), "D-1")).toEqual([undefined]);
  });

  test("an author's circle ends", () => {
    const index = open('part: A-2, for: B-2, verdict: "yes"', 'part: B-2, for: A-2, verdict: "yes"');
    expect(sitsAt(index, "A-2")).toEqual([]);
  });
});

describe("hands", () => {
  const index = open('part: E-2L, for: E-1, verdict: "yes"', 'part: E-2R, for: E-1, verdict: "yes"');

  // part, place, whether the place is on the other side
  test.each([
    ["E-1", "arm, right", false],
    ["E-2L", "arm, left", false],
    ["E-2R", "arm, left", true],
    // No part for one hand was built there: its name tells.
    ["E-2L", "arm, right", true],
    ["E-2L", "pump", false],
  ])("%s in '%s': %s", (part, place, expected) => {
    expect(isOtherHand(index, part, place)).toBe(expected);
  });

  test("of a place for either hand, a part for one sits on its own side", () => {
    expect([sitsAt(index, "E-1"), sitsAt(index, "E-2L"), sitsAt(index, "E-2R")]).toEqual([
      ["arm, left", "arm, right"],
      ["arm, left"],
      ["arm, right"],
    ]);
  });
});
