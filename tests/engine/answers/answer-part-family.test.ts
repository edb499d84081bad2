import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  answerPartFamily,
  MOST_LINES,
  MOST_MEMBERS,
  type PartFamily,
} from "../../../src/engine/answers/answer-part-family.ts";
import { headOf, NO_PART, tailOf } from "../../../src/engine/answers/family-lines.ts";
import type { Knowledge } from "../../../src/engine/answers/knowledge.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { SEED } from "../../helpers/seed.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const tiny = tinyKnowledge();
const family = (knowledge: Knowledge, number: string): PartFamily => answerPartFamily(knowledge, { number });
const numbers = ({ members }: PartFamily): string[] => members.map((it) => it.number);
const lines = (it: PartFamily): string[] =>
  it.lines.map(({ tail, head, kind, bothWays }) => `${tail} ${bothWays ? "<>" : ">"} ${head || "nothing"} ${kind}`);

/** Parts G-00, G-01 … of one component, and what one record says of them. */
function withParts(count: number, statements: string): Knowledge {
  const parts = Array.from(
    { length: count },
    (_, i) => `  - { number: ${g(i)}, name: part ${i}, marks: { ribs: "${i}" } }`,
  );
  return tinyKnowledge({
    "parts/lift.yaml": `component: lift
features:
  - { id: ribs, name: ribs, made: cast, where: on the car, effort: 2, record: HY59-01 }
parts:
${parts.join("\n")}
`,
    "changes/1960/FR60-01.md": `---
id: FR60-01
title: Lifts
issued: 1960-03-01
kinds: [part]
starts: x
scope: line=B
${statements}
---

x
`,
  });
}

function g(i: number): string {
  return `G-${String(i).padStart(2, "0")}`;
}

const chainOf = (count: number): string =>
  `supersedes:\n${Array.from({ length: count - 1 }, (_, i) => `  - { old: ${g(i)}, new: ${g(i + 1)} }`).join("\n")}`;

describe("the family of a part", () => {
  test("has its relatives, oldest first, and every direction of its own", () => {
    const long = family(tiny, "HT-102");
    expect(numbers(long)).toEqual([NO_PART, "HT-101", "HT-102"]);
    expect(lines(long)).toEqual([
      "HT-102 > nothing yes",
      "HT-102 > HT-101 delivered",
      "HT-102 > HT-101 on-conditions",
      "HT-101 > HT-102 must-not-be-used",
    ]);
    expect(long.members.map((it) => it.since)).toEqual([undefined, 1957, 1959]);
    expect(long.lines[0]).toMatchObject({ someCars: true, by: [{ record: "HY59-01", anchor: "stands-in-3" }] });
  });

  test("does not take another part's empty place for its own", () => {
    expect(numbers(family(tiny, "HT-101"))).toEqual(["HT-101", "HT-102"]);
    expect(lines(family(tiny, "HT-101"))).not.toContain("HT-102 > nothing yes");
  });

  test("of a part that only goes along has nobody else, and says with what it goes along", () => {
    const ring = family(tiny, "HT-201");
    expect([numbers(ring), lines(ring), ring.members[0]?.repairOnly]).toEqual([["HT-201"], [], true]);
    expect(ring.goesAlong).toEqual([
      {
        record: "HY59-01",
        anchor: "stands-in-1",
        verdict: "on-conditions",
        part: "HT-102",
        for: "HT-101",
        with: [],
        scope: { text: "fitted=HT-201", words: "cars with HT-201 fitted" },
        inForce: true,
      },
    ]);
    expect(ring.orderedAlong).toEqual([{ record: "HY59-01", anchor: "supersedes-1", part: "HT-102", inForce: true }]);
  });

  test("says what holds for no car, because another record ended it", () => {
    const ended = tinyKnowledge({
      "changes/1958/FR58-01.md": [
        ...["issued: 1958-03-01", "issued: 1959-03-01"],
        ...["scope: my>=1958\n", "scope: my>=1958\ncancels: [{ record: HY59-01 }]\n"],
      ],
    });
    const long = family(ended, "HT-102");
    expect([lines(long), long.notInForce.length, numbers(long).length]).toEqual([[], 4, 3]);
    expect(
      [...family(ended, "HT-201").goesAlong, ...family(ended, "HT-201").orderedAlong].map((it) => it.inForce),
    ).toEqual([false, false]);
  });

  test("leaves out where it goes along with a refusal", () => {
    const refused = tinyKnowledge({
      "changes/1959/HY59-01.md": ["must-not-be-used, why", "must-not-be-used, with: [HT-290], why"],
    });
    expect(family(refused, "HT-290").goesAlong).toEqual([]);
  });

  test("has the whole chain of deliveries, in its order, whatever the numbers", () => {
    const backwards =
      "supersedes:\n  - { old: G-03, new: G-02 }\n  - { old: G-02, new: G-01 }\n  - { old: G-01, new: G-00 }";
    for (const number of ["G-00", "G-02", "G-03"])
      expect(numbers(family(withParts(4, backwards), number))).toEqual(["G-03", "G-02", "G-01", "G-00"]);
  });

  test("ends where the author's chain is a circle", () => {
    const circle = "supersedes:\n  - { old: G-00, new: G-01 }\n  - { old: G-01, new: G-00 }";
    expect(lines(family(withParts(2, circle), "G-00"))).toEqual(["G-00 <> G-01 delivered"]);
  });

  test("counts what there is no room for, the far ends of the chain first", () => {
    const long = family(withParts(MOST_MEMBERS + 3, chainOf(MOST_MEMBERS + 3)), "G-00");
    expect(numbers(long)).toEqual(Array.from({ length: MOST_MEMBERS }, (_, i) => g(i)));
    expect(long.leftOut).toEqual({
      parts: [g(MOST_MEMBERS), g(MOST_MEMBERS + 1), g(MOST_MEMBERS + 2)],
      ofIt: 0,
      ofOthers: 0,
    });
  });

  test("counts the statements that name a part without room", () => {
    const many = MOST_MEMBERS + 4;
    const hub = Array.from({ length: many - 1 }, (_, i) => `  - { part: G-00, for: ${g(i + 1)}, verdict: "yes" }`);
    const wide = family(withParts(many, `stands-in:\n${hub.join("\n")}`), "G-00");
    expect([wide.members.length, wide.lines.length, wide.leftOut.ofIt]).toEqual([MOST_MEMBERS, MOST_MEMBERS - 1, 4]);
  });

  test("says of two relatives what holds between them", () => {
    const three =
      'stands-in:\n  - { part: G-00, for: G-01, verdict: "yes" }\n  - { part: G-02, for: G-01, verdict: "yes" }';
    expect(lines(family(withParts(3, three), "G-00"))).toEqual(["G-00 > G-01 yes", "G-02 > G-01 yes"]);
  });
});

describe("the laws of a family", () => {
  function keepsLaws(knowledge: Knowledge, number: string): void {
    const found = family(knowledge, number);
    const own = [...knowledge.catalog.records.values()]
      .flatMap((record) => record.statements)
      .filter((it) => it.type === "supersedes" || it.type === "stands-in")
      .filter((it) => tailOf(it) === number || headOf(it) === number);
    const ofIt = found.lines.filter((it) => it.tail === number || it.head === number);
    const drawn = ofIt.reduce((sum, it) => sum + it.by.length, 0);
    expect(drawn + found.leftOut.ofIt + found.notInForce.length).toBe(own.length);
    expect(numbers(found)).toContain(number);
    expect(new Set(numbers(found)).size).toBe(found.members.length);
    expect(found.members.length).toBeLessThanOrEqual(MOST_MEMBERS);
    expect(found.lines.length).toBeLessThanOrEqual(MOST_LINES);
    for (const { tail, head } of found.lines) expect(numbers(found)).toEqual(expect.arrayContaining([tail, head]));
    for (const it of found.lookAlikes) expect([...numbers(found), ...found.leftOut.parts]).toContain(it.number);
    expect(JSON.stringify(family(knowledge, number))).toBe(JSON.stringify(found));
  }

  test("hold for every part of the data folder", async () => {
    const knowledge = await demoKnowledge();
    for (const number of knowledge.catalog.parts.keys()) keepsLaws(knowledge, number);
  });

  const part = fc.oneof(fc.integer({ min: 0, max: 2 }), fc.integer({ min: 0, max: 13 })).map(g);
  const pair = fc.tuple(part, part).filter(([a, b]) => a !== b);
  const said = fc.record({
    orders: fc.uniqueArray(pair, { maxLength: 12, selector: (it) => it.join() }),
    uses: fc.array(fc.tuple(pair, fc.constantFrom("yes", "does-not-go-on", "must-not-be-used")), { maxLength: 60 }),
  });
  test("hold for random records, and for the same in another order", () => {
    const world = ({ orders, uses }: { orders: string[][]; uses: [[string, string], string][] }): Knowledge =>
      withParts(
        14,
        `supersedes: [${orders.map(([a, b]) => `{ old: ${a}, new: ${b} }`).join(", ")}]
stands-in: [${uses.map(([[a, b], verdict]) => `{ part: ${a}, for: ${b}, verdict: "${verdict}"${verdict === "yes" ? "" : ", why: x"} }`).join(", ")}]`,
      );
    fc.assert(
      fc.property(said, (drawn) => {
        const one = world(drawn);
        for (const number of ["G-00", "G-07"]) keepsLaws(one, number);
        const other = world({ orders: drawn.orders.toReversed(), uses: drawn.uses.toReversed() });
        expect(numbers(family(other, "G-00"))).toEqual(numbers(family(one, "G-00")));
        expect(lines(family(other, "G-00"))).toEqual(lines(family(one, "G-00")));
      }),
      { seed: SEED, numRuns: 40 },
    );
  });
});
