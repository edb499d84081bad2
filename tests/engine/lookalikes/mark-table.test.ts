import { expect, test } from "vitest";
import { markTable } from "../../../src/engine/lookalikes/mark-table.ts";
import type { Part } from "../../../src/engine/records/catalog.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";

const parts = (marks: string): Part[] => {
  const file = `component: pump
features:
  - { id: ribs, name: ribs, made: counted, where: on the car, effort: 2, record: HY59-01 }
  - { id: bore, name: bore, made: measured, unit: mm, tolerance: 0.1, where: in the hand, effort: 4, record: HY59-01 }
  - { id: dab, name: dab, made: painted, absent: bare, where: in the hand, effort: 1, record: HY59-01 }
parts:
  - { number: HT-101, name: pump, marks: { ${marks} } }
  - { number: HT-102, name: pump, marks: { dab: bare } }
`;
  return [...catalogOf(spoiled({ "parts/pump.yaml": file })).parts.values()].filter((it) => it.component === "pump");
};

test("a row a part, a column a mark; what is not on record stays empty, and a count of none is 0", () => {
  const { marks, parts: rows } = markTable(parts("ribs: none, bore: 0.3"));
  expect(marks.map(({ id, wearsOff, absent, tolerance }) => [id, wearsOff, absent, tolerance?.toFraction()])).toEqual([
    ["ribs", false, "0", undefined],
    ["bore", false, "none", "1/10"],
    ["dab", true, "bare", undefined],
  ]);
  expect(rows.map(({ number, marks: shown }) => [number, ...[...shown].map((it) => it.map(String).join("="))])).toEqual(
    [
      ["HT-101", "ribs=0", "bore=0.3"],
      ["HT-102", "dab=bare"],
    ],
  );
});

test("a decimal number is exactly what was written", () => {
  const [first, second] = [parts("bore: 0.1"), parts("bore: 0.2")].map(
    (some) => markTable(some).parts[0]?.marks.get("bore") as { toFraction(): string },
  );
  expect([first?.toFraction(), second?.toFraction()]).toEqual(["1/10", "1/5"]);
});

test("of no parts the table is empty", () => {
  expect(markTable([])).toEqual({ marks: [], parts: [] });
});
