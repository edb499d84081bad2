/** Everything in a document that cites the records: [[ID]], links to their site, and ids in the running text. */
import type { Catalog, Move } from "../../engine/records/catalog.ts";
import { citations } from "../../engine/records/citations.ts";
import { slipsBetween } from "../../engine/scope/nearest.ts";
import { isUnlikeWords } from "../write/mentions.ts";
import { idShapes, plainDashes } from "./id-shapes.ts";
import { blank, seenText } from "./readable-text.ts";

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
  /** It only looks like an id of the data: nothing here is called so, or nearly so, and no id has its letters. */
  readonly strange?: boolean;
}

const ANY = ["record", "part", "component", "bulletin"] as const;
const PAGES: Readonly<Record<string, Move["kind"]>> = {
  records: "record",
  parts: "part",
  components: "component",
  systems: "system",
  bulletins: "bulletin",
};
/** A bar ends an address: in a table the next cell begins there. No protocol has a longer name, and a long word takes no longer. */
const URL = /\b[a-z][a-z0-9+.-]{0,30}:\/\/[^\s<>"'`)\]|]+/gi;
/** A word with a digit in it, which may be an id that was mistyped. */
const CODE =
  /(?<![\p{L}\p{N}_.-])(?=[\p{L}_.-]*\p{N})[\p{L}\p{N}](?:[\p{L}\p{N}_]|[.\u2010\u2011-](?=[\p{L}\p{N}]))*/gu;

/**
 * Each place is read once: what stands in [[ ]] or in a link is no running text, and addresses of other sites are not read at all.
 * In running text only ids that no word or figure looks like are sought, and of parts none: any list of parts is full of them.
 */
export function findCited(written: string, catalog: Catalog): Cited[] {
  const { text, written: placeOf } = seenText(written);
  const found: Cited[] = [];
  for (const { id, from, to } of citations(text)) {
    if (!isMeant(id, catalog)) continue;
    const idFrom = text.indexOf(id, from + 2);
    found.push({ as: "citation", id: plainDashes(id), kinds: ANY, from, to, idFrom, idTo: idFrom + id.length });
  }
  let left = without(text, found);
  const links = inLinks(left, catalog);
  left = without(left.replaceAll(questionOf(catalog.maker.site), blank), links).replaceAll(URL, blank);
  const all = [...found, ...links, ...inText(left, catalog)].sort((a, b) => a.from - b.from);
  return all.map((one) => {
    const [from, to] = placeOf(one.from, one.to);
    const [idFrom, idTo] = placeOf(one.idFrom, one.idTo);
    return { ...one, from, to, idFrom, idTo };
  });
}

/** Pages of things, and pages with a question about a part or a component. */
function inLinks(text: string, { maker }: Catalog): Cited[] {
  const links: Cited[] = [];
  for (const match of text.matchAll(pageOf(maker.site))) {
    const [whole, before = "", folder = "", typed = ""] = match;
    const id = typed.replace(/\.json$/, "").replace(/\.+$/, "");
    const idFrom = match.index + before.length + folder.length + 1;
    // The last slash belongs to the address of a page.
    const end = whole.length - (typed.length - id.length);
    const slash = end === whole.length && text[match.index + end] === "/" ? 1 : 0;
    links.push({
      as: "link",
      id: decoded(id),
      kinds: [PAGES[folder.toLowerCase()] as Move["kind"]],
      from: match.index,
      to: match.index + end + slash,
      idFrom,
      idTo: idFrom + id.length,
    });
  }
  const rest = without(text, links);
  for (const { 0: address, index } of rest.matchAll(questionOf(maker.site)))
    for (const { 0: field, 1: name = "", 2: typed = "", index: at } of address.matchAll(ASKED)) {
      const id = typed.replace(/\.+$/, "");
      const idFrom = index + at + field.length - typed.length;
      const idTo = idFrom + id.length;
      const kinds = [name as Move["kind"]];
      links.push({ as: "link", id: decoded(id), kinds, from: index + at + 1, to: idTo, idFrom, idTo });
    }
  return links.sort((a, b) => a.from - b.from);
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

/** A sign of an id as an address may hold it: a letter, a figure and the three signs also as %43, and a hyphen of another kind. */
const LETTER = "(?:[A-Za-z0-9]|%3[0-9]|%[46][1-9A-Fa-f]|%[57][0-9Aa])";
const SIGN = `(?:${LETTER}|[_\\u2010\\u2011-]|\\.(?!\\.)|%2[DdEe]|%5[Ff]|%E2%80%9[01])`;
const ID = `${LETTER}${SIGN}*`;
const ASKED = new RegExp(`[?&](part|component)=(${ID})`, "g");

/** The address of a page, or of its document for programs; with either protocol, since many sites answer to both. */
function pageOf(site: string): RegExp {
  return new RegExp(`(${addressOf(site)}(?:data/)?)(${Object.keys(PAGES).join("|")})/(${ID})`, "gi");
}

/** The address of a page with a question behind it: /fit/?fact=line:Y&part=ID. */
function questionOf(site: string): RegExp {
  return new RegExp(`${addressOf(site)}[a-z-]+/?\\?[^\\s<>"'\`)\\]|#]+`, "gi");
}

function addressOf(site: string): string {
  const rest = site.replace(/^https?:\/\//i, "").replace(/\/?$/, "/");
  return `https?://${rest.replaceAll(/[.*+?^${}()|[\]\\]/g, "\\$&")}`;
}

function decoded(id: string): string {
  return plainDashes(decodeURIComponent(id));
}

function inText(text: string, catalog: Catalog): Cited[] {
  const moved = (kind: Move["kind"]): string[] =>
    catalog.moved.flatMap((move) => (move.kind === kind ? [move.from] : []));
  const records = [...catalog.records.keys(), ...moved("record")];
  const bulletins = new Set([...catalog.bulletins.keys(), ...moved("bulletin")].filter(isUnlikeWords));
  const others = new Set([...bulletins, ...catalog.parts.keys(), ...moved("part"), ...catalog.components.keys()]);
  const places = new Map<number, Cited>();
  const add = (typed: string, from: number, kind: Move["kind"], strange = false): void => {
    const [id, to] = [plainDashes(typed), from + typed.length];
    const place = { as: "text", id, kinds: [kind], from, to, idFrom: from, idTo: to } as const;
    places.set(from, strange ? { ...place, strange } : place);
  };
  const known = new Set(records);
  const letters = new Set([...records, ...bulletins].map(lettersOf));
  const near = nearTo(records.filter(isUnlikeWords));
  const shapes = idShapes(records);
  for (const { 0: typed, index } of shapes ? text.matchAll(shapes) : []) {
    const id = plainDashes(typed);
    if (known.has(id)) add(typed, index, "record");
    else if (!others.has(id)) add(typed, index, "record", !letters.has(lettersOf(id)) && !near(id));
  }
  for (const { 0: word, index } of text.matchAll(CODE)) {
    if (places.has(index)) continue;
    const id = plainDashes(word);
    if (bulletins.has(id)) add(word, index, "bulletin");
    else if (!others.has(id) && near(id)) add(word, index, "record");
  }
  return [...places.values()];
}

/**
 * Makers number in the same manner, so a code with the shape of an id may be somebody else's. Whoever slips while citing a record most
 * often slips in a figure: a code with letters that ids here have is taken for one of them, and one with other letters is not.
 */
function lettersOf(id: string): string {
  return id.replaceAll(/[^\p{L}]/gu, "");
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
