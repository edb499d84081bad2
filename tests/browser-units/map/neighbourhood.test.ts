import { expect, test } from "vitest";
import { neighbourhood } from "../../../src/browser/map/neighbourhood.ts";
import { MADE_UP, sorted } from "./made-up.ts";

const around = (start: string, steps: number): string[] =>
  sorted(neighbourhood(MADE_UP, { start, steps, allowed: () => true }).nodes);

test("one step goes along relations in both directions", () => {
  expect(around("part:1-200", 1)).toEqual(["component:door", "part:1-100", "part:1-200", "part:2-100"]);
});

test("two steps go on from there", () => {
  expect(around("part:1-200", 2)).toEqual([
    "component:door",
    "component:ring",
    "part:1-100",
    "part:1-200",
    "part:2-100",
    "record:R1",
    "record:R2",
    "system:oven",
  ]);
});

test("the walk does not pass through a line or year", () => {
  expect(around("record:R1", 2)).not.toContain("record:R2");
});

test("the walk may start at a line or year", () => {
  expect(around("year:1", 1)).toEqual(["record:R1", "year:1"]);
  expect(around("year:1", 2)).toContain("component:door");
});

test("no steps is the node alone", () => {
  expect(around("part:1-200", 0)).toEqual(["part:1-200"]);
});

test("a relation that is not allowed is not walked", () => {
  const { nodes, edges } = neighbourhood(MADE_UP, {
    start: "part:1-200",
    steps: 1,
    allowed: ({ relation }) => relation === "supersedes",
  });
  expect(sorted(nodes)).toEqual(["part:1-100", "part:1-200"]);
  expect([...edges].map(({ relation }) => relation)).toEqual(["supersedes"]);
});
