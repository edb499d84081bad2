/** One field of a sum at a time. */
import { expect, test } from "vitest";
import { readInput, unitCalled } from "../../../../src/engine/settings/sums/read-input.ts";
import type { SumInput } from "../../../../src/engine/settings/sums/sum.ts";

const teeth: SumInput = {
  id: "z",
  label: "teeth",
  letter: "z",
  unit: "teeth",
  counted: ["teeth"],
  whole: true,
  atLeast: 1,
};
const ratio: SumInput = { id: "i", label: "ratio", letter: "i", unit: "", counted: [], above: 0 };
const length: SumInput = { id: "l", label: "length", letter: "l", unit: "in", above: 0, atMost: 100 };
const window: SumInput = { ...length, window: true };
const drill: SumInput = { ...length, drill: true };
const choice: SumInput = { id: "c", label: "way", letter: "", unit: "", choices: ["one way", "other way"] };

// input, typed, values
const READ: [SumInput, string, Record<string, number>][] = [
  [teeth, "20", { z: 20 }],
  [teeth, "20 teeth", { z: 20 }],
  [teeth, " 1,200 Teeth", { z: 1200 }],
  [ratio, "3.08", { i: 3.08 }],
  [ratio, "3.08:1", { i: 3.08 }],
  [ratio, "3.08 to 1", { i: 3.08 }],
  [ratio, "1 1/2", { i: 1.5 }],
  [ratio, "1-1/2", { i: 1.5 }],
  [ratio, "41/12", { i: 41 / 12 }],
  [ratio, ".5", { i: 0.5 }],
  [length, "25.4 mm", { l: 1 }],
  [length, "7/64 in", { l: 7 / 64 }],
  [window, "0.186..0.188 in", { lLow: 0.186, lHigh: 0.188 }],
  [window, "0.186 in to 0.188 in", { lLow: 0.186, lHigh: 0.188 }],
  [window, "25.4..50.8 mm", { lLow: 1, lHigh: 2 }],
  [window, "0.5 in", { lLow: 0.5, lHigh: 0.5 }],
  [drill, "55", { l: 0.052 }],
  [drill, "E", { l: 0.25 }],
  [choice, "Other Way", { c: 1 }],
];
test.each(READ.map(([input, typed, values]) => ({ input, typed, values })))("'$typed'", ({ input, typed, values }) => {
  const read = readInput(input, typed);
  expect(read).toMatchObject({ as: "values", values });
});

// input, typed, what is said
const REFUSED: [SumInput, string, RegExp][] = [
  [teeth, "", /not a number of teeth/],
  [teeth, "1,20", /not a number of teeth/],
  [teeth, "20 psi", /not a number of teeth/],
  [ratio, "3/0", /divides by zero/],
  [ratio, "1e400", /not a number/],
  [ratio, "-3", /above 0; -3 is not/],
  [length, "-1 in", /above 0 in; -1 in is not/],
  [length, "200 in", /at most 100 in/],
  [length, "20 psi", /pressure/],
  [window, "0.188..0.186 in", /begins above its end/],
  [window, "..0.188 in", /has one limit only; two are needed/],
  [window, "0.186 in..", /has one limit only; two are needed/],
  [length, "0.186 in..", /is a window; one value is needed here/],
  [choice, "one wey", /did you mean 'one way'/],
];
test.each(REFUSED.map(([input, typed, said]) => ({ input, typed, said })))(
  "'$typed' is refused",
  ({ input, typed, said }) => {
    const read = readInput(input, typed);
    expect(read.as === "refused" && read.why).toMatch(said);
  },
);

test("an ambiguous length comes back with what may be meant", () => {
  const read = readInput(length, "30 mils");
  expect(read.as === "refused" && (read.choices?.length ?? 0) > 1).toBe(true);
});

test("a bare number is in the unit that the field says", () => {
  expect(readInput(length, "30")).toMatchObject({ as: "values", values: { l: 30 } });
});

test("one limit that has to be asked about is asked about with the other", () => {
  const read = readInput(window, "1..5 mils");
  expect(read.as === "refused" && read.choices?.map((it) => it.typed)).toEqual(["1..5 thou", "1..5 mm"]);
});

test("a unit is found by its id, and a unit that is none is a mistake in the house", () => {
  expect(unitCalled("in").id).toBe("in");
  expect(() => unitCalled("cubit of old")).toThrow(RangeError);
});
