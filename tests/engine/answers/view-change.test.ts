/** How a change is shown: for which tractors, what was cancelled since, what to look at. */
import { expect, test } from "vitest";
import type { answerNetChange } from "../../../src/engine/answers/answer-net-change.ts";
import { lawfulAnswer } from "../../helpers/answer-laws.ts";
import { knowledgeOf } from "../../helpers/one-record.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

type Answer = ReturnType<typeof answerNetChange>;
const ask = (knowledge: ReturnType<typeof tinyKnowledge>, from: number, facts: Record<string, unknown>): Answer =>
  lawfulAnswer(knowledge, { question: "net-change", from, facts }) as unknown as Answer;

test("only some of the tractors changed: which, from what to what, and what each look would mean", () => {
  const knowledge = knowledgeOf(`built:
  - { place: pump, part: HT-101, scope: my<=1958 || plant=K; my>=1959 }
  - { place: pump, part: HT-102, scope: plant=D; line=B }
  - { place: pump gasket, part: HT-201, scope: my<=1959; no=PT }
  - { place: pump gasket, part: HT-290, scope: my<=1959; eq=PT || my=1960 }`);
  const [pump, ...others] = ask(knowledge, 1958, { line: "B", my: 1959 }).changes;
  expect(others).toEqual([]);
  expect(pump?.byCars).toEqual([
    { cars: { text: "plant=D", words: "cars built at Dunmoor" }, from: ["HT-101"], to: ["HT-102"] },
  ]);
  expect([pump?.verdict, pump?.ask?.outcomes.map(({ words, means }) => `${words}: ${means}`)]).toEqual([
    "look first",
    ["Kelby: no change on record", "Dunmoor: HT-102"],
  ]);
  const gasket = ask(knowledge, 1959, { line: "B", my: 1960, plant: "K" }).changes;
  // Without power take-off there are no Badgers any more; those with it kept what they had.
  expect(gasket).toEqual([]);
});

test("tractors changed places: a change for each, so that no two sides read the same", () => {
  const knowledge = knowledgeOf(`built:
  - { place: pump, part: HT-101, scope: plant=K; my=1959 || plant=D; my=1960 }
  - { place: pump, part: HT-102, scope: plant=D; my=1959 || plant=K; my=1960 }`);
  const { changes } = ask(knowledge, 1959, { line: "B", my: 1960 });
  expect(changes.map(({ from, to, byCars }) => [from[0]?.value, to[0]?.value, byCars?.[0]?.cars?.text])).toEqual([
    ["HT-102", "HT-101", "plant=D"],
    ["HT-101", "HT-102", "plant=K"],
  ]);
});

test("what was built stays built, and the entry says which record ended the instruction, on the way too", () => {
  const knowledge = tinyKnowledge({
    "changes/1959/HY59-01.md": `---
id: HY59-01
title: Longer pump
issued: 1959-02-01
kinds: [part, procedure]
components: [pump]
starts: start of 1959
scope: my=1959
built:
  - { place: pump, part: HT-101, scope: my<=1958 }
  - { place: pump, part: HT-102, scope: my=1959 }
  - { place: pump, part: none, scope: my=1960 }
procedures: [{ steps: Bleed it. }]
---

Story.
`,
    "changes/1958/FR58-01.md": `---
id: FR58-01
title: No more bleeding
issued: 1960-03-01
kinds: [cancellation]
starts: x
in-force-from: 1960
scope: my>=1959
cancels: [{ record: HY59-01 }]
---

Story.
`,
  });
  const pump = (from: number, my: number) =>
    ask(knowledge, from, { line: "B", my }).changes.find(({ name }) => name === "pump");
  const ENDED = [{ record: "HY59-01", by: [{ record: "FR58-01", verdict: "yes" }] }];
  expect(pump(1958, 1959)).toMatchObject({ to: [{ value: "HT-102" }], cancelled: ENDED });
  expect(pump(1959, 1960)).toMatchObject({ from: [{ value: "HT-102" }], cancelled: ENDED });
  const longWay = pump(1958, 1960);
  expect(longWay?.steps.map(({ year, cancelled }) => [year, cancelled])).toEqual([
    [1959, ENDED],
    [1960, undefined],
  ]);
  expect(longWay?.cancelled).toEqual(ENDED);
});
