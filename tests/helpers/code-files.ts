/** The code of the repository, for tests that guard the house. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

export interface CodeFile {
  /** Path inside the repository, with '/'. */
  readonly path: string;
  readonly text: string;
}

/** Every file below these folders whose name ends so. */
export function codeFiles(root: string, folders: readonly string[], ending: RegExp): CodeFile[] {
  return folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && ending.test(entry.name))
      .map((entry) =>
        join(entry.parentPath, entry.name)
          .slice(root === "." ? 0 : root.length + 1)
          .replaceAll("\\", "/"),
      )
      .sort()
      .map((path) => ({ path, text: readFileSync(join(root, path), "utf8") })),
  );
}
