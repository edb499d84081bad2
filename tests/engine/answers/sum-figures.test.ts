/** What the records fill into a sum: for which car it can be told, and why not for another. */
import { expect, test } from "vitest";
import type { CarInput } from "../../../src/engine/answers/shapes/car.ts";
import { sumFigures } from "../../../src/engine/answers/sum-figures.ts";
import type { SumJob } from "../../../src/engine/records/shapes/sums.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const knowledge = tinyKnowledge();
const job = (given: SumJob["inputs"][string]): SumJob => ({
  sum: "pulley",
  title: "pump speed",
  record: "HY59-01",
  component: "pump",
  inputs: { engine: given },
});
const ON_CAR = { mark: "bore", component: "pump" };
const RIBS = { mark: "ribs", component: "pump" };
const LOW = { setting: "oil pressure", side: "low" } as const;
const NOMINAL = { setting: "oil pressure", side: "nominal" } as const;

// what is asked for, car, what is filled in, why or why not
const CASES: [SumJob["inputs"][string], CarInput, string | undefined, string][] = [
  ["900 rpm", {}, "900 rpm", "HY59-01 says so"],
  [{ mark: "bore", part: "HT-101" }, {}, "18 mm", "bore of the inlet of HT-101"],
  [{ mark: "bore", part: "HT-102" }, {}, undefined, "bore of the inlet: not on record"],
  [ON_CAR, { plate: "B9K0411" }, "18 mm", "bore of the inlet of HT-101, as built"],
  [ON_CAR, { plate: "B9K0412", fitted: ["HT-101"] }, "18 mm", "bore of the inlet of HT-101, found on the car"],
  [RIBS, { plate: "B9K0412" }, "two", "ribs on the body of HT-102, as built"],
  [RIBS, { facts: { line: "H", my: 1959 } }, undefined, "ribs on the body: it depends on the part, HT-101 or HT-102"],
  [RIBS, { facts: { line: "H", my: 1960 } }, undefined, "no record says which part this car was built with"],
  [
    RIBS,
    { facts: { line: "H" } },
    undefined,
    "for some of the cars that this can be, no record says which part was fitted",
  ],
  [NOMINAL, { facts: { line: "B" } }, "130 bar", "oil pressure, in force for this car"],
  [LOW, { facts: { line: "B" } }, "120 bar", "oil pressure, in force for this car"],
  [LOW, { facts: { line: "H" } }, undefined, "oil pressure: no low value is on record"],
  [ON_CAR, { facts: { line: "H", my: 1957 } }, undefined, "no such car was built"],
  [NOMINAL, {}, undefined, "oil pressure: it depends on the car; say more about it"],
  [NOMINAL, { facts: { line: "H", my: 1957 } }, undefined, "no such car was built"],
  [{ setting: "oil level", side: "low" }, {}, undefined, "oil level: no record gives it for this car"],
];
test.each(CASES)("%j on %j: %s", (given, car, typed, why) => {
  const [figure] = sumFigures(knowledge, job(given), car).inputs;
  expect(figure?.typed).toBe(typed);
  expect(figure?.why).toBe(why);
  if (typed !== undefined) expect(figure?.because.map((it) => it.record)).toContain("HY59-01");
});

test("a figure of a record that was withdrawn, or that another one ended, is not filled in", () => {
  const path = "changes/1959/HY59-01.md";
  const withdrawn = tinyKnowledge({ [path]: ["kinds:", "withdrawn: It was wrong.\nkinds:"] });
  const car = { facts: { line: "B" } };
  expect(sumFigures(withdrawn, job(NOMINAL), car).inputs[0]?.why).toBe("oil pressure: no record gives it for this car");
  const ended = tinyKnowledge({
    "changes/1958/FR58-01.md": [
      ...["issued: 1958-03-01", "issued: 1959-03-01"],
      ...["scope: my>=1958", "scope: my>=1958\ncancels: [{ record: HY59-01 }]"],
    ],
    [path]: ["cancels:\n  - { record: FR58-01, scope: line=B }\n", ""],
  });
  expect(sumFigures(ended, job(NOMINAL), car).inputs[0]?.why).toBe("oil pressure: no record gives it for this car");
});
