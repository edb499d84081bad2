import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { LITTLE } from "../../../src/engine/ask/little-words.ts";
import { namesOf } from "../../../src/engine/ask/names.ts";
import { type Numbered, type Numbers, plainNumber } from "../../../src/engine/ask/numbers.ts";
import { readQuestion } from "../../../src/engine/ask/read-question.ts";
import { isNoNumber, LONG, mayBeShortNumber, shortNumberAt } from "../../../src/engine/ask/short-numbers.ts";
import { fold, split } from "../../../src/engine/ask/split.ts";
import type { Vocabulary } from "../../../src/engine/ask/vocabulary-shape.ts";
import { SEED } from "../../helpers/seed.ts";
import { TRACTOR_WORDS } from "../../helpers/tractor-words.ts";

/** Years 1957 to 1962; "in", "a", "psi" and "mm" are units, and an engine is called E4. */
const VOCABULARY: Vocabulary = {
  ...TRACTOR_WORDS,
  names: [
    ...TRACTOR_WORDS.names,
    { kind: "trait", id: "eng=4", label: "E4 engine", say: ["E4"] },
    { kind: "trait", id: "eng=6", label: "172 engine", say: ["172"] },
  ],
  units: ["in", "a", "psi", "mm"],
};
const IDS = "44-1 007 1E5 A4 E4 12 58 441 318 172 1-2 1.5 58-59 1960 12.345.67".split(" ");
const PARTS: readonly Numbered[] = [
  ...IDS.map((id) => ({ kind: "part" as const, id, components: ["pump"], systems: ["hydraulics"] })),
  { kind: "part", id: "C-9", as: "casting number", components: ["pump"], systems: ["hydraulics"] },
];
/** 44-1 and 441 are the same but for their signs. */
const NUMBERS: Numbers = new Map(
  PARTS.map(({ id }) => [plainNumber(id), PARTS.filter((one) => plainNumber(one.id) === plainNumber(id))]),
);

/** What is read from a question, but ways to ask and what is left. */
function read(question: string): string {
  const { chips } = readQuestion(VOCABULARY, question, NUMBERS);
  return chips.map(({ kind, ids }) => `${kind} ${ids.join(",")}`).join("; ");
}

// the question, what is read from it
const CASES: [question: string, chips: string][] = [
  // a code: nobody counts or measures so
  ["44-1 fit a 60", "part 44-1; year 1960"],
  ["does 007 go on a 60", "part 007; year 1960"],
  ["which one replaces 007", "part 007"],
  ["44-1 in a 60", "part 44-1; year 1960"],
  ["007 in a 60", "part 007; year 1960"],
  ["44-1 for 007 on a 60", "part 44-1; part 007; year 1960"],
  ["44-1 in stock", "part 44-1"],
  // written otherwise, or of another number
  ["441 pumps", "component pump"],
  ["44 1 fit a 60", "year 1960"],
  ["07 fit a 60", "year 1960"],
  ["44-2 fit a 60", "year 1960"],
  ["C-9 fit a 60", "year 1960"],
  // a quantity
  ["44-1 psi", ""],
  ["007 in", ""],
  ["a gap of 007 in long", ""],
  ["1E5 psi", ""],
  ["12 mm", ""],
  ["12 in", ""],
  ["1960 psi on a 60", "year 1960"],
  // letters and figures, but where a car would be named
  ["1E5 fit a 60", "part 1E5; year 1960"],
  ["1e5 fit a 60", "part 1E5; year 1960"],
  ["can i fit A4 to a 60", "part A4; year 1960"],
  ["44-1 fit an A4", "part 44-1"],
  ["44-1 on A4", "part 44-1"],
  ["44-1 with A4 fit a 60", "part 44-1; year 1960"],
  ["does 44-1 fit A4", "part 44-1"],
  ["44-1 on the A4", "part 44-1"],
  // a name of the data stays one
  ["44-1 on an E4", "part 44-1; trait eng=4"],
  ["E4 fit a 60", "trait eng=4; year 1960"],
  ["does 172 fit a 60", "trait eng=6; year 1960"],
  // a count, unless it is called a number, is all that is said, or is so large and asked about
  ["12 pumps fit a 60", "component pump; year 1960"],
  ["will 12 fit a 60", "year 1960"],
  ["1-2 fit a 60", "year 1960"],
  ["1.5 fit a 60", "year 1960"],
  ["44-1 with 12", "part 44-1"],
  ["12", "part 12"],
  ["part 12 on a 60", "part 12; year 1960"],
  ["p/n 1.5", "part 1.5"],
  ["part no 1-2", "part 1-2"],
  ["does 441 fit a 60", "part 441; year 1960"],
  ["441 fit a 60", "part 441; year 1960"],
  ["44-1 fit a 318", "part 44-1"],
  ["44-1 on a 318 fit", "part 44-1"],
  ["318 pumps fit a 60", "component pump; year 1960"],
  // a year of the data stays one, unless it is called a number
  ["58", "year 1958"],
  ["44-1 fit a 58", "part 44-1; year 1958"],
  ["what changed 58-59", "year 1958,1959"],
  ["what changed in 1960", "year 1960"],
  ["part 58 on a 60", "part 58; year 1960"],
  ["part number 1960", "part 1960"],
  ["12.345.67 on a 60", "part 12.345.67; year 1960"],
];
test.each(CASES)("%s: %s", (question, chips) => {
  expect(read(question)).toBe(chips);
});

describe("any word", () => {
  const names = namesOf(VOCABULARY);
  const word = fc.oneof(
    fc.stringMatching(/^[0-9AE]{1,4}([-.][0-9]{1,2})?$/),
    fc.constantFrom("a", "in", "on", "fit", "part", "no", "psi", "with", "58", "Badger", "the", "pump"),
  );

  test("is read as a short number only where it is written as one, and is no name or year of the data, or is called one", () => {
    let found = 0;
    fc.assert(
      fc.property(fc.array(word, { minLength: 1, maxLength: 5 }), (words) => {
        const question = split(words.join(" "));
        question.forEach((said, at) => {
          const all = shortNumberAt(question, at, names, NUMBERS);
          for (const { id } of all) expect(id).toBe(said.toUpperCase());
          if (all.length === 0) return;
          found++;
          expect(plainNumber(said).length).toBeLessThan(LONG);
          expect(mayBeShortNumber(question, at, names)).toBe(true);
          const next = question[at + 1];
          if (next !== undefined && !LITTLE.has(fold(next))) expect(names.units.has(fold(next))).toBe(false);
          const isCalled = ["part", "no"].includes(question[at - 1] ?? "");
          if (!isCalled) expect([names.byKey.has(fold(said)), isNoNumber(question, at, names)]).toEqual([false, false]);
        });
      }),
      { seed: SEED, numRuns: 3000, examples: [[["44-1", "fit"]], [["part", "12"]]] },
    );
    expect(found).toBeGreaterThan(1);
  });
});
