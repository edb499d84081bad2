/** The text of a file with other values in some of its fields, and everything else as its editor wrote it. */
import { isDeepStrictEqual } from "node:util";
import { isMap, parseDocument, type YAMLMap } from "yaml";
import { FILE_KINDS, type FileKind, type FileKindName } from "../../engine/records/file-kinds.ts";
import { readSource } from "../data/source.ts";
import { factsOf, type Halves } from "./facts-of.ts";
import { fileText } from "./file-text.ts";
import { bare, isFields, withoutDefaults } from "./without-defaults.ts";
import { yamlEdits } from "./yaml-edits.ts";

/**
 * A field keeps its text where its value stays; a default counts like a field that is not there. Fields that are new stand where the
 * shape has them. Entries of a list are the same when they have the same id, number or words; else those at the same place are.
 *
 * The new text is read back. Where it does not say what it should (a manner of writing that nobody thought of), the fields at the
 * top that differ are written anew as a whole, and in the end the whole file is.
 */
export function updatedText(kind: FileKindName, text: string, value: Record<string, unknown>): string {
  const halves = factsOf(kind, text);
  const wanted = plain(kind, value);
  if (!halves) return fileText(kind, value);
  for (const deep of [true, false]) {
    const tried = edited(kind, text, halves, wanted, deep);
    if (tried !== undefined && isDeepStrictEqual(valueIn(kind, tried), wanted)) return tried;
  }
  return fileText(kind, value);
}

function plain(kind: FileKindName, value: unknown): unknown {
  const { shape, body }: FileKind = FILE_KINDS[kind];
  const written = withoutDefaults(shape, value);
  if (body !== undefined && isFields(written)) written[body] = String(written[body] ?? "").trim();
  return written;
}

/** As the reader of the folder takes it; nothing where it complains. */
function valueIn(kind: FileKindName, text: string): unknown {
  const { body }: FileKind = FILE_KINDS[kind];
  const { value, faults } = readSource(kind, text, body);
  return faults.length === 0 && isFields(value) ? plain(kind, value) : undefined;
}

function edited(kind: FileKindName, text: string, halves: Halves, wanted: unknown, deep: boolean): string | undefined {
  const value = valueIn(kind, text);
  const map = parseDocument(halves.yaml, { prettyErrors: false, stringKeys: true, resolveKnownTags: false }).contents;
  if (!isFields(value) || !isMap(map) || !isFields(wanted)) return undefined;
  const { [halves.body ?? ""]: oldBody, ...old } = value;
  const { [halves.body ?? ""]: body, ...next } = wanted;
  const edits = yamlEdits(halves.yaml, map as YAMLMap, bare(FILE_KINDS[kind].shape, next), { old, next, deep });
  if (!edits) return undefined;
  const end = /\r\n/.test(text) ? "\r\n" : "\n";
  let yaml = halves.yaml;
  for (const { from, to, text } of edits) yaml = yaml.slice(0, from) + text.replaceAll("\n", end) + yaml.slice(to);
  const below = text.slice(halves.bodyAt);
  return (
    text.slice(0, halves.at) +
    yaml +
    text.slice(halves.at + halves.yaml.length, halves.bodyAt) +
    (oldBody === body ? below : below.replace(/^(\s*)[\s\S]*?(\s*)$/, (_, lead, trail) => lead + body + trail))
  );
}
