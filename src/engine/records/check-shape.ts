/** One door for every file: its shape holds, or complaints in the words of an editor. */
import { z } from "zod";
import { nearest } from "../scope/nearest.ts";
import type { Complaints, Path } from "./complaint.ts";
import { DAY, ID, slipOf, WINDOW } from "./shapes/slips.ts";
import { firstLookAlike, nameOfSign, withPlainSigns } from "./signs.ts";
import { fieldOf } from "./unshaped.ts";

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
  const at = shapeAt(shape, path);
  const toWrite = whatToWrite(at);
  // That a text or a number belongs there goes without saying, or is said in the message.
  const isPlain = meaning !== "" && (at instanceof z.ZodNumber || toWrite === "words");
  const hint = [isPlain ? "" : toWrite && `write ${toWrite}`, meaning].filter(Boolean).join(": ") || "mend the field";
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
        const alike = firstLookAlike(key);
        const meant = nearest(withPlainSigns(key).trim(), known);
        error(
          [...path, key],
          `no field is called '${key}' here${alike ? `, with ${nameOfSign(alike.sign)} in it` : ""}`,
          meant ? `did you mean '${meant}'?` : known.length > 0 ? `fields are ${known.join(", ")}` : "take it out",
          { key: true },
        );
      }
      return;
    }
    case "invalid_type": {
      const wanted = article(issue.expected);
      const unquoted = issue.expected === "string" && typeof issue.input === "number";
      if (issue.input === null && path.length > 0)
        error(path, `${name} is empty`, toWrite || meaning ? hint : `give it ${wanted}`);
      else if (issue.input === undefined)
        error(path, `${name} is missing`, toWrite || meaning ? hint : `give it ${wanted}`);
      else
        error(
          path,
          `${name} must be ${wanted}`,
          unquoted ? withQuotes(at, issue.input) : toWrite || meaning ? hint : `write ${wanted}`,
        );
      return;
    }
    case "invalid_value":
      noSuchValue(issue.input, issue.values.map(String));
      return;
    case "invalid_union": {
      const inner = issue.errors.find((errors) => errors.some((one) => one.code !== "invalid_value"))?.[0];
      if (issue.discriminator !== undefined)
        noSuchValue(
          fieldOf(issue.input, issue.discriminator),
          "options" in issue && Array.isArray(issue.options) ? issue.options.map(String) : [],
        );
      else if (inner)
        complain(shape, { ...inner, path: [...issue.path, ...inner.path] } as z.core.$ZodIssue, complaints);
      else error(path, `${name} has no such value`, hint);
      return;
    }
    case "invalid_key": {
      const [inner] = issue.issues;
      const slip = inner && slipOf(patternOf(inner), path.at(-1));
      error(path, `${name} is no name for a field: ${slip?.message ?? inner?.message}`, slip?.hint ?? "mend the name", {
        key: true,
      });
      return;
    }
    case "too_small":
    case "too_big":
      error(path, `${name} ${sizeFault(issue)}`, hint);
      return;
    default: {
      const slip = slipOf(patternOf(issue), issue.input);
      // A rule of a shape says what belongs there by itself.
      const isSaid = issue.code === "invalid_format" || at instanceof z.ZodObject;
      const said = slip?.message ?? `${issue.message.charAt(0).toLowerCase()}${issue.message.slice(1)}`;
      error(path, `${name}: ${said}`, slip?.hint ?? hintOf(issue) ?? (isSaid ? meaning || "mend the field" : hint));
    }
  }
}

function patternOf(issue: z.core.$ZodIssue): string | undefined {
  return issue.code === "invalid_format" && "pattern" in issue ? String(issue.pattern) : undefined;
}

/** A number where a text belongs: the same in quotes, but a window has two limits. */
function withQuotes(shape: z.core.$ZodType | undefined, typed: unknown): string {
  const isWindow = shape instanceof z.ZodString && patternsOf(shape).includes(String(WINDOW));
  return (isWindow && slipOf(String(WINDOW), String(typed))?.hint) || "put quotes round it";
}

/** What a shape says itself. */
function hintOf(issue: z.core.$ZodIssue): string | undefined {
  return issue.code === "custom" && typeof issue.params?.hint === "string" ? issue.params.hint : undefined;
}

/** What stands rightly in a field of this shape, as an editor writes it; nothing where words are all there is to say. */
function whatToWrite(shape: z.core.$ZodType | undefined): string {
  if (shape instanceof z.ZodEnum) return `one of ${shape.options.join(", ")}`;
  if (shape instanceof z.ZodArray) return listToWrite(bare(shape.element));
  if (shape instanceof z.ZodObject) return fieldsToWrite(shape);
  if (shape instanceof z.ZodRecord) return "a set of fields, each with a name of its own";
  if (shape instanceof z.ZodNumber) return shape.format === "safeint" ? "a whole number" : "a number";
  if (shape instanceof z.ZodBoolean) return "true or false";
  if (shape instanceof z.ZodString) return textToWrite(shape);
  if (shape instanceof z.ZodLiteral) return [...shape.values].join(" or ");
  if (shape instanceof z.ZodUnion)
    return [...new Set(shape.options.map((option) => whatToWrite(bare(option))))].filter(Boolean).join(" or ");
  return "";
}

function patternsOf({ def }: z.ZodString): string[] {
  return (def.checks ?? []).map((check) => ("pattern" in check._zod.def ? String(check._zod.def.pattern) : ""));
}

function textToWrite(shape: z.ZodString): string {
  const patterns = patternsOf(shape);
  if (patterns.includes(String(DAY))) return "a day as year-month-day, such as 1974-08-15";
  if (patterns.includes(String(ID))) return "letters, digits and hyphens";
  return patterns.includes(String(WINDOW)) ? "low..high" : "words";
}

function listToWrite(element: z.core.$ZodType): string {
  if (element instanceof z.ZodEnum) return `a list in brackets, of any of ${element.options.join(", ")}`;
  if (element instanceof z.ZodObject) return `a list, a line each: - ${sketch(element)}`;
  return "a list in brackets, with commas between";
}

function fieldsToWrite(shape: z.ZodObject): string {
  const keys = Object.keys(shape.shape);
  const more = keys.filter((key) => !isNeeded(shape, key));
  return `${sketch(shape)}${more.length > 0 && more.length < keys.length ? `; it may also have ${more.join(", ")}` : ""}`;
}

/** "{ id: …, name: … }": what it cannot do without, or all where it can do without any. */
function sketch(shape: z.ZodObject): string {
  const keys = Object.keys(shape.shape);
  const needed = keys.filter((key) => isNeeded(shape, key));
  return `{ ${(needed.length > 0 ? needed : keys).map((key) => `${key}: …`).join(", ")} }`;
}

function isNeeded(shape: z.ZodObject, key: string): boolean {
  return shape.shape[key]?._zod.optin === undefined;
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
