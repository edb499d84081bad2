/**
 * "Which parts may this one be taken for?"
 *
 *   Another part of the same component may be taken for it
 *     if some mark that both show is the same on both,
 *     or if no mark that both show is on record: then nothing on record tells them apart.
 *   Which marks are the same is told by `alike.ts`. A value that is not stated tells nothing.
 *   A kit is not taken for a single part.
 */
import { compareMarks } from "../lookalikes/alike.ts";
import { type Mark, markTable, type Row } from "../lookalikes/mark-table.ts";
import type { Part } from "../records/catalog.ts";
import type { Knowledge } from "./knowledge.ts";
import { partIndexOf } from "./part-indexes.ts";

export interface LookAlike {
  readonly number: string;
  readonly name: string;
  /** What is the same on both. */
  readonly same: readonly string[];
  /** What tells them apart, easiest first. Empty: nothing on record does. */
  readonly apart: readonly string[];
}

export function lookAlikes({ catalog, partsByComponent }: Knowledge, part: Part): LookAlike[] {
  const { contentsOf } = partIndexOf(catalog);
  return (partsByComponent.get(part.component) ?? []).flatMap((number) => {
    const other = catalog.parts.get(number);
    if (other === undefined || number === part.number) return [];
    if (contentsOf.has(number) !== contentsOf.has(part.number)) return [];
    const { marks, parts } = markTable([part, other]);
    const { apart, same } = compareMarks(marks, parts[0] as Row, parts[1] as Row);
    if (apart.length > 0 && same.length === 0) return [];
    apart.sort((a, b) => a.effort - b.effort);
    const nameOf = ({ id }: Mark): string => part.features.find((it) => it.id === id)?.name ?? id;
    return { number, name: other.name, same: same.map(nameOf), apart: apart.map(nameOf) };
  });
}
