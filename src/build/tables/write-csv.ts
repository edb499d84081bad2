/** Rows as a CSV text of a given form (RFC 4180: quotes only where they are needed, doubled inside). */
import { stringify } from "csv-stringify/sync";
import { encodeText } from "./encoding.ts";
import type { Form } from "./sheet.ts";

export type CsvForm = Extract<Form, { format: "csv" }>;

/** Comma, CRLF as the RFC has it, and a byte order mark, without which spreadsheet programs take UTF-8 for something else. */
export const OUR_CSV: CsvForm = {
  format: "csv",
  encoding: "utf-8",
  mark: true,
  delimiter: ",",
  lineEnd: "\r\n",
  named: false,
};

export function writeCsv(rows: readonly (readonly string[])[], form: CsvForm): Uint8Array {
  const { delimiter, lineEnd, named, encoding, mark } = form;
  const text = stringify(
    rows.map((row) => [...row]),
    { delimiter, record_delimiter: lineEnd, quoted_match: /[\r\n]|^\s|\s$/ },
  );
  return encodeText((named ? `sep=${delimiter}${lineEnd}` : "") + text, encoding, mark);
}
