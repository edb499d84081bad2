/**
 * What rows would do to a data folder, tried out in memory. The rows are brought in and the whole folder is read as `npm run check`
 * reads it; each complaint that was not there before rejects the rows it comes from, and what is left is tried again, until
 * nothing new is complained about. So a row that leans on a rejected one is rejected too, and what is written is without fault.
 */
import { isDeepStrictEqual } from "node:util";
import { checkShape } from "../../engine/records/check-shape.ts";
import { type Complaint, Complaints } from "../../engine/records/complaint.ts";
import { type DataFile, FILE_KINDS, type FileKind } from "../../engine/records/file-kinds.ts";
import { readCatalog } from "../../engine/records/read-catalog.ts";
import { audited, newlyFound } from "../data/audited.ts";
import { MAX_BYTES, readSource } from "../data/source.ts";
import { fileText } from "../write/file-text.ts";
import { updatedText } from "../write/updated-text.ts";
import { withoutDefaults } from "../write/without-defaults.ts";
import { TABLES } from "./all-tables.ts";
import { blame } from "./blame.ts";
import { type Draft, Drafts } from "./drafts.ts";
import { valueAt } from "./entry-index.ts";
import type { ImportRow } from "./import-rows.ts";

export interface Folder {
  readonly files: ReadonlyMap<string, DataFile>;
  /** The text of a file as it lies there. */
  text(path: string): string;
  /** The address of the schema that a new file names. */
  schema(path: string, kind: Draft["kind"]): string | undefined;
}

export interface Plan {
  readonly written: readonly ImportRow[];
  readonly unchanged: readonly ImportRow[];
  readonly rejected: ReadonlyMap<ImportRow, readonly string[]>;
  readonly drafts: readonly Draft[];
  /** What would be written, by path. */
  readonly texts: ReadonlyMap<string, string>;
  /** Warnings that were not there before. */
  readonly warnings: readonly Complaint[];
}

export function planImport(folder: Folder, rows: readonly ImportRow[], overwrite: boolean): Plan {
  const sorted = [...rows].sort((a, b) => TABLES.indexOf(a.table) - TABLES.indexOf(b.table));
  const before = audited(readCatalog([...folder.files.values()]));
  const rejected = new Map<ImportRow, string[]>();
  for (;;) {
    const drafts = new Drafts(folder.files, overwrite);
    const written: ImportRow[] = [];
    const unchanged: ImportRow[] = [];
    for (const row of sorted) {
      if (rejected.has(row)) continue;
      const merged = drafts.merge(row);
      if (merged.did === "rejected") rejected.set(row, [merged.reason]);
      else (merged.did === "written" ? written : unchanged).push(row);
    }
    const changed = changedBy(drafts, new Set(written));
    // A file of the wrong shape defines nothing, and whatever leans on it would be complained about too: shapes come first.
    const misshapen = changed.flatMap(shapeFaults);
    const found = misshapen.length > 0 ? misshapen : complaintsOf(folder, changed);
    const complaints = newlyFound(found, before);
    const errors = complaints.filter(({ severity }) => severity === "error");
    const texts = errors.length > 0 ? new Map<string, string>() : textsOf(folder, changed);
    const tooLong = changed.filter(({ path }) => Buffer.byteLength(texts.get(path) ?? "") > MAX_BYTES);
    if (errors.length === 0 && tooLong.length === 0)
      return { written, unchanged, rejected, drafts: changed, texts, warnings: complaints };
    const add = (row: ImportRow, reason: string): void => {
      const reasons = rejected.get(row) ?? [];
      if (!reasons.includes(reason)) rejected.set(row, [...reasons, reason]);
    };
    for (const error of errors) for (const row of blame(error, changed, written)) add(row, reasonOf(error, changed));
    for (const draft of tooLong)
      for (const row of overflowing(draft, texts.get(draft.path) ?? ""))
        add(row, `${draft.path} would be larger than ${MAX_BYTES} bytes`);
  }
}

function shapeFaults({ path, kind, value }: Draft): readonly Complaint[] {
  const complaints = new Complaints(path);
  checkShape<unknown>(FILE_KINDS[kind].shape, value, complaints);
  return complaints.list;
}

/** With what the field says, where the complaint does not repeat it. */
function reasonOf({ file, path, message, hint }: Complaint, drafts: readonly Draft[]): string {
  const draft = drafts.find((one) => one.path === file);
  const value = valueAt(draft?.value, path);
  const text = typeof value === "string" || typeof value === "number" ? String(value) : "";
  const said = text !== "" && text.length < 100 && !message.includes(text) ? ` (it says '${text}')` : "";
  return `${message}${said}; ${hint}`;
}

/** The rows that say most, until there is room for the others. */
function overflowing({ touched }: Draft, text: string): ImportRow[] {
  const rows = [...new Set([...touched.values()].map(({ row }) => row))].map((row) => ({
    row,
    size: Buffer.byteLength(JSON.stringify(row.fields.map(([, value]) => value))),
  }));
  let excess = Buffer.byteLength(text) - MAX_BYTES;
  const found: ImportRow[] = [];
  for (const { row, size } of rows.sort((a, b) => b.size - a.size)) {
    if (excess <= 0) break;
    found.push(row);
    excess -= size;
  }
  return found;
}

/** Only what some row has written into; the rest was merely looked at. */
function changedBy({ drafts }: Drafts, written: ReadonlySet<ImportRow>): Draft[] {
  return [...drafts.values()].filter(({ touched }) => [...touched.values()].some(({ row }) => written.has(row)));
}

function complaintsOf(folder: Folder, drafts: readonly Draft[]): readonly Complaint[] {
  if (drafts.length === 0) return [];
  const files = new Map(folder.files);
  for (const { path, kind, value } of drafts) files.set(path, { path, kind, value });
  return audited(readCatalog([...files.values()].sort((a, b) => (a.path < b.path ? -1 : 1))));
}

/** The new texts, each read back: what a file would say other than it should must never reach the disk. */
function textsOf(folder: Folder, drafts: readonly Draft[]): Map<string, string> {
  const texts = new Map<string, string>();
  for (const { path, kind, value, before } of drafts) {
    const { shape, body }: FileKind = FILE_KINDS[kind];
    const text = before
      ? updatedText(kind, folder.text(path), value)
      : fileText(kind, value, folder.schema(path, kind));
    const read = readSource(path, text, body);
    const parsed = shape.safeParse(read.value);
    if (
      !parsed.success ||
      !isDeepStrictEqual(withoutDefaults(shape, parsed.data), withoutDefaults(shape, shape.parse(value)))
    )
      throw new Error(
        `${path} would not say what the rows say; nothing was written. Please report this with the sheet.`,
      );
    if (!before || text !== folder.text(path)) texts.set(path, text);
  }
  return texts;
}
