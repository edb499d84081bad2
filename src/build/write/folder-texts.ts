/** The files of a data folder as they lie on the disk: what an editor does not see, such as a byte order mark, is there too. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { ReadFolder } from "../data/read-folder.ts";

export function folderTexts(folder: string, { sources }: Pick<ReadFolder, "sources">): Map<string, string> {
  // A file that could not be read as text has been complained about already.
  return new Map([...sources.keys()].map((path) => [path, readFileSync(join(folder, path), "utf8")]));
}
