/** Reads a CSV file of any usual dialect and encoding (RFC 4180 and what offices make of it). */
import { CsvError, parse } from "csv-parse/sync";
import { dialectOf } from "./dialect.ts";
import { type Decoded, decodeText } from "./encoding.ts";
import { MOST_COLUMNS, MOST_ROWS } from "./limits.ts";
import { SheetError, type SheetFile, type SheetRow, unreadableSign } from "./sheet.ts";

export interface CsvManner {
  readonly encoding?: string | undefined;
  readonly delimiter?: string | undefined;
}

export function readCsv(path: string, bytes: Uint8Array, manner: CsvManner = {}): SheetFile {
  if (bytes.length === 0) throw new SheetError(path, undefined, "the file is empty", "save the sheet again");
  const decoded = decodeOrSay(path, bytes, manner.encoding);
  const { text, encoding, mark, guessed } = decoded;
  const { start, ...dialect } = dialectOf(text, manner.delimiter);
  const records = recordsOf(path, text.slice(start), dialect.delimiter);
  const width = records[0]?.length ?? 0;
  if (width > MOST_COLUMNS)
    throw new SheetError(path, 1, `it has ${width} columns, more than ${MOST_COLUMNS}`, "split the sheet");
  const rows = records.map((cells, i): SheetRow => {
    const sign = cells.map(unreadableSign).find((fault) => fault !== undefined);
    return { number: i + 1, cells, ...(sign ? { fault: `the row holds ${sign}` } : {}) };
  });
  const name = path.replace(/^.*[/\\]/, "").replace(/(\.rejected(-\d+)?)?\.[^.]*$/, ""); // rejected rows are rows of the same sheet
  const notes = guessed ? [`read as ${encoding}, which is a guess; --encoding says another`] : [];
  return { path, form: { format: "csv", encoding, mark, ...dialect }, grids: [{ name, rows, notes }] };
}

function decodeOrSay(path: string, bytes: Uint8Array, encoding: string | undefined): Decoded {
  try {
    return decodeText(bytes, encoding);
  } catch (error) {
    if (error instanceof RangeError)
      throw new SheetError(
        path,
        undefined,
        `no encoding is called '${encoding}'`,
        "name one such as utf-8 or windows-1252",
      );
    if (error instanceof TypeError)
      throw new SheetError(path, undefined, `it is no text in ${encoding ?? "UTF-16"}`, "save it as 'CSV UTF-8'");
    throw error;
  }
}

function recordsOf(path: string, text: string, delimiter: string): string[][] {
  try {
    return parse(text, {
      delimiter,
      record_delimiter: ["\r\n", "\n", "\r"],
      relax_column_count: true,
      // An inch sign within a cell (3/8" bolt) is meant as it stands; a cell that begins with a quote has to end with one.
      relax_quotes: true,
      to: MOST_ROWS + 2,
      on_record: (record: string[], { records }) => {
        if (records > MOST_ROWS + 1)
          throw new SheetError(path, records, `it has more than ${MOST_ROWS} rows`, "split the sheet");
        return record;
      },
    });
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const row = typeof error.records === "number" ? error.records + 1 : 1;
    if (error.code === "CSV_QUOTE_NOT_CLOSED")
      throw new SheetError(
        path,
        row,
        "a quote is opened and never closed",
        'close it, or write "" for a quote within a cell',
      );
    throw new SheetError(path, row, "quotes stand where none can", 'write "" for a quote within a cell');
  }
}
