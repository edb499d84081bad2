/**
 * npm run export: every table of a data folder as CSV files in a folder, or as sheets of one workbook, or one table as one CSV file;
 * import reads all of them back.
 */
import { existsSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import type { DataFile } from "../../engine/records/file-kinds.ts";
import { dataFilesOf } from "../data/data-files.ts";
import { readFolder } from "../data/read-folder.ts";
import { tryWrite } from "../write/try-write.ts";
import { headersOf, TABLES } from "./all-tables.ts";
import { guard } from "./formula-guard.ts";
import type { Say } from "./import-sheets.ts";
import { type CellValue, SheetError, textOf } from "./sheet.ts";
import { counted } from "./show-plan.ts";
import type { Table } from "./table.ts";
import { tableRows } from "./table-rows.ts";
import { OUR_CSV, writeCsv } from "./write-csv.ts";
import { type OutSheet, writeXlsx } from "./write-xlsx.ts";

export interface ExportOptions {
  readonly data: string;
  readonly to: string;
  /** Names of tables; without any, all. */
  readonly tables: readonly string[];
  readonly overwrite: boolean;
}

export async function exportTables({ data, to, tables, overwrite }: ExportOptions, say: Say): Promise<number> {
  const { sources, findings } = await readFolder(data);
  const files = dataFilesOf(sources);
  const broken = files.filter((file) => file.broken).map(({ path }) => path);
  if (broken.length > 0) {
    say(`${broken.join(", ")}: cannot be read, so an export would lack it; mend it first (npm run check)`);
    return 1;
  }
  const wanted = TABLES.filter(({ name }) => tables.length === 0 || tables.includes(name));
  const sheets = wanted.map((table) => ({ name: table.name, rows: cellsOf(table, files) }));
  const workbook = /\.xlsx$/i.test(to);
  const oneCsv = /\.csv$/i.test(to);
  if (oneCsv && sheets.length !== 1) {
    say(`--to ${to}: one CSV file holds one table; say which with --table, or name a folder or a workbook`);
    return 2;
  }
  const oneFile = workbook || oneCsv;
  const folder = oneFile ? dirname(to) : to;
  const out = workbook ? await oneWorkbook(to, sheets, say) : csvFiles(sheets, oneCsv ? basename(to) : undefined);
  if (!out) return 1;
  const there = [...out.keys()].map((name) => join(folder, name)).filter((path) => existsSync(path));
  if (there.length > 0 && !overwrite) {
    say(`${there.join(", ")}: is there already; name another place, or add --overwrite`);
    return 1;
  }
  const fault = tryWrite(folder, out);
  if (fault !== undefined) {
    say(fault);
    return 1;
  }
  for (const { name, rows } of sheets) say(`${String(rows.length - 1).padStart(6)}  ${name}`);
  const errors = findings.filter(({ severity }) => severity === "error").length;
  if (errors > 0)
    say(`The data folder has ${counted(errors, "error")}; what is wrong in it is wrong in the export too.`);
  // The name of a CSV file tells import its table; under another name the headers make a good guess, and no more.
  const guessed =
    oneCsv && basename(to).replace(/\.csv$/i, "") !== sheets[0]?.name ? " (with a mapping: --propose)" : "";
  say(
    `${oneFile ? basename(to) : `${counted(sheets.length, "file")} in ${to}`}. Back again: npm run import -- ${oneFile ? to : join(to, "*.csv")}${guessed}`,
  );
  return 0;
}

async function oneWorkbook(
  path: string,
  sheets: readonly OutSheet[],
  say: Say,
): Promise<Map<string, Uint8Array> | undefined> {
  try {
    return new Map([[basename(path), await writeXlsx(path, sheets)]]);
  } catch (error) {
    if (!(error instanceof SheetError)) throw error;
    say(error.message);
    return undefined;
  }
}

function csvFiles(sheets: readonly OutSheet[], as?: string): Map<string, Uint8Array> {
  return new Map(
    sheets.map(({ name, rows }) => {
      const texts = rows.map((row) => row.map(textOf));
      return [as ?? `${name}.csv`, writeCsv(texts, OUR_CSV)];
    }),
  );
}

/** Headers first. Amounts are numbers and no formulas; every text is guarded, and what looks like a number stays a text. */
export function cellsOf(table: Table, files: readonly DataFile[]): CellValue[][] {
  const lead = table.parents.length;
  return [
    headersOf(table),
    ...tableRows(table, files).map((row) =>
      row.map((cell, i): CellValue => {
        const kind = table.columns[i - lead]?.kind;
        const amount =
          (kind === "number" || kind === "text-or-number") && /\d/.test(cell) && String(Number(cell)) === cell;
        return amount ? Number(cell) : guard(cell);
      }),
    ),
  ];
}
