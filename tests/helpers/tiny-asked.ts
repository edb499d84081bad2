/**
 * The tiny folder with what questions in words need: little words that name nothing, short names, a figure of its own for each
 * model, and a step that is left or right and was changed in 1960, so that newer on older and older on newer differ.
 *
 *   step, 1958 and 1959      FR-1L FR-1R      the newer one may go on a Badger of these years
 *   step, from 1960 on       FR-2L FR-2R      the older one must not be used
 */
import type { Knowledge } from "../../src/engine/answers/knowledge.ts";
import type { Spoil } from "./tiny-folder.ts";
import { tinyKnowledge } from "./tiny-knowledge.ts";

const STEP = `---
id: FR60-01
title: Wider step
issued: 1960-02-01
kinds: [part]
components: [step]
starts: start of 1960
scope: my>=1960
built:
  - { place: "step, left", part: FR-1L, scope: my=1958-1959 }
  - { place: "step, right", part: FR-1R, scope: my=1958-1959 }
  - { place: "step, left", part: FR-2L, scope: my>=1960 }
  - { place: "step, right", part: FR-2R, scope: my>=1960 }
stands-in:
  - { part: FR-2L, for: FR-1L, verdict: "yes", scope: line=B }
  - { part: FR-2R, for: FR-1R, verdict: "yes", scope: line=B }
  - { part: FR-1L, for: FR-2L, verdict: must-not-be-used, why: It bends. }
  - { part: FR-1R, for: FR-2R, verdict: must-not-be-used, why: It bends. }
settings:
  - { name: step bolt torque, window: 40..50, unit: N·m, component: step, scope: my>=1960 }
  - { name: step bolt torque, window: 20..30, unit: N·m, component: step, scope: my<=1959 }
---

It is **wider**.
`;

export const ASKED: Spoil = {
  "words.yaml": `ignore: [a, an, and, are, between, can, changed, do, does, for, how, i, in, is, it, my, of, on, or, that, the, this, to, was, what, which, will]
mean:
  - { say: [lift, hitch], mean: hydraulics }
`,
  "components/hydraulics.yaml": ["name: hydraulic pump,", "name: hydraulic pump, aliases: [pump],"],
  "components/frame.yaml": `id: frame
name: Frame
order: 2
components:
  - { id: step, name: step, aliases: [footboard], places: ["step, left", "step, right"] }
`,
  "parts/step.yaml": `component: step
features:
  - { id: holes, name: holes in the tread, made: cast, where: on the car, effort: 2, record: FR60-01 }
parts:
  - { number: FR-1L, name: "step, left", marks: { holes: three } }
  - { number: FR-1R, name: "step, right", marks: { holes: three } }
  - { number: FR-2L, name: "step, left", marks: { holes: five } }
  - { number: FR-2R, name: "step, right", marks: { holes: five } }
`,
  "changes/1960/FR60-01.md": STEP,
};

export function askedKnowledge(): Knowledge {
  return tinyKnowledge(ASKED);
}
