import { expect, test } from "vitest";
import { mix } from "../../../src/browser/map/mix.ts";
import { nearestNode } from "../../../src/browser/map/nearest-node.ts";
import { wordedEdges } from "../../../src/browser/map/worded-edges.ts";
import { wordsAlong } from "../../../src/browser/map/words-along.ts";
import { edge } from "./made-up.ts";

test("a colour fades into another", () => {
  expect(mix("#000000", "#ffffff", 0)).toBe("#000000");
  expect(mix("#000000", "#ffffff", 1)).toBe("#ffffff");
  expect(mix("#ff0000", "#0000ff", 0.5)).toBe("#800080");
});

test("the node nearest to the cross, of those inside the picture", () => {
  const middle = { x: 50, y: 50, width: 100, height: 100 };
  expect(nearestNode([], middle)).toBeUndefined();
  expect(nearestNode([{ key: "out", x: 101, y: 50 }], middle)).toBeUndefined();
  const places = [
    { key: "far", x: 10, y: 10 },
    { key: "near", x: 60, y: 55 },
  ];
  expect(nearestNode(places, middle)).toBe("near");
});

test("of all that is said of a pair the refusal carries its words", () => {
  const may = edge("part:1", "stands-in-for", "part:2");
  const mustNot = edge("part:2", "not-interchangeable-with", "part:1");
  const other = edge("part:1", "belongs-to", "component:c");
  expect([...wordedEdges([may, mustNot, other], 9)]).toEqual([mustNot, other]);
});

test("too many pairs carry no words at all", () => {
  expect(wordedEdges([edge("part:1", "contains", "part:2"), edge("part:1", "contains", "part:3")], 1).size).toBe(0);
});

test("words on a line point away from the node that they are said of", () => {
  expect(wordsAlong("needs", { x: 0 }, { x: 1 })).toBe("needs →");
  expect(wordsAlong("needs", { x: 1 }, { x: 0 })).toBe("← needs");
});
