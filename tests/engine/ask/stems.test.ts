import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { holdersOf, textIndexOf } from "../../../src/engine/ask/stems.ts";
import { SEED } from "../../helpers/seed.ts";

const TEXTS: [id: string, text: string][] = [
  ["arms", "The lift arms were lengthened. Tighten to 59 psi."],
  ["run-out", "Run-out of the drum: 0.015 in, measured."],
  ["number", "Part HY59-01 replaces HY-58/02; see HY59-01."],
  ["signs", "pump — seal … (hub) “arm”"],
  ["accents", "La croûte, ｐｕｍｐ, Ölpumpe, насос"],
  ["names", "constructor __proto__ hasOwnProperty toString"],
  ["empty", ""],
  ["nothing", " \n — … "],
];

// words, the texts that hold them
const HOLDERS: [words: string, holders: string[]][] = [
  ["lift", ["arms"]],
  ["LIFTED", ["arms"]],
  ["arm", ["arms", "signs"]],
  ["tightening", ["arms"]],
  ["lengthens", ["arms"]],
  ["59", ["arms"]], // but no part of a number run together
  ["run-out", ["run-out"]], // as a whole
  ["runout", ["run-out"]],
  ["run", ["run-out"]], // and by its pieces
  ["out", ["run-out"]],
  ["0.015", ["run-out"]],
  ["measure", ["run-out"]],
  ["HY59-01", ["number"]],
  ["hy5901", ["number"]],
  ["hy59", ["number"]],
  ["HY-58/02", ["number"]],
  ["58", ["number"]],
  ["croute", ["accents"]],
  ["CROÛTE", ["accents"]],
  ["pump", ["signs", "accents"]],
  ["olpumpe", ["accents"]],
  ["насос", ["accents"]],
  ["constructor", ["names"]],
  ["__proto__", ["names"]],
  ["tostring", ["names"]],
  ["valueOf", []],
  ["plough", []],
  ["", []],
  ["…", []],

  // two words one after the other
  ["lift arm", ["arms"]],
  ["lifting arms", ["arms"]],
  ["arm lift", []], // not the other way round
  ["the drum", ["run-out"]],
  ["run-out of", ["run-out"]],
  ["out of", []], // the word before it is run-out
  ["arms tighten", []], // one further on
  ["lengthened tighten", ["arms"]], // a full stop does not part them
  ["pump seal", []], // a dash does
];
describe("the texts that hold", () => {
  const index = textIndexOf(TEXTS);
  test.each(HOLDERS)("%j", (words, holders) => {
    expect([...holdersOf(index, words)]).toEqual(holders);
  });

  test("a word are none where there is no text", () => {
    expect([...holdersOf(textIndexOf([]), "lift")]).toEqual([]);
  });
});

describe("any texts", () => {
  const word = fc.constantFrom(
    ..."pump pumps pumping seal sealed run-out runs 59 HY59-01 constructor ölig ’ — .".split(" "),
  );
  const text = fc.array(word, { maxLength: 12 }).map((words) => words.join(" "));
  const texts = fc
    .array(text, { maxLength: 6 })
    .map((all) => all.map((said, i): [string, string] => [`text ${i}`, said]));

  test("hold every word and every pair of neighbours that stands in them", () => {
    fc.assert(
      fc.property(texts, (all) => {
        const index = textIndexOf(all);
        for (const [id, said] of all) {
          const words = said.split(/\s+/).filter((one) => /[\p{Letter}\p{Number}]/u.test(one));
          for (const one of words) expect(holdersOf(index, one)).toContain(id);
        }
        for (const [id, said] of all) {
          const words = said.split(/\s+/).filter(Boolean);
          const isWord = (one: string | undefined) => one !== undefined && /[\p{Letter}\p{Number}]/u.test(one);
          words.slice(1).forEach((next, i) => {
            if (isWord(words[i]) && isWord(next)) expect(holdersOf(index, `${words[i]} ${next}`)).toContain(id);
          });
        }
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test("hold the same words when they are read in another order", () => {
    fc.assert(
      fc.property(texts, (all) => {
        const [index, turned] = [textIndexOf(all), textIndexOf([...all].reverse())];
        expect([...turned.keys()].sort()).toEqual([...index.keys()].sort());
        for (const [key, holders] of index) expect([...(turned.get(key) ?? [])].sort()).toEqual([...holders].sort());
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  test("of 200,000 words are read to their end", () => {
    const index = textIndexOf([["long", `${"pump seal ".repeat(100_000)}last`]]);
    expect([...holdersOf(index, "seal last")]).toEqual(["long"]);
  });
});

describe("an outside judge: the sample of the English stemmer's own description, from memory", () => {
  // word, its stem
  const SAMPLE =
    `consign consign, consigned consign, consigning consign, consignment consign, consist consist, consisted consist,
    consistency consist, consistent consist, consistently consist, consisting consist, consists consist, consolation consol,
    consolations consol, consolatory consolatori, console consol, consoled consol, consoles consol, consolidate consolid,
    consolidated consolid, consolidating consolid, consoling consol, consolingly consol, consols consol, consonant conson,
    consort consort, consorted consort, consorting consort, conspicuous conspicu, conspicuously conspicu, conspiracy conspiraci,
    conspirator conspir, conspirators conspir, conspire conspir, conspired conspir, conspiring conspir, constable constabl,
    constables constabl, constance constanc, constancy constanc, constant constant, knack knack, knackeries knackeri,
    knacks knack, knag knag, knave knave, knaves knave, knavish knavish, kneaded knead, kneading knead, knee knee,
    kneel kneel, kneeled kneel, kneeling kneel, kneels kneel, knees knee, knell knell, knelt knelt, knew knew, knick knick,
    knif knif, knife knife, knight knight, knightly knight, knights knight, knit knit, knits knit, knitted knit,
    knitting knit, knives knive, knob knob, knobs knob, knock knock, knocked knock, knocker knocker, knockers knocker,
    knocking knock, knocks knock, knopp knopp, knot knot, knots knot`
      .split(",")
      .map((pair) => pair.trim().split(" ") as [string, string]);

  test.each(SAMPLE)("%s is found by %s", (word, stem) => {
    expect([...textIndexOf([["text", word]]).keys()]).toEqual([stem]);
  });
});
