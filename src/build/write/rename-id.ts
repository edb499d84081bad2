/**
 * Gives something another id, everywhere in a data folder at once: what has to be written, where each mention stood, and what
 * was left as it is. Nothing is written here.
 */
import { address } from "../../engine/graph/node.ts";
import type { Catalog, Move } from "../../engine/records/catalog.ts";
import { citations } from "../../engine/records/citations.ts";
import { FILE_KINDS, type FileKind, type FileKindName, kindOf } from "../../engine/records/file-kinds.ts";
import { id as idShape } from "../../engine/records/shapes/common.ts";
import { nearest } from "../../engine/scope/nearest.ts";
import type { Finding, ReadFolder } from "../data/read-folder.ts";
import { type FieldAt, fieldsIn } from "./fields-in.ts";
import { fileText } from "./file-text.ts";
import { isUnlikeWords, mentionsOf } from "./mentions.ts";
import { readWith } from "./read-with.ts";
import { isAmong, isReference, SCOPES, SEEN } from "./references.ts";
import { schemaAddress } from "./schema-address.ts";
import { updatedText } from "./updated-text.ts";
import { takesWords } from "./without-defaults.ts";
import { yamlOnOneLine } from "./yaml-text.ts";

export type RenamedKind = Move["kind"];
export const KINDS_TO_RENAME = ["record", "part", "component", "system", "bulletin"] as const satisfies RenamedKind[];

export interface Renaming {
  readonly old: string;
  readonly next: string;
  readonly kind?: RenamedKind | undefined;
  readonly why: string;
}

export interface Mention {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  /** A reference is checked by the reader; a text is for people; what is left has a reason. */
  readonly as: "reference" | "citation" | "text" | "left";
  readonly why?: string;
  readonly shown: string;
}

export interface Renamed {
  readonly kind: RenamedKind;
  readonly files: ReadonlyMap<string, string>;
  readonly gone: readonly string[];
  readonly mentions: readonly Mention[];
  /** What happened in moved.yaml, a sentence each. */
  readonly moved: readonly string[];
}

export type NotRenamed = { readonly refused: string; readonly findings: readonly Finding[] };

/** `texts` are the files as they lie on the disk, byte order marks included. */
export function renameId(
  folder: string,
  read: ReadFolder,
  texts: ReadonlyMap<string, string>,
  renaming: Renaming,
): Renamed | NotRenamed {
  const { catalog } = read;
  if (!catalog) return refuse("the folder has errors: mend them first", read.findings.filter(isError));
  const kind = kindMeant(catalog, renaming);
  if (typeof kind === "object") return kind;
  const refused = refuses(catalog, renaming, kind);
  if (refused !== undefined) return refuse(refused);

  const files = new Map<string, string>();
  const gone: string[] = [];
  const mentions: Mention[] = [];
  for (const [path, text] of texts) {
    const file = kindOf(path);
    if (file === undefined || file === "moved") continue;
    const { written, found } = inOneFile(path, file, text, renaming, kind);
    mentions.push(...found);
    const place = placeOf(path, renaming, kind);
    if (place !== path) gone.push(path);
    if (place !== path || written !== text) files.set(place, written);
  }
  const moved = movedText(folder, catalog, texts.get("moved.yaml"), { ...renaming, kind });
  files.set("moved.yaml", moved.text);
  const after = readWith(read, files, gone);
  const worse = after.findings.filter((finding) => isError(finding));
  if (worse.length > 0) return refuse("the folder would not hold afterwards, so nothing was changed", worse);
  return { kind, files, gone, mentions, moved: moved.said };
}

function refuse(refused: string, findings: readonly Finding[] = []): NotRenamed {
  return { refused, findings };
}

function isError(finding: Finding): boolean {
  return finding.severity === "error";
}

function knownIn(catalog: Catalog, kind: RenamedKind): { has(id: string): boolean; keys(): Iterable<string> } {
  if (kind === "system") return new Map(catalog.systems.map((system) => [system.id, system]));
  return { record: catalog.records, part: catalog.parts, component: catalog.components, bulletin: catalog.bulletins }[
    kind
  ];
}

function kindMeant(catalog: Catalog, { old, kind }: Renaming): RenamedKind | NotRenamed {
  const kinds = KINDS_TO_RENAME.filter((one) => (kind ?? one) === one && knownIn(catalog, one).has(old));
  if (kinds.length === 1) return kinds[0] as RenamedKind;
  if (kinds.length > 1)
    return refuse(
      `'${old}' is the id of a ${kinds.join(" and of a ")}: say which with --kind ${kinds.join(" or --kind ")}`,
    );
  const what = kind ?? "record, part, component, system or bulletin";
  const move = catalog.moved.find((one) => one.from === old && (kind ?? one.kind) === one.kind);
  if (move) return refuse(`'${old}' is no longer used: ${move.to === undefined ? move.why : `it is now '${move.to}'`}`);
  const among = KINDS_TO_RENAME.filter((one) => (kind ?? one) === one).flatMap((one) => [
    ...knownIn(catalog, one).keys(),
  ]);
  const meant = nearest(old, among);
  return refuse(`no ${what} is called '${old}'${meant ? `: did you mean '${meant}'?` : ""}`);
}

/** Bulletins cite records, parts and components alike, so among these an id is used once. */
function refuses(catalog: Catalog, { old, next }: Renaming, kind: RenamedKind): string | undefined {
  const shape = idShape.safeParse(next);
  if (!shape.success) return `'${next}' cannot be an id: ${shape.error.issues[0]?.message}`;
  if (next === old) return `it is called '${next}' already`;
  const cited: RenamedKind[] = ["record", "part", "component"];
  for (const other of cited.includes(kind) ? cited : [kind])
    for (const id of knownIn(catalog, other).keys()) {
      if (id === next) return `a ${other} is called '${next}' already`;
      if (id.toLowerCase() === next.toLowerCase())
        return id === old
          ? `'${next}' differs from '${old}' in capitals only, and not every web server tells such addresses apart`
          : `a ${other} is called '${id}' already, and '${next}' differs from it in capitals only`;
    }
  const earlier = catalog.moved.find((move) => move.kind === kind && move.from === next);
  if (earlier && endOf(catalog, earlier) !== old)
    return `'${next}' was the id of another ${kind} (${earlier.why}) and pages out there may still name it: take an id that was never used`;
  return undefined;
}

function endOf(catalog: Catalog, move: Move): string | undefined {
  let at = move;
  for (;;) {
    const next = catalog.moved.find((other) => other.kind === at.kind && other.from === at.to);
    if (!next) return at.to;
    at = next;
  }
}

function inOneFile(
  path: string,
  file: FileKindName,
  text: string,
  { old, next }: Renaming,
  kind: RenamedKind,
): { written: string; found: Mention[] } {
  const places = mentionsOf(text, old);
  if (places.length === 0) return { written: text, found: [] };
  const fieldAt = fieldsIn(file, text);
  const found: Mention[] = [];
  let written = "";
  let last = 0;
  for (const at of places) {
    const field = fieldAt(at);
    const judged = judge(file, text, at, field, old, kind);
    found.push({ ...judged, file: path, ...placeIn(text, at) });
    if (judged.as === "left") continue;
    // Alone in its field it is a value: quotes may have become necessary, as round a number.
    const alone = field?.plain && field.to - field.from === old.length;
    written += text.slice(last, at) + (alone ? yamlOnOneLine(next) : next);
    last = at + old.length;
  }
  return { written: written + text.slice(last), found };
}

/**
 * If the field names things of this kind                  -> a reference
 * else if it is a scope, and the part is wanted there      -> a reference
 * else if it stands in [[ ]] or in the address of its page -> a citation (of records, parts and components; each kind has its own pages)
 * else if it is a text or a comment, and no mere word      -> a text
 * else                                                     -> left
 */
function judge(
  file: FileKindName,
  text: string,
  at: number,
  field: FieldAt | undefined,
  old: string,
  kind: RenamedKind,
): Pick<Mention, "as" | "why"> {
  const left = (why: string): Pick<Mention, "as" | "why"> => ({ as: "left", why });
  if (field?.key) return left("the name of a field");
  if (field && isReference(kind, file, field.path))
    return String(field.value).trim() === old ? { as: "reference" } : left("a piece of another value");
  if (field && isAmong(SCOPES, file, field.path)) {
    const clause =
      text
        .slice(field.from, at)
        .split(/;|\|\|/)
        .at(-1) ?? "";
    return kind === "part" && /fitted\s*!?=/.test(clause) ? { as: "reference" } : left("a value in a scope");
  }
  if (field && isAmong(SEEN, file, field.path)) return left("what is read off the part itself");
  if (field && !isText(file, field)) return left("another sort of name");
  const start = field?.from ?? at;
  const inBrackets = citations(text.slice(start, field?.to ?? at)).some(
    (it) =>
      it.id === old && start + it.from < at && at < start + it.to && !text.slice(start + it.from, at).includes("|"),
  );
  const page = address(kind, old);
  if (
    (inBrackets && kind !== "system" && kind !== "bulletin") ||
    text.startsWith(page, at + 1 + old.length - page.length)
  )
    return { as: "citation" };
  if (kind === "component" || kind === "system" || !isUnlikeWords(old)) return left("perhaps only a word or a figure");
  return { as: "text" };
}

/** Words for people, in whatever shape the file has them. */
function isText(file: FileKindName, field: FieldAt): boolean {
  const { shape, body }: FileKind = FILE_KINDS[file];
  return field.path[0] === body || takesWords(shape, field.path);
}

function placeIn(text: string, at: number): { line: number; column: number; shown: string } {
  const start = text.lastIndexOf("\n", at - 1) + 1;
  const end = text.indexOf("\n", at);
  const shown = text.slice(start, end < 0 ? text.length : end).replace(/\r$/, "");
  const mark = start === 0 && text.startsWith("\uFEFF") ? 1 : 0;
  return { line: text.slice(0, start).split("\n").length, column: at - start + 1 - mark, shown: shown.slice(mark) };
}

/** A file that is called after what it holds is called after its new id. */
function placeOf(path: string, { old, next }: Renaming, kind: RenamedKind): string {
  const folders: Record<RenamedKind, RegExp> = {
    record: /^changes\/(?:[^/]+\/)*$/,
    part: /^$/,
    component: /^parts\/$/,
    system: /^components\/$/,
    bulletin: /^bulletins\/$/,
  };
  const cut = path.lastIndexOf("/") + 1;
  const [name, end] = [path.slice(cut).replace(/\.[a-z]+$/, ""), path.slice(path.lastIndexOf("."))];
  return cut > 0 && name === old && folders[kind].test(path.slice(0, cut))
    ? `${path.slice(0, cut)}${next}${end}`
    : path;
}

/** The old id leads on, and so does every older one, in one step. Back to an earlier id: that one is used again, so it leads nowhere. */
function movedText(
  folder: string,
  catalog: Catalog,
  text: string | undefined,
  { old, next, kind, why }: Renaming & { kind: RenamedKind },
): { text: string; said: string[] } {
  const said: string[] = [];
  const kept = catalog.moved.flatMap((move) => {
    if (move.kind !== kind) return [move];
    if (move.from === next) {
      said.push(`'${next}' is used again, so it no longer leads to '${move.to}'`);
      return [];
    }
    if (move.to !== old) return [move];
    said.push(`'${move.from}' leads to '${next}' now`);
    return [{ ...move, to: next }];
  });
  said.push(`'${old}' leads to '${next}'`);
  const value = { moved: [...kept, { kind, from: old, to: next, why }] };
  const schema = schemaAddress(folder, "moved.yaml", "moved", catalog.maker.site);
  return { text: text === undefined ? fileText("moved", value, schema) : updatedText("moved", text, value), said };
}
