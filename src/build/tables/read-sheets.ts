/** The one door for spreadsheets: what a file is, its first bytes tell, not its name. */
import { readFileSync, statSync } from "node:fs";
import { MOST_BYTES } from "./limits.ts";
import { type CsvManner, readCsv } from "./read-csv.ts";
import { readXlsx } from "./read-xlsx.ts";
import { SheetError, type SheetFile } from "./sheet.ts";

export async function readSheets(path: string, manner: CsvManner = {}): Promise<SheetFile> {
  const { size } = statSync(path);
  if (size > MOST_BYTES)
    throw new SheetError(path, undefined, `the file is larger than ${MOST_BYTES} bytes`, "split the sheet");
  return sheetsIn(path, readFileSync(path), manner);
}

export async function sheetsIn(path: string, bytes: Uint8Array, manner: CsvManner = {}): Promise<SheetFile> {
  const begins = (...start: number[]): boolean => start.every((byte, i) => bytes[i] === byte);
  if (begins(0x50, 0x4b)) return readXlsx(path, bytes);
  if (begins(0xd0, 0xcf, 0x11, 0xe0))
    throw new SheetError(
      path,
      undefined,
      "a workbook of the old kind, or one with a password",
      "save it as XLSX or CSV",
    );
  return readCsv(path, bytes, manner);
}
