/** Every two parts of one component of which one goes on in place of the other and must not be used so. */
import { type MarkTable, markTable } from "../lookalikes/mark-table.ts";
import type { Part } from "../records/catalog.ts";
import { groupBy } from "../records/group-by.ts";
import type { StandsIn } from "../records/statement.ts";
import type { World } from "./rule.ts";

export interface RefusedPair {
  readonly table: MarkTable;
  readonly one: Part;
  readonly other: Part;
  /** The first statement that refuses it. */
  readonly refusal: StandsIn;
}

export function* refusedPairs({ catalog, index }: World): Generator<RefusedPair> {
  const tables = new Map<string, MarkTable>();
  const siblings = groupBy([...catalog.parts.values()], (part) => [part.component]);
  const told = new Set<string>();
  for (const [number, statements] of index.standInsOf)
    for (const refusal of statements) {
      const [one, other] = [catalog.parts.get(number), catalog.parts.get(refusal.for ?? "")];
      if (refusal.verdict !== "must-not-be-used" || !one || !other || one.component !== other.component) continue;
      const key = [one.number, other.number].sort().join(" ");
      if (told.has(key)) continue;
      told.add(key);
      const table = tables.get(one.component) ?? markTable(siblings.get(one.component) ?? []);
      tables.set(one.component, table);
      yield { table, one, other, refusal };
    }
}
