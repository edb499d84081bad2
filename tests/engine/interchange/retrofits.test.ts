import { describe, expect, test } from "vitest";
import { openPartIndex } from "../../../src/engine/interchange/part-index.ts";
import { retrofitsFor } from "../../../src/engine/interchange/retrofits.ts";
import { seeParts } from "../../../src/engine/interchange/see-parts.ts";
import { openSets } from "../../helpers/sets-folder.ts";

const BUILT = ["A-1", "B-1", "C-1"].map(
  (part, i) => `place: ${["pump", "pump gasket", "lift arms"][i]}, part: ${part}, scope: line=B`,
);

/** Every Badger was built with the first part of each. */
function find(standIns: readonly string[], settings = "", fitted: readonly string[] = []) {
  const { catalog, badgers } = openSets(BUILT, standIns, settings, fitted);
  const index = openPartIndex(catalog);
  const all = retrofitsFor(index, badgers, seeParts(index, badgers, fitted), (part) => /^[A-D]-/.test(part));
  return {
    open: all.open.map(({ part, set, reset }) => [part, set.join(" "), reset.map((it) => it.name).join()]),
    blocked: all.blocked.map(({ part, fit }) => [part, fit.verdict]),
  };
}

const MAY = "verdict: on-conditions";

describe("ways forward", () => {
  test("a part alone, and one for an empty place", () => {
    const { open, blocked } = find(['part: A-2, for: A-1, verdict: "yes"', 'part: D-1, for: none, verdict: "yes"']);
    expect(open).toEqual([
      ["A-2", "A-2", ""],
      ["D-1", "D-1", ""],
    ]);
    expect(blocked).toEqual([]);
  });

  test("with companions, and with those that these ask for", () => {
    const { open } = find([`part: A-2, for: A-1, ${MAY}, with: [B-2]`, `part: B-2, for: B-1, ${MAY}, with: [C-2]`]);
    expect(open).toEqual([
      ["A-2", "A-2 B-2 C-2", ""],
      ["B-2", "B-2 C-2", ""],
    ]);
  });

  test("what these cars were built with, or what is on the car, need not go on", () => {
    const says = [`part: A-2, for: A-1, ${MAY}, with: [B-1, C-2]`];
    expect(find(says).open).toEqual([["A-2", "A-2 C-2", ""]]);
    expect(find(says, "", ["C-2"]).open).toEqual([["A-2", "A-2", ""]]);
  });

  test("of two ways the one with fewer parts", () => {
    const { open } = find([
      `part: A-2, for: A-1, ${MAY}, with: [B-2, C-2]`,
      `part: A-2, for: A-1, ${MAY}, with: [D-1]`,
    ]);
    expect(open).toEqual([["A-2", "A-2 D-1", ""]]);
  });

  test("a part that may only be there without another closes the way that needs both", () => {
    const { open, blocked } = find([
      `part: A-2, for: A-1, ${MAY}, with: [B-2, C-2]`,
      `part: B-2, for: B-1, ${MAY}, with: [C-2], scope: fitted!=C-2`,
    ]);
    expect(open).toEqual([]);
    expect(blocked).toEqual([
      ["A-2", "not on record"],
      ["B-2", "not on record"],
    ]);
  });

  test("a refusal is a closed way, silence is none", () => {
    const { open, blocked } = find([
      "part: A-2, for: A-1, verdict: does-not-go-on, why: x",
      'part: A-2, for: C-2, verdict: "yes"',
    ]);
    expect(open).toEqual([]);
    expect(blocked).toEqual([["A-2", "does not go on"]]);
  });

  test("settings that hold from then on", () => {
    const { open } = find(
      ['part: A-2, for: A-1, verdict: "yes"'],
      "settings:\n  - { name: lift play, window: 1..2, unit: mm, scope: fitted=A-2 }\n  - { name: arm height, window: 5..6, unit: mm, scope: fitted!=A-2 }",
    );
    expect(open).toEqual([["A-2", "A-2", "lift play"]]);
  });

  test("an author's circle of companions ends", () => {
    const { open } = find([`part: A-2, for: A-1, ${MAY}, with: [B-2]`, `part: B-2, for: B-1, ${MAY}, with: [A-2]`]);
    expect(open.map(([part]) => part)).toEqual(["A-2", "B-2"]);
  });
});
