import { expect, test } from "vitest";
import { pairs } from "../../../src/engine/audit/pairs.ts";

test("every two of a list come once, the earlier one first", () => {
  expect([...pairs(["a", "b", "c"])]).toEqual([
    ["a", "b"],
    ["a", "c"],
    ["b", "c"],
  ]);
  expect([...pairs(["a"])]).toEqual([]);
  expect([...pairs([])]).toEqual([]);
});
