import { describe, expect, test } from "vitest";
import type { AskedQuestion } from "../../../scripts/bench/ask-questions.ts";
import { rankOf, type Score, scoreOf } from "../../../scripts/bench/ask-score.ts";

const ask = (records: string): AskedQuestion => ({
  half: "build",
  text: "plough",
  records: records === "-" ? [] : records.split(" ").map((either) => either.split("|")),
});
const found = (list: string, saysNothing = false) => ({ records: list === "" ? [] : list.split(" "), saysNothing });

// records set down, records found, rank of the first that may be first
const RANKS: [records: string, list: string, rank: number][] = [
  ["A", "A B C", 1],
  ["A", "B A", 2],
  ["A|B", "B A", 1], // either may be first
  ["A B", "B A", 2], // B should follow, not lead
  ["A", "B C", 0],
  ["A", "", 0],
];

test.each(RANKS)("of %s in %s the rank is %i", (records, list, rank) => {
  expect(rankOf(ask(records), found(list))).toBe(rank);
});

// By hand: what is set down, what was found, whether "nothing is on record" was said.
const TABLE: [records: string, list: string, saysNothing: boolean][] = [
  ["A", "A", false], //                 first 1, 1/1, recall 1/1
  ["A|B", "C B", false], //             first 0, 1/2, recall 1/2
  ["A B", "A C D E F B", false], //     first 1, 1/1, recall 1/2: B is the sixth
  ["A", "", false], //                  first 0, 0,   recall 0, nothing found
  ["A", "B C D A", true], //            first 0, 1/4, recall 1/1, nothing found: it is said so
  ["-", "", false], //                  rightly nothing
  ["-", "A", true], //                  rightly nothing: what is near is listed all the same
  ["-", "A", false], //                 wrongly something
];

describe("a table scored by hand", () => {
  const score = scoreOf(
    TABLE.map(([records]) => ask(records)),
    TABLE.map(([, list, saysNothing]) => found(list, saysNothing)),
  );

  test.each<[keyof Score, number]>([
    ["asked", 5],
    ["firstRight", 2 / 5],
    ["meanReciprocalRank", (1 + 1 / 2 + 1 + 0 + 1 / 4) / 5],
    ["recallAt5", (1 + 1 / 2 + 1 / 2 + 0 + 1) / 5],
    ["nothingFound", 2 / 5],
    ["withoutRecord", 3],
    ["rightlyNothing", 2 / 3],
  ])("%s is %d", (name, value) => {
    expect(score[name]).toBeCloseTo(value, 10);
  });
});

test("of no questions all is 0", () => {
  expect(scoreOf([], [])).toMatchObject({ asked: 0, firstRight: 0, withoutRecord: 0, rightlyNothing: 0 });
});
