import { describe, expect, test } from "vitest";
import { entropy, informationGain } from "../../../src/engine/lookalikes/information-gain.ts";

// weights, uncertainty in bits
test.each<[number[], number]>([
  [[1], 0],
  [[], 0],
  [[1, 1], 1],
  [[5, 5, 0], 1],
  [[1, 1, 1, 1], 2],
  [[1, 3], 2 - 0.75 * Math.log2(3)],
])("the uncertainty of %j is %d", (weights, bits) => {
  expect(entropy(weights)).toBeCloseTo(bits, 12);
});

describe("what a look is expected to tell", () => {
  // what each outcome goes with, bits, about two things that are as likely
  test.each<[string, number[][], number]>([
    [
      "each thing its own outcome",
      [
        [1, 0],
        [0, 1],
      ],
      1,
    ],
    ["one outcome for both", [[1, 1]], 0],
    [
      "an outcome that does not come about",
      [
        [1, 0],
        [0, 1],
        [0, 0],
      ],
      1,
    ],
    [
      "two outcomes that go with both alike",
      [
        [0.5, 0.5],
        [0.5, 0.5],
      ],
      0,
    ],
    ["no outcome at all", [], 0],
  ])("%s", (_, outcomes, bits) => {
    expect(informationGain([1, 1], outcomes)).toBeCloseTo(bits, 12);
  });
});
