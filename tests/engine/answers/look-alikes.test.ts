import { describe, expect, test } from "vitest";
import { lookAlikes } from "../../../src/engine/answers/look-alikes.ts";
import type { Part } from "../../../src/engine/records/catalog.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

/** What the short pump may be taken for where both pumps have these marks. */
function alike(short: string, long: string): { same: readonly string[]; apart: readonly string[] }[] {
  const file = `component: pump
features:
  - { id: bore, name: bore, made: measured, unit: mm, tolerance: 0.5, where: in the hand, effort: 4, record: HY59-01 }
  - { id: ribs, name: ribs, made: cast, where: on the car, effort: 2, record: HY59-01 }
parts:
  - { number: HT-101, name: "pump, short", marks: { ${short} } }
  - { number: HT-102, name: "pump, long", castings: ["4411"], marks: { ${long} } }
`;
  const knowledge = tinyKnowledge({ "parts/pump.yaml": file });
  return lookAlikes(knowledge, knowledge.catalog.parts.get("HT-101") as Part).map(({ same, apart }) => ({
    same,
    apart,
  }));
}

describe("the long pump may be taken for the short one", () => {
  // marks of the one, marks of the other, what is the same, what tells them apart; nothing: it may not
  const CASES: [string, string, [string[], string[]] | undefined][] = [
    ["ribs: two, bore: 18", "ribs: two, bore: 18", [["bore", "ribs"], []]],
    ["ribs: two, bore: 18", "ribs: none, bore: 18", [["bore"], ["ribs"]]],
    ["ribs: two, bore: 18", "ribs: two, bore: 18.4", [["bore", "ribs"], []]],
    ["ribs: two, bore: 18", "ribs: two, bore: 18.5", [["bore", "ribs"], []]],
    ["ribs: two, bore: 18", "ribs: two, bore: 18.6", [["ribs"], ["bore"]]],
    ["ribs: two, bore: 18", "ribs: none, bore: 19", undefined],
    ["ribs: two", "ribs: none", undefined],
    ["ribs: two", "bore: 18", [[], []]],
    ["", "", [[], []]],
    ["bore: none", "bore: 18", undefined],
  ];
  test.each(CASES)("{%s} and {%s}", (short, long, wanted) => {
    expect(alike(short, long)).toEqual(wanted ? [{ same: wanted[0], apart: wanted[1] }] : []);
  });
});

test("a kit is not taken for a single part, and no part for one of another component", () => {
  const knowledge = tinyKnowledge();
  for (const number of ["HT-201", "HT-290"])
    expect(lookAlikes(knowledge, knowledge.catalog.parts.get(number) as Part)).toEqual([]);
});
