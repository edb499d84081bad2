/** The files of a data folder as they would be with rows brought in: which fields were filled, by which row, and what stood against it. */
import { type DataFile, type FileKindName, kindOf } from "../../engine/records/file-kinds.ts";
import { isFields } from "../write/without-defaults.ts";
import { fileKey } from "./all-tables.ts";
import { agree, EntryIndex, type Fields, valueAt } from "./entry-index.ts";
import { type FilePlaces, filePlaces } from "./file-places.ts";
import { REPEATED } from "./identity.ts";
import type { ImportRow } from "./import-rows.ts";
import type { Column, Parent, Table } from "./table.ts";

export type FieldPath = readonly (string | number)[];

export interface Draft {
  readonly path: string;
  readonly kind: FileKindName;
  readonly value: Fields;
  /** What the file said before; nothing when it is new. */
  readonly before: Fields | undefined;
  /** Which row filled which field, or made the entry that stands there; by the path as text. */
  readonly touched: Map<string, Touch>;
}

export interface Touch {
  readonly path: FieldPath;
  readonly row: ImportRow;
}

export type Merged = { readonly did: "written" | "unchanged" } | { readonly did: "rejected"; readonly reason: string };

const UNCHANGED: Merged = { did: "unchanged" };
const WRITTEN: Merged = { did: "written" };

export class Drafts {
  readonly drafts = new Map<string, Draft>();
  readonly #files: ReadonlyMap<string, DataFile>;
  readonly #byKey = new Map<string, string>();
  readonly #places: FilePlaces;
  readonly #overwrite: boolean;
  /** What rows of this import have said, so that none says it twice. */
  readonly #said = new Map<string, ImportRow>();
  /** The entries that a row of this import has made, filled or found as it says. */
  readonly #claimed = new Map<unknown, ImportRow>();
  readonly #indexes = new Map<unknown[], EntryIndex>();

  constructor(files: ReadonlyMap<string, DataFile>, overwrite: boolean) {
    this.#files = files;
    this.#places = filePlaces(files.values());
    this.#overwrite = overwrite;
    for (const { path, kind, value } of files.values()) {
      const key = fileKey(kind);
      const name = key !== undefined && isFields(value) ? String(value[key]) : "";
      if (!this.#byKey.has(`${kind} ${name}`)) this.#byKey.set(`${kind} ${name}`, path);
    }
  }

  /**
   * Brings one row in, or says why not:
   *
   *   what it says stands there already            unchanged
   *   another row has said the same                rejected
   *   a field that says nothing so far             filled
   *   a field that says something else             rejected; with `overwrite` changed, but never against another row
   *   an entry that is not there                   made, if what it stands in is there or needs no row of its own
   */
  merge(row: ImportRow): Merged {
    const said = JSON.stringify([
      row.table.name,
      row.parents,
      row.fields.map(([column, value]) => [column.name, value]),
    ]);
    const twin = this.#said.get(said);
    if (twin) return reject(`it says the same as ${whereIs(twin, row)}`);
    const merged = this.#mergeOne(row);
    if (merged.did !== "rejected") this.#said.set(said, row);
    return merged;
  }

  #mergeOne(row: ImportRow): Merged {
    const { table, fields } = row;
    if (table.rows === "file") {
      const id = String(fields[0]?.[1]);
      const known = this.#pathOf(table.kind, id);
      const path = known ?? row.place ?? this.#newPath(row, id);
      if (known !== undefined && row.place !== undefined && row.place !== known)
        return reject(`the file lies in ${known}; a row cannot move it to ${row.place}`);
      if (known === undefined && (this.drafts.has(path) || this.#files.has(path)))
        return reject(`in ${path} lies another ${table.name.replace(/s$/, "")}`);
      const draft = this.#open(path, table.kind, row);
      return typeof draft === "string" ? reject(draft) : this.#fill(draft, draft.value, [], row, fields);
    }
    const [top, ...within] = table.parents[0]?.list === undefined ? table.parents : [undefined, ...table.parents];
    const [key = "", ...names] = top ? row.parents : ["", ...row.parents];
    const path = this.#pathOf(table.kind, key);
    if (path === undefined && top?.hasTable)
      return reject(`no ${top.column} '${key}' is in the folder or among the rows`);
    const draft = this.#open(path ?? this.#newPath(row, key), table.kind, row);
    if (typeof draft === "string") return reject(draft);
    if (top && draft.value[top.key] === undefined) draft.value[top.key] = key;
    let at: Place = { value: draft.value, path: [] };
    for (const [i, parent] of within.entries()) {
      const inner = parent && this.#entry(draft, at, parent, names[i] as string, row);
      if (!inner) return reject(`no ${parent?.column} '${names[i]}' stands in ${draft.path}, and no row makes one`);
      at = inner;
    }
    return table.rows === "named" ? this.#name(draft, at, row) : this.#list(draft, at, row);
  }

  #pathOf(kind: FileKindName, key: string): string | undefined {
    return this.#byKey.get(`${kind} ${key}`);
  }

  #newPath({ table, fields }: ImportRow, id: string): string {
    return this.#places(table.kind, id, fields.find(([column]) => column.name === "issued")?.[1]);
  }

  /** The draft of a file, or why there can be none. */
  #open(path: string, kind: FileKindName, row: ImportRow): Draft | string {
    const open = this.drafts.get(path);
    if (open) return open;
    const file = this.#files.get(path);
    if (file && (file.broken || !isFields(file.value))) return `${path} has a fault of its own; mend that first`;
    const steps = path.split("/");
    // Nothing that leads out of the folder, on whatever system.
    if (!file && (kindOf(path) !== kind || steps.some((step) => /^\.|^$|[\\:]|\p{Cc}/u.test(step))))
      return `no file of this kind can lie in ${path}`;
    const before = file?.value as Fields | undefined;
    const draft: Draft = { path, kind, value: structuredClone(before ?? {}), before, touched: new Map() };
    this.drafts.set(path, draft);
    if (!file) {
      touch(draft, [], row);
      const id = row.table.rows === "file" ? String(row.fields[0]?.[1]) : (row.parents[0] ?? "");
      this.#byKey.set(`${kind} ${fileKey(kind) === undefined ? "" : id}`, path);
    }
    return draft;
  }

  /** An entry further up; it is made where it needs no row of its own. */
  #entry(
    draft: Draft,
    above: Place,
    { list = "", key, hasTable }: Parent,
    name: string,
    row: ImportRow,
  ): Place | undefined {
    const entries = listIn(above.value, list);
    if (!entries) return undefined;
    const index = entries.findIndex((entry) => isFields(entry) && String(entry[key]) === name);
    if (index >= 0) return { value: entries[index] as Fields, path: [...above.path, list, index] };
    if (hasTable) return undefined;
    const value = { [key]: name };
    entries.push(value);
    above.value[list] = entries;
    const path = [...above.path, list, entries.length - 1];
    touch(draft, path, row);
    return { value, path };
  }

  #name(draft: Draft, above: Place, row: ImportRow): Merged {
    const { table, fields } = row;
    const [keyColumn, valueColumn] = table.columns as [Column, Column];
    const given = new Map(fields.map(([column, value]) => [column.name, value]));
    const name = given.get(keyColumn.name);
    const value = given.get(valueColumn.name);
    if (name === undefined || value === undefined)
      return reject(`'${(name === undefined ? keyColumn : valueColumn).name}' is empty`);
    if (name === "__proto__") return reject(`nothing can be called '${name}'`);
    const named = above.value[table.field] ?? {};
    if (!isFields(named)) return reject(`'${table.field}' of ${draft.path} is no set of fields`);
    const column = { ...valueColumn, name: String(name), path: [String(name)] };
    const merged = this.#fill(draft, named, [...above.path, table.field], row, [[column, value]]);
    if (merged.did === "written") above.value[table.field] = named;
    return merged;
  }

  /**
   * The same entry first, then one of the same identity that no other row has spoken of, else a new one. Where another row has
   * spoken of the same thing, the two contradict each other.
   */
  #list(draft: Draft, above: Place, row: ImportRow): Merged {
    const { table, fields } = row;
    const entries = listIn(above.value, table.field);
    if (!entries) return reject(`'${table.field}' of ${draft.path} is no list`);
    const index = this.#indexes.get(entries) ?? new EntryIndex(table, entries);
    this.#indexes.set(entries, index);
    const made = entryOf(table, fields);
    const same = index.same(made);
    if (same !== undefined) {
      this.#claimed.set(same, row);
      return UNCHANGED;
    }
    const alike = index.alike(made);
    const at = alike.find((place) => !this.#claimed.has(entries[place]));
    const other = at === undefined ? this.#claimed.get(entries[alike[0] ?? -1]) : undefined;
    if (other && !REPEATED.includes(table.name)) return reject(`it says another thing than ${whereIs(other, row)}`);
    if (at !== undefined) {
      const entry = entries[at] as Fields;
      index.forget(entry);
      const merged = this.#fill(draft, entry, [...above.path, table.field, at], row, fields);
      index.learn(entry, at);
      if (merged.did !== "rejected") this.#claimed.set(entry, row);
      return merged;
    }
    index.learn(made, entries.push(made) - 1);
    above.value[table.field] = entries;
    this.#claimed.set(made, row);
    touch(draft, [...above.path, table.field, entries.length - 1], row);
    return WRITTEN;
  }

  #fill(draft: Draft, target: Fields, at: FieldPath, row: ImportRow, fields: ImportRow["fields"]): Merged {
    const news: [Column, unknown][] = [];
    const against: string[] = [];
    for (const [column, value] of fields) {
      const now = valueAt(target, column.path);
      if (agree(now ?? column.fallback, value)) continue;
      const by = now === undefined ? undefined : draft.touched.get(JSON.stringify([...at, ...column.path]))?.row;
      if (by) against.push(`'${column.name}' says another thing than ${whereIs(by, row)}`);
      else if (now !== undefined && !this.#overwrite) against.push(`'${column.name}' already says ${shown(now)}`);
      else news.push([column, value]);
    }
    if (against.length > 0) return reject(against.join("; "));
    for (const [column, value] of news) {
      put(target, column.path, value);
      touch(draft, [...at, ...column.path], row);
    }
    return news.length > 0 ? WRITTEN : UNCHANGED;
  }
}

interface Place {
  readonly value: Fields;
  readonly path: FieldPath;
}

function touch(draft: Draft, path: FieldPath, row: ImportRow): void {
  draft.touched.set(JSON.stringify(path), { path, row });
}

function whereIs(other: ImportRow, row: ImportRow): string {
  return `row ${other.row.number}${other.sheet === row.sheet ? "" : ` of ${other.sheet.grid.name}`}`;
}

function reject(reason: string): Merged {
  return { did: "rejected", reason };
}

function entryOf(table: Table, fields: ImportRow["fields"]): unknown {
  if (table.rows === "texts") return fields[0]?.[1];
  const entry: Fields = {};
  for (const [column, value] of fields) put(entry, column.path, value);
  return entry;
}

function listIn(value: Fields, field: string): unknown[] | undefined {
  const list = value[field] ?? [];
  return Array.isArray(list) ? list : undefined;
}

function put(target: Fields, path: readonly string[], value: unknown): void {
  const [step = "", ...rest] = path;
  if (rest.length === 0) {
    target[step] = value;
    return;
  }
  const inner = isFields(target[step]) ? (target[step] as Fields) : {};
  target[step] = inner;
  put(inner, rest, value);
}

function shown(value: unknown): string {
  const text = Array.isArray(value) ? value.join(" | ") : String(value);
  return `'${text.length > 60 ? `${text.slice(0, 60)}…` : text}'`;
}
