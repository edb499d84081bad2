/**
 * Random small worlds in which statements also ask for companions, and the slow twin of whether a part may then go on: for one
 * kind of tractor at a time, by plain loops over what was drawn, without sets.
 */
import fc from "fast-check";
import type { PartIndex } from "../../src/engine/interchange/part-index.ts";
import type { CarSet } from "../../src/engine/scope/diagram.ts";
import {
  type DrawnWorld,
  inForce,
  openWorld,
  PARTS,
  PLACES,
  REFUSALS,
  type Said,
  slowBelongs,
  world,
} from "./random-parts.ts";

export interface WorldOfSets extends DrawnWorld {
  /** What the statement of the same number asks for. */
  readonly along: readonly (readonly string[])[];
}

export const worldOfSets: fc.Arbitrary<WorldOfSets> = fc
  .record({
    drawn: world,
    along: fc.array(fc.subarray(PARTS, { maxLength: 2 }), { minLength: 9, maxLength: 9 }),
  })
  .map(({ drawn, along }) => ({ ...drawn, along }));

const alongOf = ({ along }: WorldOfSets, number: number, part: string): string[] =>
  (along[number] ?? []).filter((it) => it !== part);

/** The same world for the engine. */
export function openSets(drawn: WorldOfSets): { index: PartIndex; cars: readonly CarSet[] } {
  const { index, cars } = openWorld(drawn);
  const standInsOf = new Map(
    [...index.standInsOf].map(([part, its]) => [
      part,
      its.map((it) => ({ ...it, with: alongOf(drawn, it.index, part) })),
    ]),
  );
  return { index: { ...index, standInsOf }, cars };
}

/** Each way from a part to what belongs there: direct ones, the unconditional ones alone if there are any; else the first of the shortest chains. */
function ways(drawn: DrawnWorld, one: string, other: string | undefined, kind: number): Said[][] {
  const said = inForce(drawn, kind);
  const refused = (a: string, b: string | undefined): boolean =>
    said.some((it) => it.part === a && it.for === b && REFUSALS.includes(it.verdict));
  if (refused(one, other)) return [];
  const direct = said.filter((it) => it.part === one && it.for === other);
  const plain = direct.filter((it) => it.verdict === "yes");
  if (direct.length > 0) return (plain.length > 0 ? plain : direct).map((it) => [it]);
  const chains: { parts: string[]; steps: Said[] }[] = [{ parts: [one], steps: [] }];
  for (const { parts, steps } of chains)
    for (const step of said) {
      if (step.part !== parts.at(-1) || REFUSALS.includes(step.verdict)) continue;
      if (step.for !== undefined && parts.includes(step.for)) continue;
      if (parts.some((earlier) => refused(earlier, step.for))) continue;
      if (step.for === other) return [[...steps, step]];
      if (step.for !== undefined) chains.push({ parts: [...parts, step.for], steps: [...steps, step] });
    }
  return [];
}

/** The places where a part was built in, and those of the parts that something is said of it for. */
export function slowPlaces({ built, standIns }: DrawnWorld, part: string): string[] {
  const names = [part, ...standIns.filter((it) => it.part === part).map((it) => it.for)];
  return PLACES.filter((place) =>
    built.some((it) => it.place === place && it.parts.some((one) => one !== undefined && names.includes(one))),
  );
}

/** All that must go along, what companions ask for where they take another part's place included. */
function companions(drawn: WorldOfSets, way: readonly Said[], kind: number): string[] {
  const found: string[] = [];
  const todo = way.flatMap((step) => alongOf(drawn, step.number, step.part));
  for (const part of todo) {
    if (found.includes(part) || way.some((step) => step.part === part)) continue;
    found.push(part);
    for (const place of slowPlaces(drawn, part))
      for (const belongs of slowBelongs(drawn, place, kind))
        if (PARTS.includes(belongs) && belongs !== part)
          for (const step of ways(drawn, part, belongs, kind).flat())
            todo.push(...alongOf(drawn, step.number, step.part));
  }
  return found;
}

/** Whether a refusal for certain cars speaks of a part in a place of this kind. */
function isBlocked(drawn: DrawnWorld, part: string, kind: number): boolean {
  const places = slowPlaces(drawn, part);
  return inForce(drawn, kind).some((it) => {
    if (it.part !== part || it.about === undefined || !REFUSALS.includes(it.verdict)) return false;
    if (it.for === undefined && places.length === 0) return true;
    return places
      .flatMap((place) => slowBelongs(drawn, place, kind))
      .some((belongs) => (PARTS.includes(belongs) ? belongs === it.for : it.for === undefined));
  });
}

/** Whether a part may go into a place of one kind of tractor; both where it is not known what belongs there. */
export function slowMayGo(drawn: WorldOfSets, part: string, place: string, kind: number): boolean[] {
  const may = slowBelongs(drawn, place, kind).map(
    (belongs) =>
      belongs === part ||
      ways(drawn, part, PARTS.includes(belongs) ? belongs : undefined, kind).some(
        (way) => !companions(drawn, way, kind).some((one) => isBlocked(drawn, one, kind)),
      ),
  );
  return [...new Set(may)].sort();
}
