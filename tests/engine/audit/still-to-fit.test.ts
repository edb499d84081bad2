import { expect, test } from "vitest";
import { stillToFit } from "../../../src/engine/audit/still-to-fit.ts";
import { openPartIndex } from "../../../src/engine/interchange/part-index.ts";
import { NONE } from "../../../src/engine/scope/diagram.ts";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";

const RECORD = "changes/1959/HY59-01.md";

/** On which of the Badgers the gasket is still to be fitted, and what a scope means there. */
function gasketOf(...changes: string[]) {
  const catalog = catalogOf(spoiled({ [RECORD]: changes }));
  const carsOf = (text: string) => {
    const read = readScope(catalog.space, text);
    if ("slips" in read) throw new Error(read.slips[0]?.message);
    return catalog.space.sets.and(catalog.buildable, read.scope.cars);
  };
  return { cars: stillToFit(openPartIndex(catalog), "HT-201", carsOf("line=B")), carsOf };
}

test("all, but for those that have it on them", () => {
  const { cars, carsOf } = gasketOf();
  expect(cars).toBe(carsOf("line=B; fitted!=HT-201"));
});

test("not where the plant fitted it; where the plant used either, it may be missing", () => {
  const { cars, carsOf } = gasketOf(
    ...["built:\n", "built:\n  - { place: pump gasket, part: HT-201, scope: my<=1958 }\n"],
    ...["mixed:\n", "mixed:\n  - { place: pump gasket, parts: [HT-201, HT-290], scope: my>=1959 }\n"],
  );
  expect(cars).toBe(carsOf("line=B; my>=1959; fitted!=HT-201"));
});

test("not where it is refused", () => {
  const { cars } = gasketOf(
    "why: It runs dry. }",
    "why: It runs dry. }\n  - { part: HT-201, for: none, verdict: does-not-go-on, why: It is square., scope: line=B }",
  );
  expect(cars).toBe(NONE);
});
