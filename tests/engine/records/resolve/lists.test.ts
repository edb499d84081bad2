import { describe, expect, test } from "vitest";
import { catalogOf, saidOf, spoiled } from "../../../helpers/tiny-folder.ts";
import { LISTS_SLIPS } from "./lists.cases.ts";

describe("a slip is said once, where it was made", () => {
  test.each(LISTS_SLIPS)("%s: %j written as %j", (file, old, replacement, ...said) => {
    expect(saidOf(file, old, replacement)).toEqual(said);
  });
});

test("plates are read against the traits, spaces left out", () => {
  const [plate] = catalogOf().plates;
  expect(plate?.positions.map((position) => [position.trait, position.length])).toEqual([
    ["line", 1],
    ["my", 1],
    ["plant", 1],
    ["number", 4],
  ]);
});

test("what is not in the folder is simply empty", () => {
  const without = { "cautions.yaml": undefined, "moved.yaml": undefined, "vehicles/plates.yaml": undefined };
  expect(catalogOf(spoiled(without))).toMatchObject({ cautions: [], moved: [], plates: [] });
});
