import { expect, test } from "vitest";
import { type PartsAsked, partsCompared } from "../../../src/engine/answers/parts-compared.ts";
import { QuestionError } from "../../../src/engine/answers/question-error.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const knowledge = tinyKnowledge();
const KITS = tinyKnowledge({
  "parts/gasket.yaml": `component: gasket
features:
  - { id: tag, name: colour of the tag, made: coloured, where: in the hand, effort: 1, record: HY59-01 }
parts:
  - { number: HT-201, name: round gasket }
  - { number: HT-290, name: gasket kit, marks: { tag: red } }
`,
});

// what is asked, the component, the parts, those left out
test.each<[PartsAsked, string, string[], string[]]>([
  [{ component: "Hydraulic pump" }, "pump", ["HT-101", "HT-102"], []],
  [{ place: "pump" }, "pump", ["HT-101", "HT-102"], []],
  [{ parts: ["ht 102"] }, "pump", ["HT-102"], []],
  [{ component: "pump", parts: ["HT-102", "HT-101", "HT102"], place: "pump" }, "pump", ["HT-102", "HT-101"], []],
  [{ component: "gasket" }, "gasket", ["HT-201"], ["HT-290"]],
  [{ parts: ["HT-201", "HT-290"] }, "gasket", ["HT-201", "HT-290"], []],
  [{ component: "lift" }, "lift", [], []],
])("%j: %s", (asked, component, parts, leftOut) => {
  const found = partsCompared(knowledge, asked);
  expect(found.component.id).toBe(component);
  expect(found.parts.map((it) => it.number)).toEqual(parts);
  expect(found.leftOut.map((it) => it.number)).toEqual(leftOut);
});

test("a kit with marks of its own is compared", () => {
  expect(partsCompared(KITS, { component: "gasket" }).parts.map((it) => it.number)).toEqual(["HT-201", "HT-290"]);
});

// what is asked, what is said
test.each<[PartsAsked, RegExp]>([
  [{}, /^Which parts\?/],
  [{ component: "pumpp" }, /Did you mean 'pump'\?/],
  [{ place: "pum" }, /No place is called 'pum'/],
  [{ parts: ["HT-999"] }, /No part is called 'HT-999'/],
  [{ component: "pump", parts: ["HT-201"] }, /^These are different things: hydraulic pump and pump gasket\./],
])("%j is refused", (asked, said) => {
  expect(() => partsCompared(knowledge, asked)).toThrow(QuestionError);
  expect(() => partsCompared(knowledge, asked)).toThrow(said);
});
