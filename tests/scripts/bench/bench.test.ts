import { expect, test } from "vitest";
import { median, stagesIn } from "../../../scripts/bench/bench.ts";
import { stageLine } from "../../../src/build/progress-lines.ts";

test("the median is the middle one, or half way between the two in the middle", () => {
  expect(median([3, 1, 2])).toBe(2);
  expect(median([4, 1, 2, 3])).toBe(2.5);
  expect(median([7])).toBe(7);
});

test("stages are read from the lines that a build prints, with or without a count", () => {
  const stage = { total: undefined, milliseconds: 1234 };
  const lines = [
    stageLine({ ...stage, name: "pages", verb: "written", count: 12_345 }),
    stageLine({ ...stage, name: "search", verb: "indexed", count: undefined }),
    "Built somewhere: 12 records.",
  ];
  expect([...stagesIn(lines.join("\n"))]).toEqual([
    ["pages", 1.2],
    ["search", 1.2],
  ]);
});
