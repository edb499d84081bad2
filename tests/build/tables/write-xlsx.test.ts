import { unzipSync } from "fflate";
import { expect, test } from "vitest";
import { LONGEST_CELL } from "../../../src/build/tables/limits.ts";
import { readXlsx } from "../../../src/build/tables/read-xlsx.ts";
import { writeXlsx } from "../../../src/build/tables/write-xlsx.ts";

const ROWS = [
  ["id", "n"],
  ["0012", 12.5],
  ["1E5", true],
  ["=1+1", new Date(Date.UTC(1974, 1, 28))],
  ["  a\tb\r\nc\rd ", "_x000D_ <&>\"'"],
  ["\u0001é😀", null],
];

test("every value comes back as it was", async () => {
  const { grids } = await readXlsx("a.xlsx", await writeXlsx("a.xlsx", [{ name: "s", rows: ROWS }]));
  const [{ rows } = { rows: [] }] = grids;
  expect(rows.map((row) => row.cells)).toEqual(ROWS);
  expect(rows.map((row) => row.fault)).toEqual([...Array(5), "the row holds a control sign"]);
});

test("no cell is a formula, and the same rows are the same bytes", async () => {
  const write = () => writeXlsx("a.xlsx", [{ name: "s", rows: ROWS }]);
  const bytes = await write();
  expect(Buffer.compare(bytes, await write())).toBe(0);
  const xml = Buffer.from(unzipSync(bytes)["xl/worksheets/sheet1.xml"] ?? []).toString();
  expect(xml).toContain('<c r="A4"');
  expect(xml).not.toMatch(/<f[\s>]/);
});

test("a text that no cell can hold is refused", async () => {
  const rows = [["x"], ["y".repeat(LONGEST_CELL + 1)]];
  await expect(writeXlsx("a.xlsx", [{ name: "s", rows }])).rejects.toThrow(
    "a.xlsx, sheet 's', row 2: a text is longer than a cell can hold; write CSV instead",
  );
});
