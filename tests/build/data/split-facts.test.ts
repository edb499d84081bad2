import { expect, test } from "vitest";
import { splitFacts } from "../../../src/build/data/split-facts.ts";

// text, its facts, where they begin, the text below, where that begins
const SPLIT: [string, string, number, string, number][] = [
  ["---\na: 1\n---\nText.\n", "a: 1\n", 4, "Text.\n", 13],
  ["---\r\na: 1\r\n---\r\nText.", "a: 1\r\n", 5, "Text.", 16],
  ["--- \na: 1\n---", "a: 1\n", 5, "", 13],
  ["---\n---\n---\n", "", 4, "---\n", 8],
];
test.each(SPLIT)("%j", (text, yaml, at, rest, restAt) => {
  expect(splitFacts(text)).toEqual({ yaml, at, rest, restAt });
});

test.each(["", "Text.", "\n---\na: 1\n---\n", "---\na: 1\n", "---a: 1\n---\n", "----\na: 1\n---\n"])(
  "%j does not begin with facts",
  (text) => {
    expect(splitFacts(text)).toBeUndefined();
  },
);
