/** Sheets for the made-up tractors of the tiny folder, brought in without a disk. */

import { tableNamed } from "../../../src/build/tables/all-tables.ts";
import { importRows, openSheet, type Sheet } from "../../../src/build/tables/import-rows.ts";
import type { SheetMapping } from "../../../src/build/tables/mapping.ts";
import { type Plan, planImport } from "../../../src/build/tables/plan-import.ts";
import { propose } from "../../../src/build/tables/propose.ts";
import { readCsv } from "../../../src/build/tables/read-csv.ts";
import { type DataFile, kindOf } from "../../../src/engine/records/file-kinds.ts";
import { type Folder, sourceOf, TINY } from "../../helpers/tiny-folder.ts";

/** A sheet from lines of CSV; its name is the name of its table unless the test is about names. */
export function sheetOf(name: string, ...lines: string[]): Sheet {
  const { path, form, grids } = readCsv(`${name}.csv`, Buffer.from(lines.join("\n")));
  const [grid] = grids;
  const sheet = grid && openSheet(path, form, grid);
  if (!sheet) throw new Error("the sheet is empty");
  return sheet;
}

export function filesOf(folder: Folder = TINY): Map<string, DataFile> {
  return new Map(
    Object.entries(folder).flatMap(([path, text]): [string, DataFile][] => {
      const kind = kindOf(path);
      const { value, faults } = sourceOf(path, text);
      return kind ? [[path, { path, kind, value, broken: faults.length > 0 }]] : [];
    }),
  );
}

/** The rows of a sheet; a row that cannot even be read is no row of a plan. */
export function rowsOf(sheet: Sheet, mapping?: SheetMapping) {
  const used = mapping ?? propose(sheet)?.mapping;
  const table = used && tableNamed(used.table);
  if (!table) throw new Error("no table");
  return importRows(sheet, table, used).flatMap((row) => ("reason" in row ? [] : [row]));
}

export function planOf(sheets: readonly Sheet[], { overwrite = false, folder = TINY } = {}): Plan {
  const rows = sheets.flatMap((sheet) => rowsOf(sheet));
  return planImport(
    { files: filesOf(folder), text: (path) => folder[path] ?? "", schema: () => undefined },
    rows,
    overwrite,
  );
}

/** "built 2: why", a line a rejected row. */
export function rejectedOf({ rejected }: Plan): string[] {
  return [...rejected].map(([{ sheet, row }, reasons]) => `${sheet.grid.name} ${row.number}: ${reasons.join("; ")}`);
}
