/** One file of a data folder: its text, the value in it, and where in the text each field stands. */
import {
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
import type { Complaint } from "../../engine/records/complaint.ts";

export const MAX_BYTES = 1_000_000;

export interface Position {
  readonly line: number;
  readonly column: number;
  readonly length: number;
}

export interface Source {
  readonly text: string;
  readonly value: unknown;
  /** What keeps the file from being read at all. */
  readonly faults: readonly Complaint[];
  locate(complaint: Complaint): Position;
}

/** Reads YAML, or Markdown with YAML facts between '---' lines when `body` names the field for the text below them. */
export function readSource(path: string, text: string, body: string | undefined): Source {
  const parts = body === undefined ? { yaml: text, at: 0, rest: "", restAt: 0 } : splitFacts(text);
  if (!parts)
    return broken(
      path,
      text,
      0,
      1,
      "the file does not begin with facts",
      "write the facts between two lines of '---', the story below them",
    );
  const doc = parseDocument(parts.yaml, { prettyErrors: false, uniqueKeys: true, stringKeys: true });
  const [error] = doc.errors;
  if (error)
    return broken(
      path,
      text,
      parts.at + error.pos[0],
      error.pos[1] - error.pos[0],
      `this is not YAML: ${firstLine(error.message)}`,
      yamlHint(error.code),
    );
  let alias: Node | undefined;
  visit(doc, {
    Alias(_, node) {
      alias ??= node;
    },
    Node(_, node) {
      if (!isAlias(node) && node.anchor) alias ??= node;
    },
  });
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
  const bodyLead = parts.rest.length - parts.rest.trimStart().length;
  return {
    text,
    value,
    faults: [],
    locate: (complaint) => {
      const [from, length] =
        body !== undefined && complaint.path[0] === body
          ? inText(parts.restAt + bodyLead, complaint)
          : inYaml(doc.contents, parts.yaml, parts.at, complaint);
      return positionAt(text, from, length);
    },
  };
}

function splitFacts(text: string): { yaml: string; at: number; rest: string; restAt: number } | undefined {
  const match = /^(\uFEFF?---[ \t]*\r?\n)([\s\S]*?)(^---[ \t]*(?:\r?\n|$))/m.exec(text);
  if (match?.index !== 0) return undefined;
  const at = (match[1] as string).length;
  const restAt = match[0].length;
  return { yaml: match[2] as string, at, rest: text.slice(restAt), restAt };
}

function broken(path: string, text: string, from: number, length: number, message: string, hint: string): Source {
  return {
    text,
    value: undefined,
    faults: [{ severity: "error", file: path, path: [], message, hint }],
    locate: () => positionAt(text, from, length),
  };
}

/** A file that could not even be read as text. */
export function unreadable(path: string, message: string, hint: string): Source {
  return broken(path, "", 0, 0, message, hint);
}

function inText(start: number, { within }: Complaint): [number, number] {
  return within ? [start + within[0], within[1] - within[0]] : [start, 1];
}

/** The place of a field: its value, its name when the complaint is about the name or the value is missing. */
function inYaml(contents: unknown, yaml: string, offset: number, complaint: Complaint): [number, number] {
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
    const [start, end] = withinScalar(yaml, from, to, String(at.value), complaint.within);
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

function positionAt(text: string, from: number, length: number): Position {
  const before = text.slice(0, from);
  const line = before.split("\n").length;
  const column = from - (before.lastIndexOf("\n") + 1) + 1;
  const lineEnd = text.indexOf("\n", from);
  const rest = (lineEnd < 0 ? text.length : lineEnd) - from;
  return { line, column, length: Math.max(1, Math.min(length, rest)) };
}

function firstLine(message: string): string {
  return (message.split("\n")[0] as string).replace(/\.$/, "");
}

function yamlHint(code: string): string {
  if (code === "DUPLICATE_KEY") return "keep the field once";
  if (code === "TAB_AS_INDENT") return "indent with spaces";
  if (code === "BLOCK_AS_IMPLICIT_KEY" || code === "UNEXPECTED_TOKEN")
    return "text with ': ' or a sign in front needs quotes";
  return "check quotes and indentation";
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
