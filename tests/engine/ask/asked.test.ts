import { describe, expect, test } from "vitest";
import { ASKED, ASKED_KINDS, ASKED_WORDS } from "../../../src/engine/ask/asked.ts";
import { keyOf } from "../../../src/engine/ask/names.ts";
import { readQuestion } from "../../../src/engine/ask/read-question.ts";
import { fold, split } from "../../../src/engine/ask/split.ts";
import type { Vocabulary } from "../../../src/engine/ask/vocabulary-shape.ts";
import { TRACTOR_WORDS } from "../../helpers/tractor-words.ts";

const key = (said: string): string => keyOf(split(said).map(fold));

describe("ways to ask", () => {
  const bare: Vocabulary = { ...TRACTOR_WORDS, names: [], mean: [] };

  test.each(ASKED_KINDS.map((asked) => [ASKED[asked].label, asked] as const))("%s", (_, asked) => {
    for (const said of ASKED[asked].say) {
      const reading = readQuestion(bare, said);
      expect([said, reading.asked.map((it) => it.asked), reading.rest]).toEqual([said, [asked], ""]);
    }
  });

  test("say each one thing: none is listed for two", () => {
    const kinds = new Map<string, Set<string>>();
    for (const asked of ASKED_KINDS)
      for (const said of ASKED[asked].say) kinds.set(key(said), (kinds.get(key(said)) ?? new Set()).add(asked));
    expect([...kinds].filter(([, own]) => own.size > 1)).toEqual([]);
  });

  test("are all known words", () => {
    expect(ASKED_WORDS).toEqual(ASKED_KINDS.flatMap((asked) => [...ASKED[asked].say]));
    const words = [...new Set(ASKED_WORDS.flatMap(split))];
    expect(readQuestion(TRACTOR_WORDS, words.join(" ")).corrected).toEqual([]);
  });

  test("have a name each", () => {
    expect(new Set(ASKED_KINDS.map((asked) => ASKED[asked].label)).size).toBe(ASKED_KINDS.length);
  });
});
