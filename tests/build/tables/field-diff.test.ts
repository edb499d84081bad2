import { expect, test } from "vitest";
import { fieldDiff } from "../../../src/build/tables/field-diff.ts";

test.each<[unknown, unknown, string[]]>([
  // before, after, lines
  [{ a: 1 }, { a: 1 }, []],
  [{ title: "Pump" }, { title: "Pumps" }, ["title: Pump -> Pumps"]],
  [{}, { links: ["A", "B"] }, ["+ links: A | B"]],
  [{ links: ["A"] }, { links: ["A", "B"] }, ["links: A -> A | B"]],
  [
    { parts: [{ number: "HT-1", marks: { ribs: "two" } }] },
    { parts: [{ number: "HT-1", marks: { ribs: "three" } }, { number: "HT-2" }] },
    ["parts HT-1, marks, ribs: two -> three", "+ parts HT-2: number HT-2"],
  ],
  [{}, { built: [{ place: "pump", part: "none" }] }, ["+ built 1: place pump, part none"]],
  [{ story: "a" }, { story: `b\n${"c".repeat(200)}` }, [`story: a -> b ${"c".repeat(88)}…`]],
])("%j to %j", (before, after, lines) => {
  expect(fieldDiff(before, after)).toEqual(lines);
});
