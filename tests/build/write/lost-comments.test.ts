import { expect, test } from "vitest";
import { commentsIn, lostComments } from "../../../src/build/write/lost-comments.ts";

test("comments are told from what only looks like one, and the story below the facts has none", () => {
  const text = `---\n# a\nid: "#no" # b\r\ntitle: x#no\nwords: [ # c\n  '#no' ]\nstory: |- # d\n  # no\n---\n# A story\n`;
  expect(commentsIn("change", text)).toEqual(["# a", "# b", "# c", "# d"]);
  expect(commentsIn("change", "# no facts")).toEqual([]);
});

test("each that is gone is named, as often as it is gone", () => {
  const before = "a: x # one\nb: y # two\nc: z # two\nd: z # two\n";
  expect(lostComments("maker", before, "# three\na: x\nb: y # two\n")).toEqual(["# one", "# two", "# two"]);
  expect(lostComments("maker", before, before)).toEqual([]);
});
