/** Writes the manifest of a site that is otherwise done: the last file of a build. */
import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { MANIFEST_FILE, type Manifest, type PublishedFile, type PublishedPage } from "./manifest-shape.ts";

/** Returns how many files the site has, the manifest itself left out. */
export function writeManifest(folder: string, site: string, pages: readonly PublishedPage[]): number {
  const files = filesOf(folder).filter(({ path }) => path !== MANIFEST_FILE);
  writeFileSync(
    join(folder, MANIFEST_FILE),
    manifestText({ format: "yearmark-manifest/1", site, pages: [...pages], files }),
  );
  return files.length;
}

/**
 * Every file of a folder with its hash, sorted. Hidden ones are left out: the mark of a build and what an editor or an
 * operating system leaves behind are not the site.
 */
export function filesOf(folder: string): PublishedFile[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .filter((path) => !/(^|\/)\.(?!well-known\/)/.test(path))
    .sort((a, b) => (a < b ? -1 : 1))
    .map((path) => {
      const bytes = readFileSync(join(folder, path));
      return { path, size: bytes.length, sha256: createHash("sha256").update(bytes).digest("hex") };
    });
}

/** A line for each page and file, so that two manifests can be compared by eye. */
function manifestText({ format, site, pages, files }: Manifest): string {
  const list = (items: readonly object[]): string => `[\n${items.map((it) => JSON.stringify(it)).join(",\n")}\n]`;
  return `{"format":${JSON.stringify(format)},"site":${JSON.stringify(site)},\n"pages":${list(pages)},\n"files":${list(files)}}\n`;
}
