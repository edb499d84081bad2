/** The value of a field as the text of a cell, and back. What cannot be read stays a text, and the shape complains about it. */
import { joinList, splitList } from "./list-text.ts";
import type { Column } from "./table.ts";

/** How somebody else's sheet writes things; ours needs none of it. */
export interface Manner {
  /** What stands between the values of a list. */
  readonly split?: string | undefined;
  /** In which order a day is written. */
  readonly dates?: "day.month.year" | "month/day/year" | undefined;
  /** Numbers are written with a comma: 0,5. */
  readonly comma?: boolean | undefined;
}

export function cellText(column: Column, value: unknown): string {
  if (value === undefined || value === null) return "";
  if (column.list && Array.isArray(value)) return joinList(value.map((one) => singleText(column, one)));
  return singleText(column, value);
}

export function cellValue(column: Column, text: string, manner: Manner = {}): unknown {
  return column.list
    ? splitList(text, manner.split).map((one) => singleValue(column, one, manner))
    : singleValue(column, text.trim(), manner);
}

function singleText({ kind }: Column, value: unknown): string {
  if (kind === "yes-no" && typeof value === "boolean") return value ? "yes" : "no";
  // A text that would be taken for a number, or for a text in quotes, is put in quotes.
  if (
    kind === "text-or-number" &&
    typeof value === "string" &&
    (amountIn(value, {}) !== undefined || value.startsWith('"'))
  )
    return JSON.stringify(value);
  return String(value);
}

function singleValue(column: Column, text: string, manner: Manner): unknown {
  switch (column.kind) {
    case "number":
      return numberIn(text, manner) ?? text;
    case "text-or-number":
      return amountIn(text, manner) ?? inQuotes(text);
    case "yes-no":
      if (/^(yes|y|true|x|1)$/i.test(text)) return true;
      return /^(no|n|false|0|-)$/i.test(text) ? false : text;
    default:
      return column.day ? dayIn(text, manner) : figuresIn(text, manner);
  }
}

/** Where a text may stand too, '0012' and '1E5' are stamped on a part and no amounts; 0.500 is one. */
function amountIn(text: string, manner: Manner): number | undefined {
  const number = numberIn(text, manner);
  return number !== undefined && (/^-?(0|[1-9]\d*)([.,]\d+)?$/.test(text) || String(number) === text)
    ? number
    : undefined;
}

/** Where only a number can be meant, 1.50 and 1e3 are numbers too. */
function numberIn(text: string, { comma }: Manner): number | undefined {
  const written = comma ? text.replace(/^(-?\d+),(\d+)$/, "$1.$2") : text;
  return /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(written) ? Number(written) : undefined;
}

/** A text of figures alone, such as a window 3,5..3,62, is written with a comma too. */
function figuresIn(text: string, { comma }: Manner): string {
  return comma && /^[\d\s.,+-]+$/.test(text) ? text.replace(/(\d),(?=\d)/g, "$1.") : text;
}

function inQuotes(text: string): string {
  if (!/^".*"$/s.test(text)) return text;
  try {
    return String(JSON.parse(text));
  } catch {
    return text;
  }
}

/** A day in another order than year-month-day is only read where the mapping says which. */
function dayIn(text: string, { dates }: Manner): string {
  const [, first, second, year] = /^(\d{1,2})[./-](\d{1,2})[./-](\d{4})$/.exec(text) ?? [];
  if (!dates || !first || !second || !year) return text;
  const [day, month] = dates === "day.month.year" ? [first, second] : [second, first];
  return `${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`;
}
