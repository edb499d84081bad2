/**
 * Where a file that is not read was most likely meant to lie. What it holds says more than its name:
 *
 *   it holds a kind of file if every field at its top is one of that kind and none that such a file needs is missing;
 *   its name says a kind if it lies in a folder whose name is a slip away from one that is read (or is one), or beside the folders
 *   under a name a slip away from one that is read;
 *   where both say the same kind, it was meant to lie where its name says;
 *   where only its name does, the same, if it ends as such a file should and, where fields can be read in it, one is of that kind;
 *   where only what it holds does, or they differ, it was meant to lie where such files lie.
 *
 * Letters of another size, and an ending that is not the one of its kind, are slips too; an ending for copies is none.
 */
import { nearest } from "../scope/nearest.ts";
import { type DataFile, FILE_KINDS, type FileKind, type FileKindName, kindOf } from "./file-kinds.ts";

/** A file of the data folder that is of no kind by its path. */
export interface UnreadFile {
  readonly path: string;
  /** Its facts, its text where they cannot be made out, or nothing where it was not looked into. */
  readonly value: unknown;
  /** The text below the facts, where it has such. */
  readonly body?: string | undefined;
}

export interface MeantPlace {
  readonly kind: FileKindName;
  /** With '<year>' where nobody can know it. */
  readonly path: string;
  /** Where a file that says what it says lies, where that is another place. */
  readonly home?: string;
  /** It lies where such files are looked for, or a slip away from there. */
  readonly isNear: boolean;
}

export function meantPlace(file: UnreadFile): MeantPlace | undefined {
  if (isHidden(file.path)) return undefined;
  const held = kindHeld(file);
  const named = placeNamed(file.path);
  if (named && held === named.kind) return { ...named, home: homeOf(held, file) };
  if (named && held === undefined && mayHold(named, file)) return named;
  return held && { kind: held, path: homeOf(held, file), isNear: named?.isNear ?? false };
}

/** It, or a folder that it lies in, is hidden: nobody means such a file to be read. */
export function isHidden(path: string): boolean {
  return /(?:^|\/)\./.test(path);
}

/** The same for a file that is read as what it is not: a field of it is none of that kind, and all are of another. */
export function meantPlaceOfRead({ path, kind, value }: DataFile): MeantPlace | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  const { body }: FileKind = FILE_KINDS[kind];
  const { [body ?? ""]: text, ...facts } = value as Record<string, unknown>;
  const file = { path, value: facts, body: body === undefined ? undefined : String(text) };
  const held = kindHeld(file);
  const isStrange = Object.keys(facts).some((field) => !fieldsOf(kind).all.has(field));
  return held === undefined || !isStrange ? undefined : { kind: held, path: homeOf(held, file), isNear: true };
}

/** The folders that are read, each with the kind of most files in it. */
const FOLDERS: ReadonlyMap<string, FileKindName> = new Map([
  ["vehicles", "vehicles"],
  ["components", "system"],
  ["parts", "parts"],
  ["changes", "change"],
  ["bulletins", "bulletin"],
]);

const KINDS = Object.keys(FILE_KINDS) as FileKindName[];

/** The folder that is read under this name or a slip away from it. */
export function nearestFolder(name: string): string | undefined {
  return FOLDERS.has(name) ? name : nearest(name, [...FOLDERS.keys()]);
}

function placeNamed(path: string): MeantPlace | undefined {
  const steps = path.split("/");
  const stem = stemOf(path);
  const isSlip = isSlipOfEnding(path);
  const [top = ""] = steps;
  if (steps.length === 1) {
    const alone = KINDS.flatMap((kind) => (FILE_KINDS[kind].home.includes("/") ? [] : [stemOf(FILE_KINDS[kind].home)]));
    const meant = nearest(stem, alone);
    return meant === undefined ? undefined : placeAt(`${meant}.yaml`, isSlip);
  }
  const folder = nearestFolder(top);
  if (folder === undefined) return undefined;
  if (folder === "changes") return placeAt([folder, ...steps.slice(1, -1), `${stem}.md`].join("/"), isSlip);
  // Somebody may keep in a folder below what is not to be read.
  return placeAt(`${folder}/${stem}.${folder === "bulletins" ? "md" : "yaml"}`, isSlip && steps.length === 2);
}

/** Editors leave copies behind, 'pump.yaml~' or 'pump.yaml.bak', which are no slips. */
function isSlipOfEnding(path: string): boolean {
  const ending = /(?:\.([^./]*))?$/.exec(path)?.[1]?.toLowerCase() ?? "";
  return (
    ["", "yaml", "yml", "md", "markdown", "txt", "json"].includes(ending) ||
    (/^[a-z]+$/.test(ending) && nearest(ending, ["yaml", "md"]) !== undefined)
  );
}

function placeAt(path: string, isNear: boolean): MeantPlace | undefined {
  const kind = kindOf(path);
  return kind && { kind, path, isNear };
}

function mayHold({ kind }: MeantPlace, { path, value }: UnreadFile): boolean {
  const { body }: FileKind = FILE_KINDS[kind];
  if (!(body === undefined ? /\.ya?ml$/i : /\.(?:md|markdown)$/i).test(path)) return false;
  return (
    typeof value !== "object" || value === null || Object.keys(value).some((field) => fieldsOf(kind).all.has(field))
  );
}

/** The one kind whose fields these are. Where the names of fields leave two, what stands in them decides. */
function kindHeld(file: UnreadFile): FileKindName | undefined {
  const mayBe = KINDS.filter((kind) => {
    const { body }: FileKind = FILE_KINDS[kind];
    return (body !== undefined) === (file.body !== undefined) && holds(kind, factsOf(kind, file));
  });
  const [first, ...others] = mayBe;
  if (others.length === 0) return first;
  const fitting = mayBe.filter((kind) => FILE_KINDS[kind].shape.safeParse(factsOf(kind, file)).success);
  return fitting.length === 1 ? fitting[0] : undefined;
}

function factsOf(kind: FileKindName, { value, body }: Omit<UnreadFile, "path">): unknown {
  const { body: field }: FileKind = FILE_KINDS[kind];
  return field !== undefined && typeof value === "object" && value !== null ? { ...value, [field]: body } : value;
}

function holds(kind: FileKindName, facts: unknown): boolean {
  if (typeof facts !== "object" || facts === null || Array.isArray(facts)) return false;
  const fields = Object.keys(facts);
  const { all, needed } = fieldsOf(kind);
  return (
    fields.length > 0 && fields.every((field) => all.has(field)) && needed.every((field) => fields.includes(field))
  );
}

interface Fields {
  readonly all: ReadonlySet<string>;
  readonly needed: readonly string[];
}
const knownFields = new Map<FileKindName, Fields>();

function fieldsOf(kind: FileKindName): Fields {
  const known = knownFields.get(kind);
  if (known) return known;
  const { shape } = FILE_KINDS[kind].shape;
  const needed = Object.entries(shape).flatMap(([field, of]) => (of.safeParse(undefined).success ? [] : [field]));
  const fields = { all: new Set(Object.keys(shape)), needed };
  knownFields.set(kind, fields);
  return fields;
}

/** Where a file of this kind lies that says what this one says. */
function homeOf(kind: FileKindName, { path, value }: UnreadFile): string {
  const facts = value as Readonly<Record<string, unknown>>;
  return FILE_KINDS[kind].home.replace(/<(?:id|component|line)>/, (field) => {
    const name = field === "<line>" ? stemOf(path) : facts[field.slice(1, -1)];
    return typeof name === "string" && /^[\w.-]+$/.test(name) ? name : field;
  });
}

/** The file's name up to its first dot: 'pump.yaml.txt' is a pump. */
export function stemOf(path: string): string {
  return path.slice(path.lastIndexOf("/") + 1).replace(/\..*$/, "");
}
