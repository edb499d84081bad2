/** The order in which records are read: traps first, then system by system. */
import type { System } from "../../engine/records/catalog.ts";

export interface Group<T> {
  readonly heading: string;
  readonly items: readonly T[];
}

export interface Placed {
  readonly trap: boolean;
  readonly systems: readonly string[];
}

const TRAPS = "Traps";
const OTHER = "Other";

/** The places of the items in reading order; items with the same heading stay in theirs. */
export function readingOrder(items: readonly Placed[], systems: readonly System[]): number[] {
  const ranks = new Map([TRAPS, ...systems.map(({ name }) => name), OTHER].map((heading, rank) => [heading, rank]));
  const headingOf = headings(systems);
  const rankOf = items.map((item) => ranks.get(headingOf(item)) as number);
  return items.map((_, place) => place).sort((a, b) => (rankOf[a] as number) - (rankOf[b] as number));
}

/** Items that are in reading order, under their headings. */
export function underHeadings<T>(
  items: readonly T[],
  placed: (item: T) => Placed,
  systems: readonly System[],
): Group<T>[] {
  const headingOf = headings(systems);
  const groups: { heading: string; items: T[] }[] = [];
  for (const item of items) {
    const heading = headingOf(placed(item));
    const last = groups.at(-1);
    if (last?.heading === heading) last.items.push(item);
    else groups.push({ heading, items: [item] });
  }
  return groups;
}

function headings(systems: readonly System[]): (item: Placed) => string {
  const names = new Map(systems.map(({ id, name }) => [id, name]));
  return ({ trap, systems: [own = ""] }) => (trap ? TRAPS : (names.get(own) ?? OTHER));
}
