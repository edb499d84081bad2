/**
 * The tables of a data folder, read off the shapes of its files, so that a field that a shape gains has its column at once:
 *
 *   a field with one value, or a short list of them   a column of its own
 *   a list of entries with fields                     a table of its own, which also says in which file the entry stands
 *   a list of whole sentences                         the same, with one column for the sentence
 *   a set of named values                             the same, with one column for the name and one for the value
 *
 * A table that would hold nothing but the name of an entry is left out: the table of what is inside the entry names it anyway.
 */
import { z } from "zod";
import { FILE_KINDS, type FileKindName } from "../../engine/records/file-kinds.ts";
import { IDENTITY } from "./identity.ts";
import { type CellKind, type Column, FILE_COLUMN, type Parent, type Table } from "./table.ts";

type Shape = z.core.$ZodType;

interface Tabled {
  readonly kind: FileKindName;
  /** What one file of the kind is, and the field that names it. Kinds with a single file have neither. */
  readonly noun?: string;
  readonly key?: string;
  /** What the table with a row a file is called. */
  readonly name: string;
  /** An editor chooses the folder of such a file. */
  readonly placed?: boolean;
}

const TABLED: readonly Tabled[] = [
  { kind: "change", noun: "record", key: "id", name: "records", placed: true },
  { kind: "parts", noun: "component", key: "component", name: "parts files" },
  { kind: "system", noun: "system", key: "id", name: "systems" },
  { kind: "bulletin", noun: "bulletin", key: "id", name: "bulletins" },
  { kind: "cautions", name: "cautions file" },
  { kind: "moved", name: "moved file" },
];

/** A text may be longer than this only where it is whole sentences. */
const LONGEST_WORDS = 400;

export const TABLES: readonly Table[] = namedApart(
  TABLED.map(({ kind, noun = kind, ...more }) => ({
    noun,
    tables: tablesOf(FILE_KINDS[kind].shape, { kind, noun, ...more }),
  })),
);

/** Lists of one name in several kinds of file have tables of several names: record-links, bulletin-links. */
function namedApart(kinds: readonly { noun: string; tables: Table[] }[]): Table[] {
  const names = kinds.flatMap(({ tables }) => tables.map(({ name }) => name));
  const shared = new Set(names.filter((name, i) => names.indexOf(name) !== i));
  return kinds.flatMap(({ noun, tables }) =>
    tables.map((table) => (shared.has(table.name) ? { ...table, name: `${noun}-${table.name}` } : table)),
  );
}

export function tableNamed(name: string): Table | undefined {
  return TABLES.find((table) => table.name === name);
}

/** The field that names a file of the kind; kinds with a single file have none. */
export function fileKey(kind: FileKindName): string | undefined {
  return TABLED.find((tabled) => tabled.kind === kind)?.key;
}

/** What stands in the first row. */
export function headersOf(table: Table): string[] {
  return [...table.parents.map((parent) => parent.column), ...table.columns.map((column) => column.name)];
}

/** The tables of one kind of file. */
export function tablesOf(
  shape: Shape,
  file: { kind: FileKindName; name: string; noun: string; key?: string | undefined; placed?: boolean | undefined },
): Table[] {
  const { kind, name, noun, key, placed } = file;
  const top = { kind, name, about: describe(shape), parents: [], rows: "file", field: "" } as const;
  const found = objectTables(objectOf(shape), top, (inner) =>
    key === undefined ? [] : [{ column: noun, key, hasTable: inner }],
  );
  if (!placed) return found;
  return found.map((table) =>
    table.rows === "file" ? { ...table, columns: [...table.columns, fileColumn()] } : table,
  );
}

/** The table of entries with these fields, and the tables of the lists inside them. */
function objectTables(
  object: z.ZodObject,
  self: Omit<Table, "columns" | "identity">,
  parentsOf: (hasTable: boolean) => readonly Parent[],
): Table[] {
  const taken = self.parents.map((parent) => parent.column);
  const columns: Column[] = [];
  const inner: [field: string, shape: Shape][] = [];
  for (const [path, shape] of fieldsOf(object)) {
    const cell = cellOf(shape);
    const name = path.join(".");
    // A list of records inside a record: its own column takes the name of the list.
    if (cell) columns.push(columnOf(taken.includes(name) ? self.field : name, path, shape, cell));
    else if (path.length === 1) inner.push([name, shape]);
    else throw new Error(`no table can hold the field '${name}': a list inside a field with fields of its own`);
  }
  const [only] = columns;
  const bare = columns.length === 0 || (columns.length === 1 && inner.length > 0 && only?.required === true);
  const parents = [...self.parents, ...parentsOf(!bare)];
  const own = bare ? [] : [{ ...self, columns, identity: IDENTITY[self.name] ?? [] }];
  const takesName = bare && inner.length === 1 && self.rows === "list" ? self.name : undefined;
  return [...own, ...inner.flatMap(([field, shape]) => innerTables(field, shape, self.kind, parents, takesName))];
}

function innerTables(
  field: string,
  shape: Shape,
  kind: FileKindName,
  parents: readonly Parent[],
  takesName: string | undefined,
): Table[] {
  const name = takesName ?? field;
  const list = bare(shape);
  const self = { kind, name, about: describe(shape), parents, field };
  if (list instanceof z.ZodArray) {
    const element = bare(list.element);
    if (element instanceof z.ZodObject) {
      const [key = ""] = Object.keys(element.shape);
      return objectTables(element, { ...self, rows: "list" }, (hasTable) => [
        { column: singular(field), list: field, key, hasTable },
      ]);
    }
    const cell = cellOf(element);
    if (cell) {
      const text = { ...columnOf(field, [], list.element, cell), required: true };
      return [{ ...self, rows: "texts", columns: [text], identity: [] }];
    }
  }
  if (list instanceof z.ZodRecord) {
    const cell = cellOf(list.valueType);
    if (cell) {
      const about = describe(shape);
      const key = { ...columnOf(singular(field), [], z.string(), { kind: "text", list: false }), about };
      const value = { ...columnOf("value", [], list.valueType, cell), required: true };
      return [{ ...self, rows: "named", columns: [key, value], identity: [key.name] }];
    }
  }
  throw new Error(`no table can hold the field '${field}'`);
}

/** Every field with the shape of its value; fields inside a field by their whole path. */
function fieldsOf(object: z.ZodObject, above: readonly string[] = []): [path: string[], shape: Shape][] {
  return Object.entries(object.shape).flatMap(([name, shape]): [string[], Shape][] => {
    const within = bare(shape as Shape);
    const path = [...above, name];
    return within instanceof z.ZodObject ? fieldsOf(within, path) : [[path, shape as Shape]];
  });
}

/** How a value stands in one cell; nothing when it cannot. */
function cellOf(shape: Shape): { kind: CellKind; list: boolean; options?: readonly string[] } | undefined {
  const it = bare(shape);
  if (it instanceof z.ZodArray) {
    const element = bare(it.element);
    if (element instanceof z.ZodString && (element.maxLength ?? 0) > LONGEST_WORDS) return undefined;
    const one = cellOf(element);
    return one && !one.list ? { ...one, list: true } : undefined;
  }
  if (it instanceof z.ZodString) return { kind: "text", list: false };
  if (it instanceof z.ZodNumber) return { kind: "number", list: false };
  if (it instanceof z.ZodBoolean) return { kind: "yes-no", list: false };
  if (it instanceof z.ZodEnum) return { kind: "choice", list: false, options: it.options.map(String) };
  if (it instanceof z.ZodLiteral) return { kind: typeof it.value === "number" ? "number" : "text", list: false };
  if (it instanceof z.ZodUnion) {
    const kinds = new Set(it.options.map((option) => cellOf(option as Shape)?.kind));
    const [first] = kinds;
    if (kinds.size === 1 && first) return { kind: first, list: false };
    if (kinds.size === 2 && kinds.has("text") && kinds.has("number")) return { kind: "text-or-number", list: false };
  }
  return undefined;
}

function columnOf(
  name: string,
  path: readonly string[],
  shape: Shape,
  cell: { kind: CellKind; list: boolean; options?: readonly string[] },
): Column {
  const fallback = shape instanceof z.ZodDefault ? shape.def.defaultValue : undefined;
  return {
    name,
    path,
    kind: cell.kind,
    list: cell.list,
    required: !(shape instanceof z.ZodDefault || shape instanceof z.ZodOptional),
    fallback,
    options: cell.options ?? [],
    day: isDay(shape),
    window: isWindow(shape),
    about: describe(shape),
  };
}

/** Its words may say anything, but only a day can be the last of February and not the day after. */
function isDay(shape: Shape): boolean {
  const takes = (text: string): boolean => z.safeParse(shape, text).success;
  return takes("1974-02-28") && !takes("1974-02-30");
}

/** Free words may stand for anything; only a window takes two figures, and none of the words. */
function isWindow(shape: Shape): boolean {
  const takes = (text: string): boolean => z.safeParse(shape, text).success;
  return takes("3.5..3.62") && takes("..6") && !takes("A");
}

function fileColumn(): Column {
  const about = "Where the file lies. Default: in the folder of its model year.";
  return { ...columnOf(FILE_COLUMN, [], z.string(), { kind: "text", list: false }), required: false, about };
}

function objectOf(shape: Shape): z.ZodObject {
  const it = bare(shape);
  if (it instanceof z.ZodObject) return it;
  throw new Error("a file without fields has no table");
}

function bare(shape: Shape): Shape {
  return shape instanceof z.ZodDefault || shape instanceof z.ZodOptional ? bare(shape.unwrap()) : shape;
}

function describe(shape: Shape): string {
  return z.globalRegistry.get(shape)?.description ?? "";
}

function singular(word: string): string {
  return word.replace(/s$/, "");
}
