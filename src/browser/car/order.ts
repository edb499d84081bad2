/** The order in which records are read: traps first, then system by system. */
import type { System } from "../../engine/records/catalog.ts";

export interface Group<T> {
  readonly heading: string;
  readonly items: readonly T[];
}

interface Placed {
  readonly trap: boolean;
  readonly systems: readonly string[];
}

/** Up to `limit` items in groups; traps of all systems are the first group. Groups without items are left out. */
export function inOrder<T>(
  items: readonly T[],
  placed: (item: T) => Placed,
  systems: readonly System[],
  limit: number,
): Group<T>[] {
  const bySystem = new Map<string, T[]>();
  const traps: T[] = [];
  for (const item of items) {
    const { trap, systems: own } = placed(item);
    if (trap) traps.push(item);
    else {
      const key = own[0] ?? "";
      const group = bySystem.get(key);
      if (group) group.push(item);
      else bySystem.set(key, [item]);
    }
  }
  const groups = [
    { heading: "Traps", items: traps },
    ...systems.map(({ id, name }) => ({ heading: name, items: bySystem.get(id) ?? [] })),
    { heading: "Other", items: bySystem.get("") ?? [] },
  ];
  let left = limit;
  return groups.flatMap(({ heading, items: own }) => {
    const shown = own.slice(0, left);
    left -= shown.length;
    return shown.length > 0 ? [{ heading, items: shown }] : [];
  });
}
