import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { partsSaid } from "../../../src/engine/ask/parts-said.ts";
import { readQuestion } from "../../../src/engine/ask/read-question.ts";
import { SEED } from "../../helpers/seed.ts";
import { TRACTOR_NUMBERS, TRACTOR_WORDS } from "../../helpers/tractor-words.ts";

const [A, B] = ["HT-101", "HT-10O"];
const said = (question: string) =>
  partsSaid(readQuestion(TRACTOR_WORDS, question.replaceAll("{A}", A).replaceAll("{B}", B), TRACTOR_NUMBERS));

// question, asked about, on the tractor, left out, what the parts asked about would take the place of
const PARTS: [question: string, asked: string[], onCar: string[], leftOut: string[], against: string[]][] = [
  ["", [], [], [], []],
  ["pump", [], [], [], []],
  ["{A}", [A], [], [], []],
  ["does {A} fit a 57", [A], [], [], []],
  ["{A} and {B}", [A, B], [], [], []],

  // on the tractor, or goes along
  ["does {A} fit with {B}", [A], [B], [], []],
  ["does {A} fit with the {B}", [A], [B], [], []],
  ["{A} with {B} fitted", [A], [B], [], []],
  ["{A}, {B} installed", [A], [B], [], []],
  ["with {A}", [A], [], [], []], // the only one is asked about
  ["{A} fitted", [A], [], [], []],

  // left out
  ["does {A} fit without {B}", [A], [], [B], []],
  ["{A} without the {B}", [A], [], [B], []],
  ["{A} keeping the {B}", [A], [], [B], []],
  ["{A} reusing {B}", [A], [], [B], []],

  // what belongs there
  ["{A} instead of {B}", [A], [], [], [B]],
  ["{A} in place of {B}", [A], [], [], [B]],
  ["does {A} replace {B}", [A], [], [], [B]],
  ["replace {B} with {A}", [A], [], [], [B]],
  ["replaced {B} by {A}", [A], [], [], [B]],
  ["{B} replaced by {A}", [A], [], [], [B]],
  ["{B} superseded by {A}", [A], [], [], [B]],
  ["what replaces {A}", [A], [], [], []],
];
describe("the parts of a question", () => {
  test.each(PARTS)("%s", (question, asked, onCar, leftOut, against) => {
    expect(said(question)).toEqual({ asked, onCar, leftOut, against });
  });

  test("that may be either of two hands are both", () => {
    expect(said("3110-552 without {A}")).toMatchObject({ asked: ["3110 552 L", "3110 552 R"], leftOut: [A] });
  });
});

test("every part of any question is in one place, and one is asked about where there is none left out or replaced", () => {
  const words = [...PARTS.flatMap(([question]) => question.split(" ")), "3110-552", "4411"].filter(Boolean);
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...words), { maxLength: 9 }), (some) => {
      const question = some.join(" ").replaceAll("{A}", A).replaceAll("{B}", B);
      const reading = readQuestion(TRACTOR_WORDS, question, TRACTOR_NUMBERS);
      const parts = reading.chips.filter(({ kind }) => kind === "part").flatMap(({ ids }) => ids);
      const { asked, onCar, leftOut, against } = partsSaid(reading);
      expect([...asked, ...onCar, ...leftOut, ...against].sort()).toEqual([...parts].sort());
      if (asked.length === 0) expect(onCar).toEqual([]);
    }),
    { seed: SEED, numRuns: 600 },
  );
});
