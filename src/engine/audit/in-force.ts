import type { Statement } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import type { World } from "./rule.ts";

/** The built cars of a statement's scope for which no other record has ended its record. */
export function inForce({ catalog, index }: World, { record }: Statement, scope: CarSet): CarSet {
  const { sets } = catalog.space;
  return sets.minus(sets.and(catalog.buildable, scope), index.ended.get(record) ?? NONE);
}
