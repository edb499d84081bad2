import fc from "fast-check";
import { expect, test } from "vitest";
import { isUnlikeWords, mentionsOf, nearMentionsOf } from "../../../src/build/write/mentions.ts";
import { SEED } from "../../helpers/seed.ts";

// text, with < > round each whole HT-10
const TEXTS = [
  "<HT-10>",
  "<HT-10>, <HT-10>. (<HT-10>) '<HT-10>' /parts/<HT-10>/ [[<HT-10>|HT-101]]",
  "xHT-10 HT-101 HT-10L HT-10-2 HT-10.5 9-HT-10 HT-10_a äHT-10 HT-10é",
  "see <HT-10>...and <HT-10>--or <HT-10>-; fitted=HT-1,<HT-10>;",
  "ht-10 HT-1 HT_10",
];

test.each(TEXTS)("%s", (text) => {
  const plain = text.replaceAll(/[<>]/g, "");
  const marked = [...text.matchAll(/</g)].map(({ index }, i) => index - 2 * i);
  expect(mentionsOf(plain, "HT-10")).toEqual(marked);
});

test("between blanks it is found, whatever signs an id has", () => {
  const id = fc.stringMatching(/^[A-Za-z0-9]([A-Za-z0-9_-]|\.[a-z])*$/);
  fc.assert(
    fc.property(id, (one) => {
      expect(mentionsOf(`+ ${one} + ${one}`, one)).toEqual([2, 5 + one.length]);
    }),
    { seed: SEED, numRuns: 100 },
  );
});

test("an id that is a word or a figure is told from one that is neither", () => {
  for (const id of ["HY59-01", "30-11L", "T-100", "a1b2"]) expect(isUnlikeWords(id), id).toBe(true);
  for (const id of ["pump", "rear-axle", "4411", "4.11", "A-1", "12"]) expect(isUnlikeWords(id), id).toBe(false);
});

// id, text, what in it means the id without being it
test.each([
  ["HT-10", "ht-10, HT-10, Ht-10.", ["ht-10: other capitals", "Ht-10: other capitals"]],
  [
    "HT-10",
    "HT\u201110 HT\u221210 HT&#45;10 HT&#x2D;10 HT_10",
    ["HT\u201110", "HT\u221210", "HT&#45;10", "HT&#x2D;10"],
  ],
  ["HT-10", "[x](../changes/HT-10.md) HT-10.png ht-10.json", ["HT-10.md", "HT-10.png", "ht-10.json"]],
  ["HT-10", "HT-101 xHT-10.png HT-10.1 HT-10.md5sums ht-10-2", []],
  ["a.b-1", "A.B-1 axb-1", ["A.B-1: other capitals"]],
  ["pump", "Pump pump.yaml PUMP", ["pump.yaml"]],
])("%s in %s", (id, text, near) => {
  const found = nearMentionsOf(text, id).map(({ at, length, why }) => {
    const kind = why === "other capitals" ? `: ${why}` : "";
    expect(why).toBe(
      kind ? why : /\.[a-z]+$/.test(text.slice(at, at + length)) ? "the name of a file" : "another dash",
    );
    return text.slice(at, at + length) + kind;
  });
  expect(found).toEqual(near);
});
