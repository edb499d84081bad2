/** One index of parts for each catalog: it is the same for all questions. */
import { openPartIndex, type PartIndex } from "../interchange/part-index.ts";
import type { Catalog } from "../records/catalog.ts";

const INDEXES = new WeakMap<Catalog, PartIndex>();

export function partIndexOf(catalog: Catalog): PartIndex {
  const known = INDEXES.get(catalog);
  if (known) return known;
  const made = openPartIndex(catalog);
  INDEXES.set(catalog, made);
  return made;
}
