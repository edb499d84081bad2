import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { namesOf } from "../../../src/engine/ask/names.ts";
import { split } from "../../../src/engine/ask/split.ts";
import { longestRun, tokensOf } from "../../../src/engine/ask/tokens.ts";
import { SEED } from "../../helpers/seed.ts";
import { TRACTOR_NUMBERS, TRACTOR_WORDS } from "../../helpers/tractor-words.ts";

const names = namesOf(TRACTOR_WORDS);
const tokens = (question: string) => tokensOf(question, names, TRACTOR_NUMBERS);
const words = (question: string): string =>
  tokens(question)
    .tokens.map(({ word }) => word)
    .join(" ");

// question, the words that are read
const READ: [question: string, words: string][] = [
  ["the clutch", "the clutch"],
  ["The Clucth", "The clutch"], // a slip
  ["breaks", "brakes"], // what people say
  ["Breaks of the clucth", "brakes of the clutch"],
  ["oil pipe", "hydraulic pipe"],
  ["oilpipe", "hydraulic pipe"],
  ["oli pipe", "oli pipe"], // three letters are never corrected
  ["pump", "hydraulic pump"],
  ["pump seal", "pump seal"], // a name of more words begins there
  ["slick pump", "pump"], // what was exchanged is not exchanged again
  ["a very very long saying", "brakes"],
  ["a very very long story", "a very very long story"],
  ["shaftless", "without power take-off"],
  ["brakes", "brakes"],
  ["clut ch", "clut ch"], // a name in two words
  ["dyna mo", "dyna mo"],
  ["HY59-Ol", "HY59-Ol"], // a number
  ["60+", "60 onwards"],
  ["1,000 mm", "1000 mm"],
  ["1,000,000 mm", "1000000 mm"],
  ["59,60", "59 60"],
  ["1959,1960", "1959 1960"],
  ["0,003 mm", "0.003 mm"],
  ["-5 mm", "minus 5 mm"],
  ["at −5", "at minus 5"],
  ["HT-101", "HT-101"],
  ["", ""],
  ["… ---", ""],
  ["constructor __proto__", "constructor proto"],
];
test.each(READ)("'%s' is read as '%s'", (question, read) => {
  expect(words(question)).toBe(read);
});

describe("a word that was exchanged", () => {
  test("keeps what was typed", () => {
    expect(tokens("the Clucth").tokens).toEqual([
      { word: "the", typed: "the" },
      { word: "clutch", typed: "Clucth", readAs: "clutch" },
    ]);
    expect(tokens("Breaks").tokens).toEqual([{ word: "brakes", typed: "Breaks" }]);
  });

  test("for several, or several for one, shows what was typed once", () => {
    expect(tokens("shaftless").tokens.map(({ typed }) => typed)).toEqual(["shaftless", "", ""]);
    expect(tokens("a very very long saying").tokens.map(({ typed }) => typed)).toEqual(["a very very long saying"]);
  });

  test("is told, with all that it may be, as often as it stands there", () => {
    expect(tokens("clucth, Clucth and pump").corrected).toEqual([
      { said: "clucth", readAs: ["clutch"] },
      { said: "Clucth", readAs: ["clutch"] },
    ]);
    expect(tokens("clutch").corrected).toEqual([]);
  });
});

test("the longest run of words that is known ends with them", () => {
  const run = (said: string, at = 0, most = names.longest) =>
    longestRun(
      split(said).map((word) => ({ word })),
      at,
      names.byKey,
      most,
    );
  expect(run("clutch of a big old thing there")).toBe(6);
  expect(run("clutch of a big old")).toBe(1);
  expect(run("the clutch")).toBe(0);
  expect(run("the clutch", 1)).toBe(1);
  expect(run("clutch of a big old thing", 0, 3)).toBe(1);
  expect(run("clutch", 1)).toBe(0);
  expect(run("", 0)).toBe(0);
  expect(run("gear box")).toBe(2);
});

describe("of any words", () => {
  const said = [...READ.flatMap(([question]) => question.split(" ")), "of", "seal", "gear", "box"];
  const question = fc.array(fc.constantFrom(...said), { maxLength: 10 }).map((some) => some.join(" "));

  test("what was typed is all there, in its order, and what is no slip and no saying is read as it is", () => {
    fc.assert(
      fc.property(question, (text) => {
        const { tokens: all, corrected } = tokens(text);
        const typed = all.flatMap((token) => (token.typed === "" ? [] : token.typed.split(" ")));
        expect(
          typed
            .join(" ")
            .replaceAll(/ onwards|minus /g, "")
            .replaceAll(/[.]/g, ""),
        ).toBe(
          split(text.replaceAll(/(\d),(?=\d{3}(?!\d))/g, "$1").replaceAll("0,0", "0.0"))
            .join(" ")
            .replaceAll(/[.]/g, ""),
        );
        for (const { said: one, readAs } of corrected) {
          expect(names.known.has(one.toLowerCase())).toBe(false);
          for (const meant of readAs) expect(names.known.has(meant) || names.trade.includes(meant)).toBe(true);
        }
      }),
      { seed: SEED, numRuns: 600 },
    );
  });
});
