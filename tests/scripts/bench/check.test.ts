import { expect, test } from "vitest";
import { benchCheck } from "../../../scripts/bench/check.ts";
import { showCheck } from "../../../scripts/bench/show-check.ts";

test("both sides read the same folder, and the table has a line for each size", async () => {
  const notes: string[] = [];
  const costs = await benchCheck([20], (line) => notes.push(line));
  expect(notes).toHaveLength(3);
  const [cost] = costs;
  expect(cost?.records).toBe(20);
  expect(cost?.files).toBeGreaterThan(20);
  for (const side of [cost?.check, cost?.bare]) expect(side?.seconds).toBeGreaterThan(0);
  expect(showCheck(costs).split("\n")).toHaveLength(2);
});
