import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fold, split } from "../../../src/engine/ask/split.ts";
import { SEED } from "../../helpers/seed.ts";

// text, its words
const WORDS: [text: string, words: string[]][] = [
  ["What changed on the brakes?", ["What", "changed", "on", "the", "brakes"]],
  ["pump,seal;(arm) [hub]!", ["pump", "seal", "arm", "hub"]],
  ["HY59-01, 3110 552.L", ["HY59-01", "3110", "552.L"]],
  ["run-out tie-rod p/s w/o", ["run-out", "tie-rod", "p/s", "w/o"]],
  ["0.015 3/8 1:2", ["0.015", "3/8", "1", "2"]],
  [".005 (.02) a.5 ..5", [".005", ".02", "a.5", ".5"]],
  ["'59 ’59 ‘59", ["'59", "'59", "'59"]],
  ["'57-'59 1957–59", ["'57-'59", "1957–59"]],
  ["'pump' “pump” it's 59's", ["pump", "pump", "it's", "59's"]],
  ["end. -start- /both/", ["end", "start", "both"]],
  ["croûte Müller", ["croute", "Muller"]],
  ["ｐｕｍｐ ①", ["pump", "1"]], // wide letters and ringed figures are what they stand for
  ["насос 泵", ["насос", "泵"]],
  ["__proto__ snake_case", ["proto", "snake", "case"]],
  ["two\nlines\tand tabs", ["two", "lines", "and", "tabs"]],
  ["🚜 … --- ''' ’", []],
  ["", []],
];
describe("the words of a text", () => {
  test.each(WORDS)("%j", (text, words) => {
    expect(split(text)).toEqual(words);
  });
});

// word, as it is compared
const FOLDED: [string, string][] = [
  ["Brakes", "brake"],
  ["BRAKE'S", "brake"],
  ["switches", "switch"],
  ["bushes", "bush"],
  ["boxes", "box"],
  ["gases", "gase"],
  ["glass", "glass"],
  ["gas", "gas"], // too short for a plural
  ["radius", "radius"],
  ["59s", "59s"],
  ["V8s", "v8s"],
  ["it's", "it"],
  ["s", "s"],
  ["", ""],
  ["constructor", "constructor"],
];
test.each(FOLDED)("%s is compared as %s", (word, folded) => {
  expect(fold(word)).toBe(folded);
});

describe("any text at all", () => {
  const text = fc.string({ unit: "grapheme", maxLength: 60 });
  const options = { seed: SEED, numRuns: 1000 };

  test("has words that are words by themselves, and the same ones when it is written with blanks between them", () => {
    fc.assert(
      fc.property(text, (said) => {
        const words = split(said);
        for (const word of words) expect(split(word)).toEqual([word]);
        expect(split(words.join(" "))).toEqual(words);
      }),
      options,
    );
  });

  test("loses no letter and no figure", () => {
    const lettersOf = (said: string) => said.normalize("NFKD").replaceAll(/[^\p{Letter}\p{Number}]/gu, "");
    fc.assert(
      fc.property(text, (said) => {
        expect(
          split(said)
            .join("")
            .replaceAll(/[-./'–]/g, ""),
        ).toBe(lettersOf(said));
      }),
      options,
    );
  });

  test("has words that compare alike in capitals", () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[a-z]{1,12}('s)?$/), (word) => {
        expect(fold(word.toUpperCase())).toBe(fold(word));
      }),
      options,
    );
  });
});
