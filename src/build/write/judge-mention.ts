/** What a mention of an id in a file is: one that has to change with it, or one that must not. */
import { address } from "../../engine/graph/node.ts";
import { citations } from "../../engine/records/citations.ts";
import { FILE_KINDS, type FileKind, type FileKindName } from "../../engine/records/file-kinds.ts";
import type { FieldAt } from "./fields-in.ts";
import { isUnlikeWords } from "./mentions.ts";
import { CALLED, isAmong, isReference, SCOPES, SEEN } from "./references.ts";
import type { RenamedKind } from "./what-to-rename.ts";
import { takesWords } from "./without-defaults.ts";

export interface JudgedMention {
  /** A reference is checked by the reader; a text is for people; what is left has a reason. */
  readonly as: "reference" | "citation" | "text" | "left";
  readonly why?: string;
}

/** What is renamed. */
export interface Named {
  readonly id: string;
  readonly kind: RenamedKind;
  /** All kinds of which something has this id, in the order in which [[ID]] means them. */
  readonly kinds: readonly RenamedKind[];
  /** The address of the site, as maker.yaml has it. */
  readonly site: string;
}

/**
 * If the field names things of this kind                  -> a reference
 * else if it is a scope, and the part is wanted there      -> a reference
 * else if it stands in [[ ]], or in the address of its page -> a citation
 * else if it stands in another address                      -> left: what that one is called is not ours to say
 * else if it is a text or a comment, and no mere word      -> a text
 * else                                                     -> left
 *
 * Where several kinds have the id, [[ ]] means the first of them, and a text may mean any.
 */
export function judgeMention(
  file: FileKindName,
  text: string,
  at: number,
  field: FieldAt | undefined,
  { id, kind, kinds, site }: Named,
): JudgedMention {
  const left = (why: string): JudgedMention => ({ as: "left", why });
  if (field?.key) return left("the name of a field");
  if (field && isReference(kind, file, field.path))
    return String(field.value).trim() === id ? { as: "reference" } : left("a piece of another value");
  if (field && isAmong(SCOPES, file, field.path))
    return kind === "part" && isWanted(text.slice(field.from, at)) ? { as: "reference" } : left("a value in a scope");
  if (field && isAmong(SEEN, file, field.path)) return left("what is read off the part itself");
  if (field && isAmong(CALLED, file, field.path) && String(field.value).trim() === id)
    return left("what people call it");
  if (field && !isText(file, field)) return left("another sort of name");
  if (isInBrackets(text, at, field, id))
    return CITED.includes(kind) && kinds.find((one) => CITED.includes(one)) === kind
      ? { as: "citation" }
      : left(`a citation, but not of this ${kind}`);
  const page = pageAround(text, at, address(kind, id), site);
  if (page === "its own") return { as: "citation" };
  if (page === "another") return left("in another address");
  if (kinds.length > 1) return left(`perhaps the ${kinds.find((one) => one !== kind)} of the same id`);
  if (kind === "component" || kind === "system" || !isUnlikeWords(id)) return left("perhaps only a word or a figure");
  return { as: "text" };
}

/**
 * The address that the place stands in, up to the page: nothing, steps upwards, or the site itself with either protocol. Whatever
 * else has a protocol or begins with a slash is another one.
 */
function pageAround(text: string, at: number, page: string, site: string): "its own" | "another" | undefined {
  let start = at;
  while (start > 0 && !/[\s<>"'`()[\]|]/.test(text[start - 1] as string)) start--;
  const from = at - page.lastIndexOf("/", page.length - 2) - 1;
  const before = text.slice(start, Math.max(start, from)).replace(/^[^:]*=(?=$|[./])/, "");
  const host = (url: string): string =>
    url
      .replace(/^https?:\/\//i, "")
      .replace(/\/$/, "")
      .toLowerCase();
  const isOurs = /^(?:\.{1,2}(?:\/\.\.)*)?$/.test(before) || (/^https?:/i.test(before) && host(before) === host(site));
  if (from >= start && text.startsWith(page, from) && isOurs) return "its own";
  return /:\/\/|^(?:\/|\.{1,2}\/|www\.)|\/(?:records|parts|components|systems|bulletins)\/$/i.test(
    text.slice(start, at),
  )
    ? "another"
    : undefined;
}

/** What bulletins cite. */
const CITED: readonly RenamedKind[] = ["record", "part", "component"];

/** `before` is the scope up to the id: fitted=A,B */
function isWanted(before: string): boolean {
  return /fitted\s*!?=/.test(before.split(/;|\|\|/).at(-1) as string);
}

function isInBrackets(text: string, at: number, field: FieldAt | undefined, id: string): boolean {
  const start = field?.from ?? at;
  return citations(text.slice(start, field?.to ?? at)).some(({ id: cited, from, to }) => {
    const isBehindWords = text.slice(start + from, at).includes("|");
    return cited === id && start + from < at && at < start + to && !isBehindWords;
  });
}

/** Words for people, in whatever shape the file has them. */
function isText(file: FileKindName, field: FieldAt): boolean {
  const { shape, body }: FileKind = FILE_KINDS[file];
  return field.path[0] === body || takesWords(shape, field.path);
}
