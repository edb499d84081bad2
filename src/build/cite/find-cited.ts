/** Everything in a document that cites the records: [[ID]], links to their site, and ids in the running text. */
import type { Catalog, Move } from "../../engine/records/catalog.ts";
import { citations } from "../../engine/records/citations.ts";
import { slipsBetween } from "../../engine/scope/nearest.ts";
import { isUnlikeWords } from "../write/mentions.ts";
import { idShapes, plainDashes } from "./id-shapes.ts";
import { blank } from "./readable-text.ts";

export interface Cited {
  readonly as: "citation" | "link" | "text";
  readonly id: string;
  /** Among what the id is looked for. */
  readonly kinds: readonly Move["kind"][];
  /** The whole of it, and the id in it. */
  readonly from: number;
  readonly to: number;
  readonly idFrom: number;
  readonly idTo: number;
}

const ANY = ["record", "part", "component", "bulletin"] as const;
const PAGES: Readonly<Record<string, Move["kind"]>> = {
  records: "record",
  parts: "part",
  components: "component",
  systems: "system",
  bulletins: "bulletin",
};
const URL = /\b[a-z][a-z0-9+.-]*:\/\/[^\s<>"'`)\]]+/gi;
/** A word with a digit in it, which may be an id that was mistyped. */
const CODE = /(?<![\p{L}\p{N}_.-])(?=[\p{L}_.-]*\p{N})[\p{L}\p{N}](?:[\p{L}\p{N}_]|[.-](?=[\p{L}\p{N}]))*/gu;

/**
 * Each place is read once: what stands in [[ ]] or in a link is no running text, and addresses of other sites are not read at all.
 * In running text only ids that no word or figure looks like are sought, and of parts none: any list of parts is full of them.
 */
export function findCited(text: string, catalog: Catalog): Cited[] {
  const found: Cited[] = [];
  for (const { id, from, to } of citations(text)) {
    if (!isMeant(id, catalog)) continue;
    const idFrom = text.indexOf(id, from + 2);
    found.push({ as: "citation", id: plainDashes(id), kinds: ANY, from, to, idFrom, idTo: idFrom + id.length });
  }
  let left = without(text, found);
  const links: Cited[] = [];
  for (const match of left.matchAll(pageOf(catalog.maker.site))) {
    const [whole, before = "", folder = "", typed = ""] = match;
    const id = typed.replace(/\.json$/, "").replace(/\.+$/, "");
    const idFrom = match.index + before.length + folder.length + 1;
    // The last slash belongs to the address of a page.
    const end = whole.length - (typed.length - id.length);
    const slash = end === whole.length && left[match.index + end] === "/" ? 1 : 0;
    const kinds = [PAGES[folder] as Move["kind"]];
    links.push({
      as: "link",
      id,
      kinds,
      from: match.index,
      to: match.index + end + slash,
      idFrom,
      idTo: idFrom + id.length,
    });
  }
  left = without(left, links).replaceAll(URL, blank);
  return [...found, ...links, ...inText(left, catalog)].sort((a, b) => a.from - b.from);
}

/** The text with these places blanked out; they stand in their order. */
function without(text: string, places: readonly Cited[]): string {
  const pieces: string[] = [];
  let last = 0;
  for (const { from, to } of places) {
    pieces.push(text.slice(last, from), blank(text.slice(from, to)));
    last = to;
  }
  return [...pieces, text.slice(last)].join("");
}

/** Double brackets have other uses elsewhere: [[ -f file ]]. An id has no blanks, unless one was slipped into it. */
function isMeant(id: string, { records, parts }: Catalog): boolean {
  if (/^[\p{L}\p{N}][\p{L}\p{N}_.\u2010-\u2013\u2212-]*$/u.test(id)) return true;
  const bare = id.replaceAll(/[\s-]/g, "");
  return bare !== "" && [...records.keys(), ...parts.keys()].some((known) => known.replaceAll("-", "") === bare);
}

/** The address of a page, or of its document for programs; with either protocol, since many sites answer to both. */
function pageOf(site: string): RegExp {
  const rest = site.replace(/^https?:\/\//i, "").replace(/\/?$/, "/");
  const escaped = rest.replaceAll(/[.*+?^${}()|[\]\\]/g, "\\$&");
  return new RegExp(
    `(https?://${escaped}(?:data/)?)(${Object.keys(PAGES).join("|")})/([A-Za-z0-9](?:[A-Za-z0-9_-]|\\.(?!\\.))*)`,
    "gi",
  );
}

function inText(text: string, catalog: Catalog): Cited[] {
  const moved = (kind: Move["kind"]): string[] =>
    catalog.moved.flatMap((move) => (move.kind === kind ? [move.from] : []));
  const records = [...catalog.records.keys(), ...moved("record")];
  const bulletins = new Set([...catalog.bulletins.keys(), ...moved("bulletin")].filter(isUnlikeWords));
  const others = new Set([...bulletins, ...catalog.parts.keys(), ...moved("part"), ...catalog.components.keys()]);
  const places = new Map<number, Cited>();
  const add = (typed: string, from: number, kind: Move["kind"]): void => {
    const to = from + typed.length;
    places.set(from, { as: "text", id: plainDashes(typed), kinds: [kind], from, to, idFrom: from, idTo: to });
  };
  const known = new Set(records);
  const shapes = idShapes(records);
  for (const match of shapes ? text.matchAll(shapes) : [])
    if (known.has(plainDashes(match[0])) || !others.has(plainDashes(match[0]))) add(match[0], match.index, "record");
  const near = nearTo(records.filter(isUnlikeWords));
  for (const { 0: word, index } of text.matchAll(CODE)) {
    if (places.has(index)) continue;
    if (bulletins.has(word)) add(word, index, "bulletin");
    else if (!others.has(word) && near(word)) add(word, index, "record");
  }
  return [...places.values()];
}

/** Whether a word is one of these ids but for capitals and dashes, or one slip away from one; each word is judged once. */
function nearTo(ids: readonly string[]): (word: string) => boolean {
  const bare = (id: string): string => id.toUpperCase().replaceAll("-", "");
  const all = new Set(ids.map(bare));
  const judged = new Map<string, boolean>();
  // One slip leaves the first sign or the last as it is.
  const slipped = (word: string): boolean =>
    ids.some(
      (id) =>
        Math.abs(id.length - word.length) < 2 &&
        (id[0] === word[0] || id.at(-1) === word.at(-1)) &&
        slipsBetween(word, id) === 1,
    );
  return (word) => {
    const is = judged.get(word) ?? (isUnlikeWords(word) && (all.has(bare(word)) || slipped(word)));
    judged.set(word, is);
    return is;
  };
}
