/** A workbook with every text typed as a text: no cell of it can be run as a formula, and '0012' stays as it is. */
import { unzipSync, zipSync } from "fflate";
import writeWorkbook, { type Cell } from "write-excel-file/node";
import { LONGEST_CELL } from "./limits.ts";
import { type CellValue, Percentage, SheetError } from "./sheet.ts";

export interface OutSheet {
  readonly name: string;
  readonly rows: readonly (readonly CellValue[])[];
}

export async function writeXlsx(path: string, sheets: readonly OutSheet[]): Promise<Uint8Array> {
  for (const { name, rows } of sheets)
    rows.forEach((row, i) => {
      if (row.some((cell) => typeof cell === "string" && cell.length > LONGEST_CELL))
        throw new SheetError(
          `${path}, sheet '${name}'`,
          i + 1,
          "a text is longer than a cell can hold",
          "write CSV instead",
        );
    });
  const book = sheets.map(({ name, rows }) => ({
    sheet: name,
    data: rows.map((row) => row.map(cellOf)),
  }));
  return undated(await writeWorkbook(book).toBuffer());
}

/** The same rows give the same bytes: the files in the archive carry no time of writing. */
function undated(bytes: Uint8Array): Uint8Array {
  return zipSync(unzipSync(bytes), { mtime: new Date(1980, 0, 1) });
}

function cellOf(value: CellValue): Cell {
  if (value === null || value === "") return null;
  if (typeof value === "string") return { value: escaped(value), type: String, format: "@" };
  if (value instanceof Date) return { value, type: Date, format: "yyyy-mm-dd" };
  if (value instanceof Percentage) {
    const places = /\.(\d+)/.exec(String(value.shown))?.[1] ?? "";
    return { value: value.shown / 100, type: Number, format: `0${places && `.${"0".repeat(places.length)}`}%` };
  }
  return { value, type: typeof value === "number" ? Number : Boolean };
}

/** Signs that XML cannot carry are written as the standard has it (ECMA-376 part 1, 22.9.2.19): _x000D_. */
function escaped(text: string): string {
  return text
    .replaceAll(/_(?=x[0-9A-Fa-f]{4}_)/g, "_x005F_")
    .replaceAll(
      /(?![\t\n])[\p{Cc}\uFFFE\uFFFF]/gu,
      (sign) => `_x${sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`,
    );
}
