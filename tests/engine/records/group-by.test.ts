import { expect, test } from "vitest";
import { groupBy } from "../../../src/engine/records/group-by.ts";

test("an item stands under each of its keys, in the order in which items come", () => {
  const groups = groupBy(["ab", "b", "", "ba"], (word) => [...word]);
  expect([...groups]).toEqual([
    ["a", ["ab", "ba"]],
    ["b", ["ab", "b", "ba"]],
  ]);
});
