import { expect, test } from "vitest";
import { counted, showFiles, showRejected, showSums } from "../../../src/build/tables/show-plan.ts";
import { planOf, rowsOf, sheetOf } from "./tiny-import.ts";

test("new files, and changed ones with their fields", () => {
  const plan = planOf([
    sheetOf("parts", "component,number,name", "lift,HT-900,arm", 'pump,HT-103,"pump, new"'),
    sheetOf("records", "id,customer", "FR58-01,Nothing to do."),
  ]);
  expect(showFiles(plan)).toEqual([
    "changed  changes/1958/FR58-01.md",
    "           + customer: Nothing to do.",
    "new      parts/lift.yaml",
    "changed  parts/pump.yaml",
    "           + parts HT-103: number HT-103, name pump, new",
  ]);
});

test("many fields, and many rejected rows, are counted instead of listed", () => {
  const many = Array.from({ length: 60 }, (_, i) => `pump,HT-9${i},x`);
  const sheet = sheetOf("parts", "component,number,name", ...many);
  const files = showFiles(planOf([sheet]));
  expect([files.length, files.at(-1)]).toEqual([10, "         … and 52 more fields"]);
  const rejected = showRejected(rowsOf(sheet).map((row) => ({ row, reasons: ["one\nreason", "two"] })));
  expect([rejected.length, rejected[0], rejected.at(-1)]).toEqual([
    41,
    "rejected parts.csv, row 2: one reason; two",
    "         … and 20 more rejected rows",
  ]);
});

test("the sums add up", () => {
  expect(showSums({ written: 1, unchanged: 2, rejected: 3 })).toBe("6 rows: 1 written, 2 unchanged, 3 rejected");
  expect([counted(1, "row"), counted(0, "row")]).toEqual(["1 row", "0 rows"]);
});
