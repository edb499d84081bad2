import { expect, test } from "vitest";
import { splitFacts, whyNoFacts } from "../../../src/build/data/split-facts.ts";

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

// text, the line of the fault, what is said of it
test.each([
  [
    "---\nid: a\nlist:\n  - b\n\nThe story: it is long.\n",
    "The story: it is long.",
    "no second line of '---' stands before this",
  ],
  ["---\r\nid: a\r\n----\r\nText", "----", "'----' is no line of '---', so the facts do not end"],
  ["---\nid: a\n—\nText", "—", "'—' is no line of '---', so the facts do not end"],
  ["--\nid: a\n---\nText", "--", "'--' is no line of '---', so the file does not begin with facts"],
  ["---\nid: a\n", "", "the facts do not end: no second line of '---' follows"],
  ["Text", "Text", "the file does not begin with facts"],
])("%j: %s", (text, line, message) => {
  const fault = whyNoFacts(text);
  expect(text.slice(fault.at).split(/\r?\n/)[0]).toBe(line);
  expect(fault.message).toContain(message);
});
