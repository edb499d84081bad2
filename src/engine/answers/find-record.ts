import type { Catalog, ChangeRecord } from "../records/catalog.ts";

/** An id in any spelling: case, spaces and dashes are forgiven. */
export function findRecord(catalog: Catalog, typed: string): ChangeRecord | undefined {
  const plain = (text: string): string => text.toUpperCase().replaceAll(/[\s–—-]/g, "");
  return (
    catalog.records.get(typed.trim()) ??
    [...catalog.records.values()].find((record) => plain(record.id) === plain(typed))
  );
}
