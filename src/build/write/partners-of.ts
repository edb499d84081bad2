/** Which entries of a new list continue which of the old one. */
import { isFields } from "./without-defaults.ts";

/** What an entry goes by: the whole of it, or else one of these fields, or else its place. */
const NAMES = ["id", "number", "from", "name", "title"];

/** Of each new entry the old one that it continues. */
export function partnersOf(old: readonly unknown[], next: readonly unknown[]): (number | undefined)[] {
  const free = new Set(old.keys());
  const partners: (number | undefined)[] = next.map(() => undefined);
  const take = (nameOf: (item: unknown, i: number) => string | undefined): void => {
    const byName = new Map<string | undefined, number[]>();
    for (const i of free) {
      const name = nameOf(old[i], i);
      const same = byName.get(name);
      if (same) same.push(i);
      else byName.set(name, [i]);
    }
    next.forEach((item, i) => {
      const name = nameOf(item, i);
      if (partners[i] !== undefined || name === undefined) return;
      const found = byName.get(name)?.shift();
      if (found !== undefined && free.delete(found)) partners[i] = found;
    });
  };
  take((item) => JSON.stringify(item));
  for (const name of NAMES)
    take((item) => (isFields(item) && item[name] !== undefined ? String(item[name]) : undefined));
  take((_, i) => String(i));
  return partners;
}
