/** Which field of a file a place in its text belongs to. */
import { isMap, isScalar, isSeq, parseDocument, type Range, type Scalar } from "yaml";
import type { Path } from "../../engine/records/complaint.ts";
import type { FileKindName } from "../../engine/records/file-kinds.ts";
import { factsOf } from "./facts-of.ts";

export interface FieldAt {
  /** From the top of the file. */
  readonly path: Path;
  /** It is the name of a field, not a value. */
  readonly key: boolean;
  readonly value: unknown;
  /** Written without quotes. */
  readonly plain: boolean;
  readonly from: number;
  readonly to: number;
}

/** Asked for a place; nothing is a comment, or a sign that belongs to no field. The text below the facts is one field. */
export function fieldsIn(kind: FileKindName, text: string): (at: number) => FieldAt | undefined {
  const halves = factsOf(kind, text);
  const fields: FieldAt[] = [];
  if (!halves) return () => undefined;
  const doc = parseDocument(halves.yaml, { prettyErrors: false, stringKeys: true, resolveKnownTags: false });
  const add = (node: Scalar, path: Path, key: boolean): void => {
    const [from, to] = node.range as Range;
    fields.push({
      path,
      key,
      value: node.value,
      plain: node.type === "PLAIN",
      from: halves.at + from,
      to: halves.at + to,
    });
  };
  const walk = (node: unknown, path: Path): void => {
    if (isScalar(node)) add(node, path, false);
    else if (isSeq(node)) node.items.forEach((item, i) => void walk(item, [...path, i]));
    else if (isMap(node))
      for (const { key, value } of node.items) {
        const inner = [...path, String((key as Scalar).value)];
        add(key as Scalar, inner, true);
        walk(value, inner);
      }
  };
  walk(doc.contents, []);
  if (halves.body !== undefined) {
    const value = text.slice(halves.bodyAt);
    fields.push({ path: [halves.body], key: false, value, plain: true, from: halves.bodyAt, to: text.length });
  }
  return (at) => fields.find((field) => field.from <= at && at < field.to);
}
