/** What a new build would do to a published site's addresses: an address that was given out must never lead nowhere. */
import { stringify } from "yaml";
import type { Catalog } from "../../engine/records/catalog.ts";
import type { Complaint } from "../../engine/records/complaint.ts";
import { nearest } from "../../engine/scope/nearest.ts";
import { addressesOf } from "./addresses-of.ts";
import type { Manifest, PublishedPage } from "./manifest-shape.ts";

export interface Lost {
  readonly address: string;
  /** What stood there: "record AB-1", "change of record AB-1 to AB-2". */
  readonly was: string;
  /** How to mend it; where that can be done by a move, with the ready line for moved.yaml. */
  readonly mend: string;
}

export interface Comparison {
  /** Pages that would be gone, and no move leads on from them. */
  readonly lost: readonly Lost[];
  /** Places on pages that stay, which links may name: the page opens, but at its top. */
  readonly lostAnchors: readonly Lost[];
  /** Pages that from now on only lead on, or say that nothing follows. */
  readonly moved: readonly { readonly address: string; readonly to: string | undefined }[];
  /** Addresses that were not there. */
  readonly fresh: readonly string[];
}

/**
 * A published address stands if the new site has a page there: the same, or one that says where it leads now.
 *
 * If it has none, the address would die:
 *   - of a record, part, component, system or bulletin: a move in moved.yaml keeps it, to the new id or, without 'to', saying why;
 *   - of a move: the line that was taken out of moved.yaml has to come back;
 *   - of a line or a year: these have no moves; cars of it must stay on record.
 */
export function lostAddresses(catalog: Catalog, published: Manifest): Comparison {
  const pages = addressesOf(catalog);
  const now = new Map(pages.map((page) => [page.address, page]));
  const before = new Map(published.pages.map((page) => [page.address, page]));
  const fresh = pages.filter(({ address }) => !before.has(address));
  // Where moved.yaml says already what a new id was before, it is not offered to another one.
  const ends = new Set(catalog.moved.map(({ kind, to }) => `${kind} ${to}`));
  const unexplained = fresh.filter(({ kind, id }) => !ends.has(`${kind} ${id}`));
  return {
    lost: published.pages.filter(({ address }) => !now.has(address)).map((page) => lostPage(page, unexplained)),
    lostAnchors: published.pages.flatMap((page) => {
      const kept = now.get(page.address);
      if (!kept || kept.moved) return [];
      return (page.anchors ?? [])
        .filter((anchor) => !kept.anchors?.includes(anchor))
        .map((anchor) => lostAnchor(page, anchor));
    }),
    moved: pages
      .filter(({ address, moved }) => moved && before.has(address) && !before.get(address)?.moved)
      .map(({ address, moved }) => ({ address, to: moved?.to })),
    fresh: fresh.map(({ address }) => address),
  };
}

/** As findings of the check, all of moved.yaml, where nearly all of them are mended. Lost places do not fail it. */
export function complaintsAgainst({ lost, lostAnchors }: Comparison): Complaint[] {
  const complaint = (severity: Complaint["severity"], { address, was, mend }: Lost): Complaint => ({
    severity,
    rule: "published-address",
    file: "moved.yaml",
    path: [],
    message: `the published address ${address} (${was}) would lead nowhere`,
    hint: mend,
  });
  return [...lost.map((it) => complaint("error", it)), ...lostAnchors.map((it) => complaint("warning", it))];
}

function lostPage(page: PublishedPage, fresh: readonly PublishedPage[]): Lost {
  const { address, kind, id, moved } = page;
  if (moved)
    return {
      address,
      was: moved.to === undefined ? `the withdrawal of ${kind} ${id}` : `the move of ${kind} ${id} to ${moved.to}`,
      mend: `put it back into moved.yaml: ${moveLine(kind, id, moved.to, "say why here")}`,
    };
  const was = `${kind === "line-year" ? "model line in one year" : kind} ${id}`;
  switch (kind) {
    case "list":
      return {
        address,
        was,
        mend: "this version of Yearmark makes no such page; keep a page of your own there that leads on",
      };
    case "line":
    case "line-year":
    case "year":
      return { address, was, mend: "keep cars of it in vehicles/; moved.yaml has no moves of lines and years" };
    default: {
      const renamed = newNameOf(page, fresh);
      const keep = kind === "record" ? "keep it and let it say 'withdrawn: why'; or write " : "write ";
      return {
        address,
        was,
        mend:
          renamed === undefined
            ? `${keep}into moved.yaml: ${moveLine(kind, id, undefined, "say why here")}, with 'to' and the new id if it was renamed`
            : `write into moved.yaml, if it is ${renamed} now: ${moveLine(kind, id, renamed, "renamed")}; if not, without 'to'`,
      };
    }
  }
}

/** Of the new ids of the same kind the only one, or else the one that looks like the old id. */
function newNameOf({ kind, id }: PublishedPage, fresh: readonly PublishedPage[]): string | undefined {
  const ids = fresh.filter((page) => page.kind === kind && !page.moved).map((page) => page.id);
  return ids.length === 1 ? ids[0] : nearest(id, ids);
}

function moveLine(kind: string, from: string, to: string | undefined, why: string): string {
  const move = { kind, from, ...(to === undefined ? {} : { to }), why };
  return `- ${stringify(move, { collectionStyle: "flow", lineWidth: 0 }).trim()}`;
}

function lostAnchor({ address, kind, id }: PublishedPage, anchor: string): Lost {
  return {
    address: `${address}#${anchor}`,
    was: `a statement of ${kind} ${id}`,
    mend: "nothing has to be done if it was taken out on purpose: such a link now opens the page at its top",
  };
}
