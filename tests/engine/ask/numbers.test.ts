import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  findNumber,
  MOST_WORDS,
  type Numbers,
  numbersOf,
  plainNumber,
  runsAt,
  shelfOf,
} from "../../../src/engine/ask/numbers.ts";
import { split } from "../../../src/engine/ask/split.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { SEED } from "../../helpers/seed.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";
import { TRACTOR_NUMBERS } from "../../helpers/tractor-words.ts";

describe("the numbers of the records", () => {
  const numbers = numbersOf(catalogOf());
  const pump = { kind: "part", components: ["pump"], systems: ["hydraulics"] };
  const gasket = { kind: "part", components: ["gasket"], systems: ["hydraulics"] };
  const record = {
    kind: "record",
    id: "HY59-01",
    components: ["pump", "gasket"],
    systems: ["hydraulics"],
  };

  test("are those of records, bulletins, parts and castings, and old ones that lead on, each without signs", () => {
    expect(Object.fromEntries(numbers)).toEqual({
      HY5901: [record],
      FR5801: [{ kind: "record", id: "FR58-01", components: [], systems: expect.any(Array) }],
      TB1: [{ kind: "bulletin", id: "TB-1", components: [], systems: [] }],
      HT101: [{ ...pump, id: "HT-101" }],
      HT102: [{ ...pump, id: "HT-102" }],
      "4411": [{ ...pump, id: "HT-102", as: "casting number" }],
      HT201: [{ ...gasket, id: "HT-201" }],
      HT290: [{ ...gasket, id: "HT-290" }],
      HY1: [{ ...record, as: "moved" }],
    });
  });

  test("that lead nowhere name nothing", () => {
    expect(findNumber(numbers, "HT099")).toEqual([]);
  });

  test("that stand on two parts name both", () => {
    const same = numbersOf(
      catalogOf(
        spoiled({
          "parts/pump.yaml": [
            "marks: { ribs: none, bore: 18 }",
            'marks: { ribs: none, bore: 18 }\n    castings: ["4411"]',
          ],
        }),
      ),
    );
    expect(findNumber(same, "4411").map(({ id }) => id)).toEqual(["HT-101", "HT-102"]);
  });
});

// written, plain
const PLAIN: [string, string][] = [
  ["HY59-01", "HY5901"],
  ["3110 552.l", "3110552L"],
  ["tb-1/2", "TB12"],
  ["ｈｔ－１０１", "HT101"],
  ["é1", "E1"],
  ["№ 7", "NO7"],
  ["- / .", ""],
  ["", ""],
];
test.each(PLAIN)("%s is the number %s", (written, plain) => {
  expect(plainNumber(written)).toBe(plain);
});

// words, where, the numbers that may be written there, and in how many words
const RUNS: [words: string, at: number, runs: string[]][] = [
  ["HY59-01", 0, ["HY5901 1"]],
  ["HY 59 01", 0, ["HY5901 3", "HY59 2"]],
  ["3110 552 L pump", 0, ["3110552L 3", "3110552 2", "3110 1"]],
  ["pump 3110", 0, []], // a long word is no piece of a number
  ["pump 3110", 1, ["3110 1"]],
  ["3110 pump 552", 0, ["3110 1"]],
  ["ab cd", 0, []], // no digit
  ["101", 0, []], // three figures
  ["1 0 1", 0, []],
  ["1 0 1 5", 0, []], // in four words
  ["1 01 5", 0, ["1015 3"]],
  ["abc 1234", 0, []], // a word of three letters is a word
  ["12345678901234567890123", 0, ["12345678901234567890123 1"]],
  ["1234567890123456789012345", 0, []], // longer than any number
  ["", 0, []],
  ["HT-101", 1, []],
];
test.each(RUNS)("in '%s', from word %i", (words, at, runs) => {
  expect(runsAt(split(words), at).map(({ plain, length }) => `${plain} ${length}`)).toEqual(runs);
});

// written, the numbers that it may be
const FOUND: [written: string, ids: string[]][] = [
  ["HT-101", ["HT-101"]],
  ["HT-1O1", ["HT-101"]], // O for 0
  ["HT-I0L", ["HT-101"]], // I and L for 1
  ["HT-10O", ["HT-10O"]], // what is written so comes before what is read so
  ["HT-100", ["HT-10O"]],
  ["HY59O1", ["HY59-01"]],
  ["3110 552 L", ["3110 552 L"]],
  ["3110 552 1", ["3110 552 L"]],
  ["3110 552", ["3110 552 L", "3110 552 R"]], // either hand
  ["311O 552", []], // one thing forgiven at a time
  ["3110 55", []], // two letters are missing
  ["HT-10", ["HT-10O"]], // a last letter
  ["HT", []],
  ["HT-102", []],
  ["", []],
  ["__proto__", []],
];
test.each(FOUND)("%s names %j", (written, ids) => {
  expect(findNumber(TRACTOR_NUMBERS, plainNumber(written)).map(({ id }) => id)).toEqual(ids);
});

describe("any numbers", () => {
  const plain = fc.stringMatching(/^[OIL01A]{2,5}$/);
  const numbers = fc
    .uniqueArray(plain, { maxLength: 8 })
    .map((all): Numbers => new Map(all.map((id) => [id, [{ kind: "part", id, components: [], systems: [] }]])));
  const signed = fc
    .tuple(plain, fc.array(fc.constantFrom(" ", "-", ".", "/", ""), { minLength: 5, maxLength: 5 }))
    .map(([id, signs]) => [id, [...id].map((letter, i) => letter + (signs[i] ?? "")).join("")] as const);

  test("are found by what is written so, else by what may be read so, else by their beginning", () => {
    const read = (one: string) => one.replaceAll(/O/g, "0").replaceAll(/[IL]/g, "1");
    fc.assert(
      fc.property(numbers, plain, (all, written) => {
        const ids = [...all.keys()];
        const alike = ids.filter((id) => read(id) === read(written));
        const hands = ids.filter((id) => id.slice(0, -1) === written && /[A-Z]$/.test(id) && /\d$/.test(written));
        const expected = ids.includes(written) ? [written] : alike.length > 0 ? alike : hands;
        expect(findNumber(all, written).map(({ id }) => id)).toEqual(expected);
      }),
      { seed: SEED, numRuns: 1500 },
    );
  });

  test("are the same with signs and in small letters, and stand on the same shelf as all that they may be read as", () => {
    fc.assert(
      fc.property(signed, ([id, written]) => {
        expect(plainNumber(written.toLowerCase())).toBe(id);
        expect(shelfOf(plainNumber(written.replaceAll("O", "0")))).toBe(shelfOf(id));
        expect(shelfOf(plainNumber(written.replaceAll("1", "l")))).toBe(shelfOf(id));
        expect(shelfOf(`${id}R`)).toBe(shelfOf(id));
      }),
      { seed: SEED, numRuns: 500 },
    );
  });

  test("are looked for in no more words than numbers are written in, each run there", () => {
    const word = fc.constantFrom("HT", "101", "1", "pump", "a", "59-01", "ü");
    fc.assert(
      fc.property(fc.array(word, { maxLength: 6 }), fc.nat(7), (words, at) => {
        const lengths = runsAt(words, at).map(({ plain, length }) => {
          expect(plain).toBe(plainNumber(words.slice(at, at + length).join("")));
          return length;
        });
        expect(lengths).toEqual([...lengths].sort((a, b) => b - a));
        for (const length of lengths) expect(at + length).toBeLessThanOrEqual(Math.min(words.length, at + MOST_WORDS));
      }),
      { seed: SEED, numRuns: 500 },
    );
  });
});

describe("the numbers of the data folder", async () => {
  const { catalog } = await demoKnowledge();
  const numbers = numbersOf(catalog);
  const wrong = (ids: Iterable<string>, kind: string): string[] =>
    [...ids].filter((id) => !findNumber(numbers, plainNumber(id)).some((one) => one.kind === kind && one.id === id));

  test("name every record, bulletin and part by its own", () => {
    expect(wrong(catalog.records.keys(), "record")).toEqual([]);
    expect(wrong(catalog.bulletins.keys(), "bulletin")).toEqual([]);
    expect(wrong(catalog.parts.keys(), "part")).toEqual([]);
  });

  test("no two things of one kind have the same number but for its signs", () => {
    const twice = [...numbers].filter(([, all]) => {
      const own = all.filter(({ as }) => as === undefined);
      return new Set(own.map(({ kind }) => kind)).size < own.length;
    });
    expect(twice.map(([number]) => number)).toEqual([]);
  });

  test("a shelf holds all that a number on it may be read as", () => {
    for (const number of numbers.keys()) {
      const own = new Map([...numbers].filter(([other]) => shelfOf(other) === shelfOf(number)));
      for (const written of [number, number.replaceAll("0", "O"), number.replaceAll("1", "L"), number.slice(0, -1)])
        if (shelfOf(written) === shelfOf(number))
          expect(findNumber(own, written)).toEqual(findNumber(numbers, written));
    }
  });
});
