import { expect, test } from "vitest";
import { partsNamed, type Statement, statementsOf } from "../../../src/engine/records/statement.ts";
import { catalogOf } from "../../helpers/tiny-folder.ts";

const statements = catalogOf().records.get("HY59-01")?.statements ?? [];

// type of statement, parts that each of the tiny folder's names
const NAMED: [Statement["type"], string[][]][] = [
  ["built", [["HT-101"], ["HT-102"], []]],
  ["mixed", [["HT-101", "HT-102"]]],
  ["supersedes", [["HT-101", "HT-102", "HT-201"]]],
  ["stands-in", [["HT-102", "HT-101", "HT-201"], ["HT-101", "HT-102"], ["HT-102"]]],
  ["kit", [["HT-290", "HT-201"]]],
  ["service-only", [["HT-201"]]],
  ["setting", [[], []]],
  ["interval", [[]]],
  ["procedure", [[]]],
  ["tool", [[]]],
  ["left-alone", [[]]],
  ["cancels", [[]]],
];

test.each(NAMED)("what a statement of type %s names: %j", (type, parts) => {
  expect(statementsOf(statements, type).map((statement) => partsNamed(statement))).toEqual(parts);
  expect(statementsOf(statements, type).map(({ index }) => index)).toEqual(parts.map((_, i) => i));
});

test("every statement is of one of these types", () => {
  expect(NAMED.flatMap(([type]) => statementsOf(statements, type))).toHaveLength(statements.length);
});

test("a part named twice counts once", () => {
  const [kit] = statementsOf(statements, "kit");
  if (!kit) throw new Error("the tiny folder changed");
  const contents = [
    { part: "HT-201", count: 1 },
    { part: "HT-201", count: 2 },
    { name: "bolt", count: 1 },
  ];
  expect(partsNamed({ ...kit, contents })).toEqual(["HT-290", "HT-201"]);
});
