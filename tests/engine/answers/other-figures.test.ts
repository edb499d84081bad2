import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { readCar } from "../../../src/engine/answers/car.ts";
import { figuresForCar } from "../../../src/engine/answers/figures-for-car.ts";
import { findSettings, type SettingMatter } from "../../../src/engine/answers/find-settings.ts";
import { explainedBy, otherFigures, type Reading, viewOther } from "../../../src/engine/answers/other-figures.ts";
import type { CarInput } from "../../../src/engine/answers/shapes/car.ts";
import type { Setting } from "../../../src/engine/records/statement.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

/** The play of a shaft, which a wider inlet makes greater; the later pump has the wider one. */
const knowledge = tinyKnowledge({
  "parts/pump.yaml": `component: pump
features:
  - { id: ribs, name: ribs on the body, made: cast, where: on the car, effort: 2, record: HY59-01 }
  - id: bore
    name: bore of the inlet
    made: measured
    unit: mm
    tolerance: 0.1
    where: in the hand
    effort: 4
    record: HY59-01
    moves: [{ setting: shaft play, by: 1 }]
parts:
  - { number: HT-101, name: "pump, short", marks: { ribs: none, bore: 18 } }
  - { number: HT-102, name: "pump, long", marks: { ribs: two, bore: 18.5 } }
`,
  "changes/1959/HY59-01.md": [
    `  - { name: oil pressure, window: 120..135, nominal: 130, unit: bar, conditions: hot, scope: line=B }
`,
    `  - { name: shaft play, window: 0.1..0.3, unit: mm, scope: my<=1958 }
  - { name: shaft play, window: 0.4..0.6, unit: mm, scope: my>=1959 }
  - { name: shaft play of the winch, window: 1..2, unit: mm, scope: all }
`,
  ],
});
const [matter] = findSettings(knowledge.catalog, "shaft play") as [SettingMatter];

function asked(input: CarInput, millimetres: string) {
  const car = readCar(knowledge, input);
  const [value] = figuresForCar(knowledge, car, matter).values;
  const inForce = value?.statements[0] as Setting;
  const read = new Fraction(millimetres);
  const reading: Reading = { read: { low: read, high: read }, error: new Fraction(0), unit: "mm" };
  const others = otherFigures(knowledge, car, matter, [inForce], "mm").map((it) => viewOther(knowledge, reading, it));
  return { others, explained: explainedBy(knowledge, car, matter, inForce, reading) };
}

// facts, reading, other figures with the verdict there and whether they are this car's in another year, the part that explains it
const CASES: [Record<string, string | number>, string, [string, string, boolean][], string[]][] = [
  [{ line: "B", my: 1957 }, "0.5", [["0.4 to 0.6 mm", "within", true]], ["HT-102 for HT-101"]], // by its figure
  [{ line: "B", my: 1957 }, "0.7", [["0.4 to 0.6 mm", "too high", true]], ["HT-102 for HT-101"]], // by its mark
  [{ line: "B", my: 1957 }, "0.9", [["0.4 to 0.6 mm", "too high", true]], []],
  [{ line: "B", my: 1957 }, "0.05", [["0.4 to 0.6 mm", "too low", true]], []],
  [{ line: "B", my: 1960, plant: "K" }, "0.3", [["0.1 to 0.3 mm", "within", true]], ["HT-101 for HT-102"]],
  [{ line: "B", my: 1960, plant: "K" }, "0.05", [["0.1 to 0.3 mm", "too low", true]], ["HT-101 for HT-102"]],
  [{ line: "H", my: 1959 }, "0.3", [["0.1 to 0.3 mm", "within", false]], []], // Herons were not built before; either pump may be in it
  [{ line: "H", my: 1961 }, "0.3", [["0.1 to 0.3 mm", "within", false]], []], // which pump belongs there is not on record
];
test.each(CASES)("%j, %s mm", (facts, millimetres, others, explained) => {
  const told = asked({ facts }, millimetres);
  expect(told.others.map(({ figure, verdict, sameCar }) => [figure.said, verdict, sameCar])).toEqual(others);
  expect(told.explained.map(({ part, inPlaceOf }) => `${part} for ${inPlaceOf}`)).toEqual(explained);
});

test("what explains it says why, how the two are told apart, and who says so", () => {
  const { explained } = asked({ facts: { line: "B", my: 1957 } }, "0.7");
  expect(explained).toMatchObject([
    {
      why: "With HT-102 (bore of the inlet: 18.5 mm) in place of HT-101 (18 mm) it would be 0.6..0.8 mm.",
      tell: ["ribs on the body: HT-102 two, HT-101 none", "bore of the inlet: HT-102 18.5 mm, HT-101 18 mm"],
      because: [{ record: "HY59-01", statement: "record" }],
    },
  ]);
});

test("a part that was found stands for what the plant fitted", () => {
  const { explained } = asked({ facts: { line: "B", my: 1960, plant: "K" }, fitted: ["HT-101"] }, "0.7");
  expect(explained.map(({ inPlaceOf }) => inPlaceOf)).not.toContain("HT-102");
});

test("each figure is named once, and a setting of another name or unit never", () => {
  const car = readCar(knowledge, { facts: { line: "B", my: 1957 } });
  expect(otherFigures(knowledge, car, matter, [], "mm").map(({ setting }) => setting.low)).toEqual(["0.1", "0.4"]);
  expect(otherFigures(knowledge, car, matter, [], "bar")).toEqual([]);
  expect(otherFigures(knowledge, car, matter, matter.statements, "mm")).toEqual([]);
});
