import { expect, test } from "vitest";
import { address, NODE_KINDS, nodeKey } from "../../../src/engine/graph/node.ts";

test("key and address are made of kind and id alone, and no two kinds share them", () => {
  expect([nodeKey("part", "HT-101"), address("part", "HT-101")]).toEqual(["part:HT-101", "/parts/HT-101/"]);
  expect(NODE_KINDS.map((kind) => address(kind, "1"))).toEqual([
    "/records/1/",
    "/parts/1/",
    "/components/1/",
    "/systems/1/",
    "/lines/1/",
    "/years/1/",
    "/bulletins/1/",
  ]);
  expect(new Set(NODE_KINDS.map((kind) => nodeKey(kind, "1"))).size).toBe(NODE_KINDS.length);
});
