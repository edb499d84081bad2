/** One door for every file: its shape holds, or complaints in the words of an editor. */
import { z } from "zod";
import { nearest } from "../scope/nearest.ts";
import type { Complaints, Path } from "./complaint.ts";

export function checkShape<T>(shape: z.ZodType<T>, value: unknown, complaints: Complaints): T | undefined {
  const result = shape.safeParse(value);
  if (result.success) return result.data;
  for (const issue of result.error.issues) complain(shape, issue, complaints);
  return undefined;
}

function complain(shape: z.ZodType, issue: z.core.$ZodIssue, complaints: Complaints): void {
  const path = issue.path.filter((step): step is string | number => typeof step !== "symbol");
  const name = fieldName(path);
  const meaning = describe(shape, path);
  switch (issue.code) {
    case "unrecognized_keys": {
      const known = keysAt(shape, path);
      for (const key of issue.keys) {
        const meant = nearest(key, known);
        complaints.error(
          [...path, key],
          `no field is called '${key}' here`,
          meant ? `did you mean '${meant}'?` : `fields are ${known.join(", ")}`,
          { key: true },
        );
      }
      return;
    }
    case "invalid_type": {
      const wanted =
        issue.expected === "string"
          ? "words"
          : issue.expected === "int"
            ? "a whole number"
            : `${article(issue.expected)}`;
      if (issue.input === undefined && valueIsMissing(issue)) {
        complaints.error(path, `${name} is missing`, meaning || `give it ${wanted}`);
        return;
      }
      const hint = issue.expected === "string" && typeof issue.input === "number" ? "put quotes round it" : meaning;
      complaints.error(path, `${name} must be ${wanted}`, hint || `write ${wanted}`);
      return;
    }
    case "invalid_value": {
      const options = issue.values.map(String);
      const typed = typeof issue.input === "string" ? issue.input : "";
      const meant = nearest(typed, options);
      complaints.error(
        path,
        typed ? `'${typed}' is no value of ${name}` : `${name} has no such value`,
        meant ? `did you mean '${meant}'?` : `values are ${options.join(", ")}`,
      );
      return;
    }
    default:
      complaints.error(
        path,
        `${name}: ${issue.message.charAt(0).toLowerCase()}${issue.message.slice(1)}`,
        meaning || "mend the field",
      );
  }
}

function valueIsMissing(issue: z.core.$ZodIssue): boolean {
  return issue.code === "invalid_type" && /received undefined/.test(issue.message);
}

function fieldName(path: Path): string {
  const last = path.at(-1);
  if (last === undefined) return "the file";
  return typeof last === "number" ? `entry ${last + 1} of '${String(path.at(-2) ?? "")}'` : `'${last}'`;
}

function article(type: string): string {
  const names: Record<string, string> = {
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
