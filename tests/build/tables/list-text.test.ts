import fc from "fast-check";
import { expect, test } from "vitest";
import { joinList, splitList } from "../../../src/build/tables/list-text.ts";
import { SEED } from "../../helpers/seed.ts";

test.each([
  // values, cell
  [["HT-101", "HT-102"], "HT-101 | HT-102"],
  [["line=B || line=H"], "line=B \\|\\| line=H"],
  [["a\\b", " c "], "a\\\\b | \\ c\\ "],
])("%j is written %s and read back", (values, cell) => {
  expect(joinList(values)).toBe(cell);
  expect(splitList(cell)).toEqual(values);
});

test.each([
  // cell, sign between values, values
  ["a|b |  c", undefined, ["a", "b", "c"]],
  ["a, b,,c", ",", ["a", "b", "c"]],
  ["a\nb", "\n", ["a", "b"]],
  ["|", undefined, []],
  ["a\\", undefined, ["a\\"]],
])("%j split at %s", (cell, sign, values) => {
  expect(splitList(cell, sign)).toEqual(values);
});

test("any list of texts comes back as it was", () => {
  const text = fc.string({ minLength: 1, maxLength: 8, unit: fc.constantFrom("|", "\\", " ", "\n", "a", ";", "é") });
  fc.assert(
    fc.property(fc.array(text, { maxLength: 4 }), (values) => {
      expect(splitList(joinList(values))).toEqual(values);
    }),
    { seed: SEED, numRuns: 1000 },
  );
});
