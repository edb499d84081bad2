import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { yamlOnOneLine, yamlText } from "../../../src/build/write/yaml-text.ts";
import { SEED } from "../../helpers/seed.ts";

const LONG = "word ".repeat(30).trim();
// what it shows, fields, text
const TEXTS: [string, Record<string, unknown>, string][] = [
  ["a short list stands on one line", { kinds: ["part", "a, b", "12"] }, 'kinds: [part, "a, b", "12"]\n'],
  [
    "a long one does not",
    { kinds: [LONG, "b"] },
    `kinds:\n  - >-\n    ${"word ".repeat(23).trim()}\n    ${"word ".repeat(7).trim()}\n  - b\n`,
  ],
  ["sentences stand one below the other", { "left-alone": ["The pump stays."] }, "left-alone:\n  - The pump stays.\n"],
  [
    "little sets on one line each",
    { parts: [{ number: "A", marks: { ribs: "two", bore: 18 } }] },
    "parts:\n  - number: A\n    marks: { ribs: two, bore: 18 }\n",
  ],
  [
    "statements do not",
    { supersedes: [{ old: "A", new: "B", with: ["C"] }] },
    "supersedes:\n  - old: A\n    new: B\n    with: [C]\n",
  ],
  [
    "a set under a word of its own",
    { equipment: { PT: { standard: "all" } } },
    "equipment:\n  PT: { standard: all }\n",
  ],
  ["a text with lines of its own", { text: "a\n\nb" }, "text: |-\n  a\n\n  b\n"],
  ["a list of nothing", { moved: [] }, "moved: []\n"],
];

describe("in the manner of the house", () => {
  test.each(TEXTS)("%s", (_, fields, text) => {
    expect(yamlText(fields)).toBe(text);
    expect(parse(text)).toEqual(fields);
  });

  test("further in, the lines are as much shorter", () => {
    const text = yamlText({ why: LONG }, 8);
    expect(text).toBe(
      `        why: >-\n          ${"word ".repeat(21).trim()}\n          ${"word ".repeat(9).trim()}\n`,
    );
  });
});

test("on one line is read as it was meant, alone and in brackets", () => {
  fc.assert(
    fc.property(
      fc.oneof(fc.string(), fc.integer(), fc.constantFrom("a: b", "x, y", "]", "{", "# no", "12", "null", LONG)),
      (value) => {
        const text = yamlOnOneLine(value);
        expect(text).not.toContain("\n");
        expect(parse(`[${text}, x]`)).toEqual([value, "x"]);
        expect(parse(`{ a: ${text} }`)).toEqual({ a: value });
      },
    ),
    { seed: SEED, numRuns: 300 },
  );
});
