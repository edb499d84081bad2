/** What has to be written where in a YAML text so that it says something else, field by field; everything between stays. */
import { isDeepStrictEqual } from "node:util";
import {
  isCollection,
  isMap,
  isPair,
  isScalar,
  isSeq,
  type Node,
  type Pair,
  type Scalar,
  type YAMLMap,
  type YAMLSeq,
} from "yaml";
import type { z } from "zod";
import { type Edit, flowText, insertInFlow, isJson, pairText, removeInFlow } from "./flow-edits.ts";
import { partnersOf } from "./partners-of.ts";
import { inOrder, isFields, shapeOf } from "./without-defaults.ts";
import { yamlOnOneLine, yamlText } from "./yaml-text.ts";

type Shape = z.core.$ZodType;
type Fields = Record<string, unknown>;

/** Edits from the end to the beginning. With `deep: false` a field at the top that differs is written anew as a whole. */
export function yamlEdits(
  yaml: string,
  map: YAMLMap,
  shape: Shape,
  { old, next, deep }: { readonly old: Fields; readonly next: Fields; readonly deep: boolean },
): Edit[] | undefined {
  const edits: Edit[] = [];
  if (!new Editor(yaml, edits, deep).fields(map, shape, old, next)) return undefined;
  // Of two that stand at one place the later one is written first, so that the earlier comes to stand before it.
  return edits.reverse().sort((a, b) => b.from - a.from || b.to - a.to);
}

type Place = Pair<Scalar, Node | null>;

/** Collects the edits; each way of it says whether the value could be changed in place. */
class Editor {
  readonly #yaml: string;
  readonly #edits: Edit[];
  readonly #deep: boolean;

  constructor(yaml: string, edits: Edit[], deep: boolean) {
    this.#yaml = yaml;
    this.#edits = edits;
    this.#deep = deep;
  }

  fields(map: YAMLMap, shape: Shape | undefined, old: Fields, next: Fields, top = true): boolean {
    const places = new Map(map.items.map((item) => [String((item.key as Scalar).value), item as Place]));
    const order = inOrder(shape, [...new Set([...places.keys(), ...Object.keys(next)])]);
    const differing = order.filter((name) => !isDeepStrictEqual(old[name], next[name]));
    const fresh = differing.filter((name) => !places.has(name));
    if (map.flow && !this.#flowFields(map, places, order, next, fresh, differing)) return false;
    for (const name of differing) {
      const place = places.get(name);
      if (!place) {
        if (!map.flow) this.#insert(map, places, order, name, next[name]);
      } else if (next[name] === undefined) {
        if (!map.flow) this.#remove(map, place);
      } else {
        const before = this.#edits.length;
        const inner = shapeOf(shape, name, next[name]);
        if ((this.#deep || !top) && this.#value(place.value, inner, old[name], next[name])) continue;
        this.#edits.length = before;
        if (map.flow) this.#replaceInFlow(map, place, next[name]);
        else this.#rewrite(map, place, name, next[name]);
      }
    }
    return true;
  }

  /** Fields that are new in a set in braces, or go from it. Both at once would come in each other's way. */
  #flowFields(
    map: YAMLMap,
    places: Map<string, Place>,
    order: readonly string[],
    next: Fields,
    fresh: readonly string[],
    differing: readonly string[],
  ): boolean {
    const gone = differing.filter((name) => places.has(name) && next[name] === undefined);
    if (gone.length > 1 || (gone.length > 0 && fresh.length > 0)) return false;
    const json = isJson(this.#yaml, map);
    const names = [...places.keys()];
    if (gone.length > 0) return this.#add(removeInFlow(this.#yaml, map, names.indexOf(gone[0] as string)));
    const groups = new Map<number, string[]>();
    for (const name of fresh) {
      const before = order.slice(0, order.indexOf(name)).findLast((other) => places.has(other));
      const after = before === undefined ? -1 : names.indexOf(before);
      groups.set(after, [...(groups.get(after) ?? []), pairText(name, next[name], json)]);
    }
    return [...groups].every(([after, texts]) => this.#add(insertInFlow(this.#yaml, map, after, texts)));
  }

  #value(node: Node | null, shape: Shape | undefined, old: unknown, next: unknown): boolean {
    if (isMap(node) && isFields(old) && isFields(next)) return this.fields(node, shape, old, next, false);
    if (isSeq(node) && Array.isArray(old) && Array.isArray(next)) return this.#entries(node, shape, old, next);
    return isScalar(node) && typeof next !== "object" && this.#scalar(node, next);
  }

  /** One line stays one line, in the quotes it had as far as they still serve; anything longer is written anew. */
  #scalar(node: Scalar, next: unknown): boolean {
    const [from = 0, to = 0] = node.range ?? [];
    const written = this.#yaml.slice(from, to);
    if (/[\r\n]/.test(written) || written === "" || String(next).includes("\n")) return false;
    let text = yamlOnOneLine(next);
    if (typeof next === "string" && written.startsWith('"')) text = JSON.stringify(next);
    else if (typeof next === "string" && written.startsWith("'")) text = `'${next.replaceAll("'", "''")}'`;
    this.#edits.push({ from, to, text });
    return true;
  }

  #entries(seq: YAMLSeq, shape: Shape | undefined, old: readonly unknown[], next: readonly unknown[]): boolean {
    const partners = partnersOf(old, next);
    const kept = partners.filter((i) => i !== undefined);
    if (kept.some((i, at) => at > 0 && i < (kept[at - 1] as number))) return false;
    const stay = new Set(kept);
    const gone = [...old.keys()].filter((i) => !stay.has(i));
    const same = next.every((item, i) => {
      const partner = partners[i];
      return partner === undefined || this.#entry(seq, shape, old, partner, item);
    });
    if (!same) return false;
    return seq.flow
      ? this.#flowEntries(seq, partners, next, gone)
      : kept.length > 0 && this.#blockEntries(seq, partners, next, gone);
  }

  #blockEntries(
    seq: YAMLSeq,
    partners: readonly (number | undefined)[],
    next: readonly unknown[],
    gone: readonly number[],
  ): boolean {
    const start = seq.range?.[0] ?? 0;
    const indent = column(this.#yaml, start);
    const lines = seq.items.map((item) => this.#dashOf(item as Node, indent, start));
    if (lines.includes(undefined)) return false;
    // As far behind the dash as the first one.
    const deep = /^-( *)(?=\S)/.exec(this.#yaml.slice(start))?.[1]?.length || 1;
    for (const i of gone) this.#cut(lines[i] as number, this.#endOf(seq.items[i] as Node));
    let after: number | undefined;
    for (const [i, item] of next.entries()) {
      const partner = partners[i];
      if (partner !== undefined) after = this.#withOwnComments(this.#endOf(seq.items[partner] as Node), indent);
      else {
        const at = after ?? (lines[partners.find((one) => one !== undefined) as number] as number);
        this.#edits.push({ from: at, to: at, text: this.#ownLine(at, entryText(item, indent, deep)) });
      }
    }
    return true;
  }

  #flowEntries(
    seq: YAMLSeq,
    partners: readonly (number | undefined)[],
    next: readonly unknown[],
    gone: readonly number[],
  ): boolean {
    const fresh = partners.filter((partner) => partner === undefined).length;
    if (gone.length > 1 || (gone.length > 0 && fresh > 0)) return false;
    if (gone.length > 0) return this.#add(removeInFlow(this.#yaml, seq, gone[0] as number));
    const groups = new Map<number, string[]>();
    let after = -1;
    for (const [i, item] of next.entries()) {
      const partner = partners[i];
      if (partner !== undefined) after = partner;
      else groups.set(after, [...(groups.get(after) ?? []), flowText(item, isJson(this.#yaml, seq))]);
    }
    return [...groups].every(([at, texts]) => this.#add(insertInFlow(this.#yaml, seq, at, texts)));
  }

  #entry(seq: YAMLSeq, shape: Shape | undefined, old: readonly unknown[], i: number, next: unknown): boolean {
    if (isDeepStrictEqual(old[i], next)) return true;
    const node = seq.items[i] as Node;
    const before = this.#edits.length;
    if (this.#value(node, shapeOf(shape, i, next), old[i], next)) return true;
    this.#edits.length = before;
    const [from = 0] = node.range ?? [];
    const indent = column(this.#yaml, from);
    const text = seq.flow
      ? flowText(next, isJson(this.#yaml, seq))
      : isFields(next)
        ? yamlText(next, indent).trim()
        : yamlOnOneLine(next);
    this.#put(from, this.#tailOf(node), text);
    return true;
  }

  #replaceInFlow(map: YAMLMap, { key, value }: Place, next: unknown): void {
    const text = flowText(next, isJson(this.#yaml, map));
    const [from = 0, to = 0] = value?.range ?? [];
    const end = key.range?.[1] ?? 0;
    const colon = /^\s*:/.exec(this.#yaml.slice(end))?.[0];
    if (value && to > from) this.#edits.push({ from, to, text });
    else if (colon === undefined) this.#edits.push({ from: end, to: end, text: `: ${text}` });
    else this.#edits.push({ from: end + colon.length, to: end + colon.length, text: ` ${text}` });
  }

  /** After the field that stands before it in the shape, or else before all of them. */
  #insert(map: YAMLMap, places: Map<string, Place>, order: readonly string[], name: string, value: unknown): void {
    const before = order.slice(0, order.indexOf(name)).findLast((other) => places.has(other));
    const first = (map.items[0] as Place).key;
    const start = first.range?.[0] ?? 0;
    const indent = column(this.#yaml, start);
    const text = yamlText({ [name]: value }, indent);
    if (before !== undefined) {
      const at = this.#endOf((places.get(before) as Place).value ?? (places.get(before) as Place).key);
      this.#edits.push({ from: at, to: at, text: this.#ownLine(at, text) });
    } else this.#edits.push({ from: start, to: start, text: `${text.trimStart()}${" ".repeat(indent)}` });
  }

  #remove(map: YAMLMap, place: Place): void {
    const start = place.key.range?.[0] ?? 0;
    const end = this.#endOf(place.value ?? place.key);
    const alone = /^\s*$/.test(this.#yaml.slice(this.#yaml.lastIndexOf("\n", start - 1) + 1, start));
    // The first field of an entry stands on the line of its '-': the next one moves up.
    if (alone) this.#cut(start - column(this.#yaml, start), end);
    else this.#cut(start, end + column(this.#yaml, (map.items[0] as Place).key.range?.[0] ?? 0));
  }

  #rewrite(map: YAMLMap, place: Place, name: string, value: unknown): void {
    const from = place.key.range?.[0] ?? 0;
    const indent = column(this.#yaml, (map.items[0] as Place).key.range?.[0] ?? 0);
    this.#put(from, this.#tailOf(place.value ?? place.key), yamlText({ [name]: value }, indent).trim());
  }

  /** What stands behind it on the line stays; behind several lines it would be read as one of them, so it goes up to the first. */
  #put(from: number, to: number, text: string): void {
    const comment = /^[ \t]*(#[^\r\n]*)/.exec(this.#yaml.slice(to));
    if (!comment || !text.includes("\n")) this.#edits.push({ from, to, text });
    else this.#edits.push({ from, to: to + comment[0].length, text: text.replace("\n", ` ${comment[1]}\n`) });
  }

  #add(edits: readonly Edit[] | undefined): boolean {
    this.#edits.push(...(edits ?? []));
    return edits !== undefined;
  }

  #cut(from: number, to: number): void {
    this.#edits.push({ from, to, text: "" });
  }

  /** The end of the last line on which something of it stands, line end included. */
  #endOf(node: Node): number {
    const last = (node.range?.[1] ?? 0) - 1;
    if (this.#yaml[last] === "\n") return last + 1;
    const end = this.#yaml.indexOf("\n", Math.max(0, last));
    return end < 0 ? this.#yaml.length : end + 1;
  }

  /** The line of the dash of an entry; the entry may begin further below. */
  #dashOf(node: Node, indent: number, start: number): number | undefined {
    const dash = `${" ".repeat(indent)}-`;
    for (let line = this.#lineAt(node.range?.[0] ?? 0); line + indent >= start; line = this.#lineAt(line - 1))
      if (this.#yaml.startsWith(dash, line)) return line;
    return undefined;
  }

  #lineAt(at: number): number {
    return this.#yaml.lastIndexOf("\n", at - 1) + 1;
  }

  /** Comments that stand deeper than the dash belong to what is above them. */
  #withOwnComments(at: number, indent: number): number {
    const comments = /^(?:( *)#.*\r?\n)*/.exec(this.#yaml.slice(at))?.[0] ?? "";
    let end = at;
    for (const line of comments.split(/(?<=\n)/)) {
      if (line.search(/#/) <= indent) break;
      end += line.length;
    }
    return end;
  }

  /** A last line may have no end yet. */
  #ownLine(at: number, text: string): string {
    return at > 0 && this.#yaml[at - 1] !== "\n" ? `\n${text}` : text;
  }

  /** Where the last thing in it ends, without comments and blanks behind. */
  #tailOf(node: Node): number {
    const last = isCollection(node) && !node.flow ? node.items.at(-1) : undefined;
    if (isPair(last)) return this.#tailOf((last.value ?? last.key) as Node);
    if (last) return this.#tailOf(last as Node);
    let end = node.range?.[1] ?? 0;
    while (end > (node.range?.[0] ?? 0) && /\s/.test(this.#yaml[end - 1] as string)) end--;
    return end;
  }
}

function column(yaml: string, at: number): number {
  return at - (yaml.lastIndexOf("\n", at - 1) + 1);
}

/** `deep` is how far it stands behind its dash. */
function entryText(item: unknown, indent: number, deep: number): string {
  const dash = `${" ".repeat(indent)}-${" ".repeat(deep)}`;
  return isFields(item) ? dash + yamlText(item, dash.length).slice(dash.length) : `${dash}${yamlOnOneLine(item)}\n`;
}
