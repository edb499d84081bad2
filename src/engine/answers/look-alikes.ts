/**
 * "Which parts may this one be taken for?"
 *
 *   Another part of the same component may be taken for it
 *     if some mark that both show is the same on both,
 *     or if no mark that both show is on record: then nothing on record tells them apart.
 *   Two measures that lie nearer than a workshop's tool can tell are the same. A value that is not stated tells nothing.
 *   A kit is not taken for a single part.
 */
import type { Feature, Part } from "../records/catalog.ts";
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
    const both = part.features.filter(({ id }) => part.marks[id] !== undefined && other.marks[id] !== undefined);
    const same = both.filter((feature) => isSame(feature, part, other));
    if (both.length > 0 && same.length === 0) return [];
    const apart = both.filter((feature) => !same.includes(feature)).sort((a, b) => a.effort - b.effort);
    return { number, name: other.name, same: same.map((it) => it.name), apart: apart.map((it) => it.name) };
  });
}

function isSame({ id, tolerance }: Feature, one: Part, other: Part): boolean {
  const [a, b] = [one.marks[id], other.marks[id]];
  if (typeof a === "number" && typeof b === "number") return a === b || Math.abs(a - b) < (tolerance ?? 0);
  return a === b;
}
