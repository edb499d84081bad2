import { expect, test } from "vitest";
import { benchScopes } from "../../../scripts/bench/scopes.ts";
import { showScopes } from "../../../scripts/bench/show-scopes.ts";

const sizes = { rows: 60, scopes: 300, packageScopes: 100, carsPerLevel: 2, runs: 1, single: 40 };

test("the sweep, the loop and the rule engine agree on every car of which all is known, and the report has its figures", async () => {
  const result = await benchScopes(sizes, () => {});
  expect(result.differed).toBe(0);
  // Seven levels of two cars by the loop, and two whole cars by the rule engine.
  expect(result.compared).toBe(7 * 2 * 300 + 2 * 100);
  expect(result.levels.map(({ known }) => known)).toEqual([
    ...["nothing", "line", "line and year", "line, year, 4 more", "line, year, 8 more", "all but 3", "everything"],
  ]);
  for (const { verdicts } of result.levels) expect(verdicts.yes + verdicts.no + verdicts.open).toBe(300);
  expect(result.levels.at(0)?.verdicts.open).toBeGreaterThan(100);
  expect(result.levels.at(-1)?.verdicts.open).toBe(0);
  expect(result.levels.at(-1)?.verdicts.yes).toBeGreaterThan(0);
  expect(Object.keys(result.setUp)).toEqual(["sets", "sweep", "loop", "package"]);
  expect(Object.keys(result.single)).toEqual([
    ...["and", "or", "minus", "covers", "describe", "applies", "decidingTraits", "nextLook"],
  ]);
  expect(result.single.and?.asked).toBe(40);
  expect(result.single.decidingTraits?.asked).toBeGreaterThan(0);
  const text = showScopes(result);
  for (const words of ["300 scopes, 60 rows", "line and year", "4,400 verdicts compared, 0 differ", "nextLook"])
    expect(text).toContain(words);
});
