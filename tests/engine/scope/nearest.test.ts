import { expect, test } from "vitest";
import { nearest } from "../../../src/engine/scope/nearest.ts";

// typed, known names, the one that was meant
const CASES: [string, string[], string | undefined][] = [
  ["titel", ["title", "issued"], "title"],
  ["TITLE", ["title", "issued"], "title"],
  ["HT-l01", ["HT-101", "HT-202"], "HT-101"],
  // another number is the number of another thing
  ["HT-20", ["HT-101"], undefined],
  ["97-5190", ["97-5109"], "97-5109"],
  ["97-5190", ["97-5128"], undefined],
  ["idle speed 2", ["idle speed, 200"], "idle speed, 200"],
  ["nmae", ["number", "name"], "name"],
  ["lfit", ["pump", "lift"], "lift"],
  ["ab", ["ba"], "ba"],
  ["carburettor", ["radiator", "carburetor"], "carburetor"],
  ["winch", ["plough", "harrow"], undefined],
  ["", ["B", "H"], undefined],
  ["X", ["B", "H"], undefined],
  ["b", ["B", "H"], "B"],
  ["PX", ["PT", "WN"], "PT"],
  ["XY", ["PT", "WN"], undefined],
  ["anything", [], undefined],
  ["anything", [""], undefined],
];

test.each(CASES)("'%s' among %j means %s", (typed, known, meant) => {
  expect(nearest(typed, known)).toBe(meant);
});
