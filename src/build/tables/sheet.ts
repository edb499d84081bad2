/** A sheet as it came in: rows of cells with the numbers by which a spreadsheet program shows them. */

export type CellValue = string | number | boolean | Date | Percentage | null;

/** A number that the spreadsheet program shows as a percentage: of 50 % it keeps 0.5, and nobody who reads the sheet sees that. */
export class Percentage {
  readonly shown: number;

  constructor(shown: number) {
    this.shown = shown;
  }
}

export interface SheetRow {
  /** As the spreadsheet program counts: the first row is 1. */
  readonly number: number;
  /** As they came, so that a rejected row goes back as it was. */
  readonly cells: readonly CellValue[];
  /** Why the row cannot be read at all. */
  readonly fault?: string;
}

/** In which manner the file was written, so that rejected rows go back in the same. */
export type Form =
  | { readonly format: "xlsx" }
  | {
      readonly format: "csv";
      readonly encoding: string;
      /** The file begins with the byte order mark of its encoding. */
      readonly mark: boolean;
      readonly delimiter: string;
      readonly lineEnd: string;
      /** Its first line names the delimiter: 'sep=;'. */
      readonly named: boolean;
    };

export interface Grid {
  /** The name of the sheet; of a CSV file the file's name without its ending. */
  readonly name: string;
  readonly rows: readonly SheetRow[];
  /** The spreadsheet program does not show it. */
  readonly hidden?: boolean;
  /** What a person should know about how it was read. */
  readonly notes: readonly string[];
}

export interface SheetFile {
  readonly path: string;
  readonly form: Form;
  readonly grids: readonly Grid[];
}

/** Nothing can be taken from the file; the message says where and what to do. */
export class SheetError extends Error {
  constructor(path: string, row: number | undefined, message: string, hint: string) {
    super(`${path}${row === undefined ? "" : `, row ${row}`}: ${message}; ${hint}`);
  }
}

/** What a cell says, as a text. */
export function textOf(cell: CellValue | undefined): string {
  if (cell === null || cell === undefined) return "";
  if (typeof cell === "boolean") return cell ? "yes" : "no";
  if (cell instanceof Date) return dateText(cell);
  if (cell instanceof Percentage) return `${cell.shown} %`;
  return String(cell);
}

/** Spreadsheets know no time zone, so neither does this. */
function dateText(date: Date): string {
  const [day = "", time = ""] = date.toISOString().split("T");
  return time.startsWith("00:00:00") ? day : `${day} ${time.slice(0, 8)}`;
}

/** What no text of a data folder may hold: signs that cannot be seen and that no file can carry everywhere. */
export function unreadableSign(text: string): string | undefined {
  if (text.includes("\0")) return "a NUL sign";
  if (/(?![\t\n\r])\p{Cc}/u.test(text)) return "a control sign";
  return text.isWellFormed() ? undefined : "half of a sign";
}
