import { expect, test } from "vitest";
import { longLabel, shortLabel } from "../../../src/browser/map/short-label.ts";
import { node } from "./made-up.ts";

// node, its short label
const CASES = [
  [node("part", "1-100", "1-100 hinge"), "1-100"],
  [node("record", "R1", "R1 Hinge made stronger"), "R1"],
  [node("component", "door", "oven door"), "oven door"],
  [node("system", "s", "Suspension, wheels and tyres"), "Suspension, wheels and…"],
  [node("system", "s", "Antidisestablishmentarianism"), "Antidisestablishmentarian…"],
] as const;

test.each(CASES)("$label", (each, short) => {
  expect(shortLabel(each)).toBe(short);
});

test("a label that is looked at is given in full, up to a line's length", () => {
  expect(longLabel(node("part", "1-100", "1-100 hinge"))).toBe("1-100 hinge");
  expect(longLabel(node("record", "R1", "word ".repeat(40))).length).toBeLessThan(62);
});
