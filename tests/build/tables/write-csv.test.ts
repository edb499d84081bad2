import { expect, test } from "vitest";
import { readCsv } from "../../../src/build/tables/read-csv.ts";
import { type CsvForm, OUR_CSV, writeCsv } from "../../../src/build/tables/write-csv.ts";

const ROWS = [
  ["a", "b"],
  ["x\ny", 'say "so"'],
  ["", " kept "],
  ["1,5;2", "tab\there"],
];

test("ours: mark, commas, CRLF, quotes only where they are needed", () => {
  expect(Buffer.from(writeCsv(ROWS, OUR_CSV)).toString()).toBe(
    '\uFEFFa,b\r\n"x\ny","say ""so"""\r\n," kept "\r\n"1,5;2",tab\there\r\n',
  );
});

test.each<Partial<CsvForm>>([
  {},
  { delimiter: ";", lineEnd: "\n", mark: false },
  { delimiter: "\t", encoding: "utf-16le" },
  { delimiter: "|", named: true, encoding: "windows-1252", mark: false },
])("in any form (%j) the rows come back, and so does the form", (some) => {
  const form = { ...OUR_CSV, ...some };
  // Without anything that says otherwise, plain text counts as UTF-8.
  const read = readCsv("a.csv", writeCsv(ROWS, form), { encoding: form.mark ? undefined : form.encoding });
  expect(read.form).toEqual(form);
  expect(read.grids[0]?.rows.map((row) => row.cells)).toEqual(ROWS);
});
