/** Records under the systems that they are about: each under its first, those about no system last, under a heading of their own. */
import type { ChangeRecord } from "../../engine/records/catalog.ts";
import type { Site } from "../site.ts";
import { trapsFirst } from "./links.ts";

export interface OfSystem {
  /** Of the system; "other" for the records about none. */
  readonly id: string;
  readonly name: string;
  readonly records: readonly ChangeRecord[];
}

export function bySystem(site: Site, records: readonly ChangeRecord[]): OfSystem[] {
  const of = (system: string | undefined): ChangeRecord[] =>
    trapsFirst(records.filter((record) => record.systems[0] === system));
  const groups = site.systems
    .map(({ id, name }) => ({ id, name, records: of(id) }))
    .filter((group) => group.records.length > 0);
  const others = of(undefined);
  if (others.length === 0) return groups;
  return [...groups, { id: "other", name: groups.length > 0 ? "Other" : "Changes", records: others }];
}
