/** The files of a data folder as they lay on the disk when they were read, a byte order mark included, which an editor does not see. */
import { closeSync, existsSync, openSync, readSync } from "node:fs";
import { join } from "node:path";
import type { ReadFolder } from "../data/read-folder.ts";

const MARK = "\uFEFF";

export function folderTexts(folder: string, { sources }: Pick<ReadFolder, "sources">): Map<string, string> {
  return new Map([...sources].map(([path, { text }]) => [path, withMark(join(folder, path), text)]));
}

/** Not what lies there by now: whoever writes compares with what his change was made from. */
export function withMark(file: string, text: string): string {
  return beginsWithMark(file) ? MARK + text : text;
}

function beginsWithMark(path: string): boolean {
  if (!existsSync(path)) return false;
  const first = Buffer.alloc(MARK.length * 3);
  const file = openSync(path, "r");
  try {
    readSync(file, first);
  } finally {
    closeSync(file);
  }
  return first.toString("utf8") === MARK;
}
