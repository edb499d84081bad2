/** One door for every file: its shape holds, or complaints in the words of an editor. */
import { z } from "zod";
import { nearest } from "../scope/nearest.ts";
import type { Complaints, Path } from "./complaint.ts";

export function checkShape<T>(shape: z.ZodType<T>, value: unknown, complaints: Complaints): T | undefined {
  const result = shape.safeParse(value, { reportInput: true });
  if (result.success) return result.data;
  for (const issue of result.error.issues) complain(shape, issue, complaints);
  return undefined;
}

function complain(shape: z.ZodType, issue: z.core.$ZodIssue, complaints: Complaints): void {
  const error: Complaints["error"] = (at, message, hint, more) =>
    complaints.error(at, message, hint, { rule: "shape", ...more });
  const path = issue.path.filter((step): step is string | number => typeof step !== "symbol");
  const name = fieldName(path);
  const meaning = describe(shape, path);
  const noSuchValue = (typed: unknown, options: readonly string[]): void => {
    const meant = typeof typed === "string" ? nearest(typed, options) : undefined;
    error(
      path,
      typed === undefined
        ? `${name} is missing`
        : typeof typed === "object"
          ? `${name} has no such value`
          : `'${typed}' is no value of ${name}`,
      meant ? `did you mean '${meant}'?` : `values are ${options.join(", ")}`,
    );
  };
  switch (issue.code) {
    case "unrecognized_keys": {
      const known = keysAt(shape, path);
      for (const key of issue.keys) {
        const meant = nearest(key, known);
        error(
          [...path, key],
          `no field is called '${key}' here`,
          meant ? `did you mean '${meant}'?` : `fields are ${known.join(", ")}`,
          { key: true },
        );
      }
      return;
    }
    case "invalid_type": {
      const wanted = article(issue.expected);
      const unquoted = issue.expected === "string" && typeof issue.input === "number";
      if (issue.input === null && path.length > 0) error(path, `${name} is empty`, meaning || `give it ${wanted}`);
      else if (issue.input === undefined) error(path, `${name} is missing`, meaning || `give it ${wanted}`);
      else error(path, `${name} must be ${wanted}`, unquoted ? "put quotes round it" : meaning || `write ${wanted}`);
      return;
    }
    case "invalid_value":
      noSuchValue(issue.input, issue.values.map(String));
      return;
    case "invalid_union": {
      const inner = issue.errors.find((errors) => errors.some((one) => one.code !== "invalid_value"))?.[0];
      if (issue.discriminator !== undefined)
        noSuchValue(
          at(issue.input, issue.discriminator),
          "options" in issue && Array.isArray(issue.options) ? issue.options.map(String) : [],
        );
      else if (inner)
        complain(shape, { ...inner, path: [...issue.path, ...inner.path] } as z.core.$ZodIssue, complaints);
      else error(path, `${name} has no such value`, meaning || "mend the field");
      return;
    }
    case "invalid_key":
      error(path, `${name} is no name for a field: ${issue.issues[0]?.message}`, meaning || "mend the name", {
        key: true,
      });
      return;
    case "too_small":
    case "too_big":
      error(path, `${name} ${sizeFault(issue)}`, meaning || "mend the field");
      return;
    default:
      error(
        path,
        `${name}: ${issue.message.charAt(0).toLowerCase()}${issue.message.slice(1)}`,
        meaning || "mend the field",
      );
  }
}

/** 'is empty', 'must have at least 2 entries', 'must be at most 5'. */
function sizeFault(issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig): string {
  const small = issue.code === "too_small";
  const limit = small ? issue.minimum : issue.maximum;
  const counted = { string: "letters", array: limit === 1 ? "entry" : "entries" }[issue.origin as string];
  if (small && limit === 1 && counted) return "is empty";
  if (counted) return `must have at ${small ? "least" : "most"} ${limit} ${counted}`;
  if (issue.inclusive === false) return `must be ${small ? "above" : "below"} ${limit}`;
  return `must be at ${small ? "least" : "most"} ${limit}`;
}

function at(value: unknown, key: string): unknown {
  return typeof value === "object" && value !== null ? (value as Record<string, unknown>)[key] : undefined;
}

function fieldName(path: Path): string {
  const last = path.at(-1);
  if (last === undefined) return "the file";
  return typeof last === "number" ? `entry ${last + 1} of '${String(path.at(-2) ?? "")}'` : `'${last}'`;
}

function article(type: string): string {
  const names: Record<string, string> = {
    string: "words",
    int: "a whole number",
    object: "a set of fields",
    record: "a set of fields",
    array: "a list",
    number: "a number",
    boolean: "true or false",
  };
  return names[type] ?? `a ${type}`;
}

/** Follows a path down a shape; nothing where the path leaves it. */
function shapeAt(shape: z.core.$ZodType, path: Path): z.core.$ZodType | undefined {
  let at: z.core.$ZodType | undefined = bare(shape);
  for (const step of path) {
    if (at instanceof z.ZodObject) at = at.shape[String(step)];
    else if (at instanceof z.ZodArray) at = at.element;
    else if (at instanceof z.ZodRecord) at = at.valueType;
    else return undefined;
    if (!at) return undefined;
    at = bare(at);
  }
  return at;
}

function bare(shape: z.core.$ZodType): z.core.$ZodType {
  return shape instanceof z.ZodDefault || shape instanceof z.ZodOptional ? bare(shape.unwrap()) : shape;
}

function keysAt(shape: z.core.$ZodType, path: Path): string[] {
  const at = shapeAt(shape, path);
  return at instanceof z.ZodObject ? Object.keys(at.shape) : [];
}

function describe(shape: z.core.$ZodType, path: Path): string {
  const parent = shapeAt(shape, path.slice(0, -1));
  const field = parent instanceof z.ZodObject ? parent.shape[String(path.at(-1))] : shapeAt(shape, path);
  const text = field ? (z.globalRegistry.get(field)?.description ?? "") : "";
  return text ? `${text}` : "";
}
