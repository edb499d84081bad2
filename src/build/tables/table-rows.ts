/** The rows of a table as they stand in the files of a data folder. */
import type { DataFile } from "../../engine/records/file-kinds.ts";
import { isFields } from "../write/without-defaults.ts";
import { cellText } from "./cell-text.ts";
import { type Fields, valueAt } from "./entry-index.ts";
import { type Column, FILE_COLUMN, type Parent, type Table } from "./table.ts";

export function tableRows(table: Table, files: readonly DataFile[]): string[][] {
  return files.flatMap(({ path, kind, value, broken }) => {
    if (kind !== table.kind || broken || !isFields(value)) return [];
    return holders(table.parents, value).flatMap(({ names, value: holder }) =>
      entriesOf(table, holder).map((entry) => [
        ...names,
        ...table.columns.map((column, i) =>
          column.name === FILE_COLUMN ? path : cellText(column, unlessDefault(column, told(table, entry, column, i))),
        ),
      ]),
    );
  });
}

interface Holder {
  readonly names: readonly string[];
  readonly value: Fields;
}

/** Every place in a file that may hold rows of the table, with the names that lead there. */
function holders(parents: readonly Parent[], file: Fields): Holder[] {
  return parents.reduce<Holder[]>(
    (found, { list, key }) =>
      found.flatMap(({ names, value }) =>
        (list === undefined ? [value] : listOf(value[list]))
          .filter(isFields)
          .map((inner) => ({ names: [...names, String(inner[key] ?? "")], value: inner })),
      ),
    [{ names: [], value: file }],
  );
}

function entriesOf({ rows, field }: Table, holder: Fields): unknown[] {
  if (rows === "file") return [holder];
  const inner = holder[field];
  if (rows === "named") return isFields(inner) ? Object.entries(inner) : [];
  return listOf(inner);
}

function told({ rows }: Table, entry: unknown, { path }: Column, i: number): unknown {
  if (rows === "texts") return entry;
  return rows === "named" ? (entry as unknown[])[i] : valueAt(entry, path);
}

/** What holds where nothing is said stands in some files and not in others: a table says it nowhere. */
function unlessDefault({ fallback }: Column, value: unknown): unknown {
  return value === fallback ? undefined : value;
}

function listOf(value: unknown): unknown[] {
  return Array.isArray(value) ? value : [];
}
