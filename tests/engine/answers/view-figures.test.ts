import { describe, expect, test } from "vitest";
import { answerSetting } from "../../../src/engine/answers/answer-setting.ts";
import { readCar } from "../../../src/engine/answers/car.ts";
import { NOT_ON_RECORD } from "../../../src/engine/answers/compare-years.ts";
import { figuresForCar } from "../../../src/engine/answers/figures-for-car.ts";
import { findSettings, type SettingMatter } from "../../../src/engine/answers/find-settings.ts";
import type { CarInput } from "../../../src/engine/answers/shapes/car.ts";
import type { SettingView } from "../../../src/engine/answers/shapes/setting.ts";
import { clausesOf, verdictOf, viewFigure, viewSetting, viewValues } from "../../../src/engine/answers/view-figures.ts";
import type { Setting } from "../../../src/engine/records/statement.ts";
import { NONE } from "../../../src/engine/scope/diagram.ts";
import { knowledgeOf } from "../../helpers/one-record.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const tiny = tinyKnowledge();

function viewed(knowledge: typeof tiny, input: CarInput, typed = "oil pressure"): SettingView {
  const [matter] = findSettings(knowledge.catalog, typed) as [SettingMatter];
  const car = readCar(knowledge, input);
  return viewSetting(knowledge, matter, figuresForCar(knowledge, car, matter), car.cars);
}

// conditions as written, clause by clause
const CONDITIONS: [string | undefined, string[]][] = [
  [undefined, []],
  ["", []],
  ["hot", ["hot"]],
  ["in neutral, high beam on, hose plugged", ["in neutral", "high beam on", "hose plugged"]],
  ["fluid drained; linkage off", ["fluid drained", "linkage off"]],
  ["1,500 rpm, blower high", ["1,500 rpm", "blower high"]], // the comma of a number divides nothing
  [" ; , ", []],
];
test.each(CONDITIONS)("%j is measured so: %j", (conditions, clauses) => {
  expect(clausesOf(conditions)).toEqual(clauses);
});

describe("one figure", () => {
  const [matter] = findSettings(tiny.catalog, "oil pressure") as [SettingMatter];
  const [badger, heron] = matter.statements as [Setting, Setting];

  test("with both limits, the value to aim for, and the other unit rounded inward", () => {
    expect(viewFigure(badger, ["HY59-01"])).toEqual({
      said: "120 to 135 bar",
      low: "120",
      high: "135",
      unit: "bar",
      aimFor: "130",
      conditions: ["hot"],
      converted: { low: "1750", high: "1950", unit: "psi" }, // 1740.5 to 1957.9
      records: ["HY59-01"],
    });
  });

  test("with an upper limit only, and its cars", () => {
    expect(viewFigure(heron, [], "Heron")).toEqual({
      said: "at most 90 bar",
      high: "90",
      unit: "bar",
      conditions: [],
      converted: { high: "1300", unit: "psi" }, // 1305.3
      cars: "Heron",
      records: [],
    });
  });

  test("an exact figure needs no value to aim for", () => {
    expect(viewFigure({ ...badger, low: "4", high: "4", nominal: 4 }, [])).not.toHaveProperty("aimFor");
  });
});

describe("the figures that a car may have", () => {
  // facts, verdict, figures with the cars of each, perhaps none
  const CASES: [object, string, [string, string | undefined][], boolean][] = [
    [{ line: "B" }, "in force", [["120 to 135 bar", undefined]], false],
    [{ line: "H" }, "in force", [["at most 90 bar", undefined]], false],
    [
      {},
      "look first",
      [
        ["120 to 135 bar", "Badger"],
        ["at most 90 bar", "Heron"],
      ],
      false,
    ],
    [{ line: "H", my: 1957 }, "no such car", [], false],
  ];
  test.each(CASES)("%j: %s", (facts, verdict, figures, perhapsNone) => {
    const view = viewed(tiny, { facts } as CarInput);
    expect([view.verdict, view.figures.map(({ said, cars }) => [said, cars]), view.perhapsNone]).toEqual([
      verdict,
      figures,
      perhapsNone,
    ]);
  });

  const oneFigure = (scope: string): typeof tiny =>
    knowledgeOf(`settings: [{ name: oil pressure, window: ..90, unit: bar, scope: ${scope} }]`);

  test("a figure that only some of them have is not in force, and no figure is none", () => {
    expect(viewed(oneFigure("line=B"), {})).toMatchObject({ verdict: "look first", perhapsNone: true });
    expect(viewed(oneFigure("line=B"), { facts: { line: "H" } })).toMatchObject({
      verdict: "no such setting",
      figures: [],
      perhapsNone: true,
    });
  });
});

describe("two figures for one and the same car", () => {
  const two = knowledgeOf(`settings:
  - { name: oil pressure, window: 120..135, unit: bar, scope: my<=1959 }
  - { name: oil pressure, window: ..90, unit: bar, scope: my>=1959 }`);

  test("contradict each other, for the cars that have both", () => {
    expect(viewed(two, { facts: { my: 1959 } }).verdict).toBe("contradiction");
    expect(viewed(two, { facts: { my: 1958 } }).verdict).toBe("in force");
  });

  test("do not where a part was found that may have brought one of them", () => {
    const { catalog } = two;
    const { cars } = readCar(two, {});
    const value = (said: string) => ({ said, statements: [], cars });
    expect(verdictOf(catalog, [value("a"), value("b")], cars)).toBe("contradiction");
    expect(verdictOf(catalog, [{ ...value("a"), asFound: true }, value("b")], cars)).toBe("look first");
    expect(verdictOf(catalog, [value("a")], cars)).toBe("in force");
    expect(verdictOf(catalog, [value(NOT_ON_RECORD)], cars)).toBe("no such setting");
    expect(verdictOf(catalog, [value("a")], NONE)).toBe("no such car");
    expect(viewValues(catalog, [value(NOT_ON_RECORD)], cars)).toEqual([]);
  });
});

test("a figure that came with a part is said together with what the records say against the part", () => {
  const knowledge = knowledgeOf(`built:
  - { place: pump, part: HT-101, scope: line=B; my<=1959 }
  - { place: pump, part: HT-102, scope: line=B; my>=1960 }
stands-in:
  - { part: HT-102, for: HT-101, verdict: must-not-be-used, why: it bursts the pipe. }
settings:
  - { name: pump pressure, window: 10..20, unit: bar, component: pump, scope: line=B; my<=1959 }
  - { name: pump pressure, window: 30..40, unit: bar, component: pump, scope: line=B; my>=1960 }`);
  const { settings, words } = answerSetting(knowledge, {
    setting: "pump pressure",
    car: { facts: { line: "B", my: "1958" }, fitted: ["HT-102"] },
  });
  const [view] = settings;
  expect([view?.verdict, view?.figures[0]?.said, view?.movedWith]).toEqual(["in force", "30 to 40 bar", "HT-102"]);
  expect(view?.refused).toEqual([
    expect.stringContaining("must not be used in place of HT-101 on this car: it bursts the pipe ("),
  ]);
  expect(words).toContain(view?.refused[0]);
});
