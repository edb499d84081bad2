/** Where the JSON Schema of a file is found, seen from that file: for the comment by which editors know how to check it. */
import { dirname, isAbsolute, relative, resolve, sep } from "node:path";
import type { FileKindName } from "../../engine/records/file-kinds.ts";
import { NO_SITE } from "../../engine/records/read-catalog.ts";

/** The schemas of this project, wherever the command was started. */
export const SCHEMAS = resolve(import.meta.dirname, "../../../schemas");

/**
 * A data folder inside the project has its schemas beside it, so the address is a path that works on every machine. Of any other
 * folder nothing is known but where its site is published, and the site carries the same schemas.
 */
export function schemaAddress(
  folder: string,
  path: string,
  kind: FileKindName,
  site: string,
  schemas = SCHEMAS,
): string | undefined {
  const file = resolve(folder, path);
  const below = relative(dirname(schemas), file);
  if (isAbsolute(below) || below.split(sep)[0] === "..") {
    // Where nobody said where the site is, nothing is known.
    if (site === NO_SITE) return undefined;
    return new URL(`data/schemas/${kind}.json`, site.endsWith("/") ? site : `${site}/`).href;
  }
  return relative(dirname(file), resolve(schemas, `${kind}.json`))
    .split(sep)
    .join("/");
}

/** The comment that editors with a YAML language server go by. */
export function schemaComment(address: string): string {
  return `# yaml-language-server: $schema=${address}`;
}
