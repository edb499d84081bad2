/** Ten thousand CSV files that nobody would write: each is read or refused in one clear sentence, and no row gets lost. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { headersOf, tableNamed } from "../../src/build/tables/all-tables.ts";
import { encodeText } from "../../src/build/tables/encoding.ts";
import { importRows, openSheet } from "../../src/build/tables/import-rows.ts";
import { readCsv } from "../../src/build/tables/read-csv.ts";
import { SheetError } from "../../src/build/tables/sheet.ts";
import type { Table } from "../../src/build/tables/table.ts";
import { SEED } from "../helpers/seed.ts";

const built = tableNamed("built") as Table;
const SENTENCE = /^fuzz\.csv(, row \d+)?: [^;]+; .+$/s;
const signs = fc.constantFrom(
  '"',
  ",",
  ";",
  "\t",
  "|",
  "\r\n",
  "\n",
  "\r",
  "'",
  "=",
  "-",
  "a",
  "0",
  " ",
  "é",
  "\0",
  "\uFEFF",
  "😀",
);
const words = fc.constantFrom(
  "record",
  "place",
  "part",
  "scope",
  "Part no.",
  "rejected because",
  "sep=;\n",
  "HY59-01",
  "1.2.1959",
);
const text = fc
  .array(fc.oneof({ weight: 3, arbitrary: signs }, { weight: 1, arbitrary: words }), { maxLength: 40 })
  .map((pieces) => pieces.join(""));
const encoded = fc
  .tuple(text, fc.constantFrom("utf-8", "utf-16le", "utf-16be", "windows-1252"), fc.boolean())
  .map(([written, encoding, mark]) => encodeText(written, encoding, mark));
const file = fc.oneof({ weight: 3, arbitrary: encoded }, { weight: 1, arbitrary: fc.uint8Array({ maxLength: 80 }) });

/** How many rows come out, or the sentence by which the file is refused. */
function readAll(bytes: Uint8Array): number | string {
  try {
    const { path, form, grids } = readCsv("fuzz.csv", bytes);
    const [grid] = grids;
    const sheet = grid && openSheet(path, form, grid);
    if (!sheet) return 0;
    const columns = Object.fromEntries(
      headersOf(built).flatMap((name, i) => {
        const header = sheet.headers[i];
        return header ? [[name, { column: header.name }]] : [];
      }),
    );
    const rows = importRows(sheet, built, { sheet: "fuzz", table: "built", columns, constants: {}, "leave-out": [] });
    expect(rows.map(({ row }) => row.number)).toEqual(sheet.rows.map(({ number }) => number));
    for (const row of rows) if ("reason" in row) expect(row.reason).not.toBe("");
    return rows.length;
  } catch (error) {
    if (error instanceof SheetError) return error.message;
    throw error;
  }
}

test("10,000 files", () => {
  const outcomes = { read: 0, refused: 0 };
  fc.assert(
    fc.property(file, (bytes) => {
      const result = readAll(bytes);
      if (typeof result === "string") {
        outcomes.refused++;
        expect(result).toMatch(SENTENCE);
      } else outcomes.read++;
    }),
    { seed: SEED, numRuns: 10_000 },
  );
  // Neither way may be a path that is hardly ever gone.
  expect(Math.min(outcomes.read, outcomes.refused)).toBeGreaterThan(500);
});
