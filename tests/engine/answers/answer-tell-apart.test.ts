import { describe, expect, test } from "vitest";
import { answerTellApart, type TellApartQuestion } from "../../../src/engine/answers/answer-tell-apart.ts";
import { readFactText } from "../../../src/engine/answers/fact-text.ts";
import type { Knowledge } from "../../../src/engine/answers/knowledge.ts";
import { QuestionError } from "../../../src/engine/answers/question-error.ts";
import { type TellApartAnswer, tellApartAnswer } from "../../../src/engine/answers/shapes/tell-apart.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { fixtureRows } from "../../helpers/fixture-rows.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const demo = await demoKnowledge();
const ROWS = fixtureRows<[string, string, string, string, string, string, string]>("tell-apart");

function ask(knowledge: Knowledge, asked: TellApartQuestion): TellApartAnswer {
  const answer = answerTellApart(knowledge, asked);
  // What is said has the shape that is published, and is plain data.
  expect(tellApartAnswer.parse(answer)).toEqual(answer);
  expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
  return answer;
}

test.each(ROWS)("%s, seen '%s' (%s): %s %s", (asked, seen, facts, verdict, parts, next, second) => {
  const answer = ask(demo, {
    ...(/^\d/.test(asked) ? { parts: asked.split(" ") } : { component: asked }),
    seen,
    ...(facts ? { car: { facts: Object.fromEntries(facts.split("; ").map(readFactText)) } } : {}),
  });
  expect([
    answer.verdict,
    answer.parts.map((it) => it.number).join(" "),
    answer.next?.feature ?? "",
    answer.secondTest?.feature ?? "",
  ]).toEqual([verdict, parts, next, second]);
  if (verdict === "one part") expect(answer.because.length).toBeGreaterThan(0);
});

const PUMPS = tinyKnowledge({
  "parts/pump.yaml": `component: pump
features:
  - { id: ribs, name: ribs on the body, made: counted, where: on the car, effort: 2, note: Wipe it first., record: HY59-01 }
  - { id: dab, name: dab of paint, made: painted, absent: bare, where: on the car, effort: 1, record: HY59-01 }
  - { id: bore, name: bore of the inlet, made: measured, unit: mm, tolerance: 0.5, where: in the hand, effort: 4, record: FR58-01 }
  - { id: ports, name: ports, made: counted, where: on the car, effort: 2, record: HY59-01 }
parts:
  - { number: HT-101, name: "pump, short", marks: { ribs: 1, dab: bare, bore: 18, ports: 2 } }
  - { number: HT-102, name: "pump, long", marks: { ribs: 2, dab: blue, bore: 18.4, ports: 2 } }
  - { number: HT-103, name: "pump, wide", hand: left, marks: { ribs: 2, dab: bare, bore: 20, ports: 2 } }
  - { number: HT-104, name: "pump, wide", hand: right, marks: { ribs: 2, dab: bare, bore: 20, ports: 2 } }
`,
});

describe("what an answer holds", () => {
  test("the next mark: what to answer with, what each answer leaves, and how to look", () => {
    const { next, further, words, same } = ask(PUMPS, { component: "hydraulic pump" });
    expect(next).toMatchObject({ feature: "bore", unit: "mm", where: "in the hand", wearsOff: false });
    expect(next?.options).toEqual([
      { value: "18 mm", words: "18 mm", leaves: ["HT-101", "HT-102"], provesNothing: false },
      { value: "18.4 mm", words: "18.4 mm", leaves: ["HT-101", "HT-102"], provesNothing: false },
      { value: "20 mm", words: "20 mm", leaves: ["HT-103", "HT-104"], provesNothing: false },
    ]);
    expect(further.map((it) => [it.feature, it.how])).toEqual([
      ["ribs", "Wipe it first."],
      ["dab", undefined],
    ]);
    expect(further[1]?.options).toEqual([
      {
        value: "bare",
        words: "bare, or worn off: proves nothing",
        leaves: ["HT-101", "HT-102", "HT-103", "HT-104"],
        provesNothing: true,
      },
      { value: "blue", words: "blue", leaves: ["HT-102"], provesNothing: false },
    ]);
    expect(same).toEqual([{ feature: "ports", name: "ports", value: "2" }]);
    expect(words).toBe(
      "It may be HT-101, HT-102, HT-103 or HT-104. Look next at: bore of the inlet. The same on all: ports (2). No mark on record tells HT-103 and HT-104 apart. They are for different sides of the car.",
    );
  });

  test("every option reads back as itself", () => {
    for (const { feature, options } of [ask(PUMPS, { component: "pump" })]
      .flatMap((it) => [it.next, ...it.further])
      .filter((it) => it !== undefined))
      for (const { value, leaves } of options)
        expect(ask(PUMPS, { component: "pump", seen: { [feature]: value } }).parts.map((it) => it.number)).toEqual(
          leaves,
        );
  });

  test("what is ruled out, by what; what proves nothing, and why; the records it rests on", () => {
    const answer = ask(PUMPS, {
      component: "pump",
      seen: { bore: "20.2 mm", dab: "none", ports: "two ports", ribs: "?" },
    });
    expect(answer.verdict).toBe("cannot be told apart");
    expect(answer.ruledOut.map((it) => [it.number, it.by, it.why])).toEqual([
      ["HT-101", ["bore"], "bore of the inlet: on record 18 mm, seen 20.2 mm."],
      ["HT-102", ["bore"], "bore of the inlet: on record 18.4 mm, seen 20.2 mm."],
    ]);
    expect(answer.provesNothing.map((it) => [it.feature, it.why])).toEqual([
      ["dab", "It wears off, so that it is missing proves nothing."],
      ["ports", "It fits all of these parts."],
      ["ribs", "It could not be seen."],
    ]);
    expect(answer.because.map((it) => it.record)).toEqual(["FR58-01"]);
    expect(answer.alike).toEqual([
      {
        parts: ["HT-103", "HT-104"],
        words: "No mark on record tells HT-103 and HT-104 apart. They are for different sides of the car.",
      },
    ]);
  });

  test("paint alone: a second test", () => {
    const answer = ask(PUMPS, { component: "pump", seen: ["dab=blue"] });
    expect([answer.verdict, answer.secondTest?.feature]).toEqual(["one part", "bore"]);
    expect(answer.words).toContain("That rests on paint or print alone; to make sure, look at: bore of the inlet.");
    const sure = ask(PUMPS, { component: "pump", seen: "dab=blue; ribs=2; bore=18" });
    expect([sure.verdict, sure.secondTest]).toEqual(["one part", undefined]);
    expect(sure.words).toBe("Of the parts on record it can only be HT-102, pump, long.");
  });

  test("contradicting observations: the smallest set, and what is left without each", () => {
    const answer = ask(PUMPS, { component: "pump", seen: { ribs: 1, bore: "20 mm", ports: 2 } });
    expect(answer.verdict).toBe("contradiction");
    expect(answer.conflict?.smallest.map((it) => it.feature)).toEqual(["ribs", "bore"]);
    expect(answer.conflict?.without.map((it) => [it.feature, it.leaves])).toEqual([
      ["ribs", ["HT-103", "HT-104"]],
      ["bore", ["HT-101"]],
    ]);
    expect(answer.words).toBe(
      "No part on record fits what was seen: these contradict each other: ribs on the body: 1 and bore of the inlet: 20 mm. Look at them again. Without 'ribs on the body' it would be HT-103 or HT-104; without 'bore of the inlet' it would be HT-101.",
    );
  });

  test("a part of which the marks are not on record is not proved by ruling out the others", () => {
    const knowledge = tinyKnowledge({
      "parts/pump.yaml": `component: pump
features:
  - { id: ribs, name: ribs, made: counted, where: on the car, effort: 2, record: HY59-01 }
parts:
  - { number: HT-101, name: "pump, short", marks: { ribs: 1 } }
  - { number: HT-102, name: "pump, long" }
`,
    });
    const answer = ask(knowledge, { component: "pump", seen: { ribs: "something else" } });
    expect([answer.verdict, answer.parts.map((it) => it.number)]).toEqual(["still open", ["HT-102"]]);
    expect(answer.words).toBe(
      "What was seen rules out every part of which it is on record. It may be HT-102, of which the records do not say it; that does not prove it.",
    );
    // The one mark on record fits both as well.
    expect(ask(knowledge, { component: "pump", seen: { ribs: 1 } }).verdict).toBe("cannot be told apart");
  });

  test("a reading that fits two whose measures differ", () => {
    const answer = ask(PUMPS, { parts: ["HT-101", "HT-103"], seen: { bore: "19 mm ± 1 mm", ribs: "?" } });
    expect([answer.verdict, answer.next]).toEqual(["still open", undefined]);
  });

  test("only a mark that could not be seen would tell", () => {
    const answer = ask(PUMPS, { parts: ["HT 102", "HT103"], seen: { bore: "can't see", dab: "none", ribs: "2" } });
    expect([answer.verdict, answer.next]).toEqual(["still open", undefined]);
    expect(answer.words).toContain("Only this would tell more: bore of the inlet or dab of paint.");
  });
});

describe("on a car", () => {
  test("it is said of each part whether the plant built it in, and none is ruled out by that", () => {
    const answer = ask(PUMPS, { place: "pump", car: { plate: "B9K0500" } });
    expect(answer.parts.map((it) => [it.number, it.builtHere, it.mayStandIn])).toEqual([
      ["HT-101", "no", false],
      ["HT-102", "yes", false],
      ["HT-103", "unknown", false],
      ["HT-104", "unknown", false],
    ]);
    expect(answer.words).toContain(
      "HT-101 goes on, but must not be used in place of HT-102 on this car: It runs dry (HY59-01).",
    );
  });

  test("without a car nothing is said of what the plant built into one", () => {
    for (const car of [undefined, {}, { facts: {} }]) {
      const { parts } = ask(PUMPS, { component: "pump", car });
      expect(parts.map((it) => [it.number, "builtHere" in it])).toEqual(
        ["HT-101", "HT-102", "HT-103", "HT-104"].map((number) => [number, false]),
      );
    }
    const all = [...demo.catalog.components.keys()].flatMap((component) => ask(demo, { component }).parts);
    expect(all.length).toBeGreaterThan(1);
    expect(all.filter((it) => it.builtHere !== undefined)).toEqual([]);
  });

  test("an open car: perhaps", () => {
    const { parts } = ask(PUMPS, { component: "pump", car: { facts: { line: "B", my: 1959 } } });
    expect(parts.slice(0, 2).map((it) => it.builtHere)).toEqual(["perhaps", "perhaps"]);
  });

  test("no such car", () => {
    const answer = ask(PUMPS, { component: "pump", car: { facts: { line: "H", my: 1957 } } });
    expect([answer.verdict, answer.parts]).toEqual(["no such car", []]);
    expect(answer.carConflict?.length).toBeGreaterThan(0);
  });
});

describe("little or nothing on record", () => {
  test("a component without parts", () => {
    expect(ask(PUMPS, { component: "lift" }).verdict).toBe("nothing on record");
  });

  test("parts without marks; a kit without marks is left out, unless it is asked about", () => {
    const gaskets = ask(PUMPS, { component: "gasket" });
    expect([gaskets.verdict, gaskets.parts.map((it) => it.number)]).toEqual(["one part", ["HT-201"]]);
    expect(gaskets.words).toContain("is the only part asked about; nothing was compared.");
    expect(gaskets.leftOut).toEqual([{ number: "HT-290", name: "gasket kit", why: "it is a kit, not a single part" }]);
    expect(ask(PUMPS, { parts: ["HT-201", "HT-290"] }).verdict).toBe("nothing on record");
  });
});

// what is asked, what is said
test.each<[TellApartQuestion, RegExp]>([
  [{}, /^Which parts\?/],
  [{ component: "pumb" }, /^No component is called 'pumb'\. Did you mean 'pump'\?$/],
  [{ component: "pump", parts: ["HT-201"] }, /different things: hydraulic pump and pump gasket/],
  [{ component: "pump", seen: "ribs" }, /says nothing of a mark/],
  [{ component: "pump", seen: "ribs=1; ribs on=2" }, /The mark 'ribs' is given twice/],
  [{ component: "pump", seen: "ribs=7" }, /On record: 1, 2\.$/],
])("%j is refused: %s", (asked, said) => {
  expect(() => answerTellApart(PUMPS, asked)).toThrow(QuestionError);
  expect(() => answerTellApart(PUMPS, asked)).toThrow(said);
});
