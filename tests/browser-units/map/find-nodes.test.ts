import { expect, test } from "vitest";
import { findNodes } from "../../../src/browser/map/find-nodes.ts";
import { MADE_UP } from "./made-up.ts";

// typed, the nodes found, best first
const CASES: readonly (readonly [string, readonly string[]])[] = [
  ["1-100", ["part:1-100"]],
  ["1100", ["part:1-100"]],
  ["1 100", ["part:1-100"]],
  ["1–100", ["part:1-100"]],
  ["r1", ["record:R1"]],
  ["hinge", ["record:R1", "part:1-100", "part:1-200"]],
  ["stronger hinge", ["record:R1", "part:1-200"]],
  ["creme", ["part:2-100"]],
  ["CRÈME", ["part:2-100"]],
  ["oven", ["system:oven", "component:door"]],
  ["itche", ["bulletin:N"]],
  ["Alpha", ["line:A"]],
  ["", []],
  ["  - ", []],
  ["zebra", []],
];

test.each(CASES)("'%s' finds %j", (text, keys) => {
  expect(findNodes(MADE_UP, text, 9).map((node) => node.key)).toEqual(keys);
});

test("no more than asked for", () => {
  expect(findNodes(MADE_UP, "hinge", 2)).toHaveLength(2);
});
