/** A tiny folder with parts that go on in sets: pump parts A, gasket parts B and lift parts C, and D for an empty place. */
import type { Catalog } from "../../src/engine/records/catalog.ts";
import { type CarSet, NONE } from "../../src/engine/scope/diagram.ts";
import { tinyKnowledge } from "./tiny-knowledge.ts";

const PARTS = ["A-1", "A-2", "B-1", "B-2", "C-1", "C-2", "D-1"].map(
  (number) => `  - { number: ${number}, name: part ${number} }`,
);

/** `built` and `standIns` are the rows of one record, `rest` whatever else it states; the pump of the tiny folder's own record is taken out. */
export function openSets(
  built: readonly string[],
  standIns: readonly string[],
  rest = "",
): { catalog: Catalog; badgers: CarSet } {
  const rows = (items: readonly string[]): string => items.map((it) => `  - { ${it} }`).join("\n");
  const { catalog } = tinyKnowledge({
    "parts/lift.yaml": `component: lift\nparts:\n${PARTS.join("\n")}\n`,
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
stands-in:
${rows(standIns)}
${rest}
---

x
`,
  });
  return { catalog, badgers: catalog.lines.find((line) => line.id === "B")?.cars ?? NONE };
}
