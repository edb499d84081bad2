/**
 * Gives something another id, everywhere in a data folder at once: what has to be written, where each mention stood, and what
 * was left as it is. Nothing is written here.
 */
import { type FileKindName, kindOf } from "../../engine/records/file-kinds.ts";
import { audited } from "../data/audited.ts";
import type { Finding, ReadFolder } from "../data/read-folder.ts";
import { MAX_BYTES } from "../data/source.ts";
import { fieldsIn } from "./fields-in.ts";
import { fileText } from "./file-text.ts";
import { type JudgedMention, judgeMention, type Named } from "./judge-mention.ts";
import { lostComments } from "./lost-comments.ts";
import { mentionsOf, nearMentionsOf } from "./mentions.ts";
import { readWith } from "./read-with.ts";
import { renamedMoves } from "./renamed-moves.ts";
import { schemaAddress } from "./schema-address.ts";
import { updatedText } from "./updated-text.ts";
import { kindsCalled, type RenamedKind, type Renaming, whatToRename } from "./what-to-rename.ts";
import { yamlOnOneLine } from "./yaml-text.ts";

export interface Mention extends JudgedMention {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  /** The line as it was. */
  readonly shown: string;
}

export interface Renamed {
  readonly kind: RenamedKind;
  readonly files: ReadonlyMap<string, string>;
  /** Files that get another name: the old one and the new one. */
  readonly gone: ReadonlyMap<string, string>;
  readonly mentions: readonly Mention[];
  /** What happens in moved.yaml, a sentence each. */
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
  const meant = whatToRename(catalog, renaming);
  if ("refused" in meant) return refuse(meant.refused);
  const { kind } = meant;
  const named: Named = {
    id: renaming.old,
    kind,
    kinds: kindsCalled(catalog, renaming.old),
    site: catalog.maker.site,
  };

  const files = new Map<string, string>();
  const gone = new Map<string, string>();
  const mentions: Mention[] = [];
  for (const [path, text] of texts) {
    const file = kindOf(path);
    if (file === undefined || file === "moved") continue;
    const { written, found } = inOneFile(path, file, text, named, renaming.next);
    mentions.push(...found);
    const place = placeOf(path, renaming, kind);
    if (place !== path) gone.set(path, place);
    if (place !== path || written !== text) files.set(place, written);
  }
  const { moved, said } = renamedMoves(catalog.moved, { ...renaming, kind });
  const before = texts.get("moved.yaml");
  const schema = schemaAddress(folder, "moved.yaml", "moved", catalog.maker.site);
  const after = before === undefined ? fileText("moved", { moved }, schema) : updatedText("moved", before, { moved });
  files.set("moved.yaml", after);
  const lost = lostComments("moved", before ?? "", after).map((comment) => `the comment '${comment}' goes`);
  const large = [...files].find(([, text]) => Buffer.byteLength(text) > MAX_BYTES);
  if (large) return refuse(`${large[0]} would be larger than ${MAX_BYTES} bytes, and would not be read any more`);
  const found = readWith(read, files, [...gone.keys()]).findings;
  const now = audited({ ...read, complaints: read.findings });
  // Ids stand in what is said, so only the number tells whether something was found that was not there before.
  const worse = found.filter(isError).length > now.filter(isError).length ? found.filter(isError) : [];
  if (worse.length > 0) return refuse("the folder would not hold afterwards, so nothing was changed", worse);
  return { kind, files, gone, mentions, moved: [...said, ...lost] };
}

function refuse(refused: string, findings: readonly Finding[] = []): NotRenamed {
  return { refused, findings };
}

function isError(finding: Pick<Finding, "severity">): boolean {
  return finding.severity === "error";
}

function inOneFile(
  path: string,
  file: FileKindName,
  text: string,
  named: Named,
  next: string,
): { written: string; found: Mention[] } {
  const places = mentionsOf(text, named.id);
  const near = nearMentionsOf(text, named.id).map(
    ({ at, why }): Mention => ({ as: "left", why, file: path, ...placeIn(text, at) }),
  );
  if (places.length === 0) return { written: text, found: near };
  const fieldAt = fieldsIn(file, text);
  const found: Mention[] = [];
  let written = "";
  let last = 0;
  for (const at of places) {
    const field = fieldAt(at);
    const judged = judgeMention(file, text, at, field, named);
    found.push({ ...judged, file: path, ...placeIn(text, at) });
    if (judged.as === "left") continue;
    // Alone in its field it is a value: quotes may have become necessary, as round a number.
    const alone = field?.plain && field.to - field.from === named.id.length;
    written += text.slice(last, at) + (alone ? yamlOnOneLine(next) : next);
    last = at + named.id.length;
  }
  found.push(...near);
  return { written: written + text.slice(last), found: found.sort((a, b) => a.line - b.line || a.column - b.column) };
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
