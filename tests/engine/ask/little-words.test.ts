import { describe, expect, test } from "vitest";
import * as words from "../../../src/engine/ask/little-words.ts";
import { namesOf } from "../../../src/engine/ask/names.ts";
import { fold, split } from "../../../src/engine/ask/split.ts";
import { TRACTOR_WORDS } from "../../helpers/tractor-words.ts";

const SETS = Object.entries(words) as [string, ReadonlySet<string>][];

describe.each(SETS)("%s", (name, set) => {
  test("holds each word as it is compared", () => {
    expect([...set].filter((word) => !set.has(fold(word)))).toEqual([]);
  });

  // Harmless words are left to the data folder.
  test.skipIf(name === "HARMLESS")("holds words that are known to every data folder", () => {
    const { known } = namesOf(TRACTOR_WORDS);
    expect([...set].filter((word) => split(word).length === 1 && !known.has(fold(word)))).toEqual([]);
  });
});
