/** The tables are read off the shapes: what a shape gains, the tables have. */
import { describe, expect, test } from "vitest";
import { z } from "zod";
import { headersOf, TABLES, tableNamed, tablesOf } from "../../../src/build/tables/all-tables.ts";
import { IDENTITY } from "../../../src/build/tables/identity.ts";
import type { Parent } from "../../../src/build/tables/table.ts";
import { FILE_KINDS } from "../../../src/engine/records/file-kinds.ts";

const tabled = [...new Set(TABLES.map(({ kind }) => kind))];

/** Every field of a shape down to its values, by a look at its JSON Schema: another way than the tables go. */
function leaves(schema: Json, path: string[] = []): string[] {
  if (schema.properties) return Object.entries(schema.properties).flatMap(([name, at]) => leaves(at, [...path, name]));
  if (schema.items?.properties) return leaves(schema.items, path);
  return [path.join(" ")];
}
interface Json {
  properties?: Record<string, Json>;
  items?: Json;
}

test.each(tabled)("every field of a file of the kind '%s' has a column", (kind) => {
  const schema = z.toJSONSchema(FILE_KINDS[kind].shape, { io: "input" }) as Json;
  const listsOf = (parents: readonly Parent[]): string[] => parents.flatMap(({ list }) => list ?? []);
  const reached = TABLES.filter((table) => table.kind === kind).flatMap(({ parents, rows, field, columns }) => {
    const keys = parents.map(({ key }, i) => [...listsOf(parents.slice(0, i + 1)), key].join(" "));
    const at = rows === "file" ? [] : [...listsOf(parents), field];
    return [...keys, ...(rows === "named" ? [at.join(" ")] : columns.map(({ path }) => [...at, ...path].join(" ")))];
  });
  expect(leaves(schema).filter((leaf) => !reached.includes(leaf))).toEqual([]);
});

test("a field that a shape gains has its column, and a list its table, with no list of names to edit", () => {
  const shape = FILE_KINDS.change.shape.extend({
    colour: z.enum(["red", "green"]).optional(),
    sightings: z.array(z.strictObject({ where: z.string(), inches: z.number().optional() })).default([]),
  });
  const tables = tablesOf(shape, { kind: "change", noun: "record", key: "id", name: "records" });
  expect(tables[0]?.columns.find(({ name }) => name === "colour")).toMatchObject({
    kind: "choice",
    options: ["red", "green"],
    required: false,
  });
  const sightings = tables.find(({ name }) => name === "sightings");
  expect(sightings && headersOf(sightings)).toEqual(["record", "where", "inches"]);
});

test("what no cell can hold is refused where the table is made, and not when a sheet comes in", () => {
  const shape = z.strictObject({ id: z.string(), deep: z.record(z.string(), z.strictObject({ a: z.string() })) });
  expect(() => tablesOf(shape, { kind: "change", noun: "record", key: "id", name: "records" })).toThrow("'deep'");
});

describe("tables and their columns", () => {
  test.each([
    ["built", ["record", "place", "part", "scope"]],
    ["kits", ["record", "kit", "part", "name", "count"]],
    ["marks", ["component", "part", "mark", "value"]],
    ["left-alone", ["record", "left-alone"]],
    ["cancels", ["record", "cancels", "scope"]],
    ["moved", ["kind", "from", "to", "why"]],
  ])("%s", (name, headers) => {
    const table = tableNamed(name);
    expect(table && headersOf(table)).toEqual(headers);
  });

  test("no two tables of one name, no two columns of one name in a table", () => {
    const twice = (names: string[]): string[] => names.filter((name, i) => names.indexOf(name) !== i);
    expect(twice(TABLES.map(({ name }) => name))).toEqual([]);
    expect(TABLES.flatMap((table) => twice(headersOf(table)))).toEqual([]);
  });

  test("days are known as days, whatever their fields are called", () => {
    const days = TABLES.flatMap(({ name, columns }) =>
      columns.filter(({ day }) => day).map((column) => `${name}.${column.name}`),
    );
    expect(days).toEqual(["records.issued", "records.revised", "bulletins.issued"]);
  });

  test("every identity names columns that are there", () => {
    const wrong = Object.entries(IDENTITY).flatMap(([name, columns]) =>
      columns
        .filter((column) => !tableNamed(name)?.columns.some((one) => one.name === column))
        .map((it) => `${name}.${it}`),
    );
    expect(wrong).toEqual([]);
  });
});

test("a window is told from any other text", () => {
  const windows = TABLES.flatMap(({ name, columns }) =>
    columns.filter((it) => it.window).map((it) => `${name} ${it.name}`),
  );
  expect(windows).toEqual(["settings window"]);
});
