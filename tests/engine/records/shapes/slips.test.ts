import { expect, test } from "vitest";
import { DAY, ID, slipOf, WINDOW } from "../../../../src/engine/records/shapes/slips.ts";

// Fields with such slips stand among the cases of check-shape.
// pattern, what was typed, what to write
test.each([
  [ID, "A 123", "write A-123"],
  [ID, "..", "mend it"],
  [DAY, "3 Dec 1959", "write 1959-12-03"],
  [WINDOW, "26 – 30 in", "write 26..30; the unit has a field of its own"],
])("%s: %s → %s", (pattern, typed, hint) => {
  expect(slipOf(String(pattern), typed)?.hint).toBe(hint);
});

test("what is written to a window's pattern is a window", () => {
  for (const typed of ["26-30", "28 ± 2", "max 30", "≥ .5", "+3"]) {
    const meant = slipOf(String(WINDOW), typed)?.hint.replace("write ", "");
    expect(meant).toMatch(WINDOW);
  }
});

test("of other patterns, and of what is no text, nothing is known", () => {
  expect(slipOf("/^x$/", "y")).toBeUndefined();
  expect(slipOf(String(ID), 7)).toBeUndefined();
  expect(slipOf(undefined, "y")).toBeUndefined();
});
