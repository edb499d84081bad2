/** What an import would do, for people: files with their changes, rejected rows with their reasons, and sums that add up. */
import { fieldDiff } from "./field-diff.ts";
import { type ImportRow, rowName } from "./import-rows.ts";
import type { Plan } from "./plan-import.ts";

/** A terminal holds so much; what is left out is counted. */
const MOST_FIELDS = 8;
const MOST_FILES = 40;
const MOST_REJECTED = 40;

export interface Rejected {
  readonly row: Pick<ImportRow, "sheet" | "row">;
  readonly reasons: readonly string[];
}

export function showFiles({ drafts, texts }: Plan): string[] {
  const changed = drafts.filter(({ path }) => texts.has(path)).sort((a, b) => (a.path < b.path ? -1 : 1));
  return shortened(changed, MOST_FILES, "files", ({ path, before, value }) => {
    if (!before) return [`new      ${path}`];
    return [
      `changed  ${path}`,
      ...shortened(fieldDiff(before, value), MOST_FIELDS, "fields", (line) => [`           ${line}`]),
    ];
  });
}

export function showRejected(rejected: readonly Rejected[]): string[] {
  return shortened(rejected, MOST_REJECTED, "rejected rows", ({ row, reasons }) => [
    `rejected ${rowName(row)}: ${reasons.join("; ").replaceAll(/\s+/g, " ")}`,
  ]);
}

/** "12 rows: 9 written, 2 unchanged, 1 rejected". */
export function showSums(sums: { written: number; unchanged: number; rejected: number }): string {
  const rows = sums.written + sums.unchanged + sums.rejected;
  return `${counted(rows, "row")}: ${sums.written} written, ${sums.unchanged} unchanged, ${sums.rejected} rejected`;
}

export function counted(n: number, word: string): string {
  return `${n} ${word}${n === 1 ? "" : "s"}`;
}

function shortened<T>(list: readonly T[], most: number, what: string, lines: (one: T) => string[]): string[] {
  const shown = list.slice(0, most).flatMap(lines);
  return list.length > most ? [...shown, `         … and ${list.length - most} more ${what}`] : shown;
}
