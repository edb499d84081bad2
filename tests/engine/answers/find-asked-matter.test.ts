import { describe, expect, test } from "vitest";
import { askIndexOf } from "../../../src/engine/answers/ask-index.ts";
import { readCar } from "../../../src/engine/answers/car.ts";
import { findAskedDues, findAskedSettings } from "../../../src/engine/answers/find-asked-matter.ts";
import { readQuestion } from "../../../src/engine/ask/read-question.ts";
import type { CarSet } from "../../../src/engine/scope/diagram.ts";
import { ASKED } from "../../helpers/tiny-asked.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const knowledge = tinyKnowledge({
  ...ASKED,
  "changes/1958/FR58-01.md": `---
id: FR58-01
title: Frame drilled for a winch
issued: 1958-03-01
kinds: [equipment]
components: [step]
starts: start of 1958
scope: my>=1958
settings:
  - { name: rope drum play, window: 0.2..0.4, unit: mm, scope: line=B }
  - { name: rope drum preload, window: 10..12, unit: N, scope: line=B }
  - { name: winch drum preload, window: 14..16, unit: N, scope: line=H }
intervals:
  - { name: rope greasing, months: 3, scope: all }
---

Four holes.
`,
});
const { catalog } = knowledge;
const { vocabulary, numbers } = askIndexOf(catalog);
const RECORDS = ["FR60-01", "HY59-01", "FR58-01"];

const cars = (facts: readonly string[]): CarSet => readCar(knowledge, { facts: factsIn(facts) }).cars;
const factsIn = (facts: readonly string[]): Record<string, string> =>
  Object.fromEntries(facts.map((fact) => fact.split("=") as [string, string]));

function settings(question: string, { records = RECORDS, facts = [] as readonly string[] } = {}): string[] {
  const asked = { records, cars: cars(facts) };
  return findAskedSettings(catalog, vocabulary, readQuestion(vocabulary, question, numbers), asked).map(
    ({ name }) => name,
  );
}
function dues(question: string, records = RECORDS): string[] {
  return findAskedDues(catalog, vocabulary, readQuestion(vocabulary, question, numbers), records).map(
    ({ name }) => name,
  );
}

describe("the figure that is asked for", () => {
  // question, names of settings
  const CASES: [string, string[]][] = [
    ["step bolt torque", ["step bolt torque"]],
    ["how tight is the step", ["step bolt torque"]],
    ["pump 125 bar", ["oil pressure"]], // a unit of the quantity asks for it too
    ["oil pressure", ["oil pressure"]],
    ["rope drum play", ["rope drum play"]],
    ["rope drum", []],
    ["step", []], // who asks of a step does not ask how tight it is
    ["footboard of a Badger", []],
    ["pump", []],
    ["zeppelin", []],
    ["", []],
  ];
  test.each(CASES)("%s", (question, names) => {
    expect(settings(question).toSorted()).toEqual(names);
  });

  test("only what the records state that the question is about counts", () => {
    expect(settings("oil pressure", { records: ["FR60-01"] })).toEqual([]);
    expect(settings("oil pressure", { records: [] })).toEqual([]);
    expect(settings("step bolt torque", { records: ["HY59-01", "FR60-01"] })).toEqual(["step bolt torque"]);
  });

  test("of figures alike the one is meant that such a car has", () => {
    expect(settings("how much drum preload", { facts: ["line=H"] })).toEqual(["winch drum preload"]);
    expect(settings("how much drum preload", { facts: ["line=B"] })).toEqual(["rope drum preload"]);
  });

  test("it says whether the figure is of the very thing that was named", () => {
    const of = (question: string): boolean[] =>
      findAskedSettings(catalog, vocabulary, readQuestion(vocabulary, question, numbers), {
        records: RECORDS,
        cars: cars([]),
      }).map(({ ofComponent }) => ofComponent);
    expect(of("step bolt torque")).toEqual([true]);
    expect(of("oil pressure")).toEqual([true]); // nothing was named
    expect(of("oil pressure of the step")).toEqual([false]);
  });

  test("every name is one that the records have", () => {
    const known = new Set([...catalog.records.values()].flatMap(({ facts }) => facts.settings.map(({ name }) => name)));
    for (const question of ["how much", "torque", "pressure play", "rope", "oil bolt drum"])
      for (const name of settings(question)) expect(known).toContain(name);
  });
});

describe("what is due", () => {
  // question, names of what is due
  const CASES: [string, string[]][] = [
    ["oil change", ["oil change"]],
    ["how often is the oil changed", ["oil change"]],
    ["rope greasing", ["rope greasing"]],
    ["how often do i grease the rope", ["rope greasing"]],
    ["zeppelin", []],
    ["step bolt torque", []],
  ];
  test.each(CASES)("%s", (question, names) => {
    expect(dues(question)).toEqual(names);
  });

  test("only of the records that the question is about", () => {
    expect(dues("oil change", ["FR58-01"])).toEqual([]);
  });
});
