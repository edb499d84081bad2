/** What has to be written where in a YAML text so that it says something else, field by field; everything between stays. */
import { isDeepStrictEqual } from "node:util";
import { isMap, isScalar, isSeq, type Node, type Pair, type Scalar, type YAMLMap, type YAMLSeq } from "yaml";
import type { z } from "zod";
import { partnersOf } from "./partners-of.ts";
import { inOrder, isFields, shapeOf } from "./without-defaults.ts";
import { yamlOnOneLine, yamlText } from "./yaml-text.ts";

type Shape = z.core.$ZodType;
type Fields = Record<string, unknown>;

/** What stands from one place to another becomes this. */
export interface Edit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

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
    for (const name of order) {
      const place = places.get(name);
      if (isDeepStrictEqual(old[name], next[name])) continue;
      if (map.flow && (!place || next[name] === undefined)) return false;
      if (!place) this.#insert(map, places, order, name, next[name]);
      else if (next[name] === undefined) this.#remove(map, place);
      else {
        const before = this.#edits.length;
        const inner = shapeOf(shape, name, next[name]);
        if ((this.#deep || !top) && this.#value(place.value, inner, old[name], next[name])) continue;
        this.#edits.length = before;
        if (map.flow) return false;
        this.#rewrite(map, place, name, next[name]);
      }
    }
    return true;
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
    if (seq.flow) {
      if (old.length !== next.length) return false;
      return next.every((item, i) => this.#entry(seq, shape, old, i, item));
    }
    const kept = partners.filter((i) => i !== undefined);
    if (kept.length === 0 || kept.some((i, at) => at > 0 && i < (kept[at - 1] as number))) return false;
    const indent = column(this.#yaml, (seq.items[0] as Node).range?.[0] ?? 0) - 2;
    const dash = this.#lineOf(seq.items[0] as Node);
    if (indent < 0 || !/^ *- $/.test(this.#yaml.slice(dash, dash + indent + 2))) return false;
    const stay = new Set(kept);
    old.forEach((_, i) => {
      if (!stay.has(i)) this.#cut(this.#lineOf(seq.items[i] as Node), this.#endOf(seq.items[i] as Node));
    });
    let after: number | undefined;
    for (const [i, item] of next.entries()) {
      const partner = partners[i];
      if (partner !== undefined) {
        if (!this.#entry(seq, shape, old, partner, item)) return false;
        after = this.#endOf(seq.items[partner] as Node);
      } else {
        const at = after ?? this.#lineOf(seq.items[kept[0] as number] as Node);
        this.#edits.push({ from: at, to: at, text: this.#ownLine(at, entryText(item, indent)) });
      }
    }
    return true;
  }

  #entry(seq: YAMLSeq, shape: Shape | undefined, old: readonly unknown[], i: number, next: unknown): boolean {
    if (isDeepStrictEqual(old[i], next)) return true;
    return this.#value(seq.items[i] as Node, shapeOf(shape, i, next), old[i], next);
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
    const to = this.#endOf(place.value ?? place.key);
    this.#edits.push({ from, to, text: yamlText({ [name]: value }, indent).trimStart() });
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

  #lineOf(node: Node): number {
    return this.#yaml.lastIndexOf("\n", (node.range?.[0] ?? 0) - 1) + 1;
  }

  /** A last line may have no end yet. */
  #ownLine(at: number, text: string): string {
    return at > 0 && this.#yaml[at - 1] !== "\n" ? `\n${text}` : text;
  }
}

function column(yaml: string, at: number): number {
  return at - (yaml.lastIndexOf("\n", at - 1) + 1);
}

function entryText(item: unknown, indent: number): string {
  if (!isFields(item)) return `${" ".repeat(indent)}- ${yamlOnOneLine(item)}\n`;
  const text = yamlText(item, indent + 2);
  return `${" ".repeat(indent)}- ${text.slice(indent + 2)}`;
}
