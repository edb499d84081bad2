/** Reads a data folder: every file in it, in the same order on every machine, and everything that is wrong with them. */
import { readFileSync, statSync } from "node:fs";
import { readdir } from "node:fs/promises";
import { join, relative, sep } from "node:path";
import type { Catalog } from "../../engine/records/catalog.ts";
import type { Complaint } from "../../engine/records/complaint.ts";
import { type DataFile, FILE_KINDS, type FileKind, kindOf } from "../../engine/records/file-kinds.ts";
import { readCatalog } from "../../engine/records/read-catalog.ts";
import { nearest } from "../../engine/scope/nearest.ts";
import { MAX_BYTES, type Position, readSource, type Source, unreadable } from "./source.ts";

/** A complaint with its place in the text, ready to be shown. */
export interface Finding extends Complaint {
  readonly position: Position;
  /** The line of the file that it is about. */
  readonly shown: string;
}

export interface ReadFolder {
  readonly catalog: Catalog | undefined;
  readonly findings: readonly Finding[];
  readonly files: number;
  /** What was read, by path, in the order of the folder. */
  readonly sources: ReadonlyMap<string, Source>;
}

export async function readFolder(folder: string): Promise<ReadFolder> {
  const sources = new Map<string, Source>();
  const files: DataFile[] = [];
  const complaints: Complaint[] = [];
  for (const path of await listFiles(folder)) {
    const kind = kindOf(path);
    if (!kind) {
      if (/\.(ya?ml|md)$/.test(path)) complaints.push(stray(path));
      continue;
    }
    const fileKind: FileKind = FILE_KINDS[kind];
    const source = readOne(join(folder, path), path, fileKind.body);
    sources.set(path, source);
    complaints.push(...source.faults);
    files.push({ path, kind, value: source.value, broken: source.faults.length > 0 });
  }
  const read = readCatalog(files);
  const findings = [...complaints, ...read.complaints].map((complaint) =>
    locate(complaint, sources.get(complaint.file)),
  );
  findings.sort(byGravity);
  return {
    catalog: findings.some((finding) => finding.severity === "error") ? undefined : read.catalog,
    findings,
    files: files.length,
    sources,
  };
}

async function listFiles(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile() && !entry.name.startsWith("."))
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .sort((a, b) => (a < b ? -1 : 1));
}

/** Without waiting: for thousands of small files that takes half the time. */
function readOne(file: string, path: string, body: string | undefined): Source {
  const { size } = statSync(file);
  if (size > MAX_BYTES)
    return unreadable(
      path,
      `the file is too large (${size} bytes)`,
      `keep it under ${MAX_BYTES} bytes; split it into several files`,
    );
  const bytes = readFileSync(file);
  try {
    return readSource(path, new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes), body);
  } catch (error) {
    if (error instanceof TypeError)
      return unreadable(path, "the file is not UTF-8 text", "save it with the encoding UTF-8");
    throw error;
  }
}

function stray(path: string): Complaint {
  const names = [
    "maker.yaml",
    "cautions.yaml",
    "words.yaml",
    "moved.yaml",
    "sums.yaml",
    "vehicles/traits.yaml",
    "vehicles/plates.yaml",
  ];
  const meant = nearest(path, names);
  return {
    severity: "warning",
    file: path,
    path: [],
    message: "no kind of file lies here, so it is not read",
    hint: meant ? `did you mean ${meant}?` : "move it to vehicles/, components/, parts/, changes/<year>/ or bulletins/",
  };
}

export function locate(complaint: Complaint, source: Source | undefined): Finding {
  const position = source?.locate(complaint) ?? { line: 1, column: 1, length: 1 };
  return { ...complaint, position, shown: source?.line(position.line) ?? "" };
}

export function byGravity(a: Finding, b: Finding): number {
  if (a.severity !== b.severity) return a.severity === "error" ? -1 : 1;
  if (a.file !== b.file) return a.file < b.file ? -1 : 1;
  return a.position.line - b.position.line || a.position.column - b.position.column;
}
