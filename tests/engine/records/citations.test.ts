import { describe, expect, test } from "vitest";
import { citations, renderCitations } from "../../../src/engine/records/citations.ts";

// text, what it cites (id, or id = words)
const CASES: [string, string[]][] = [
  ["", []],
  ["no citation here", []],
  ["see [[HY59-01]].", ["HY59-01"]],
  ["[[HY59-01]][[HT-101]]", ["HY59-01", "HT-101"]],
  ["[[ HY59-01 | the pump ]]", ["HY59-01 = the pump"]],
  ["[[HY59-01|a [b] c]]", []],
  ["[[]] [[|words]] [HY59-01] [[HY59-01] [HY59-01]]", []],
  ["[[[HY59-01]]]", ["HY59-01"]],
  ["a [link](x) and [[HT-101|part\nover two lines]]", ["HT-101 = part\nover two lines"]],
  ["<b>[[HY59-01]]</b>", ["HY59-01"]],
];

describe("a citation is an id in double brackets, with words if wanted", () => {
  test.each(CASES)("%j cites %j", (text, cited) => {
    expect(citations(text).map(({ id, words }) => (words === undefined ? id : `${id} = ${words}`))).toEqual(cited);
  });

  test.each(CASES)("every place in %j holds the citation, and nothing else changes", (text) => {
    for (const { from, to } of citations(text)) expect(text.slice(from, to)).toMatch(/^\[\[[^\]]+\]\]$/);
    expect(renderCitations(text, ({ from, to }) => text.slice(from, to))).toBe(text);
  });
});

test("citations are rendered in their places, and what is rendered is not read again", () => {
  expect(renderCitations("a [[x]] b [[y|z]] c", ({ id, words }) => `<${words ?? id}>[[q]]`)).toBe(
    "a <x>[[q]] b <z>[[q]] c",
  );
});
