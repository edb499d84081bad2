import { expect, test } from "vitest";
import { type Statement, statementsOf } from "../../../../src/engine/records/statement.ts";
import { catalogOf } from "../../../helpers/tiny-folder.ts";

const statements = catalogOf().records.get("HY59-01")?.statements ?? [];

test("statements come in the order of the record's shape, each type counted from 0", () => {
  expect(statements.map(({ type, record, index }) => `${record} ${type} ${index}`)).toEqual([
    "HY59-01 built 0",
    "HY59-01 built 1",
    "HY59-01 built 2",
    "HY59-01 mixed 0",
    "HY59-01 supersedes 0",
    "HY59-01 stands-in 0",
    "HY59-01 stands-in 1",
    "HY59-01 stands-in 2",
    "HY59-01 kit 0",
    "HY59-01 service-only 0",
    "HY59-01 setting 0",
    "HY59-01 setting 1",
    "HY59-01 interval 0",
    "HY59-01 procedure 0",
    "HY59-01 tool 0",
    "HY59-01 left-alone 0",
    "HY59-01 cancels 0",
  ]);
});

/** A statement with its scope as its text, as far as it has one. */
function plain(statement: Statement): object {
  const { record: _record, index: _index, type: _type, ...rest } = statement;
  return "scope" in rest ? { ...rest, scope: rest.scope?.text } : rest;
}

test("'none' in a built place or as the part to stand in for is nothing", () => {
  expect(plain(statementsOf(statements, "built")[2] as Statement)).toEqual({
    place: "lift arms",
    part: undefined,
    scope: "line=H",
  });
  expect(statementsOf(statements, "stands-in")[2]).toMatchObject({ part: "HT-102", for: undefined, verdict: "yes" });
});

test("each statement says what the record says", () => {
  expect(statementsOf(statements, "mixed").map(plain)).toEqual([
    { place: "pump", parts: ["HT-101", "HT-102"], scope: "line=H; my=1959" },
  ]);
  expect(statementsOf(statements, "supersedes").map(plain)).toEqual([
    { old: "HT-101", new: "HT-102", with: ["HT-201"], scope: undefined },
  ]);
  expect(statementsOf(statements, "stands-in").slice(0, 2).map(plain)).toEqual([
    {
      part: "HT-102",
      for: "HT-101",
      verdict: "on-conditions",
      with: ["HT-201"],
      do: "Bleed the lift.",
      why: undefined,
      scope: "fitted=HT-201",
    },
    {
      part: "HT-101",
      for: "HT-102",
      verdict: "must-not-be-used",
      with: [],
      do: undefined,
      why: "It runs dry.",
      scope: undefined,
    },
  ]);
  expect(statementsOf(statements, "kit").map(plain)).toEqual([
    {
      kit: "HT-290",
      contents: [
        { part: "HT-201", count: 2 },
        { name: "tube of grease", count: 1 },
      ],
    },
  ]);
  expect(statementsOf(statements, "interval").map(plain)).toEqual([
    { name: "oil change", months: 12, miles: undefined, once: false, none: false, note: undefined, scope: "all" },
  ]);
  expect(statementsOf(statements, "tool").map(plain)).toEqual([
    { tool: "T-7", use: "to draw the shaft", scope: "line=B" },
  ]);
  expect(statementsOf(statements, "cancels").map(plain)).toEqual([{ target: "FR58-01", scope: "line=B" }]);
  expect(statementsOf(statements, "left-alone").map(plain)).toEqual([
    { what: "The reservoir was looked at and stayed." },
  ]);
});

test("a setting's limits keep their digits, a missing one is no limit, and its component is the record's first", () => {
  expect(statementsOf(statements, "setting").map(plain)).toEqual([
    {
      name: "oil pressure",
      component: "pump",
      low: "120",
      high: "135",
      nominal: 130,
      stated: undefined,
      unit: "bar",
      conditions: "hot",
      scope: "line=B",
    },
    {
      name: "oil pressure",
      component: "lift",
      low: undefined,
      high: "90",
      nominal: undefined,
      stated: undefined,
      unit: "bar",
      conditions: undefined,
      scope: "line=H",
    },
  ]);
});
