import type { PartIndex } from "../interchange/part-index.ts";
import { builtPlaces } from "../interchange/places.ts";

/** The components that a part is at home in: its own, those in whose places a plant put it, and those of what is in it as a kit. */
export function homesOf(index: PartIndex, part: string): ReadonlySet<string> {
  const { catalog, contentsOf } = index;
  const parts = [part];
  // What is added while going along is gone through too; a kit in itself comes to an end.
  for (const one of parts)
    for (const { part: inside } of contentsOf.get(one) ?? [])
      if (inside !== undefined && !parts.includes(inside)) parts.push(inside);
  const homes = parts.flatMap((one) => [
    catalog.parts.get(one)?.component,
    ...builtPlaces(index, one).map((place) => catalog.places.get(place)?.id),
  ]);
  return new Set(homes.filter((home) => home !== undefined));
}

/** Whether two parts have a component in common. */
export function shareHome(index: PartIndex, one: string, other: string): boolean {
  const homes = homesOf(index, other);
  return [...homesOf(index, one)].some((home) => homes.has(home));
}

/** The part and what it is. */
export function sayKind({ catalog }: PartIndex, part: string): string {
  const component = catalog.components.get(catalog.parts.get(part)?.component ?? "");
  return component === undefined ? part : `${part} (${component.name})`;
}
