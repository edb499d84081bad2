/** A whole new file of a data folder, in the manner of those that lie there already. */
import { FILE_KINDS, type FileKind, type FileKindName } from "../../engine/records/file-kinds.ts";
import { schemaComment } from "./schema-address.ts";
import { isFields, withoutDefaults } from "./without-defaults.ts";
import { yamlText } from "./yaml-text.ts";

/**
 * Fields in the order of the shape, defaults left out; the text of a Markdown file below its facts. `schema` is the
 * address of its JSON Schema, as schemaAddress gives it for the place of the file: then a comment in front tells it to editors.
 */
export function fileText(kind: FileKindName, value: Record<string, unknown>, schema?: string): string {
  const { shape, body }: FileKind = FILE_KINDS[kind];
  const written = withoutDefaults(shape, value);
  if (!isFields(written)) throw new TypeError(`a file of the kind '${kind}' is a set of fields`);
  const comment = schema === undefined ? "" : `${schemaComment(schema)}\n`;
  if (body === undefined) return comment + yamlText(written);
  const { [body]: text, ...facts } = written;
  return `---\n${comment}${yamlText(facts)}---\n\n${String(text ?? "").trim()}\n`;
}
