import { describe, expect, test } from "vitest";
import { answerComponent } from "../../../src/engine/answers/answer-component.ts";
import { lawfulAnswer } from "../../helpers/answer-laws.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const knowledge = tinyKnowledge({
  "components/hydraulics.yaml": ["name: hydraulic pump", "name: hydraulic pump, aliases: [Oil Pump, pmup]"],
  "moved.yaml": ["moved:", "moved:\n  - { kind: component, from: pumpe, to: pump, why: translated }"],
});

// typed, component that is meant
const NAMES: [string, string][] = [
  ["pump", "pump"],
  [" pump ", "pump"],
  ["PUMP", "pump"],
  ["hydraulic pump", "pump"],
  ["Hydraulic Pump", "pump"],
  ["oil pump", "pump"],
  ["pmup", "pump"],
  ["gasket", "gasket"],
  ["pump gasket", "gasket"],
];
test.each(NAMES)("'%s' is component %s", (typed, id) => {
  expect(lawfulAnswer(knowledge, { question: "component", component: typed })).toMatchObject({ component: { id } });
});

// typed, what is asked back, what may be meant
const UNKNOWN: [string, string, string[]][] = [
  ["gaskte", "Which component is meant? None is called 'gaskte'.", ["gasket"]],
  ["hydraulic pumb", "Which component is meant? None is called 'hydraulic pumb'.", ["hydraulic pump"]],
  ["wheel", "Which component is meant? None is called 'wheel'.", []],
  ["pumpe", "'pumpe' is no longer used: translated", ["pump"]],
];
test.each(UNKNOWN)("'%s' is no component, and more is asked", (typed, what, options) => {
  expect(answerComponent(knowledge, typed)).toEqual({
    question: "component",
    verdict: "not on record",
    because: [],
    ask: { what, options },
  });
});

describe("what is on record about a component", () => {
  const view = (id: string): ReturnType<typeof answerComponent>["component"] =>
    answerComponent(knowledge, id).component;

  test("where it stands among the others", () => {
    expect(view("pump")).toMatchObject({
      system: { id: "hydraulics", name: "Hydraulics" },
      under: { id: "lift", title: "lift", address: "/components/lift/" },
      includes: [{ id: "gasket" }],
      places: ["pump"],
    });
    expect(view("lift")).toMatchObject({ includes: [{ id: "pump" }] });
    expect(view("lift")).not.toHaveProperty("under");
  });

  test("its parts with their marks, its changes, its cautions and its citations", () => {
    expect(view("pump")).toMatchObject({
      parts: [{ id: "HT-101" }, { id: "HT-102" }],
      marks: [{ component: "hydraulic pump" }],
      records: [{ id: "HY59-01", title: "Longer hydraulic pump" }],
      cautions: [{ title: "Oil under pressure" }],
      citedBy: [{ id: "TB-1" }],
    });
  });

  test("a component that no record is about is on record, and nothing is claimed of it", () => {
    expect(lawfulAnswer(knowledge, { question: "component", component: "lift" })).toMatchObject({
      verdict: "on record",
      because: [],
      component: { records: [], parts: [], marks: [] },
    });
  });
});
