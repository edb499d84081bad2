/** A mapping for a sheet that has none: which table its rows belong to, what its columns mean, and how its cells are written. */
import { nearest } from "../../engine/scope/nearest.ts";
import { TABLES } from "./all-tables.ts";
import { figuresIn } from "./cell-text.ts";
import { cellTexts, type Sheet } from "./import-rows.ts";
import { LIST_SIGN } from "./list-text.ts";
import type { Filled, SheetMapping } from "./mapping.ts";
import { type Match, matchHeaders } from "./match-headers.ts";
import type { Column, Table } from "./table.ts";

export interface Proposal {
  readonly mapping: SheetMapping;
  readonly table: Table;
  /** What a person has to look over before anything is written. */
  readonly guesses: readonly string[];
  /** Headers that mean no column. */
  readonly unmatched: readonly string[];
  /** Columns that every row needs and no header fills. */
  readonly missing: readonly string[];
}

/** Nothing when no header means a column of any table. */
export function propose(sheet: Sheet): Proposal | undefined {
  const headers = sheet.headers.map(({ name }) => name);
  const found = bestTable(sheet.grid.name, headers);
  if (!found) return undefined;
  const { table, matches, named } = found;
  const guesses = matches
    .filter(({ sure }) => !sure)
    .map(({ header, name }) => `'${header}' is taken for the column '${name}'`);
  if (!named) guesses.push(`the rows are taken for rows of the table '${table.name}'`);
  const columns: Record<string, Filled> = {};
  for (const { header, name } of matches) {
    const column = table.columns.find((one) => one.name === name);
    const { how, said } = column ? mannerOf(column, valuesOf(sheet, header)) : { how: {}, said: [] };
    columns[name] = { column: header, ...how };
    guesses.push(...said.map((what) => `'${header}': ${what}`));
  }
  const unmatched = headers.filter((header) => !matches.some((match) => match.header === header));
  const mapping = { sheet: sheet.grid.name, table: table.name, columns, constants: {}, "leave-out": [] };
  return { mapping, table, guesses, unmatched, missing: neededBy(table).filter((name) => !(name in columns)) };
}

/** The table of the sheet's name; else the one of which the headers fill the most, and of equals the one they fill best. */
function bestTable(
  name: string,
  headers: readonly string[],
): { table: Table; matches: Match[]; named: boolean } | undefined {
  const called = name.toLowerCase().replaceAll(/[\s_]+/g, "-");
  const own = TABLES.find((table) => table.name === called);
  const scored = TABLES.map((table) => {
    const matches = matchHeaders(table, headers);
    const sure = matches.filter((match) => match.sure).length;
    const needed = neededBy(table);
    const filled =
      needed.filter((need) => matches.some((match) => match.name === need)).length / Math.max(1, needed.length);
    const like = called.includes(table.name) ? 2 : 0;
    return {
      table,
      matches,
      named: table === own,
      score: table === own ? Infinity : sure * 2 + matches.length + filled * 3 + like,
    };
  });
  const [best] = scored.filter(({ matches }) => matches.length > 0).sort((a, b) => b.score - a.score);
  return best;
}

function neededBy(table: Table): string[] {
  return [
    ...table.parents.map(({ column }) => column),
    ...table.columns.filter((column) => column.required).map((column) => column.name),
  ];
}

function valuesOf(sheet: Sheet, header: string): string[] {
  return [...new Set(cellTexts(sheet, header))].filter((value) => value !== "");
}

/** How the cells of a column are written, where that is not how we write them. */
function mannerOf(column: Column, values: readonly string[]): { how: Omit<Filled, "column">; said: string[] } {
  const how: Omit<Filled, "column"> = {};
  const said: string[] = [];
  const sign = [";", "\n", ","].find((one) => values.some((value) => value.includes(one)));
  if (column.list && sign && !values.some((value) => value.includes(LIST_SIGN))) {
    how.split = sign;
    said.push(`its lists are split at ${JSON.stringify(sign)}`);
  }
  if (column.kind === "choice" && !how.split) {
    const translate: Record<string, string> = {};
    for (const value of values.flatMap((one) =>
      column.list ? one.split(LIST_SIGN).map((piece) => piece.trim()) : [one],
    )) {
      if (column.options.includes(value)) continue;
      const meant = choiceMeant(value, column.options);
      if (meant) translate[value] = meant;
      else said.push(`'${value}' is no value of '${column.name}' (${column.options.join(", ")}): translate it`);
    }
    if (Object.keys(translate).length > 0 && !column.list) {
      how.translate = translate;
      said.push(...Object.entries(translate).map(([from, to]) => `'${from}' is taken for '${to}'`));
    }
  }
  if (column.day) {
    const order = orderOf(values);
    if (order === "unclear") said.push("its days are written day.month.year or month/day/year: say which with dates:");
    else if (order) {
      how.dates = order;
      said.push(`its days are read as ${order}`);
    }
  }
  if (isAmount(column)) {
    const figures = values.filter((value) => /^[\d.,\s+-]+$/.test(value)).flatMap(figuresIn);
    const unclear = figures.find((figure) => THOUSANDS.test(figure));
    if (figures.some((figure) => /^(\d+|\d{1,3}(\.\d{3})+),\d+$/.test(figure) && !THOUSANDS.test(figure))) {
      how.comma = true;
      said.push("its numbers are read with a comma: 0,5");
    } else if (unclear)
      said.push(
        `'${unclear}' has a comma as the decimal sign, or before three figures: say comma: true, or take it out`,
      );
  }
  return { how, said };
}

/** 1,300 is 1.3 or thirteen hundred. */
const THOUSANDS = /^[1-9]\d{0,2}(,\d{3})+$/;

function isAmount({ kind, window }: Column): boolean {
  return kind === "number" || kind === "text-or-number" || window;
}

function choiceMeant(value: string, options: readonly string[]): string | undefined {
  const small = value.toLowerCase().replaceAll(/[\s_]+/g, "-");
  const beginning = options.filter((option) => option.startsWith(small));
  return (
    options.find((option) => option === small) ?? (beginning.length === 1 ? beginning[0] : nearest(small, options))
  );
}

/** Only a number over twelve tells the day from the month. */
function orderOf(values: readonly string[]): Filled["dates"] | "unclear" {
  const dated = values.flatMap((value) => {
    const [, first, second] = /^(\d{1,2})[./-](\d{1,2})[./-]\d{4}$/.exec(value) ?? [];
    return first && second ? [[Number(first), Number(second)] as const] : [];
  });
  if (dated.length === 0) return undefined;
  const dayFirst = dated.some(([first]) => first > 12);
  const monthFirst = dated.some(([, second]) => second > 12);
  if (dayFirst === monthFirst) return "unclear";
  return dayFirst ? "day.month.year" : "month/day/year";
}
