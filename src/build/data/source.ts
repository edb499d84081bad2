/** One file of a data folder: its text, the value in it, and where in the text each field stands. */
import {
  type Document,
  isAlias,
  isCollection,
  isMap,
  isPair,
  isScalar,
  isSeq,
  type Node,
  type Pair,
  parseDocument,
  visit,
} from "yaml";
import type { Complaint, Place } from "../../engine/records/complaint.ts";
import { once } from "../../engine/records/once.ts";
import { nameOfSign } from "../../engine/records/signs.ts";
import { splitFacts, whyNoFacts } from "./split-facts.ts";

export const MAX_BYTES = 1_000_000;

export interface Position {
  readonly line: number;
  readonly column: number;
  readonly length: number;
}

export interface Source {
  readonly text: string;
  /** Its facts; of a broken file its text. */
  readonly value: unknown;
  /** What keeps the file from being read at all. */
  readonly faults: readonly Complaint[];
  locate(place: Omit<Place, "file">): Position;
  /** The line with this number, counted from 1. */
  line(number: number): string;
}

/** Reads YAML, or Markdown with YAML facts between '---' lines when `body` names the field for the text below them. */
export function readSource(path: string, written: string, body: string | undefined): Source {
  const text = written.replace(/^\uFEFF/, ""); // An editor does not count the byte order mark as a column.
  const parts = body === undefined ? { yaml: text, at: 0, rest: "", restAt: 0 } : splitFacts(text);
  if (!parts) {
    const { at, length, message, hint } = whyNoFacts(text);
    return broken(path, text, at, length, message, hint);
  }
  const doc = parse(parts.yaml);
  const [error] = doc.errors;
  const odd = error && oddSignNear(parts.yaml, error.pos[0]);
  if (odd) return broken(path, text, parts.at + odd.at, odd.sign.length, `this is not YAML: ${odd.message}`, odd.hint);
  if (error)
    return broken(
      path,
      text,
      parts.at + error.pos[0],
      error.pos[1] - error.pos[0],
      `this is not YAML: ${firstLine(error.message)}`,
      yamlHint(error.code),
    );
  const alias = /[&*]/.test(parts.yaml) ? firstAlias(doc) : undefined;
  if (alias)
    return broken(
      path,
      text,
      parts.at + (alias.range?.[0] ?? 0),
      1,
      "YAML anchors and aliases are not read here",
      "write the value out where it is used",
    );
  const facts: unknown = doc.toJS();
  const value = body !== undefined && isRecord(facts) ? { ...facts, [body]: parts.rest.trim() } : facts;
  if (body !== undefined && isRecord(facts) && body in facts)
    return broken(
      path,
      text,
      parts.at,
      1,
      `'${body}' stands among the facts`,
      "write that text below the second '---'",
    );
  // Most files are never complained about: to keep what was parsed of thousands would take longer than to parse one again.
  const parsed = once(() => parse(parts.yaml));
  const lines = once(() => new Lines(text));
  const bodyLead = Math.max(0, parts.rest.search(/\S/));
  return {
    text,
    value,
    faults: [],
    locate: (complaint) => {
      const [from, length] =
        body !== undefined && complaint.path[0] === body
          ? inText(parts.restAt + bodyLead, complaint)
          : inYaml(parsed().contents, parts.yaml, parts.at, complaint);
      return lines().positionAt(from, length);
    },
    line: (number) => lines().line(number),
  };
}

function parse(yaml: string): Document.Parsed {
  return parseDocument(yaml, { prettyErrors: false, uniqueKeys: true, stringKeys: true, resolveKnownTags: false });
}

function firstAlias(doc: Document.Parsed): Node | undefined {
  let alias: Node | undefined;
  visit(doc, {
    Alias(_, node) {
      alias ??= node;
    },
    Node(_, node) {
      if (!isAlias(node) && node.anchor) alias ??= node;
    },
  });
  return alias;
}

function broken(path: string, text: string, from: number, length: number, message: string, hint: string): Source {
  const lines = new Lines(text);
  return {
    text,
    value: text,
    faults: [{ severity: "error", rule: "unreadable", file: path, path: [], message, hint }],
    locate: () => lines.positionAt(from, length),
    line: (number) => lines.line(number),
  };
}

/** A file that could not even be read as text. `near` is what can be read of it, and where the fault is in that. */
export function unreadable(
  path: string,
  message: string,
  hint: string,
  near: { readonly text: string; readonly at: number } = { text: "", at: 0 },
): Source {
  return { ...broken(path, near.text, near.at, 1, message, hint), value: undefined };
}

function inText(start: number, { within }: Pick<Place, "within">): [number, number] {
  return within ? [start + within[0], within[1] - within[0]] : [start, 1];
}

/** The place of a field: its value, its name when the complaint is about the name or the value is missing. */
function inYaml(contents: unknown, yaml: string, offset: number, complaint: Omit<Place, "file">): [number, number] {
  let node: unknown = contents;
  let found: Node | undefined;
  let name: Node | undefined;
  for (const step of complaint.path) {
    const pair = isMap(node)
      ? node.items.find(
          (item): item is Pair<Node, Node> =>
            isPair(item) && isScalar(item.key) && String(item.key.value) === String(step),
        )
      : undefined;
    if (pair) {
      name = pair.key;
      node = pair.value;
    } else if (isSeq(node) && typeof step === "number") node = node.items[step];
    else break;
    if (isScalar(node) || isCollection(node)) found = node as Node;
    else found = name;
  }
  const at = complaint.key ? (name ?? found) : (found ?? name);
  const [from, to] = at?.range ?? [0, 1];
  if (complaint.within && isScalar(at)) {
    const [start, end] = withinScalar(yaml, from, to, String(at.value).trim(), complaint.within);
    return [offset + start, end - start];
  }
  return [offset + from, isScalar(at) ? to - from : 1];
}

/** Characters of a value, found again in the text as long as it stands there on one line as it is. */
function withinScalar(
  yaml: string,
  from: number,
  to: number,
  value: string,
  within: readonly [number, number],
): [number, number] {
  const lead = yaml.slice(from, to).indexOf(value);
  if (lead < 0) return [from, to];
  return [from + lead + within[0], from + lead + within[1]];
}

/** The lines of a text, found once, so that thousands of complaints about one file are placed quickly. */
class Lines {
  readonly #text: string;
  readonly #starts: number[] = [0];

  constructor(text: string) {
    this.#text = text;
    for (let end = text.indexOf("\n"); end >= 0; end = text.indexOf("\n", end + 1)) this.#starts.push(end + 1);
  }

  line(number: number): string {
    const text = this.#text.slice(this.#starts[number - 1], this.#starts[number]);
    return text.replace(/\r?\n?$/, "");
  }

  positionAt(from: number, length: number): Position {
    let [low, high] = [0, this.#starts.length - 1];
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if ((this.#starts[middle] as number) <= from) low = middle;
      else high = middle - 1;
    }
    // Right behind a line that a stray carriage return ends there is still its end.
    const column = Math.min(from - (this.#starts[low] as number), this.line(low + 1).length) + 1;
    const rest = this.line(low + 1).length - column + 1;
    return { line: low + 1, column, length: Math.max(1, Math.min(length, rest)) };
  }
}

/** A sign on the line of the fault, or on the one before it, that looks like a plain one and that YAML does not take for it. */
function oddSignNear(
  yaml: string,
  fault: number,
): { sign: string; at: number; message: string; hint: string } | undefined {
  const end = yaml.indexOf("\n", fault);
  const start = yaml.lastIndexOf("\n", fault - 1) + 1;
  const from = start > 1 ? yaml.lastIndexOf("\n", start - 2) + 1 : 0;
  const near = yaml.slice(from, end < 0 ? yaml.length : end);
  // In the middle of a text such a sign does no harm; where a value begins or a line is indented it does.
  const found = /(?<=(?:^|[:,[{-])\s*)[“”„‘’\u00A0\u202F\u2007\u200B\uFEFF]/mu.exec(near);
  if (!found) return undefined;
  const [sign] = found;
  const isQuote = /[“”„‘’]/u.test(sign);
  return {
    sign,
    at: from + found.index,
    message: isQuote ? `${nameOfSign(sign)} is no quote here` : `${nameOfSign(sign)} stands here`,
    hint: isQuote ? "write straight quotes, \" or ', round the text" : "write a plain space in its place",
  };
}

function firstLine(message: string): string {
  if (message.includes("call stack")) return "brackets inside brackets, thousands deep";
  return (message.split("\n")[0] as string).replace(/\.$/, "");
}

function yamlHint(code: string): string {
  if (code === "DUPLICATE_KEY") return "keep the field once";
  if (code === "TAB_AS_INDENT") return "indent with spaces";
  if (code === "BLOCK_AS_IMPLICIT_KEY" || code === "UNEXPECTED_TOKEN" || code === "BAD_SCALAR_START")
    return "text with ': ' or a sign in front needs quotes";
  return "check quotes and indentation";
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
