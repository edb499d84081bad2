/** How the columns of somebody's sheet fill the columns of a table: the shape of a mapping file, and its check. */
import { z } from "zod";
import { checkShape } from "../../engine/records/check-shape.ts";
import { Complaints } from "../../engine/records/complaint.ts";
import { nearest } from "../../engine/scope/nearest.ts";
import { type Finding, locate } from "../data/read-folder.ts";
import { readSource } from "../data/source.ts";
import { isFields } from "../write/without-defaults.ts";
import { headersOf, TABLES, tableNamed } from "./all-tables.ts";

const filled = z.strictObject({
  column: z.string().min(1).describe("The header of the sheet's column."),
  split: z.string().min(1).optional().describe("What stands between the values of a list. Default: |."),
  dates: z.enum(["day.month.year", "month/day/year"]).optional().describe("Default: year-month-day."),
  comma: z.boolean().optional().describe("Numbers are written with a comma: 0,5. Default: no."),
  translate: z.record(z.string(), z.string()).optional().describe("What the sheet says, and what is meant."),
});

const sheetMapping = z.strictObject({
  sheet: z.string().min(1).describe("The name of the sheet; of a CSV file the file's name without its ending."),
  table: z.string().describe("The table that its rows belong to."),
  header: z.int().min(1).optional().describe("The row with the headers. Default: the first row with anything in it."),
  columns: z
    .record(z.string(), filled)
    .describe("Column of the table: header of the sheet's column, or that with how it is written."),
  constants: z.record(z.string(), z.string()).default({}).describe("What every row says, without a column of its own."),
  "leave-out": z.array(z.string()).default([]).describe("Columns that are knowingly not brought in."),
});

const mappingFile = z.strictObject({
  sheets: z.array(sheetMapping).default([]),
  "leave-out": z.array(z.string()).default([]).describe("Sheets that are knowingly not brought in."),
});

export type Filled = z.infer<typeof filled>;
export type SheetMapping = z.infer<typeof sheetMapping>;

export interface Mappings {
  readonly sheets: readonly SheetMapping[];
  /** Sheets that are knowingly not brought in. */
  readonly leaveOut: readonly string[];
}

export interface ReadMapping extends Mappings {
  readonly findings: readonly Finding[];
}

/** The sheets of a mapping file, or everything that is wrong with it. */
export function readMapping(path: string, text: string): ReadMapping {
  const source = readSource(path, text, undefined);
  const complaints = new Complaints(path);
  const value = source.faults.length > 0 ? undefined : checkShape(mappingFile, writtenOut(source.value), complaints);
  value?.sheets.forEach((sheet, i) => {
    checkNames(sheet, i, complaints);
  });
  const findings = [...source.faults, ...complaints.list].map((complaint) => locate(complaint, source));
  if (!value || findings.length > 0) return { sheets: [], leaveOut: [], findings };
  return { sheets: value.sheets, leaveOut: value["leave-out"], findings: [] };
}

/** 'place: Where' is short for 'place: { column: Where }'. */
function writtenOut(value: unknown): unknown {
  if (!isFields(value) || !Array.isArray(value.sheets)) return value;
  const sheets = value.sheets.map((sheet: unknown) => {
    if (!isFields(sheet) || !isFields(sheet.columns)) return sheet;
    const columns = Object.entries(sheet.columns).map(([name, how]) => [
      name,
      typeof how === "string" ? { column: how } : how,
    ]);
    return { ...sheet, columns: Object.fromEntries(columns) };
  });
  return { ...value, sheets };
}

function checkNames(sheet: SheetMapping, i: number, complaints: Complaints): void {
  const table = tableNamed(sheet.table);
  if (!table) {
    const names = TABLES.map(({ name }) => name);
    const meant = nearest(sheet.table, names);
    const hint = meant ? `did you mean '${meant}'?` : `tables are ${names.join(", ")}`;
    complaints.error(["sheets", i, "table"], `no table is called '${sheet.table}'`, hint);
    return;
  }
  const known = headersOf(table);
  for (const field of ["columns", "constants"] as const)
    for (const name of Object.keys(sheet[field])) {
      const path = ["sheets", i, field, name];
      if (field === "constants" && name in sheet.columns)
        complaints.error(path, `'${name}' has a column already`, "leave one of them out", { key: true });
      if (known.includes(name)) continue;
      const meant = nearest(name, known);
      const hint = meant ? `did you mean '${meant}'?` : `columns are ${known.join(", ")}`;
      complaints.error(path, `the table ${table.name} has no column '${name}'`, hint, { key: true });
    }
}
