import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lackingWords, nearWords, slips } from "../../../src/engine/ask/slips.ts";
import { SEED } from "../../helpers/seed.ts";

type Vocabulary = Parameters<typeof slips>[1];

const name = (label: string, ...aliases: string[]): Vocabulary["names"][number] => ({
  kind: "component",
  id: label.replaceAll(" ", "-"),
  label,
  say: [label, ...aliases],
});
const VOCABULARY: Vocabulary = {
  names: [
    name("distributor", "distributer", "dizzy"),
    name("proportioning valve"),
    name("radiator", "rad"),
    name("thermostat"),
    name("brake caliper", "brake calliper"),
    name("voltage regulator"),
    name("carburettor"),
  ],
  ignore: ["what", "changed"],
  plain: ["thermostatt"],
  mean: [["gearbox", "transmission"]],
};
const OFTEN = Array.from({ length: 10 }, () => "Adjust the lateral stroke through the starting handle, quite safely.");

const placed = (texts: readonly string[]): { text: string; place: number }[] =>
  texts.map((text, place) => ({ text, place }));
const found = (...texts: string[]): string[] =>
  slips(placed([...OFTEN, ...texts]), VOCABULARY).map(({ word, meant }) => `${word}: ${meant}`);

describe("what looks like a slip", () => {
  // written, meant, what was slipped
  const SLIPS: [string, string, string][] = [
    ["calipre", "caliper", "turned round, at the end"],
    ["radaitor", "radiator", "turned round"],
    ["rdaiator", "radiator", "turned round, near the beginning"],
    ["proportoining", "proportioning", "turned round, in a long word"],
    ["vavle", "valve", "turned round, in a short word"],
    ["latreal", "lateral", "turned round, in a word that only stands often"],
    ["distribtor", "distributor", "left out"],
    ["thrmostat", "thermostat", "left out"],
    ["regulatr", "regulator", "left out, at the end"],
    ["carburetor", "carburettor", "not doubled"],
    ["regullator", "regulator", "doubled"],
    ["distributtors", "distributor", "doubled, in a plural that the data has not"],
    ["distreibutor", "distributor", "put in"],
    ["distribitor", "distributor", "mistaken"],
    ["bistributor", "distributor", "the first letter mistaken"],
    ["ransmission", "transmission", "the first letter left out, of what a saying means"],
    ["disstributar", "distributor", "two slips in a long word"],
    ["Radaitor", "radiator", "with a capital letter"],
    ["RADAITOR", "radiator", "in capitals"],
    ["radaitor's", "radiator", "with a possessive s"],
    ["rádaitor", "radiator", "with an accent, which counts for nothing"],
  ];
  test.each(SLIPS)("%s is %s: %s", (written, meant) => {
    expect(found(`The ${written} leaks.`)).toEqual([`${written.replace("'s", "")}: ${meant}`]);
  });

  // text, why it is left alone
  const INNOCENT: [string, string][] = [
    ["radiators", "the plural of a name"],
    ["regulated, regulates and regulating", "forms of a name"],
    ["unadjusted, readjusted", "forms of a word that stands often"],
    ["distributer", "an alias, slip or not"],
    ["thermostatt", "a plain word"],
    ["gearboxes", "the plural of a saying"],
    ["brake rakes", "short words lie near to each other"],
    ["section", "one letter mistaken makes another word of many"],
    ["thorough", "nor is one put in a sign"],
    ["strike", "a short one"],
    ["quiet", "near to a word that joins others only"],
    ["radaitor2, X-radaitor7", "it has figures: a number"],
    ["see [[RADAITOR]] and [[radaitor|that one]]", "an id of the data"],
    ["https://radaitor.example/radaitor", "an address"],
    ["[here](radaitor.html)", "where a link leads"],
    ["`radaitor`", "code"],
    ["disstribbutter", "three slips are too many"],
    ["The radaitor, the radaitor, the radaitors", "three times is no slip"],
  ];
  test.each(INNOCENT)("'%s' is left alone: %s", (text) => {
    expect(found(text)).toEqual([]);
  });

  test("a word must stand five times as often to be what was meant", () => {
    const of = (times: number, ...texts: string[]): string[] =>
      slips(placed([...Array.from({ length: times }, () => "the impeller"), ...texts]), VOCABULARY).map(
        ({ meant }) => meant,
      );
    expect(of(4, "the impelelr")).toEqual([]);
    expect(of(5, "the impelelr")).toEqual(["impeller"]);
    expect(of(9, "the impelelr", "the impelelr")).toEqual([]);
    expect(of(10, "the impelelr", "the impelelr")).toEqual(["impeller", "impeller"]);
  });

  test("of several that may be meant, fewer slips come first, then the more frequent", () => {
    const meant = (...texts: string[]): string[] =>
      slips(placed([...texts, "the retainrs"]), { ...VOCABULARY, names: [name("retainer"), name("retainor")] }).map(
        (slip) => slip.meant,
      );
    expect(meant("a retainor")).toEqual(["retainor"]);
    expect(meant("a retainer")).toEqual(["retainer"]);
  });

  test("every place is told, with the letters of the word", () => {
    const texts = ["Drain the radaitor.", "Nothing.", "Radaitors leak."];
    const told = slips(placed(texts), VOCABULARY);
    expect(told.map(({ place, within }) => [place, texts[place]?.slice(...within)])).toEqual([
      [0, "radaitor"],
      [2, "Radaitors"],
    ]);
  });
});

describe("near words", () => {
  /** Slips by the book: letters left out, put in, mistaken, and neighbours turned round; a table of all beginnings. */
  function slowSlips(a: string, b: string): number {
    const table = Array.from({ length: a.length + 1 }, (_, i) =>
      Array.from({ length: b.length + 1 }, (_, j) => i || j),
    );
    const at = (i: number, j: number): number => table[i]?.[j] ?? Number.POSITIVE_INFINITY;
    for (let i = 1; i <= a.length; i++)
      for (let j = 1; j <= b.length; j++) {
        const same = a[i - 1] === b[j - 1] ? 0 : 1;
        const turned = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
        const ways = [at(i - 1, j) + 1, at(i, j - 1) + 1, at(i - 1, j - 1) + same];
        (table[i] as number[])[j] = Math.min(...ways, turned ? at(i - 2, j - 2) + 1 : Number.POSITIVE_INFINITY);
      }
    return at(a.length, b.length);
  }

  test("the slow twin counts as one would", () => {
    expect(slowSlips("radaitor", "radiator")).toBe(1);
    expect(slowSlips("thrmostat", "thermostat")).toBe(1);
    expect(slowSlips("distirbuttor", "distributor")).toBe(2);
    expect(slowSlips("", "abc")).toBe(3);
  });

  // Few letters, so that many words lie near to each other; none of them begins or ends a form of another word.
  const letters = fc.constantFrom("b", "c", "f", "k", "p");
  const word = (minLength: number, maxLength: number): fc.Arbitrary<string> =>
    fc.string({ unit: letters, minLength, maxLength });
  /** A word, and the same with letters slipped. */
  const slipped = (most: number): fc.Arbitrary<[string, string]> =>
    fc
      .tuple(
        word(5, 15),
        fc.array(fc.tuple(fc.nat(20), fc.nat(1), fc.oneof(letters, fc.constant(""))), {
          minLength: 1,
          maxLength: most,
        }),
      )
      .map(([meant, changes]) => [
        meant,
        changes.reduce((text, [at, cut, put]) => {
          const i = at % text.length;
          return text.slice(0, i) + put + text.slice(i + cut);
        }, meant),
      ]);

  test("all that lie one slip away are among them, and for long words two: compared with all pairs", () => {
    fc.assert(
      fc.property(fc.array(slipped(2), { minLength: 1, maxLength: 20 }), (pairs) => {
        const known = new Set(pairs.map(([meant]) => meant));
        const near = nearWords(known);
        for (const [, written] of pairs) {
          const some = near(written);
          const all = [...known].filter((one) => slowSlips(written, one) <= (written.length >= 12 ? 2 : 1));
          expect(some).toEqual(expect.arrayContaining(all));
        }
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test("of words long enough for every slip, all and only those are told: compared with all pairs", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(word(10, 11), slipped(1)), { minLength: 1, maxLength: 12 }), (cases) => {
        const names = cases.map(([one]) => `k${one}`);
        const written = cases
          .flatMap(([one], i) => {
            const at = (i * 7) % one.length;
            return [`k${one.slice(0, at)}p${one.slice(at + 1)}`, `k${one.slice(0, at)}${one.slice(at + 1)}`];
          })
          // What stands three times is no slip.
          .filter((one, _, all) => all.filter((other) => other === one).length < 3)
          .filter((one) => !names.includes(one));
        const told = slips(placed(written), { names: names.map((it) => name(it)), ignore: [], plain: [], mean: [] });
        const expected = written.filter((one) => names.some((other) => slowSlips(one, other) === 1));
        expect(told.map((slip) => slip.word).sort()).toEqual(expected.sort());
        for (const slip of told) expect(slowSlips(slip.word, slip.meant)).toBe(1);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });
});

describe("words that the vocabulary lacks", () => {
  const lacking = (...texts: string[]): [string, number, number][] =>
    lackingWords(placed(texts), VOCABULARY).map(({ word, count, place }) => [word, count, place]);

  test("the most frequent first, then in the order of the texts, in the spelling that is most frequent", () => {
    expect(lacking("A sealed hub.", "Hubs and hubs, wheels", "sealed")).toEqual([
      ["hubs", 3, 0],
      ["sealed", 2, 0],
      ["wheels", 1, 1],
    ]);
  });

  test("known, ignored, plain and function words are not among them, nor numbers and units of two letters", () => {
    expect(
      lacking(
        "The radiators, a dizzy, gearbox, transmission and brake: what changed, thermostatt, 3 mm, A7, of 12-345L; perhaps this always does",
      ),
    ).toEqual([]);
  });
});
