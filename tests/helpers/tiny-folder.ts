/**
 * A small, faultless data folder of a made-up maker of tractors, and ways to spoil it. A test changes one thing and compares
 * everything that is then complained about.
 */
import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { onTestFinished } from "vitest";
import { EXAMPLE_FOLDER } from "../../src/build/data/example-folder.ts";
import { readSource, type Source } from "../../src/build/data/source.ts";
import type { Catalog } from "../../src/engine/records/catalog.ts";
import type { Complaint } from "../../src/engine/records/complaint.ts";
import { type DataFile, FILE_KINDS, type FileKind, kindOf } from "../../src/engine/records/file-kinds.ts";
import { type ReadCatalog, readCatalog } from "../../src/engine/records/read-catalog.ts";

/** Path inside the folder, and text. */
export type Folder = Readonly<Record<string, string>>;

export const TINY: Folder = EXAMPLE_FOLDER;

/** How a folder is spoiled: a file's new text, no file any more, or pieces of its text put in place of others, two by two. */
export type Spoil = Readonly<Record<string, string | undefined | readonly string[]>>;

export function spoiled(spoil: Spoil): Folder {
  const folder: Record<string, string> = { ...TINY };
  for (const [path, how] of Object.entries(spoil)) {
    if (how === undefined) delete folder[path];
    else if (typeof how === "string") folder[path] = how;
    else
      for (let i = 0; i < how.length; i += 2) {
        const [old, replacement] = [how[i] as string, how[i + 1] as string];
        const text = folder[path] ?? "";
        if (!text.includes(old)) throw new Error(`${path} does not say ${old}`);
        folder[path] = text.replace(old, () => replacement);
      }
  }
  return folder;
}

export function sourceOf(path: string, text: string): Source {
  const kind = kindOf(path);
  const fileKind: FileKind | undefined = kind && FILE_KINDS[kind];
  return readSource(path, text, fileKind?.body);
}

const tinySources = new Map<string, Source>();

/** Thousands of spoiled folders share the files that were left as they are: each of those is read once. */
function tinySource(path: string): Source {
  const source = tinySources.get(path) ?? sourceOf(path, TINY[path] as string);
  tinySources.set(path, source);
  return source;
}

/** Reads a folder without a disk. */
export function readTexts(folder: Folder): ReadCatalog & { readonly complaints: readonly Complaint[] } {
  const faults: Complaint[] = [];
  const files = Object.entries(folder)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([path, text]): DataFile[] => {
      const kind = kindOf(path);
      if (!kind) return [];
      const source = TINY[path] === text ? tinySource(path) : sourceOf(path, text);
      faults.push(...source.faults);
      return [{ path, kind, value: source.value, broken: source.faults.length > 0 }];
    });
  const read = readCatalog(files);
  return { ...read, complaints: [...faults, ...read.complaints] };
}

export function catalogOf(folder: Folder = TINY): Catalog {
  const { catalog, complaints } = readTexts(folder);
  if (!catalog) throw new Error(complaints.map((complaint) => complaint.message).join("\n"));
  return catalog;
}

/** "file field: message → hint", a line a complaint. */
export function inShort({ file, path, message, hint }: Complaint): string {
  return `${[file, path.join(".")].filter(Boolean).join(" ")}: ${message} → ${hint}`;
}

/** Writes a folder to the disk for the time of a test. */
export async function onDisk(files: Readonly<Record<string, string | Uint8Array>>): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), "yearmark-tiny-"));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  for (const [path, text] of Object.entries(files)) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), text);
  }
  return folder;
}

/** Everything that is said when one piece of one file is written differently. */
export function saidOf(file: string, old: string, replacement: string): string[] {
  return readTexts(spoiled({ [file]: [old, replacement] })).complaints.map(inShort);
}
