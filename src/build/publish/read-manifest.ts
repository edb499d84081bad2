/** The manifest of a site that was published: of its folder, or of a copy of the manifest alone. */
import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { MANIFEST_FILE, type Manifest, manifestShape } from "./manifest-shape.ts";

/** What was named is no published site. The message says what to do. */
export class NoManifest extends Error {}

export function readManifest(folderOrFile: string): Manifest {
  const stats = statSync(folderOrFile, { throwIfNoEntry: false });
  if (!stats)
    throw new NoManifest(`${folderOrFile} is not there: name the folder of a published site, or its ${MANIFEST_FILE}`);
  const file = stats.isDirectory() ? join(folderOrFile, MANIFEST_FILE) : folderOrFile;
  let text: string;
  try {
    text = readFileSync(file, "utf8");
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "ENOENT") throw error;
    throw new NoManifest(
      `${folderOrFile} has no ${MANIFEST_FILE}: it is no site of Yearmark, one of an earlier version, or a copy that is not whole. Build it anew and publish it first`,
    );
  }
  const read = manifestShape.safeParse(parsed(text));
  if (read.success) return read.data;
  const [issue] = read.error.issues;
  throw new NoManifest(
    `${file} is no manifest of a published site (${[issue?.path.join("."), issue?.message].filter(Boolean).join(": ")})`,
  );
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
