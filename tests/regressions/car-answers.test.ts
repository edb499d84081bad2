/** Faults that a review of the car answers found, each as the smallest example that shows it. */

import { describe, expect, test } from "vitest";
import { answerApplies } from "../../src/engine/answers/answer-applies.ts";
import { openCarKnowledge } from "../../src/engine/answers/car-knowledge.ts";
import { answerQuestion } from "../../src/engine/answers/questions.ts";
import type { Line } from "../../src/engine/records/catalog.ts";
import { linesIndexOf, openLinesIndex } from "../../src/engine/records/lines-index.ts";
import { openSlice, sliceOf } from "../../src/engine/records/slice.ts";
import { knowledgeOf } from "../helpers/one-record.ts";
import { tinyKnowledge } from "../helpers/tiny-knowledge.ts";

// biome-ignore lint/suspicious/noExplicitAny: short
const ask = (k: any, a: any): any => answerQuestion(k, a);
const FITTED = { "changes/1959/HY59-01.md": ["scope: fitted=HT-201 }", "scope: fitted=HT-102 }"] } as const;
const frame = (facts: string, scope: string) =>
  tinyKnowledge({
    "changes/1959/HY59-01.md": ["cancels:\n  - { record: FR58-01, scope: line=B }\n", ""],
    "changes/1958/FR58-01.md": `---\nid: FR58-01\ntitle: Frame\nissued: 1958-03-01\nkinds: [procedure]\nstarts: x\nscope: ${scope}\n${facts}\n---\n\nx\n`,
  });

test("a question that names a part leaves later answers as they are", () => {
  const k = tinyKnowledge();
  const q = { question: "applies", record: "HY59-01", facts: { line: "B" } };
  const before = ask(k, q);
  ask(k, { ...q, fitted: ["HT-102"] });
  expect(ask(k, q)).toEqual(before);
});
describe("'fitted' told as a fact, as the question names it", () => {
  const k = tinyKnowledge(FITTED);
  const facts = { line: "B", my: 1957, "fitted HT-102": true };
  test("is what is on the car", () =>
    expect(ask(k, { question: "applies", scope: "fitted=HT-102", facts }).verdict).toBe("yes"));
  test("car: verdict and records agree", () => {
    const a = ask(k, { question: "car", facts });
    expect([a.verdict, a.records.some((r: { verdict: string }) => r.verdict === "no such car")]).toEqual([
      "known",
      false,
    ]);
  });
});
test("conflict of facts as found is smallest", () => {
  const a = ask(tinyKnowledge(), {
    question: "applies",
    record: "HY59-01",
    facts: { line: "B", plant: "K" },
    found: { PT: true, no: "PT" },
  });
  expect(a.conflict.map((f: { text: string }) => f.text)).toEqual(["PT=true", "no=PT"]);
});
test("built: two records that contradict each other, car wholly known: no look first without a look", () => {
  const k = knowledgeOf(
    "built:\n  - { place: pump, part: HT-101, scope: line=B }\n  - { place: pump, part: HT-102, scope: my=1960 }",
  );
  const a = ask(k, { question: "built", place: "pump", facts: { line: "B", my: 1960, plant: "K" } });
  expect([a.verdict, a.ask !== undefined]).not.toEqual(["look first", false]);
});
test("built: one mixed stretch stated in two rows", () => {
  const k = knowledgeOf(
    "mixed:\n  - { place: pump, parts: [HT-101, HT-102], scope: line=B; my=1958 }\n  - { place: pump, parts: [HT-101, HT-102], scope: line=B; my=1959 }",
  );
  expect(ask(k, { question: "built", place: "pump", facts: { line: "B", my: [1958, 1959] } }).verdict).toBe(
    "mixed stretch",
  );
});
test("built: nothing is asked that does not change the part", () => {
  const k = knowledgeOf(
    "built:\n  - { place: pump, part: HT-101, scope: line=B; plant=K }\n  - { place: pump, part: HT-101, scope: line=B; plant=D }\n  - { place: pump, part: HT-102, scope: line=H }",
  );
  const a = ask(k, { question: "built", place: "pump", facts: {} });
  expect(a.ask.deciding).toEqual(["line"]);
});
test("built: what was found does not change what the plant fitted", () => {
  const k = knowledgeOf(
    "built:\n  - { place: pump, part: HT-101, scope: no=PT }\n  - { place: pump, part: HT-102, scope: eq=PT }",
  );
  expect(
    ask(k, { question: "built", place: "pump", facts: { line: "B", my: 1957 }, found: { PT: true } }).parts,
  ).toEqual(["HT-101"]);
});
test("net change: a figure of a cancelled record is in force no longer", () => {
  const k = tinyKnowledge({
    "changes/1958/FR58-01.md":
      "---\nid: FR58-01\ntitle: Frame\nissued: 1958-03-01\nkinds: [setting]\nstarts: x\nscope: my>=1958\nsettings:\n  - { name: gap, window: 1..2, unit: mm, scope: my<=1957 }\n  - { name: gap, window: 3..4, unit: mm, scope: my>=1958 }\n---\n\nx\n",
  });
  const a = ask(k, { question: "net-change", from: 1957, facts: { line: "B", my: 1960, plant: "K" } });
  const gap = a.changes.find((c: { name: string }) => c.name === "gap");
  expect(gap?.to.map((v: { value: string }) => v.value) ?? []).not.toContain("3 to 4 mm");
});
test("net change: a record for other cars each year is not 'no change'", () => {
  const k = frame("procedures: [{ steps: Do it. }]", "my=1959; plant=K || my=1960; plant=D");
  const one = (plant?: string) =>
    ask(k, {
      question: "net-change",
      from: 1959,
      facts: { line: "H", my: 1960, ...(plant ? { plant } : {}) },
    }).changes.filter((c: { name: string }) => c.name === "Frame").length;
  expect([one("K"), one("D")]).toEqual([1, 1]);
  expect(one()).toBe(1);
});
test("net change: from one part to a mixed stretch with the same part is open", () => {
  const k = knowledgeOf(
    "built:\n  - { place: pump, part: HT-101, scope: my=1958 }\nmixed:\n  - { place: pump, parts: [HT-101, HT-102], scope: my=1959 }",
  );
  const a = ask(k, { question: "net-change", from: 1958, facts: { line: "B", my: 1959, plant: "K" } });
  expect(a.changes.find((c: { name: string }) => c.name === "pump").verdict).not.toBe("changed");
});
test("slice: a record of another line that cancels one of this line", () => {
  const { catalog } = tinyKnowledge({
    "changes/1959/HY59-01.md": ["  - { record: FR58-01, scope: line=B }", "  - { record: LX59-02 }"],
    "changes/1959/LX59-02.md":
      "---\nid: LX59-02\ntitle: X\nissued: 1959-02-01\nkinds: [procedure]\nstarts: x\nscope: line=H\ncancels: [{ record: FR58-01 }]\n---\n\nx\n",
  });
  const lines = openLinesIndex(JSON.parse(JSON.stringify(linesIndexOf(catalog))));
  const own = openCarKnowledge(
    openSlice(lines, JSON.parse(JSON.stringify(sliceOf(catalog, catalog.lines[0] as Line)))),
  );
  const q = { record: "FR58-01", car: { facts: { line: "B", my: 1960 } } };
  expect(answerApplies(own, q).cancelled).toEqual(answerApplies(openCarKnowledge(catalog), q).cancelled);
});
test("slice: a part for repair only can be reported as fitted", () => {
  const { catalog } = tinyKnowledge();
  const lines = openLinesIndex(JSON.parse(JSON.stringify(linesIndexOf(catalog))));
  const own = openCarKnowledge(
    openSlice(lines, JSON.parse(JSON.stringify(sliceOf(catalog, catalog.lines[0] as Line)))),
  );
  expect(
    answerApplies(own, { scope: "fitted=HT-201", car: { facts: { line: "B" }, fitted: ["HT-201"] } }).verdict,
  ).toBe("yes");
});
test("a spelling that several parts have is not 'no part'", () => {
  const k = tinyKnowledge({ "parts/gasket.yaml": ["parts:", "parts:\n  - { number: H-T102, name: odd one }"] });
  expect(() => ask(k, { question: "car", facts: { line: "B" }, fitted: ["ht102"] })).not.toThrow(/No part is called/);
});

test("an instruction that was cancelled later is not new for the car at hand; who knew it is told that it ended", () => {
  const k = tinyKnowledge({
    "changes/1959/HY59-01.md": ["cancels:\n  - { record: FR58-01, scope: line=B }\n", ""],
    "changes/1958/FR58-01.md":
      "---\nid: FR58-01\ntitle: Paint the frame\nissued: 1958-03-01\nkinds: [procedure]\nstarts: x\nscope: my=1958-1959\nprocedures:\n  - { steps: Paint it. }\n---\n\nx\n",
    "changes/1960/FR60-01.md":
      "---\nid: FR60-01\ntitle: No more paint\nissued: 1960-03-01\nkinds: [cancellation]\nstarts: x\nscope: my=1960\ncancels:\n  - { record: FR58-01 }\n---\n\nx\n",
  });
  const change = (from: number, my: number) =>
    ask(k, { question: "net-change", from, facts: { line: "B", my } })
      .changes.filter((it: { name: string }) => it.name === "Paint the frame")
      .map((it: { to: { value: string }[] }) => it.to[0]?.value);
  expect(change(1957, 1958)).toEqual([]);
  expect(change(1957, 1959)).toEqual([]);
  expect(change(1959, 1958)).toEqual(["does not hold"]);
});
