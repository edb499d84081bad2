import { expect, test } from "vitest";
import { tableNamed } from "../../../src/build/tables/all-tables.ts";
import { matchHeaders } from "../../../src/build/tables/match-headers.ts";
import type { Table } from "../../../src/build/tables/table.ts";

test.each([
  // table, header, column, sure
  ["records", "title", "title", true],
  ["records", "Title ", "title", true],
  ["records", "In Force From", "in-force-from", true],
  ["records", "Record", "id", true],
  ["records", "Record ID", "id", true],
  ["records", "titel", "title", false],
  ["records", "first released", "issued", false],
  ["built", "Record id", "record", true],
  ["built", "record no.", "record", false],
  ["built", "Part number", "part", false],
  ["parts", "Part number", "number", true],
  ["stands-in", "StandsInFor", "for", false],
  ["settings", "condition", "conditions", false],
  ["marks", "Feature", "mark", false],
])("of %s, '%s' means '%s' (sure: %s)", (name, header, column, sure) => {
  expect(matchHeaders(tableNamed(name) as Table, [header])).toEqual([{ header, name: column, sure }]);
});

test.each(["", "%%", "p", "Clerk", "Remarks"])("'%s' means nothing", (header) => {
  expect(matchHeaders(tableNamed("built") as Table, [header])).toEqual([]);
});

test("one header for one column: the surer one has it", () => {
  expect(matchHeaders(tableNamed("parts") as Table, ["Numbr", "number", "name"])).toEqual([
    { header: "number", name: "number", sure: true },
    { header: "name", name: "name", sure: true },
  ]);
});
