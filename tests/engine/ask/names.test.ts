import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { keyOf, namesOf } from "../../../src/engine/ask/names.ts";
import { fold, split } from "../../../src/engine/ask/split.ts";
import type { Vocabulary } from "../../../src/engine/ask/vocabulary-shape.ts";
import { SEED } from "../../helpers/seed.ts";
import { TRACTOR_WORDS } from "../../helpers/tractor-words.ts";

const names = namesOf(TRACTOR_WORDS);
const keyFor = (text: string): string => keyOf(split(text).map(fold));

// written, the same name
const SAME: [string, string][] = [
  ["dip stick", "dipstick"],
  ["dip-stick", "dipstick"],
  ["Dip Sticks", "dipstick"],
  ["three-point arm", "threepoint arm"],
  ["Badger's", "badger"],
  ["croûte", "CROUTE"],
  ["A/C", "ac"],
  ["p.t.o", "PTO"],
];
test.each(SAME)("%s is the name %s", (written, name) => {
  expect(keyFor(written)).toBe(keyFor(name));
});

describe("names", () => {
  test("are found by everything that they are called, in the order of the vocabulary", () => {
    const idsOf = (said: string) => names.byKey.get(keyFor(said))?.map(({ kind, id }) => `${kind} ${id}`);
    expect(idsOf("Oil Seals")).toEqual(["component pump-seal", "component hub-seal"]);
    expect(idsOf("brake")).toEqual(["system brakes", "component brake"]);
    expect(idsOf("link of the lift")).toEqual(["component three-point-arm"]);
    expect(idsOf("1959")).toEqual(["year 1959"]);
    expect(idsOf("link")).toBeUndefined();
  });

  test("that are called the same twice are found once", () => {
    const [pump] = TRACTOR_WORDS.names.filter(({ id }) => id === "pump");
    const twice = { ...TRACTOR_WORDS, names: [{ ...pump, say: ["pump", "pumps", "Pump"] }] } as Vocabulary;
    expect(namesOf(twice).byKey.get("pump")).toHaveLength(1);
  });

  test("are as long as the longest and a word more, sayings and what they mean counted", () => {
    expect(names.longest).toBe("clutch of a big old thing".split(" ").length + 1);
    const saying = { ...TRACTOR_WORDS, names: [], mean: [["a b c", "d"]] } as Vocabulary;
    expect(namesOf(saying).longest).toBe(4);
    expect(namesOf({ ...saying, mean: [["a", "b c d e"]] }).longest).toBe(5);
    expect(namesOf({ ...saying, mean: [] }).longest).toBe(2);
  });

  test("are made ready once for a vocabulary", () => {
    expect(namesOf(TRACTOR_WORDS)).toBe(names);
    expect(namesOf({ ...TRACTOR_WORDS })).not.toBe(names);
    expect(namesOf({ ...TRACTOR_WORDS })).toEqual(names);
  });

  test("that are words of the language's own machinery are names like others", () => {
    const odd = ["constructor", "__proto__", "toString"];
    const words: Vocabulary = {
      ...TRACTOR_WORDS,
      names: odd.map((id) => ({ kind: "component", id, label: id, say: [id] })),
      words: JSON.parse('{"constructor": 1, "__proto__": 1}'),
    };
    const made = namesOf(words);
    expect([...made.byKey.keys()]).toEqual(["constructor", "proto", "tostring"]);
    expect(made.byKey.get("constructor")?.map(({ id }) => id)).toEqual(["constructor"]);
  });
});

test("sayings lead to the words of the records", () => {
  expect(names.mean.get(keyFor("Breaks"))).toBe("brakes");
  expect(names.mean.get(keyFor("oil pipe"))).toBe("hydraulic pipe");
  expect(names.mean.get(keyFor("hydraulic pipe"))).toBeUndefined();
});

// word, known (never corrected), a slip may be corrected to it as a word of the trade, as a word of the texts
const WORDS: [word: string, known: boolean, trade: boolean, texts: boolean][] = [
  ["clutch", true, true, false], // of a name
  ["pto", true, false, false], // too short to be meant
  ["shaftless", true, true, false], // of a saying
  ["pipe", true, true, false], // of what a saying means
  ["gearbox", true, true, false],
  ["oilseal", false, true, false], // a name of two words, run together: nobody writes it so on purpose
  ["threepoint", true, true, false], // a word that is written with a hyphen
  ["three-point", true, false, false],
  ["takeoff", true, true, false],
  ["1959", true, false, false], // a year
  ["what", true, false, false], // names nothing
  ["thermostatic", true, false, false], // plain
  ["chassi", true, false, false], // of the name of a number
  ["supersede", true, false, false], // of a way to ask
  ["psi", true, false, false], // a unit
  ["adjuster", true, false, true], // of the texts
  ["plough", false, false, false],
  ["constructor", false, false, false],
];
test.each(WORDS)("%s", (word, known, trade, texts) => {
  expect([names.known.has(word), names.trade.includes(word), names.texts.includes(word)]).toEqual([
    known,
    trade,
    texts,
  ]);
});

describe("of any vocabulary", () => {
  const word = fc.oneof(
    fc.constantFrom("pump", "seals", "run-out", "59", "of", "constructor", "croûte", "a"),
    fc.string({ unit: "grapheme", minLength: 1, maxLength: 6 }),
  );
  const phrase = fc.array(word, { minLength: 1, maxLength: 4 }).map((words) => words.join(" "));
  const vocabulary = fc
    .record({
      said: fc.array(fc.array(phrase, { minLength: 1, maxLength: 3 }), { maxLength: 5 }),
      mean: fc.array(fc.tuple(phrase, phrase), { maxLength: 3 }),
      ignore: fc.array(word, { maxLength: 3 }),
    })
    .map(
      ({ said, mean, ignore }): Vocabulary => ({
        ...TRACTOR_WORDS,
        names: said.map((say, i) => ({ kind: "component", id: `c${i}`, label: say[0] as string, say })),
        mean,
        ignore,
      }),
    );

  test("every word of a name and of a saying is known, and every name is found by its words run together", () => {
    fc.assert(
      fc.property(vocabulary, (words) => {
        const { byKey, known, longest, trade, ignore } = namesOf(words);
        for (const { id, say } of words.names)
          for (const said of say) {
            expect(byKey.get(keyFor(said))?.some((one) => one.id === id)).toBe(true);
            for (const one of split(said)) expect(known.has(fold(one))).toBe(true);
            expect(split(said).length).toBeLessThan(longest);
          }
        for (const one of words.mean.flat()) for (const part of split(one)) expect(known.has(fold(part))).toBe(true);
        for (const one of trade) expect([one, ignore.has(one)]).toEqual([one, false]);
        for (const one of trade) expect(one.length).toBeGreaterThan(3);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });
});
