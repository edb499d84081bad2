/**
 * Files that do not lie where they are read.
 *
 * A file that is read as what it is not (`meantPlaceOfRead`) is misplaced, if there is something wrong with its shape.
 *
 * A file that is not read is misplaced, if it is known where it was meant to lie (`meantPlace`), no file that says the same lies
 * there, and
 *   either it lies near there, which is a slip of the hand,
 *   or something is missing that it would bring:
 *     a name in it is unknown elsewhere,
 *     of its kind no file is read, and a name is unknown that only such files define,
 *     it is of a kind of which there is one file, under nearly its name, and there is none,
 *     it is about a model line of the traits that no other file is about.
 *
 * Any other file that is not read may lie there on purpose: a draft, a copy, notes.
 */
import { nearest } from "../scope/nearest.ts";
import { echoOf, isOnlyOf } from "./broken-files.ts";
import type { Complaint } from "./complaint.ts";
import { type DataFile, FILE_KINDS, type FileKindName } from "./file-kinds.ts";
import { type MeantPlace, meantPlace, meantPlaceOfRead, stemOf, type UnreadFile } from "./meant-place.ts";
import { fieldOf, listOf } from "./unshaped.ts";

export interface Misplaced {
  readonly path: string;
  readonly value: unknown;
  readonly meant: MeantPlace;
  /** The kind that it is read as. */
  readonly readAs?: FileKindName;
}

/** First those that are read as what they are not. */
export function misplacedFiles(
  complaints: readonly Complaint[],
  files: readonly DataFile[],
  unread: readonly UnreadFile[],
): Misplaced[] {
  const asOthers = misread(files, complaints);
  const isMisread = new Set(asOthers.map(({ path }) => path));
  const right = files.filter(({ path }) => !isMisread.has(path));
  return [...asOthers, ...missed(unread, right, complaints)];
}

function misread(files: readonly DataFile[], complaints: readonly Complaint[]): Misplaced[] {
  const misshapen = new Set(complaints.flatMap(({ rule, file }) => (rule === "shape" ? [file] : [])));
  return files.flatMap((file): Misplaced[] => {
    const meant = misshapen.has(file.path) ? meantPlaceOfRead(file) : undefined;
    return meant ? [{ path: file.path, value: file.value, meant, readAs: file.kind }] : [];
  });
}

function missed(
  unread: readonly UnreadFile[],
  files: readonly DataFile[],
  complaints: readonly Complaint[],
): Misplaced[] {
  // Records lie in folders of any name.
  const placeOf = (kind: FileKindName, path: string): string => (kind === "change" ? `change ${stemOf(path)}` : path);
  const taken = new Set(files.map(({ kind, path }) => placeOf(kind, path)));
  const lines = new Set(files.flatMap(({ kind, value }) => (kind === "vehicles" ? [fieldOf(value, "line")] : [])));
  const isTaken = ({ meant: { kind, path, home = path }, value }: Misplaced): boolean =>
    [path, home].some((place) => taken.has(placeOf(kind, place))) ||
    (kind === "vehicles" && fieldOf(value, "line") !== undefined && lines.has(fieldOf(value, "line")));
  const unknown = complaints.filter((one) => one.unknown);
  const kinds = new Set(files.map(({ kind }) => kind));
  const isMissing = ({ path, meant: { kind, path: place }, value }: Misplaced): boolean =>
    unknown.some(echoOf([{ path: place, kind, value }])) ||
    (!kinds.has(kind) && unknown.some((one) => isOnlyOf(one, kind))) ||
    (isAlone(kind) && nearest(stemOf(path), [stemOf(place)]) !== undefined) ||
    (kind === "vehicles" && linesOf(files).includes(fieldOf(value, "line")));
  return unread.flatMap((file): Misplaced[] => {
    const meant = meantPlace(file);
    if (!meant) return [];
    const misplaced = { path: file.path, value: file.value, meant };
    return !isTaken(misplaced) && (meant.isNear || isMissing(misplaced)) ? [misplaced] : [];
  });
}

/** Of this kind there is one file. */
function isAlone(kind: FileKindName): boolean {
  return !FILE_KINDS[kind].home.includes("<");
}

/** The model lines that the traits list. */
function linesOf(files: readonly DataFile[]): readonly unknown[] {
  return files
    .filter(({ kind }) => kind === "traits")
    .flatMap(({ value }) => listOf(value, "traits"))
    .filter((trait) => fieldOf(trait, "role") === "line")
    .flatMap((trait) => listOf(trait, "values").map((line) => fieldOf(line, "id")));
}
