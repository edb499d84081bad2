/** The data folder of the repository with pieces of its files written differently, read without a disk. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { dataFilesOf } from "../../src/build/data/data-files.ts";
import { locate, type ReadFolder } from "../../src/build/data/read-folder.ts";
import type { Source } from "../../src/build/data/source.ts";
import { kindOf } from "../../src/engine/records/file-kinds.ts";
import { readCatalog } from "../../src/engine/records/read-catalog.ts";
import { DATA } from "./demo-data.ts";
import { sourceOf } from "./tiny-folder.ts";

export interface Edit {
  readonly file: string;
  readonly says: string;
  readonly instead: string;
}

/** Files that stay as they are are read once for all tests. */
const known = new Map<string, Source>();

function demoSources(): ReadonlyMap<string, Source> {
  if (known.size === 0)
    for (const path of readdirSync(DATA, { recursive: true, encoding: "utf8" })
      .map((one) => one.replaceAll("\\", "/"))
      .sort())
      if (kindOf(path)) known.set(path, sourceOf(path, readFileSync(join(DATA, path), "utf8")));
  return known;
}

export function demoChanged(edits: readonly Edit[]): ReadFolder {
  const sources = new Map(demoSources());
  for (const { file, says, instead } of edits) {
    const text = sources.get(file)?.text ?? "";
    if (!text.includes(says)) throw new Error(`${file} does not say ${says}`);
    sources.set(
      file,
      sourceOf(
        file,
        text.replace(says, () => instead),
      ),
    );
  }
  const files = dataFilesOf(sources);
  const { complaints, ...read } = readCatalog(files);
  const all = [...[...sources.values()].flatMap((source) => source.faults), ...complaints];
  return {
    ...read,
    findings: all.map((complaint) => locate(complaint, sources.get(complaint.file))),
    files: files.length,
    sources,
    stamps: new Map(),
  };
}
