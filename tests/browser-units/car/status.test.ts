/** The status says what is the case now, never what was the case of the car before. */
import { expect, test } from "vitest";
import { type Standing, statusWords } from "../../../src/browser/car/status.ts";

const settled: Standing = {
  nothingSaid: false,
  plate: undefined,
  conflicts: false,
  lineKnown: true,
  counts: { yes: 3, open: 2, no: 1 },
  wrongPart: false,
  searching: false,
  next: "engine",
};
const counted = "3 apply, 2 to look at first, 1 do not apply.";

// what differs, what is said
const CASES: [Partial<Standing>, string][] = [
  [{}, `${counted} Next: engine?`],
  [{ next: undefined }, counted],
  [{ nothingSaid: true, lineKnown: false, counts: undefined }, ""],
  [{ plate: "not built", conflicts: true }, "No verdict: what was said does not go together."],
  [
    { plate: "unknown", lineKnown: false, counts: undefined },
    "The number on the plate was not read. The model line is not known yet.",
  ],
  [{ plate: "misread", next: undefined }, `The number on the plate was not read. ${counted}`],
  [{ plate: "read", next: undefined }, counted],
  [{ counts: undefined }, "Loading the records of this line …"],
  [{ counts: undefined, wrongPart: true }, "No verdict: a part that was said is not known."],
  [{ searching: true }, "Working out what applies …"],
];
test.each(CASES)("%j", (differs, words) => {
  expect(statusWords({ ...settled, ...differs })).toBe(words);
});
