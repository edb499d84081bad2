/** From the rows of a sheet and its mapping to what each row says of which table; rows that cannot be read come with the reason. */
import { nearest } from "../../engine/scope/nearest.ts";
import { cellFault, cellValue } from "./cell-text.ts";
import { unguard } from "./formula-guard.ts";
import type { Filled, SheetMapping } from "./mapping.ts";
import { type CellValue, type Form, type Grid, Percentage, SheetError, type SheetRow, textOf } from "./sheet.ts";
import { type Column, FILE_COLUMN, type Table } from "./table.ts";

/** A column that tells why a row was rejected; on the way in it is passed over. */
export const WHY = "rejected because";

/** A sheet with its headers found. */
export interface Sheet {
  readonly path: string;
  readonly form: Form;
  readonly grid: Grid;
  readonly headerRow: number;
  readonly headers: readonly Header[];
  /** Rows below the headers with anything in them. */
  readonly rows: readonly SheetRow[];
}

export interface Header {
  readonly name: string;
  /** Its place in a row. */
  readonly at: number;
}

export interface ImportRow {
  readonly sheet: Sheet;
  readonly row: SheetRow;
  readonly table: Table;
  /** In which entries it stands, the file first. */
  readonly parents: readonly string[];
  readonly fields: readonly (readonly [Column, unknown])[];
  /** Where its file shall lie. */
  readonly place: string | undefined;
}

/** The headers of a sheet; two of one name, or none at all, and nothing below them can be told apart. */
export function openSheet(path: string, form: Form, grid: Grid, headerRow?: number): Sheet | undefined {
  const hasText = (row: SheetRow): boolean => row.cells.some((cell) => textOf(cell).trim() !== "");
  const first = headerRow ?? likelyHeaders(grid);
  const head = grid.rows.find((row) => row.number === first);
  const where = form.format === "xlsx" ? `${path}, sheet '${grid.name}'` : path;
  if (first === undefined) return undefined;
  if (!head || !hasText(head))
    throw new SheetError(where, first, "no headers stand there", "say in which row with header:");
  if (head.fault) throw new SheetError(where, first, head.fault, "mend the headers");
  const rows = grid.rows.filter((row) => row.number > first && (hasText(row) || row.fault !== undefined));
  const headers: Header[] = [];
  head.cells.forEach((cell, at) => {
    const name = unguard(textOf(cell)).trim();
    if (name.toLowerCase() === WHY) return;
    const used = rows.some((row) => textOf(row.cells[at]).trim() !== "");
    if (name === "" && !used) return;
    headers.push({ name: name || `column ${letters(at)}`, at });
  });
  const twice = headers.find(({ name }, i) => headers.findIndex((other) => other.name === name) !== i);
  if (twice)
    throw new SheetError(where, first, `two columns are called '${twice.name}'`, "give one of them another name");
  return { path, form, grid, headerRow: first, headers, rows };
}

/** The first row with more than half as many cells as the widest after it: offices put a title above, with nothing beside it. */
function likelyHeaders({ rows }: Grid): number | undefined {
  const filled = (row: SheetRow): number => row.cells.filter((cell) => textOf(cell).trim() !== "").length;
  const seen = rows.filter((row) => filled(row) > 0 || row.fault !== undefined).slice(0, 20);
  const widest = Math.max(...seen.map(filled));
  return seen.find((row) => filled(row) * 2 > widest)?.number;
}

/** A number of per cent, and the units in which it is the number that stands there. */
const PERCENT = /^([+-]?[\d.,]+)\s*%$/;
const IN_PERCENT = /^(%|per ?cent)$/i;

/** What every row of the sheet says, or why it says nothing. */
export function importRows(
  sheet: Sheet,
  table: Table,
  mapping: SheetMapping,
): (ImportRow | { readonly row: SheetRow; readonly reason: string })[] {
  const width = widthOf(sheet);
  const places = new Map(sheet.headers.map(({ name, at }) => [name, at]));
  return sheet.rows.map((row) => {
    const cellOf = (name: string): CellValue | undefined =>
      row.cells[places.get(mapping.columns[name]?.column ?? "") ?? -1];
    const told = (name: string): string => {
      const filled = mapping.columns[name];
      if (!filled) return mapping.constants[name] ?? "";
      const text = unguard(textOf(cellOf(name))).trim();
      return translated(filled, text) ?? text;
    };
    const reject = (reason: string) => ({ row, reason });
    if (row.fault) return reject(row.fault);
    if (sheet.form.format === "csv" && row.cells.length !== width)
      return reject(
        `the row has ${row.cells.length} cells and the headers ${width}: a quote or a separator is missing or too many`,
      );
    const parents = table.parents.map(({ column }) => told(column));
    const missing = table.parents.find((_, i) => parents[i] === "");
    if (missing) return reject(`'${missing.column}' is empty; say in which the row belongs`);
    const faults = table.parents.flatMap(({ column }) => madeDay(column, cellOf(column)));
    const fields = table.columns.flatMap((column): [Column, unknown][] => {
      const text = told(column.name);
      if (column.name === FILE_COLUMN || text === "") return [];
      const cell = cellOf(column.name);
      const isNumber = typeof cell === "number" || cell instanceof Percentage;
      if (!column.day) faults.push(...madeDay(column.name, cell));
      const filled = mapping.columns[column.name];
      // A number of a workbook has no decimal sign, and what the mapping translates to is written as we write it.
      const asOurs = isNumber || translated(filled, unguard(textOf(cell)).trim()) !== undefined;
      const manner = { ...filled, comma: filled?.comma === true && !asOurs };
      const percent = column.kind === "number" ? PERCENT.exec(text)?.[1] : undefined;
      if (percent !== undefined && !IN_PERCENT.test(told("unit"))) {
        const unit = told("unit");
        faults.push(`'${column.name}' is ${text}, and ${unit === "" ? "no unit says so" : `the unit is '${unit}'`}`);
      }
      const fault = cellFault(column, percent ?? text, manner);
      if (fault) faults.push(`'${column.name}': ${fault}`);
      return [[column, cellValue(column, percent ?? text, manner)]];
    });
    if (faults.length > 0) return reject(faults.join("; "));
    if (table.rows === "file" && fields[0]?.[0] !== table.columns[0])
      return reject(`'${table.columns[0]?.name}' is empty; nothing else says which it is`);
    const place = told(FILE_COLUMN);
    return { sheet, row, table, parents, fields, place: place === "" ? undefined : place };
  });
}

/** What was typed is gone: 12-75 became the first of December 1975, and 34201 under a format of days one in 1993. */
function madeDay(column: string, cell: CellValue | undefined): string[] {
  return cell instanceof Date
    ? [
        `'${column}' holds the day ${textOf(cell)}, which the spreadsheet program made of something else; format the cell as text and type it again`,
      ]
    : [];
}

function translated(filled: Filled | undefined, text: string): string | undefined {
  const { translate = {} } = filled ?? {};
  return Object.hasOwn(translate, text) ? translate[text]?.trim() : undefined;
}

/** What the cells under a header say, one a row. */
export function cellTexts(sheet: Sheet, header: string): string[] {
  const at = sheet.headers.find(({ name }) => name === header)?.at ?? -1;
  return sheet.rows.map((row) => unguard(textOf(row.cells[at])).trim());
}

/** A mapping that names a column that the sheet has not, or leaves one unsaid, would lose something. */
export function mappingFaults(sheet: Sheet, mapping: SheetMapping): string[] {
  const headers = sheet.headers.map(({ name }) => name);
  const faults: string[] = [];
  for (const name of [...Object.values(mapping.columns).map(({ column }) => column), ...mapping["leave-out"]]) {
    if (headers.includes(name)) continue;
    const meant = nearest(name, headers);
    faults.push(
      `the mapping names the column '${name}', which is not there${meant ? `; did you mean '${meant}'?` : ""}`,
    );
  }
  const used = new Set([...Object.values(mapping.columns).map(({ column }) => column), ...mapping["leave-out"]]);
  for (const name of headers)
    if (!used.has(name)) faults.push(`the column '${name}' goes nowhere; map it, or list it under leave-out`);
  return faults;
}

/** How the row is called where people read about it. */
export function rowName({ sheet, row }: Pick<ImportRow, "sheet" | "row">): string {
  const name = sheet.path.replace(/^.*[/\\]/, "");
  return sheet.form.format === "xlsx"
    ? `${name}, sheet '${sheet.grid.name}', row ${row.number}`
    : `${name}, row ${row.number}`;
}

function widthOf({ grid, headerRow }: Sheet): number {
  return grid.rows.find((row) => row.number === headerRow)?.cells.length ?? 0;
}

/** A, B … Z, AA: as a spreadsheet program calls its columns. */
function letters(at: number): string {
  return (at >= 26 ? letters(Math.floor(at / 26) - 1) : "") + String.fromCharCode(65 + (at % 26));
}
