/** Reads a workbook: every sheet of it, days as year-month-day, formulas by what they last came to. */
import { unzipSync, zipSync } from "fflate";
import readWorkbook from "read-excel-file/universal";
import { MOST_UNPACKED } from "./limits.ts";
import { percentStyles } from "./percent-styles.ts";
import {
  type CellValue,
  type Grid,
  Percentage,
  SheetError,
  type SheetFile,
  type SheetRow,
  unreadableSign,
} from "./sheet.ts";
import { counted } from "./show-plan.ts";
import { FAULT, PERCENT, type Tamed, tameSheet } from "./tame-sheet.ts";
import { tameWorkbook } from "./tame-workbook.ts";
import { workbookSheets } from "./workbook-sheets.ts";

export async function readXlsx(path: string, bytes: Uint8Array): Promise<SheetFile> {
  const files = unpack(path, bytes);
  const textOf = (ending: RegExp): string => {
    const name = Object.keys(files).find((file) => ending.test(file));
    return name === undefined ? "" : new TextDecoder().decode(files[name]);
  };
  const percents = percentStyles(textOf(/(^|\/)styles\.xml$/));
  const order = workbookSheets(textOf(/(^|\/)workbook\.xml$/), textOf(/(^|\/)workbook\.xml\.rels$/));
  const notes = new Map<string, string[]>();
  for (const [name, content] of Object.entries(files)) {
    if (/(^|\/)(workbook|styles)\.xml$/.test(name))
      files[name] = new TextEncoder().encode(tameWorkbook(name, new TextDecoder().decode(content)));
    if (!/(^|\/)worksheets\/[^/]*\.xml$/.test(name)) continue;
    const tamed = tameSheet(new TextDecoder().decode(content), percents);
    if (tamed.beyond)
      throw new SheetError(
        path,
        undefined,
        `its cell ${tamed.beyond} lies beyond every sheet that can be read`,
        "split the sheet",
      );
    notes.set(name, notesOf(tamed));
    files[name] = new TextEncoder().encode(tamed.xml);
  }
  const sheets = await readOrSay(path, files);
  const grids = sheets.map(({ sheet, data }, i): Grid => {
    const rows = data.map((cells, at) => rowOf(at + 1, cells));
    const { file = "", hidden = false } = order[i] ?? {};
    const own = file === "" ? undefined : [...notes].find(([name]) => name.endsWith(`/${file}`))?.[1];
    return { name: sheet, rows, ...(hidden ? { hidden } : {}), notes: own ?? [] };
  });
  return { path, form: { format: "xlsx" }, grids };
}

/** What was not read as it seems to stand there, with the first few of its places. */
function notesOf({ formulas, percentages, hiddenRows, hiddenColumns, filtered }: Tamed): string[] {
  const note = (places: readonly string[], what: string, how: string): string[] => {
    const which = `${places.slice(0, 5).join(", ")}${places.length > 5 ? " …" : ""}`;
    return places.length > 0 ? [`${counted(places.length, what)}, ${how} (${which})`] : [];
  };
  return [
    ...note(formulas, "formula", "read by the stored result"),
    ...note(percentages, "percentage", "read as the number shown"),
    ...note(hiddenRows, "hidden row", `read like all others${filtered ? ", though a filter is set" : ""}`),
    ...note(hiddenColumns, "hidden column", "read like all others"),
  ];
}

/** Only as much is unpacked as the directory of the archive promises, and that must be little enough. */
function unpack(path: string, bytes: Uint8Array): Record<string, Uint8Array> {
  let size = 0;
  try {
    return unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        if (!/\.(xml|rels)$/.test(name)) return false;
        size += originalSize;
        if (size > MOST_UNPACKED)
          throw new SheetError(path, undefined, `unpacked it would be larger than ${MOST_UNPACKED} bytes`, "split it");
        return true;
      },
    });
  } catch (error) {
    if (error instanceof SheetError) throw error;
    throw new SheetError(path, undefined, "the workbook is damaged: it cannot be unpacked", "save it again as XLSX");
  }
}

async function readOrSay(path: string, files: Record<string, Uint8Array>): ReturnType<typeof readWorkbook> {
  try {
    const { buffer } = zipSync(files, { level: 0 });
    return await readWorkbook(buffer as ArrayBuffer, { trim: false });
  } catch (error) {
    // The library throws errors of its own for what it finds, and of any kind for what it does not expect.
    const said = error instanceof Error ? error.message.split("\n")[0] : "";
    const row = /at row (\d+)/.exec(said ?? "")?.[1];
    const what = files["xl/workbook.xml"] ? "the workbook is damaged" : "it is no XLSX workbook";
    throw new SheetError(path, row ? Number(row) : undefined, `${what} (${said})`, "save it again as XLSX");
  }
}

function rowOf(number: number, cells: readonly unknown[]): SheetRow {
  const faults: string[] = [];
  const read = cells.map((cell): CellValue => {
    if (typeof cell === "string") {
      if (cell.startsWith(FAULT)) {
        faults.push(cell.slice(FAULT.length));
        return null;
      }
      if (cell.startsWith(PERCENT)) return new Percentage(Number(cell.slice(PERCENT.length)));
      const sign = unreadableSign(cell);
      if (sign) faults.push(`the row holds ${sign}`);
      return cell;
    }
    if (cell instanceof Date) return Number.isNaN(cell.valueOf()) ? null : cell;
    return typeof cell === "number" || typeof cell === "boolean" ? cell : null;
  });
  return { number, cells: read, ...(faults.length > 0 ? { fault: faults.join("; ") } : {}) };
}
