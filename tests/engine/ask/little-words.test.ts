import { describe, expect, test } from "vitest";
import * as words from "../../../src/engine/ask/little-words.ts";
import { namesOf } from "../../../src/engine/ask/names.ts";
import { fold, split } from "../../../src/engine/ask/split.ts";
import { TRACTOR_WORDS } from "../../helpers/tractor-words.ts";

const SETS = Object.entries(words) as [string, ReadonlySet<string>][];
// Words that are looked for as they are compared, and lose an s in that.
const LOST: Record<string, string[]> = { DENYING: ["sans"], LITTLE: ["this"] };

describe.each(SETS)("%s", (name, set) => {
  test("holds each word as it is compared", () => {
    const lost = [...set].filter((word) => !set.has(fold(word)));
    expect(lost).toEqual(LOST[name] ?? []);
  });

  test("holds words that are known to every data folder", () => {
    const { known } = namesOf(TRACTOR_WORDS);
    expect([...set].filter((word) => split(word).length === 1 && !known.has(fold(word)))).toEqual([]);
  });
});
