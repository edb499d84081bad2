import { describe, expect, test } from "vitest";
import { askIndexOf } from "../../../src/engine/answers/ask-index.ts";
import { findAskedDues, findAskedSettings } from "../../../src/engine/answers/find-asked-matter.ts";
import { readQuestion } from "../../../src/engine/ask/read-question.ts";
import { ASKED } from "../../helpers/tiny-asked.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const { catalog } = tinyKnowledge({
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
intervals:
  - { name: rope greasing, months: 3, scope: all }
---

Four holes.
`,
});
const { vocabulary, numbers } = askIndexOf(catalog);
const RECORDS = ["FR60-01", "HY59-01", "FR58-01"];

const settings = (question: string, records = RECORDS): string[] =>
  findAskedSettings(catalog, vocabulary, readQuestion(vocabulary, question, numbers), records);
const dues = (question: string, records = RECORDS): string[] =>
  findAskedDues(catalog, vocabulary, readQuestion(vocabulary, question, numbers), records);

describe("the figure that is asked for", () => {
  // question, names of settings
  const CASES: [string, string[]][] = [
    ["step bolt torque", ["step bolt torque"]],
    ["how tight is the step", ["step bolt torque"]],
    ["pump 125 bar", ["oil pressure"]], // a unit of the quantity asks for it too
    ["oil pressure", ["oil pressure"]],
    ["rope drum play", ["rope drum play"]],
    ["rope drum preload", ["rope drum preload"]],
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
    expect(settings("oil pressure", ["FR60-01"])).toEqual([]);
    expect(settings("oil pressure", [])).toEqual([]);
    expect(settings("step bolt torque", ["HY59-01", "FR60-01"])).toEqual(["step bolt torque"]);
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
