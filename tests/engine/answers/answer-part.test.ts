import { describe, expect, test } from "vitest";
import { answerPart, type PartView } from "../../../src/engine/answers/answer-part.ts";
import type { Knowledge } from "../../../src/engine/answers/knowledge.ts";
import { lawfulAnswer } from "../../helpers/answer-laws.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const knowledge = tinyKnowledge();
const view = (from: Knowledge, number: string): PartView => {
  const { part } = answerPart(from, number);
  if (!part) throw new Error(`no part ${number}`);
  return part;
};

describe("which part is meant", () => {
  test("a spelling that means one part is answered at once", () => {
    for (const typed of ["HT-102", "ht102", "HT 1O2", "  HT–I02"])
      expect(lawfulAnswer(knowledge, { question: "part", part: typed })).toMatchObject({
        verdict: "on record",
        part: { number: "HT-102" },
      });
  });

  // typed, verdict, question back, parts it may be
  const ASKED_BACK: [string, string, string, string[]][] = [
    [
      "4411",
      "casting number",
      "'4411' is cast into these parts; it is not a part number. Which one is it?",
      ["HT-102"],
    ],
    [
      "HT-103",
      "not on record",
      "No part is called 'HT-103'. Read the number again; the number cast into a part is often another one.",
      ["HT-101"],
    ],
    [
      "zzz",
      "not on record",
      "No part is called 'zzz'. Read the number again; the number cast into a part is often another one.",
      [],
    ],
    ["HT-099", "not on record", "'HT-099' is no longer used: never delivered", []],
  ];
  test.each(ASKED_BACK)("'%s': %s", (typed, verdict, what, options) => {
    expect(lawfulAnswer(knowledge, { question: "part", part: typed })).toEqual({
      question: "part",
      verdict,
      because: [],
      ask: { what, options },
    });
  });

  test("where several are spelt so, all of them are named", () => {
    const twins = tinyKnowledge({ "parts/gasket.yaml": ["parts:", "parts:\n  - { number: H-T102, name: odd one }"] });
    expect(lawfulAnswer(twins, { question: "part", part: "ht102" })).toMatchObject({
      verdict: "several",
      ask: { options: ["H-T102", "HT-102"] },
    });
  });
});

describe("what is on record about a part", () => {
  test("superseding and standing in keep their direction", () => {
    const [short, long] = [view(knowledge, "HT-101"), view(knowledge, "HT-102")];
    const orders = (list: PartView["supersedes"]): string[] => list.map((it) => `${it.old} -> ${it.new}`);
    expect([orders(short.supersedes), orders(short.supersededBy)]).toEqual([[], ["HT-101 -> HT-102"]]);
    expect([orders(long.supersedes), orders(long.supersededBy)]).toEqual([["HT-101 -> HT-102"], []]);
    const uses = (list: PartView["standsInFor"]): string[] =>
      list.map((it) => `${it.part} for ${it.for ?? "nothing"}: ${it.verdict}`);
    expect(uses(long.standsInFor)).toEqual(["HT-102 for HT-101: on-conditions", "HT-102 for nothing: yes"]);
    expect(uses(long.replacedBy)).toEqual(["HT-101 for HT-102: must-not-be-used"]);
    expect(uses(short.standsInFor)).toEqual(uses(long.replacedBy));
    expect(uses(short.replacedBy)).toEqual(["HT-102 for HT-101: on-conditions"]);
  });

  test("companions, conditions and reasons go along", () => {
    expect(view(knowledge, "HT-102").standsInFor[0]).toEqual({
      record: "HY59-01",
      anchor: "stands-in-1",
      part: "HT-102",
      for: "HT-101",
      verdict: "on-conditions",
      with: ["HT-201"],
      do: "Bleed the lift.",
      scope: { text: "fitted=HT-201", words: "cars with HT-201 fitted" },
    });
    expect(view(knowledge, "HT-102").replacedBy[0]?.why).toBe("It runs dry.");
    expect(view(knowledge, "HT-102").supersedes[0]?.with).toEqual(["HT-201"]);
    expect(view(knowledge, "HT-201").neededWith).toEqual([
      { record: "HY59-01", anchor: "stands-in-1", part: "HT-102" },
    ]);
  });

  test("a part that a refusal names as companion is not therefore needed", () => {
    const refused = tinyKnowledge({
      "changes/1959/HY59-01.md": ["must-not-be-used, why", "must-not-be-used, with: [HT-290], why"],
    });
    expect(view(refused, "HT-290").neededWith).toEqual([]);
  });

  test("where it was built, and mixed stretches among it", () => {
    expect(view(knowledge, "HT-101").built.map(({ anchor, place, mixed }) => [anchor, place, mixed])).toEqual([
      ["built-1", "pump", false],
      ["mixed-1", "pump", true],
    ]);
  });

  test("a kit and what is in it know each other", () => {
    expect(view(knowledge, "HT-290").contents).toEqual([
      { part: "HT-201", count: 2 },
      { name: "tube of grease", count: 1 },
    ]);
    expect(view(knowledge, "HT-290").kits).toEqual([]);
    expect(view(knowledge, "HT-201").kits).toEqual([{ record: "HY59-01", anchor: "kit-1", kit: "HT-290" }]);
  });

  // part, where it comes from
  const ORIGINS: [string, PartView["origin"]][] = [
    ["HT-101", "built in"],
    ["HT-102", "built in"],
    ["HT-201", "repair only"],
    ["HT-290", "not built in on record"],
  ];
  test.each(ORIGINS)("%s is %s", (number, origin) => {
    expect(view(knowledge, number).origin).toBe(origin);
  });

  test("a part built in only in a mixed stretch was built in", () => {
    const mixed = tinyKnowledge({
      "changes/1959/HY59-01.md": ["  - { place: pump, part: HT-102, scope: line=B; at=K59#0412+ }\n", ""],
    });
    expect(view(mixed, "HT-102").origin).toBe("built in");
  });

  test("its marks stand beside those of its relatives, its own first", () => {
    const { marks, relatives } = view(knowledge, "HT-102");
    expect(Object.entries(marks[0]?.features[0]?.values ?? {})).toEqual([
      ["HT-102", "two"],
      ["HT-101", "none"],
    ]);
    expect(relatives).toEqual([{ id: "HT-101", title: "pump, short", address: "/parts/HT-101/" }]);
  });

  test("a part that no record names is on record as a part, and nothing is claimed of it", () => {
    const lonely = tinyKnowledge({ "parts/gasket.yaml": ["parts:", "parts:\n  - { number: HT-299, name: spare }"] });
    const answer = lawfulAnswer(lonely, { question: "part", part: "HT-299" });
    expect(answer).toMatchObject({ verdict: "on record", because: [], part: { origin: "not built in on record" } });
  });
});
