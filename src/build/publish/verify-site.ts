/** Whether a folder holds a published site, the whole of it and nothing else: after an upload, or years later. */
import { MANIFEST_FILE } from "./manifest-shape.ts";
import { readManifest } from "./read-manifest.ts";
import { filesOf } from "./write-manifest.ts";

export interface Verified {
  /** How many files the site has, its manifest left out. */
  readonly files: number;
  readonly missing: readonly string[];
  readonly changed: readonly string[];
  /** Files that are no part of the site: harmless, but perhaps not meant to be public. */
  readonly foreign: readonly string[];
}

export function verifySite(folder: string): Verified {
  const wanted = new Map(readManifest(folder).files.map((file) => [file.path, file]));
  const found = new Map(filesOf(folder).map((file) => [file.path, file]));
  return {
    files: wanted.size,
    missing: [...wanted.keys()].filter((path) => !found.has(path)),
    changed: [...wanted.values()]
      .filter(({ path, sha256 }) => (found.get(path)?.sha256 ?? sha256) !== sha256)
      .map(({ path }) => path),
    foreign: [...found.keys()].filter((path) => !wanted.has(path) && path !== MANIFEST_FILE),
  };
}
