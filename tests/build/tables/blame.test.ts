import { expect, test } from "vitest";
import { blame } from "../../../src/build/tables/blame.ts";
import { Drafts } from "../../../src/build/tables/drafts.ts";
import type { Path } from "../../../src/engine/records/complaint.ts";
import { filesOf, rowsOf, sheetOf } from "./tiny-import.ts";

const rows = [
  ...rowsOf(sheetOf("records", "id,title,issued", "N1,New pipe,1960-01-01")),
  ...rowsOf(sheetOf("built", "record,place,part,scope", "N1,pump,HT-101,all", "N1,pump,HT-102,none")),
  ...rowsOf(sheetOf("parts", "component,number,name", "pipe,HT-300,pipe", "pipe,HT-301,pipe")),
];
const drafts = new Drafts(filesOf(), false);
for (const row of rows) drafts.merge(row);

test.each<[string, Path, string, string[]]>([
  // file, field, message, rows
  ["changes/1960/N1.md", ["title"], "", ["records 2"]],
  ["changes/1960/N1.md", ["starts"], "'starts' is missing", ["records 2"]],
  ["changes/1960/N1.md", ["built", 1, "scope"], "", ["built 3"]],
  ["changes/1960/N1.md", ["built", 0], "", ["built 2"]],
  ["parts/pipe.yaml", ["component"], "no component is called 'pipe'", ["parts 2", "parts 3"]],
  ["parts/pipe.yaml", ["parts", 1, "number"], "", ["parts 3"]],
  ["moved.yaml", ["moved", 0, "from"], "part 'HT-301' still exists", ["parts 3"]],
  ["sums.yaml", [], "something is odd", ["records 2", "built 2", "built 3", "parts 2", "parts 3"]],
])("%s %j %s: %j", (file, path, message, blamed) => {
  const complaint = { severity: "error", rule: "disagreement", file, path, message, hint: "" } as const;
  const found = blame(complaint, [...drafts.drafts.values()], rows);
  expect(found.map(({ sheet, row }) => `${sheet.grid.name} ${row.number}`)).toEqual(blamed);
});
