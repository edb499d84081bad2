import { expect, test } from "vitest";
import { componentOf, findSettings, settingsOf } from "../../../src/engine/answers/find-settings.ts";
import type { Setting } from "../../../src/engine/records/statement.ts";
import { knowledgeOf } from "../../helpers/one-record.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const { catalog } = knowledgeOf(
  `settings:
  - { name: oil pressure, window: 120..135, unit: bar, conditions: hot, scope: line=B }
  - { name: oil pressure, window: ..90, unit: bar, conditions: cold, scope: line=B }
  - { name: run-out of the shaft, window: ..0.1, unit: mm, component: lift, scope: all }
  - { name: gap, inlet, window: 0.2..0.3, unit: mm, scope: all }
  - { name: gap, outlet, window: 0.3..0.4, unit: mm, scope: all }
  - { name: cold gap, window: 0.3..0.4, unit: mm, scope: line=H }`.replace(/name: (gap, \w+)/g, 'name: "$1"'),
);

// what is typed, which settings are meant
const CASES: [string, string[]][] = [
  ["oil pressure", ["oil pressure (hot)", "oil pressure (cold)"]], // the name of several, by their conditions
  ["OIL  Pressure", ["oil pressure (hot)", "oil pressure (cold)"]],
  ["oil pressures", ["oil pressure (hot)", "oil pressure (cold)"]],
  ["oil pressure (hot)", ["oil pressure (hot)"]],
  ["oil pressure, cold", ["oil pressure (cold)"]],
  ["pressure", ["oil pressure (hot)", "oil pressure (cold)"]],
  ["run out", ["run-out of the shaft"]],
  ["runout", ["run-out of the shaft"]],
  ["shaft run-out", ["run-out of the shaft"]], // the order does not matter
  ["the run-out of a shaft", ["run-out of the shaft"]],
  ["gap", ["gap, inlet", "gap, outlet", "cold gap"]],
  ["inlet gap", ["gap, inlet"]],
  ["gap cold", ["cold gap"]],
  ["lift", ["run-out of the shaft"]], // by its component, which no name holds
  ["pump pressure", ["oil pressure (hot)", "oil pressure (cold)"]],
  [
    "HY59-01",
    ["oil pressure (hot)", "oil pressure (cold)", "run-out of the shaft", "gap, inlet", "gap, outlet", "cold gap"],
  ],
];
test.each(CASES)("'%s' means %j", (typed, names) => {
  expect(findSettings(catalog, typed).map((it) => it.name)).toEqual(names);
});

// what is typed, what is said of it
const UNKNOWN: [string, string][] = [
  ["oil presure", "No setting is called 'oil presure'. Did you mean 'oil pressure'?"],
  ["colour", "No setting is called 'colour'."],
  ["of the", "No setting is called 'of the'."],
  ["🚜", "No setting is called '🚜'."],
];
test.each(UNKNOWN)("'%s' is no setting", (typed, words) => {
  expect(() => findSettings(catalog, typed)).toThrow(words);
});

test("every setting is found by its own name, and by nothing less than itself", () => {
  const { catalog: tiny } = tinyKnowledge();
  for (const one of [catalog, tiny])
    for (const matter of settingsOf(one)) expect(findSettings(one, matter.name)).toContain(matter);
});

test("the settings of a catalog are listed once", () => {
  expect(settingsOf(catalog)).toBe(settingsOf(catalog));
  expect(settingsOf(catalog)).toHaveLength(6);
});

test("a figure is about its own component, or the main one of its record", () => {
  const figures = settingsOf(catalog).map((it) => it.statements[0] as Setting);
  expect(figures.map((it) => componentOf(catalog, it)?.id)).toEqual(["pump", "pump", "lift", "pump", "pump", "pump"]);
});
