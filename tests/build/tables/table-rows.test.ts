import { expect, test } from "vitest";
import { tableNamed } from "../../../src/build/tables/all-tables.ts";
import type { Table } from "../../../src/build/tables/table.ts";
import { tableRows } from "../../../src/build/tables/table-rows.ts";
import { spoiled } from "../../helpers/tiny-folder.ts";
import { filesOf } from "./tiny-import.ts";

const files = [...filesOf().values()];

test.each([
  ["mixed", [["HY59-01", "pump", "HT-101 | HT-102", "line=H; my=1959"]]],
  [
    "kits",
    [
      ["HY59-01", "HT-290", "HT-201", "", "2"],
      ["HY59-01", "HT-290", "", "tube of grease", ""],
    ],
  ],
  ["cancels", [["HY59-01", "FR58-01", "line=B"]]],
  ["left-alone", [["HY59-01", "The reservoir was looked at and stayed."]]],
  [
    "marks",
    [
      ["pump", "HT-101", "ribs", "none"],
      ["pump", "HT-101", "bore", "18"],
      ["pump", "HT-102", "ribs", "two"],
      ["pump", "HT-102", "bore", "none"],
    ],
  ],
  [
    "moved",
    [
      ["record", "HY-1", "HY59-01", "renamed"],
      ["part", "HT-099", "", "never delivered"],
    ],
  ],
])("%s", (name, rows) => {
  expect(tableRows(tableNamed(name) as Table, files)).toEqual(rows);
});

test("a record has its place and its story in its row", () => {
  const rows = tableRows(tableNamed("records") as Table, files);
  expect(rows.find(([id]) => id === "FR58-01")).toEqual(
    expect.arrayContaining(["Frame drilled for a winch", "Four holes.", "changes/1958/FR58-01.md"]),
  );
});

test("a broken file has no rows", () => {
  const broken = files.map((file) => ({ ...file, broken: true }));
  expect(tableRows(tableNamed("marks") as Table, broken)).toEqual([]);
});

test("what holds where nothing is said is not said, whether or not the file says it", () => {
  const said = spoiled({ "changes/1959/HY59-01.md": ["name: tube of grease }", "name: tube of grease, count: 1 }"] });
  const rows = tableRows(tableNamed("kits") as Table, [...filesOf(said).values()]);
  expect(rows.at(-1)).toEqual(["HY59-01", "HT-290", "", "tube of grease", ""]);
});
