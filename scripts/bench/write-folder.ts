import { mkdir, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";

/** Writes a made-up data folder to the disk. */
export async function writeFolder(files: ReadonlyMap<string, string>, folder: string): Promise<void> {
  for (const [path, text] of files) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), text);
  }
}
