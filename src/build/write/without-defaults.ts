/** The value of a file as an editor would write it: what a shape would fill in by itself is left out, fields in the order of the shape. */
import { isDeepStrictEqual } from "node:util";
import { z } from "zod";

type Shape = z.core.$ZodType;

export function withoutDefaults(shape: Shape, value: unknown): unknown {
  const at = bare(shape, value);
  if (Array.isArray(value))
    return value.map((item) => (at instanceof z.ZodArray ? withoutDefaults(at.element, item) : item));
  if (!isFields(value)) return value;
  const fields: Record<string, unknown> = {};
  for (const name of inOrder(at, Object.keys(value))) {
    const inner = shapeOf(at, name);
    if (value[name] === undefined || isDefault(inner, value[name])) continue;
    fields[name] = inner ? withoutDefaults(inner, value[name]) : value[name];
  }
  return fields;
}

/** The fields as the shape has them; what it does not know keeps its place at the end. */
export function inOrder(shape: Shape | undefined, names: readonly string[]): string[] {
  const known = shape instanceof z.ZodObject ? Object.keys(shape.shape) : [];
  return [...known.filter((name) => names.includes(name)), ...names.filter((name) => !known.includes(name))];
}

/** What a field of a set of fields, or an entry of a list, has to look like. */
export function shapeOf(shape: Shape | undefined, step: string | number, value?: unknown): Shape | undefined {
  const inner =
    shape instanceof z.ZodObject
      ? shape.shape[String(step)]
      : shape instanceof z.ZodArray
        ? shape.element
        : shape instanceof z.ZodRecord
          ? shape.valueType
          : undefined;
  return inner && value !== undefined ? bare(inner, value) : inner;
}

/** The shape without what wraps it; of several ways to write a thing the one in which it is written. */
export function bare(shape: Shape, value: unknown): Shape {
  if (shape instanceof z.ZodDefault || shape instanceof z.ZodOptional) return bare(shape.unwrap(), value);
  if (shape instanceof z.ZodUnion) {
    const fitting = shape.options.find((option) => z.safeParse(option, value).success);
    return fitting ? bare(fitting, value) : shape;
  }
  return shape;
}

function isDefault(shape: Shape | undefined, value: unknown): boolean {
  return shape instanceof z.ZodDefault && isDeepStrictEqual(value, shape.def.defaultValue);
}

export function isFields(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** Whether the field takes words of any sort, and not only an id, a day or one of some values. */
export function takesWords(shape: Shape, path: readonly (string | number)[]): boolean {
  let at: Shape | undefined = bare(shape, undefined);
  for (const step of path) at = at && options(at).flatMap((one) => shapeOf(one, step) ?? [])[0];
  return at !== undefined && z.safeParse(at, "two words").success;
}

/** All the ways in which it may be written. */
function options(shape: Shape): Shape[] {
  if (shape instanceof z.ZodDefault || shape instanceof z.ZodOptional) return options(shape.unwrap());
  return shape instanceof z.ZodUnion ? shape.options.flatMap(options) : [shape];
}
