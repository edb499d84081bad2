/**
 * The parts that somebody may mean by what is typed so far: those whose number begins so, then those whose number holds it, then
 * those whose name or component has all of the words. Of each the order of the catalog.
 */
import type { Catalog, Part } from "../records/catalog.ts";
import { misread } from "./part-number.ts";

export function partCandidates({ parts, components }: Catalog, typed: string, most: number): Part[] {
  const number = misread(typed);
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return [];
  const ranked: Part[][] = [[], [], []];
  for (const part of parts.values()) {
    const own = misread(part.number);
    const named = `${part.name} ${components.get(part.component)?.name ?? ""}`.toLowerCase();
    const rank = own.startsWith(number)
      ? 0
      : /\d/.test(number) && own.includes(number)
        ? 1
        : words.every((it) => named.includes(it))
          ? 2
          : undefined;
    if (rank !== undefined) ranked[rank]?.push(part);
  }
  return ranked.flat().slice(0, most);
}
