/**
 * Where a part sits.
 *
 *   In the places where the plant put it on any car, and in those of the parts that it may stand in for, directly or by a chain.
 *   A part for one hand sits on that side only. The hand of a place is that of the parts for one hand which the plant put there;
 *   where there were none, the word "left" or "right" in its name, as English has it.
 */
import { isPermission, type PartIndex } from "./part-index.ts";

export type Hand = "left" | "right";

/** Worked out once for each index, part by part as they are asked about. */
const KNOWN = new WeakMap<PartIndex, { sits: Map<string, readonly string[]>; hands: Map<string, Hand | undefined> }>();

/** The places where the plant put a part on any car. */
export function builtPlaces({ builtWith }: PartIndex, part: string): string[] {
  return [...new Set((builtWith.get(part) ?? []).map((it) => it.place))];
}

/** The places where a part may sit on one car or another. */
export function sitsAt(index: PartIndex, part: string): readonly string[] {
  const { sits } = known(index);
  const before = sits.get(part);
  if (before) return before;
  const parts = [part];
  const named: string[] = [];
  for (const one of parts)
    for (const it of index.standInsOf.get(one) ?? []) {
      if (it.for === undefined || !isPermission(it)) continue;
      if (it.place !== undefined) named.push(it.place);
      else if (!parts.includes(it.for)) parts.push(it.for);
    }
  const places = [...new Set([...parts.flatMap((one) => builtPlaces(index, one)), ...named])];
  const found = places.filter((place) => !isOtherHand(index, part, place) || builtPlaces(index, part).includes(place));
  sits.set(part, found);
  return found;
}

/** The places to ask about: those where it may sit, and those of which a record says that it must not. */
export function placesOf(index: PartIndex, part: string): string[] {
  const refused = (index.standInsOf.get(part) ?? []).flatMap((it) =>
    it.for === undefined || isPermission(it) ? [] : builtPlaces(index, it.for),
  );
  return [...new Set([...sitsAt(index, part), ...refused])];
}

/** The same; a part of which no record names a place is asked about without one. */
export function placesToAsk(index: PartIndex, part: string): (string | undefined)[] {
  const places = placesOf(index, part);
  return places.length > 0 ? places : [undefined];
}

/** Whether a part is for one hand, and the place for the other. */
export function isOtherHand(index: PartIndex, part: string, place: string): boolean {
  const own = index.catalog.parts.get(part)?.hand;
  const its = own === undefined ? undefined : handOf(index, place);
  return its !== undefined && its !== own;
}

function handOf(index: PartIndex, place: string): Hand | undefined {
  const { hands } = known(index);
  if (!hands.has(place)) hands.set(place, handOfBuilt(index, place) ?? handInWords(place));
  return hands.get(place);
}

function handOfBuilt({ builtAt, catalog }: PartIndex, place: string): Hand | undefined {
  const parts = (builtAt.get(place) ?? []).flatMap((it) => (it.type === "mixed" ? it.parts : [it.part ?? ""]));
  const [hand, ...others] = new Set(parts.flatMap((part) => catalog.parts.get(part)?.hand ?? []));
  return others.length > 0 ? undefined : hand;
}

function handInWords(place: string): Hand | undefined {
  const [hand, ...others] = new Set(place.toLowerCase().match(/\b(?:left|right)\b/g) ?? []);
  return others.length > 0 ? undefined : (hand as Hand | undefined);
}

function known(index: PartIndex) {
  const before = KNOWN.get(index);
  if (before) return before;
  const made = { sits: new Map<string, readonly string[]>(), hands: new Map<string, Hand | undefined>() };
  KNOWN.set(index, made);
  return made;
}
