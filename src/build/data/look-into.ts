/** Looks into a file of the data folder that is of no kind by its path, for what it may have been meant to be. */
import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { isHidden, type UnreadFile } from "../../engine/records/meant-place.ts";
import { nearest } from "../../engine/scope/nearest.ts";
import { MAX_BYTES, readSource } from "./source.ts";
import { splitFacts } from "./split-facts.ts";

/** Endings of files that hold text; without one, or a slip away from the two that are read, a file may too. */
const TEXT = new Set(["", "yaml", "yml", "md", "markdown", "txt", "json", "bak", "old", "orig"]);

/** Nothing of a picture, a sheet and the like, or where the file went while the folder was read. */
export function lookInto(folder: string, path: string): UnreadFile[] {
  const name = path.slice(path.lastIndexOf("/") + 1);
  const ending = name.includes(".") ? name.slice(name.lastIndexOf(".") + 1).toLowerCase() : "";
  if (!TEXT.has(ending) && nearest(ending, ["yaml", "md"]) === undefined) return [];
  if (isHidden(path)) return [{ path, value: undefined }];
  const stats = statSync(join(folder, path), { throwIfNoEntry: false });
  if (!stats) return [];
  return [
    { path, ...(stats.size > MAX_BYTES ? { value: undefined } : factsIn(readFileSync(join(folder, path)), path)) },
  ];
}

function factsIn(bytes: Uint8Array, path: string): Omit<UnreadFile, "path"> {
  let text: string;
  try {
    text = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return { value: undefined };
  }
  const parts = splitFacts(text);
  return parts
    ? { value: readSource(path, parts.yaml, undefined).value, body: parts.rest.trim() }
    : { value: readSource(path, text, undefined).value };
}
