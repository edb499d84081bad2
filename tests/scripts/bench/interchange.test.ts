import { expect, test } from "vitest";
import { askChains } from "../../../scripts/bench/ask-chains.ts";
import { INTERCHANGE_SIZES, madeUpCars, questions } from "../../../scripts/bench/interchange.ts";
import { makeChains } from "../../../scripts/bench/make-chains.ts";
import { showInterchange } from "../../../scripts/bench/show-interchange.ts";
import { linesIndexOf } from "../../../src/engine/records/lines-index.ts";

test("the made-up chains give answers of every kind, and the report has its figures", async () => {
  const catalog = await madeUpCars();
  const slice = makeChains(catalog, 60);
  expect(makeChains(catalog, 60)).toEqual(slice);
  expect(Object.keys(slice.parts)).toHaveLength(60);
  const sizes = { ...INTERCHANGE_SIZES, parts: [60], questions: 80, cars: 2 };
  const times = askChains(linesIndexOf(catalog), slice, questions(catalog, slice, sizes));
  expect(times.mayFit).toHaveLength(79);
  expect(times.paths).toHaveLength(2);
  for (const verdict of ["as built", "yes, on conditions", "goes on but must not be used", "not on record"])
    expect(times.verdicts[verdict] ?? 0).toBeGreaterThan(0);
  expect(Math.max(...times.paths)).toBeGreaterThan(5);
  const text = showInterchange({ sizes, bySize: [{ parts: 60, times }] });
  for (const words of ["60", "aims with 10,000 parts", "as built"]) expect(text).toContain(words);
});
