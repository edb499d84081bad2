/**
 * A tiny folder with parts that go on in sets: pump parts A, gasket parts B and lift parts C, D for an empty place, and E for two
 * arms, of which some are for one hand.
 */
import { carsOf } from "../../src/engine/answers/car.ts";
import type { Knowledge } from "../../src/engine/answers/knowledge.ts";
import type { Catalog } from "../../src/engine/records/catalog.ts";
import { type CarSet, NONE } from "../../src/engine/scope/diagram.ts";
import { tinyKnowledge } from "./tiny-knowledge.ts";

const PARTS = ["A-1", "A-2", "B-1", "B-2", "B-3", "C-1", "C-2", "D-1"].map(
  (number) => `  - { number: ${number}, name: part ${number} }`,
);
const ARMS = [
  "  - { number: E-1, name: arm }",
  "  - { number: E-2L, name: arm, hand: left }",
  "  - { number: E-2R, name: arm, hand: right }",
];

/** The Badgers have what they were built with, but for the parts `fitted`. `built` and `standIns` are the rows of one record, `rest` whatever else it states; the pump of the tiny folder's own record is taken out. */
export function openSets(
  built: readonly string[],
  standIns: readonly string[],
  rest = "",
  fitted: readonly string[] = [],
): { knowledge: Knowledge; catalog: Catalog; badgers: CarSet } {
  const rows = (items: readonly string[]): string => items.map((it) => `  - { ${it} }`).join("\n");
  const knowledge = tinyKnowledge({
    "parts/lift.yaml": `component: lift\nparts:\n${[...PARTS, ...ARMS].join("\n")}\n`,
    "components/hydraulics.yaml": ["places: [lift arms]", 'places: [lift arms, "arm, left", "arm, right"]'],
    "changes/1959/HY59-01.md": [
      "  - { place: pump, part: HT-101, scope: line=B; at=K59#0412- }\n  - { place: pump, part: HT-102, scope: line=B; at=K59#0412+ }\n",
      "",
    ],
    "changes/1960/FR60-01.md": `---
id: FR60-01
title: Sets
issued: 1960-03-01
kinds: [part]
starts: x
scope: my=1957-1960
built:
${rows(built)}
${standIns.length > 0 ? `stands-in:\n${rows(standIns)}\n` : ""}${rest}
---

x
`,
  });
  const { catalog } = knowledge;
  const line = catalog.lines.find((it) => it.id === "B")?.cars ?? NONE;
  return { knowledge, catalog, badgers: carsOf(knowledge, line, [], fitted) };
}
