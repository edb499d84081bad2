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
  ["60+ pump", "60 onwards hydraulic pump"],
  ["1+2", "1 2"],
  ["57 - 59", "57-59"], // a run of years, typed with blanks
  ["1957 – '59", "1957-'59"],
  ["3 - 5 pump - clutch", "3 5 hydraulic pump clutch"], // no years
  ["1,000 mm", "1000 mm"],
  ["1,000,000 mm", "1000000 mm"],
  ["24,000 mm", "24000 mm"],
  ["219,236", "219 236"], // may be two numbers
  ["1,00", "1 00"],
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
      { word: "the", typed: "the", run: 0, head: false },
      { word: "clutch", typed: "Clucth", run: 1, head: false, readAs: "clutch" },
    ]);
    expect(tokens("Breaks").tokens).toEqual([{ word: "brakes", typed: "Breaks", run: 0, head: false }]);
  });

  // question, what was typed for each word that is read, and where that stands in the question
  const TYPED: [question: string, typed: string[], runs: number[]][] = [
    ["shaftless", ["shaftless", "shaftless", "shaftless"], [0, 0, 0]],
    ["a very very long saying", ["a very very long saying"], [0]],
    ["the oil pipe of it", ["the", "oil pipe", "oil pipe", "of", "it"], [0, 1, 1, 3, 4]],
    ["pump pump", ["pump", "pump", "pump", "pump"], [0, 0, 1, 1]], // said twice, not once
    ["pump seal", ["pump", "seal"], [0, 1]], // a name of two words is no saying
    ["60+ clucth", ["60", "onwards", "clucth"], [0, 1, 2]],
  ];
  test.each(TYPED)("for several, or several for one, keeps it and its place on each: %s", (question, typed, runs) => {
    const all = tokens(question).tokens;
    expect([all.map((it) => it.typed), all.map((it) => it.run)]).toEqual([typed, runs]);
  });

  test("is told, with all that it may be, as often as it stands there", () => {
    expect(tokens("clucth, Clucth and pump").corrected).toEqual([
      { said: "clucth", readAs: ["clutch"] },
      { said: "Clucth", readAs: ["clutch"] },
    ]);
    expect(tokens("clutch").corrected).toEqual([]);
  });
});

// question, words before which a comma or the like stands
const HEADS: [question: string, heads: string[]][] = [
  ["clutch gears", []],
  ["clutch, gears", ["gears"]],
  ["clutch; gears: glass! winch? dynamo. brake", ["gears", "glass", "winch", "dynamo", "brake"]],
  ["clutch (gears) glass", ["gears", "glass"]],
  ["clutch, of a", ["of"]],
  ["clutch,gears", []], // no blank: it may be a number
  ["1,000 mm, 0.5 mm", ["0.5"]],
  [", clutch", []], // nothing stands before
  ["clutch, ", []],
  ["clutch, shaftless", ["without"]], // the first word of a saying
  ["clutch, pump", ["hydraulic"]],
  ["clutch -5", []],
];
test.each(HEADS)("'%s': a comma or the like stands before %j", (question, heads) => {
  expect(tokens(question).tokens.flatMap(({ word, head }) => (head ? [word] : []))).toEqual(heads);
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
  /** Figures as people write them, and as they are read. */
  const FIGURES = new Map([
    ["57 - 59", "57-59"],
    ["1957 – '59", "1957-'59"],
    ["60+", "60"],
    ["1,000", "1000"],
    ["24,000", "24000"],
    ["1,000,000", "1000000"],
    ["0,003", "0.003"],
  ]);
  const said = [
    ...READ.flatMap(([question]) => (FIGURES.has(question) ? [question] : question.split(" "))),
    ...["of", "seal", "gear", "box"],
  ].filter((word) => word !== "-");
  const question = fc.array(fc.constantFrom(...said), { maxLength: 10 });

  test("what was typed is all there, in its order, and what is no slip and no saying is read as it is", () => {
    fc.assert(
      fc.property(question, (some) => {
        const { tokens: all, corrected } = tokens(some.join(" "));
        const isFirst = (i: number): boolean => i === 0 || all[i - 1]?.run !== all[i]?.run;
        const typed: string[] = [];
        all.forEach((token, i) => {
          if (!isFirst(i)) expect(token.typed).toBe(all[i - 1]?.typed);
          else {
            expect(token.run).toBe(typed.length);
            typed.push(...token.typed.split(" "));
          }
        });
        expect(typed.filter((word) => word !== "onwards" && word !== "minus")).toEqual(
          split(some.map((word) => FIGURES.get(word) ?? word).join(" ")),
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
