/** Rejected rows as a file of the shape they came in, with the reasons in a column in front: mended, it is imported as it is. */
import { existsSync, readFileSync } from "node:fs";
import { guard } from "./formula-guard.ts";
import { type Sheet, WHY } from "./import-rows.ts";
import { type CellValue, textOf } from "./sheet.ts";
import { writeCsv } from "./write-csv.ts";
import { writeXlsx } from "./write-xlsx.ts";

/** A sheet and the reasons of its rejected rows, by row number. */
export interface RejectedSheet {
  readonly sheet: Sheet;
  readonly reasons: ReadonlyMap<number, readonly string[]>;
}

/** The bytes of the file; all sheets are of one file. */
export async function rejectsFile(path: string, sheets: readonly RejectedSheet[]): Promise<Uint8Array> {
  const [first] = sheets;
  const form = first?.sheet.form;
  if (first && form?.format === "csv")
    return writeCsv(
      rowsOf(first).map((row) => row.map(textOf)),
      form,
    );
  return writeXlsx(
    path,
    sheets.map((one) => ({ name: one.sheet.grid.name, rows: rowsOf(one) })),
  );
}

/** Where it was said to lie, or beside the sheet under a name that is free: what somebody may be mending is never written over. */
export function rejectsPath(sheetPath: string, bytes: Uint8Array, named?: string): string {
  const isFree = (path: string): boolean => !existsSync(path) || readFileSync(path).equals(bytes);
  if (named !== undefined && isFree(named)) return named;
  const [, stem = "", ending = ""] = /^(.*?)(?:\.rejected(?:-\d+)?)?(\.[^./\\]*)?$/s.exec(named ?? sheetPath) ?? [];
  for (let number = 1; ; number++) {
    const path = `${stem}.rejected${number > 1 ? `-${number}` : ""}${ending}`;
    if (isFree(path)) return path;
  }
}

/** What stands above the headers stays above them, so that a mapping that names their row still fits. */
function rowsOf({ sheet, reasons }: RejectedSheet): CellValue[][] {
  const { grid, headerRow } = sheet;
  const head = grid.rows.find((row) => row.number === headerRow);
  const old = head?.cells.findIndex((cell) => textOf(cell).trim().toLowerCase() === WHY) ?? -1;
  const lead = (why: string, cells: readonly CellValue[]): CellValue[] => [why, ...cells.filter((_, at) => at !== old)];
  const rows: CellValue[][] = [];
  for (const row of grid.rows) {
    if (row.number > headerRow) break;
    while (rows.length < row.number - 1) rows.push([]);
    rows.push(lead(row.number === headerRow ? WHY : "", row.cells));
  }
  for (const row of grid.rows) {
    const why = reasons.get(row.number);
    if (why) rows.push(lead(guard(why.join("; ")), row.cells));
  }
  return rows;
}
