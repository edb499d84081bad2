/** Reads a data folder: every file in it, in the same order on every machine, and everything that is wrong with them. */
import { readdirSync, readFileSync, type Stats, statSync } from "node:fs";
import { join } from "node:path";
import type { Catalog } from "../../engine/records/catalog.ts";
import type { Complaint } from "../../engine/records/complaint.ts";
import { FILE_KINDS, type FileKind, kindOf } from "../../engine/records/file-kinds.ts";
import type { UnreadFile } from "../../engine/records/meant-place.ts";
import { withCauses } from "../../engine/records/missing-files.ts";
import { type ReadCatalog, readCatalog } from "../../engine/records/read-catalog.ts";
import { dataFilesOf } from "./data-files.ts";
import { lookInto } from "./look-into.ts";
import { MAX_BYTES, type Position, readSource, type Source, unreadable } from "./source.ts";

/** A complaint with its place in the text, ready to be shown. */
export interface Finding extends Complaint {
  readonly position: Position;
  /** The line of the file that it is about. */
  readonly shown: string;
  readonly also?: readonly (NonNullable<Complaint["also"]>[number] & { readonly position?: Position })[];
}

export interface ReadFolder extends Pick<ReadCatalog, "checks" | "acceptances" | "kept"> {
  readonly catalog: Catalog | undefined;
  readonly findings: readonly Finding[];
  readonly files: number;
  /** What was read, by path, in the order of the folder. */
  readonly sources: ReadonlyMap<string, Source>;
  /** By path, how the disk marked a file when it was read. A file that was only just written has none: it is read again next time. */
  readonly stamps: ReadonlyMap<string, string>;
}

/** Where the folder was read `before`, only files that are marked otherwise since then are read; what comes back is the same. */
export async function readFolder(
  folder: string,
  before?: Pick<ReadFolder, "sources" | "stamps" | "kept">,
): Promise<ReadFolder> {
  const sources = new Map<string, Source>();
  const stamps = new Map<string, string>();
  const faults: Complaint[] = [];
  const unread: UnreadFile[] = [];
  for (const { path, isLink } of listFiles(folder)) {
    if (isLink) {
      // It may lead anywhere on this machine, and what it leads to would be published.
      const link = unreadable(path, "this is a link, and links are not followed", "put the file itself here");
      sources.set(path, link);
      faults.push(...link.faults);
      continue;
    }
    const kind = kindOf(path);
    if (!kind) {
      unread.push(...lookInto(folder, path));
      continue;
    }
    const fileKind: FileKind = FILE_KINDS[kind];
    const stats = statSync(join(folder, path), { throwIfNoEntry: false });
    if (!stats) continue; // It went while the folder was read.
    const stamp = stampOf(stats);
    const known = stamp === before?.stamps.get(path) ? before?.sources.get(path) : undefined;
    const source = known ?? readOne(join(folder, path), path, stats.size, fileKind.body);
    sources.set(path, source);
    if (known || Date.now() - stats.ctimeMs > SETTLED) stamps.set(path, stamp);
    faults.push(...source.faults);
  }
  const files = dataFilesOf(sources);
  const read = readCatalog(files, before?.kept);
  const findings = [...faults, ...withCauses(read.complaints, files, unread)].map((complaint) =>
    locate(complaint, sources.get(complaint.file), sources),
  );
  findings.sort(byGravity);
  return {
    catalog: isFaultless(findings) ? read.catalog : undefined,
    // While there are errors, what was kept before them.
    kept: read.kept ?? before?.kept,
    checks: read.checks,
    acceptances: read.acceptances,
    findings,
    files: files.length,
    sources,
    stamps,
  };
}

/** Two writes within a few milliseconds may get the same time: a file this young (in milliseconds) may have changed since it was read. */
const SETTLED = 100;

/** Size and times alone are kept by some tools that put another file in the place of one; the number of the file is not. */
function stampOf({ size, mtimeMs, ctimeMs, ino }: Stats): string {
  return [size, mtimeMs, ctimeMs, ino].join(" ");
}

function listFiles(folder: string): { path: string; isLink: boolean }[] {
  return filesIn(folder, "").sort((a, b) => (a.path < b.path ? -1 : 1));
}

/** Asked folder by folder: to ask for all at once, Node looks at every single file once more. What is hidden is no data: editors and git keep copies there. */
function filesIn(folder: string, under: string): { path: string; isLink: boolean }[] {
  return readdirSync(join(folder, under), { withFileTypes: true }).flatMap((entry) => {
    const path = `${under}${entry.name}`;
    if (entry.name.startsWith(".")) return [];
    if (entry.isDirectory()) return filesIn(folder, `${path}/`);
    return entry.isFile() || entry.isSymbolicLink() ? [{ path, isLink: entry.isSymbolicLink() }] : [];
  });
}

/** Without waiting: for thousands of small files that takes half the time. */
function readOne(file: string, path: string, size: number, body: string | undefined): Source {
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
    if (!(error instanceof TypeError)) throw error;
    const text = new TextDecoder().decode(bytes);
    // What cannot be read is a question mark in a diamond then.
    const near = { text, at: Math.max(0, text.indexOf("\uFFFD")) };
    return unreadable(path, "the file is not UTF-8 text", "save it with the encoding UTF-8", near);
  }
}

/** `sources` are the files in which the rest stands that has to do with it. */
export function locate(
  complaint: Complaint,
  source: Source | undefined,
  sources: ReadonlyMap<string, Source> = new Map(),
): Finding {
  const position = source?.locate(complaint) ?? { line: 1, column: 1, length: 1 };
  const also = complaint.also?.map((place) => {
    const there = sources.get(place.file)?.locate(place);
    return there ? { ...place, position: there } : place;
  });
  return { ...complaint, ...(also ? { also } : {}), position, shown: source?.line(position.line) ?? "" };
}

/** Nothing is built from data with an error in it. */
export function isFaultless(findings: readonly Finding[]): boolean {
  return findings.every(({ severity }) => severity !== "error");
}

/** Errors first, and of them those from which others follow. */
export function byGravity(a: Finding, b: Finding): number {
  if (a.severity !== b.severity) return a.severity === "error" ? -1 : 1;
  const isFirst = ({ rule }: Finding): boolean => rule === "missing-file";
  if (isFirst(a) !== isFirst(b)) return isFirst(a) ? -1 : 1;
  if (a.file !== b.file) return a.file < b.file ? -1 : 1;
  return a.position.line - b.position.line || a.position.column - b.position.column;
}
