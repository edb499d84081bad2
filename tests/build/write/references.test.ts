import { describe, expect, test } from "vitest";
import { z } from "zod";
import { isAmong, isReference, REFERENCES, SCOPES, SEEN } from "../../../src/build/write/references.ts";
import { FILE_KINDS, type FileKindName } from "../../../src/engine/records/file-kinds.ts";
import { id } from "../../../src/engine/records/shapes/common.ts";

const ID_PATTERN = id.def.checks?.map((check) => (check._zod.def as { pattern?: RegExp }).pattern).find(Boolean);
/** Fields whose ids belong to themselves, or to what cannot be renamed: traits, marks, cautions, tools. */
const OTHER_NAMES = [
  ...[
    "traits traits.*.id",
    "traits traits.*.of",
    "traits traits.*.values.*.id",
    "vehicles line",
    "vehicles equipment.*",
  ],
  ...[
    "plates plates.*.positions.*.trait",
    "system components.*.goes-by",
    "cautions cautions.*.id",
    "change tools.*.tool",
  ],
  ...[
    "parts features.*.id",
    "parts parts.*.marks.*",
    "sums sums.*.inputs.*.mark",
    "moved moved.*.from",
    "moved moved.*.to",
  ],
];

/** Every field of every shape that holds an id, and every set of fields that is named by ids. */
function idFields(shape: z.core.$ZodType, path: string): string[] {
  if (shape instanceof z.ZodDefault || shape instanceof z.ZodOptional) return idFields(shape.unwrap(), path);
  if (shape instanceof z.ZodUnion) return shape.options.flatMap((option) => idFields(option, path));
  if (shape instanceof z.ZodObject)
    return Object.entries(shape.shape).flatMap(([name, inner]) =>
      idFields(inner, path === "" ? name : `${path}.${name}`),
    );
  if (shape instanceof z.ZodArray) return idFields(shape.element, `${path}.*`);
  if (shape instanceof z.ZodRecord)
    return [...idFields(shape.keyType, `${path}.*`), ...idFields(shape.valueType, `${path}.*`)];
  const patterns = shape instanceof z.ZodString ? (shape.def.checks ?? []) : [];
  return patterns.some((check) => (check._zod.def as { pattern?: RegExp }).pattern === ID_PATTERN) ? [path] : [];
}

const FIELDS = [
  ...new Set(
    Object.entries(FILE_KINDS).flatMap(([file, { shape }]) => idFields(shape, "").map((path) => `${file} ${path}`)),
  ),
];

test("every field that holds an id is known as a reference, or as another sort of name", () => {
  const named = Object.values(REFERENCES).flatMap((kinds) =>
    Object.entries(kinds).flatMap(([file, paths]) => paths.map((path) => `${file} ${path}`)),
  );
  expect(FIELDS.length).toBeGreaterThan(30);
  expect(
    FIELDS.filter(
      (field) => !named.includes(field) && !OTHER_NAMES.includes(field) && !/ (check|.*\.check)$/.test(field),
    ),
  ).toEqual([]);
  expect(named.filter((field) => !FIELDS.includes(field))).toEqual([]);
});

describe("fields are told by their path", () => {
  // fields, kind of file, path, among them
  test.each<[typeof SCOPES, FileKindName, (string | number)[], boolean]>([
    [SCOPES, "change", ["scope"], true],
    [SCOPES, "change", ["built", 3, "scope"], true],
    [SCOPES, "change", ["built", 3, "part"], false],
    [SCOPES, "vehicles", ["equipment", "WN", "optional"], true],
    [SCOPES, "parts", ["scope"], false],
    [SEEN, "parts", ["parts", 0, "marks", "ribs"], true],
    [SEEN, "parts", ["parts", 0, "name"], false],
  ])("%#", (fields, file, path, among) => {
    expect(isAmong(fields, file, path)).toBe(among);
  });

  test("a component is no part", () => {
    expect(isReference("component", "change", ["components", 0])).toBe(true);
    expect(isReference("part", "change", ["components", 0])).toBe(false);
    expect(isReference("part", "change", ["accept", 0, "about", 1])).toBe(true);
  });
});
