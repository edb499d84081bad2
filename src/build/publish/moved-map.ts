/** Moves as a web server reads them: lines of a map of nginx, from an old address to the new one. */
import { address } from "../../engine/graph/node.ts";
import type { Site } from "../../site/site.ts";

/** Where it lies in the site. */
export const MOVED_MAP = "data/moved.map";

/**
 * Each line names an old address, with or without its last slash, and where the chain of moves ends. An id that was withdrawn leads
 * nowhere: its page stays and says so. As a regular expression, because nginx compares plain texts without regard to capitals.
 *
 *     "~^/records/AB-1/?$" "/records/AB-2/";
 */
export function movedMap(site: Site): string {
  const base = new URL(site.catalog.maker.site).pathname.replace(/\/$/, "");
  return site.moved
    .map((move) => ({ from: address(move.kind, move.from), end: site.whereItLeads(move), kind: move.kind }))
    .filter(({ end }) => end !== undefined)
    .map(({ from, end, kind }) => {
      // What is compared is decoded, what is sent is encoded.
      const asked = escaped(decodeURI(base) + from.slice(0, -1));
      return `"~^${asked}/?$" "${base}${address(kind, end as string)}";\n`;
    })
    .sort()
    .join("");
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\"]/g, "\\$&");
}
