/** A data folder held in memory. Of what changes on the disk only the changed files are read again. */
import { openKnowledge } from "../../engine/answers/knowledge.ts";
import { Site } from "../../site/site.ts";
import { type Finding, type ReadFolder, readFolder } from "../data/read-folder.ts";

export interface Change {
  /** The files that were added, written otherwise or taken away. */
  readonly files: readonly string[];
  /** The data has no error, so there is a new site. */
  readonly isGood: boolean;
}

export class World {
  readonly folder: string;
  #read: ReadFolder | undefined;
  #site: Site | undefined;

  constructor(folder: string) {
    this.folder = folder;
  }

  /** The folder as it is now. */
  get read(): ReadFolder | undefined {
    return this.#read;
  }

  /** The site of the last state that had no error. */
  get site(): Site | undefined {
    return this.#site;
  }

  /** Brings it up to date with the disk. Nothing comes back where nothing changed. */
  async refresh(): Promise<Change | undefined> {
    const before = this.#read;
    const read = await readFolder(this.folder, before);
    this.#read = read;
    const files = differing(before, read);
    if (before && files.length === 0 && sameFindings(before.findings, read.findings)) return undefined;
    if (read.catalog) this.#site = new Site(openKnowledge(read.catalog, { layout: false }));
    return { files, isGood: read.catalog !== undefined };
  }
}

function differing(before: ReadFolder | undefined, { sources }: ReadFolder): string[] {
  const old = before?.sources ?? new Map<string, { text: string }>();
  const changed = [...sources].filter(([path, { text }]) => old.get(path)?.text !== text).map(([path]) => path);
  return [...changed, ...[...old.keys()].filter((path) => !sources.has(path))].sort();
}

/** A file that cannot be read has no text, and one that is not read no source: what is said of them tells. */
function sameFindings(a: readonly Finding[], b: readonly Finding[]): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
