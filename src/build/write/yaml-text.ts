/** A value as YAML in the manner of the house: short lists and little sets of fields on one line, long texts folded. */
import { Document, isCollection, isMap, isScalar, isSeq, type Node, Scalar, type ToStringOptions, YAMLSeq } from "yaml";

const WIDTH = 118;
/** Sets of fields that stand on one line each, as far as they fit. */
const ON_ONE_LINE = ["marks", "moves", "values", "rules", "positions", "codes", "figures", "mean"];
/** Each of these names the sets below it by a word of its own. */
const NAMED_SETS = ["equipment", "inputs"];
/** Lists of sentences or rows, which are read one below the other. */
const ONE_BELOW_THE_OTHER = ["left-alone", "notes", "built"];

/** Quotes and what they make necessary rarely take more. */
const SIGNS = 10;

const BRACKETS = 4;

const HOW: ToStringOptions = { lineWidth: WIDTH, flowCollectionPadding: true, minContentWidth: 0 };

/** Fields one below the other, the first at the beginning of a line; `indent` is how far the text will stand in. */
export function yamlText(fields: Record<string, unknown>, indent = 0): string {
  const doc = new Document(fields);
  if (isMap(doc.contents))
    for (const { key, value } of doc.contents.items)
      style(
        value as Node,
        String((key as Scalar).value),
        "",
        indent + 2,
        indent + String((key as Scalar).value).length + 2,
      );
  const text = doc.toString({ ...HOW, lineWidth: WIDTH - indent });
  return text.replace(/^(?=.)/gm, " ".repeat(indent));
}

/** A value on one line, as it stands between other values of a list or a set in brackets. */
export function yamlOnOneLine(value: unknown): string {
  const doc = new Document([value]);
  (doc.contents as unknown as { flow: boolean }).flow = true;
  return doc
    .toString({ ...HOW, lineWidth: 0, flowCollectionPadding: false })
    .trim()
    .slice(1, -1);
}

/** `before` is how much of the line is taken already when the value begins on the line of its name. */
function style(node: Node | null, name: string, above: string, indent: number, before: number): void {
  if (isScalar(node)) styleText(node, before);
  if (!isCollection(node)) return;
  if (mayBeShort(node, name, above) && before + yamlOnOneLine(node.toJSON()).length + BRACKETS <= WIDTH) {
    node.flow = true;
    if (isSeq(node)) node.toString = withoutPadding;
    return;
  }
  for (const item of node.items) {
    if (isSeq(node)) style(item as Node, name, above, indent + 2, indent + 2);
    else if ("key" in (item as object)) {
      const { key, value } = item as { key: Scalar; value: Node };
      style(value, String(key.value), name, indent + 2, indent + String(key.value).length + 2);
    }
  }
}

/** [a, b] beside { c: d }: the library would pad both or none. */
function withoutPadding(this: YAMLSeq, context?: object, ...rest: (() => void)[]): string {
  const padded = YAMLSeq.prototype.toString as (this: YAMLSeq, context?: object, ...rest: (() => void)[]) => string;
  return padded.call(this, context && { ...context, flowCollectionPadding: "" }, ...rest);
}

/** A list of words; a set of the kinds named above. A list of sets never: its entries are looked at one by one. */
function mayBeShort(node: Node, name: string, above: string): boolean {
  if (isSeq(node))
    return (
      node.items.length === 0 || (!ONE_BELOW_THE_OTHER.includes(name) && node.items.every((item) => isScalar(item)))
    );
  return isMap(node) && (node.items.length === 0 || ON_ONE_LINE.includes(name) || NAMED_SETS.includes(above));
}

/** A text that is too long for its line is folded; one with lines of its own keeps them. */
function styleText(node: Scalar, before: number): void {
  if (typeof node.value !== "string") return;
  if (node.value.includes("\n")) node.type = Scalar.BLOCK_LITERAL;
  else if (before + node.value.length + SIGNS > WIDTH && before + yamlOnOneLine(node.value).length > WIDTH)
    node.type = Scalar.BLOCK_FOLDED;
}
