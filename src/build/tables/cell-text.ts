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
      return column.day ? dayIn(text, manner) : column.window ? windowIn(text, manner) : text;
  }
}

/** Where a text may stand too, '0012' and '1E5' are stamped on a part and no amounts; 0.500 is one. */
function amountIn(text: string, manner: Manner): number | undefined {
  const number = numberIn(text, manner);
  const written = manner.comma ? withPoint(text) : text;
  return number !== undefined && (/^-?(0|[1-9]\d*)(\.\d+)?$/.test(written) || String(number) === text)
    ? number
    : undefined;
}

/** Where only a number can be meant, 1.50 and 1e3 are numbers too. */
function numberIn(text: string, { comma }: Manner): number | undefined {
  const written = comma ? withPoint(text) : text;
  return /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(written) ? Number(written) : undefined;
}

/** A window is written with a comma too, as everything else of figures; any other text stays as it is. */
function windowIn(text: string, { comma }: Manner): string {
  return comma ? text.replaceAll(FIGURE, withPoint) : text;
}

/** A figure of a window 3,5..3,62: the two points between its ends are none of its own. */
const FIGURE = /\d+(?:[.,]\d+)*/g;

export function figuresIn(text: string): string[] {
  return text.match(FIGURE) ?? [];
}

/** 1.300,5 is written 1300.5. */
function withPoint(text: string): string {
  const [, sign, whole, rest] = /^([+-]?)(\d{1,3}(?:\.\d{3})+|\d+)(?:,(\d+))?$/.exec(text) ?? [];
  return whole === undefined ? text : `${sign}${whole.replaceAll(".", "")}${rest === undefined ? "" : `.${rest}`}`;
}

/**
 * Why a cell cannot be read, where its column could take it for what it may not mean. Where the comma is the decimal sign a point
 * stands before each three figures, so:
 *
 *   1.300,5 and 1.300.000    can mean one thing only
 *   1.300                    thirteen hundred here; whoever typed it in another manner meant 1.3
 *   1.3                      nothing here, and 1.3 in another manner
 */
export function cellFault(column: Column, text: string, { comma, split }: Manner): string | undefined {
  const isAmount = column.kind === "number" || column.kind === "text-or-number" || column.window;
  if (!comma || !isAmount) return undefined;
  const figures = (column.list ? splitList(text, split) : [text]).flatMap((one) =>
    column.window ? figuresIn(one) : [one.trim()],
  );
  const doubtful = figures.find((figure) => /^[+-]?\d*\.\d+$/.test(figure));
  if (doubtful === undefined) return undefined;
  return `'${doubtful}' has a point where numbers are written with a comma: write ${doubtful.replace(".", ",")}, or leave the point out`;
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
