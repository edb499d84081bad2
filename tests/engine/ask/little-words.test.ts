import { describe, expect, test } from "vitest";
import * as words from "../../../src/engine/ask/little-words.ts";
import { namesOf } from "../../../src/engine/ask/names.ts";
import { fold, split } from "../../../src/engine/ask/split.ts";
import { TRACTOR_WORDS } from "../../helpers/tractor-words.ts";

const SETS = Object.entries(words).filter((it): it is [string, ReadonlySet<string>] => it[1] instanceof Set);

describe("little words", () => {
  test.each(SETS)("%s are there as they are compared", (_, set) => {
    expect([...set].filter((word) => !set.has(fold(word)))).toEqual([]);
  });

  test.each(SETS)("%s are known whatever a data folder holds", (_, set) => {
    const { known } = namesOf({ ...TRACTOR_WORDS, names: [], mean: [], ignore: [], words: {} });
    expect([...set].filter((word) => split(word).length === 1 && !known.has(fold(word)))).toEqual([]);
  });

  test("are none that a record has to hold, but for the things among the harmless ones", () => {
    const needed = SETS.flatMap(([, set]) => [...set]).filter((word) => !words.isLittle(word));
    expect(needed.filter((word) => !words.HARMLESS.has(word))).toEqual([]);
    expect(needed).toEqual(expect.arrayContaining(["engine", "torque", "rear"].map(fold)));
    expect(["Does", "on", "I", "the", "can't", "before", "over"].map(words.isLittle)).not.toContain(false);
    expect(["wiper", "zeppelin", ""].map(words.isLittle)).not.toContain(true);
  });

  test("of grammar are no names of things that a car has, nor of its sides", () => {
    const things = [
      "engine",
      "torque",
      "left",
      "right",
      "front",
      "rear",
      "up",
      "off",
      "out",
      "back",
      "no",
      "not",
      "without",
      "old",
    ];
    expect(things.filter((word) => words.GRAMMAR.has(fold(word)))).toEqual([]);
  });

  test("that deny are none that affirm", () => {
    for (const denying of [words.DENYING, words.DENYING_BEFORE])
      expect([...words.WITH].filter((word) => denying.has(word))).toEqual([]);
  });

  test("that deny are not passed over as harmless or little", () => {
    const passed = new Set([...words.HARMLESS, ...words.LITTLE]);
    expect([...words.DENYING, ...words.DENYING_BEFORE].filter((word) => passed.has(word))).toEqual([]);
  });

  test("that deny what stands before do not deny what follows", () => {
    expect([...words.DENYING_BEFORE].filter((word) => words.DENYING.has(word))).toEqual([]);
  });
});
