import type { Catalog, Move } from "../records/catalog.ts";
import type { Ask } from "./answer.ts";

/** What to say of an id that was renamed or withdrawn: why, and where it leads now. Nothing for an id that never was one. */
export function askOfMoved(catalog: Catalog, kind: Move["kind"], id: string): Ask | undefined {
  const moveFrom = (from: string | undefined): Move | undefined =>
    catalog.moved.find((move) => move.kind === kind && move.from === from);
  const first = moveFrom(id);
  if (!first) return undefined;
  // A new name may have been changed again; the check of the data refuses circles.
  let last = first;
  for (let next = moveFrom(last.to); next; next = moveFrom(next.to)) last = next;
  return { what: `'${id}' is no longer used: ${first.why}`, options: last.to === undefined ? [] : [last.to] };
}
