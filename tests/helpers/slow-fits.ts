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
  KINDS,
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

/** Mostly with both places known for every tractor, so that more of what is drawn matters. */
export const worldOfSets: fc.Arbitrary<WorldOfSets> = fc
  .record({
    drawn: world,
    everywhere: fc.subarray(PARTS, { minLength: 2, maxLength: 2 }),
    isKnown: fc.boolean(),
    along: fc.array(fc.subarray(PARTS, { maxLength: 2 }), { minLength: 9, maxLength: 9 }),
  })
  .map(({ drawn, everywhere, isKnown, along }) => {
    const about = new Set(KINDS.keys());
    const known = everywhere.map((part, i) => ({ place: PLACES[i] as string, parts: [part], about }));
    return { ...drawn, built: isKnown ? [...known, ...drawn.built.slice(0, 1)] : drawn.built, along };
  });

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

/** The ways from a part to what belongs there, those of one length together, the shortest first. Direct ones stand alone. */
function waysByLength(drawn: DrawnWorld, one: string, other: string | undefined, kind: number): Said[][][] {
  const said = inForce(drawn, kind);
  const refused = (a: string, b: string | undefined): boolean =>
    said.some((it) => it.part === a && it.for === b && REFUSALS.includes(it.verdict));
  if (refused(one, other)) return [];
  const direct = said.filter((it) => it.part === one && it.for === other);
  if (direct.length > 0) return [direct.map((it) => [it])];
  const found: Said[][][] = [];
  const chains: { parts: string[]; steps: Said[] }[] = [{ parts: [one], steps: [] }];
  for (const { parts, steps } of chains)
    for (const step of said) {
      if (step.part !== parts.at(-1) || REFUSALS.includes(step.verdict)) continue;
      if (step.for !== undefined && parts.includes(step.for)) continue;
      if (parts.some((earlier) => refused(earlier, step.for))) continue;
      const way = [...steps, step];
      if (step.for === other) found[way.length] = [...(found[way.length] ?? []), way];
      else if (step.for !== undefined) chains.push({ parts: [...parts, step.for], steps: way });
    }
  return found.filter((ways) => ways !== undefined);
}

function builtAt({ built }: DrawnWorld, part: string): string[] {
  return PLACES.filter((place) => built.some((it) => it.place === place && it.parts.includes(part)));
}

/** The places where a part was built in, and those of the parts that it may stand in for, step by step, on any tractor. */
export function slowSits(drawn: DrawnWorld, part: string): string[] {
  const names = [part];
  for (const name of names)
    for (const it of drawn.standIns)
      if (it.part === name && it.for !== undefined && !REFUSALS.includes(it.verdict) && !names.includes(it.for))
        names.push(it.for);
  return PLACES.filter((place) => names.some((name) => builtAt(drawn, name).includes(place)));
}

/** How a part that must go along may stand: on the tractor, refused, or with ways of which one must be gone. */
type Stands = "on" | "closed" | Said[][];

function inPlace(drawn: WorldOfSets, part: string, belongs: string, kind: number): Stands {
  if (belongs === part) return "on";
  const other = PARTS.includes(belongs) ? belongs : undefined;
  const about = inForce(drawn, kind).filter((it) => it.part === part && it.for === other);
  if (about.some((it) => REFUSALS.includes(it.verdict) && it.about !== undefined)) return "closed";
  if (about.length > 0) return about.filter((it) => !REFUSALS.includes(it.verdict)).map((it) => [it]);
  return waysByLength(drawn, part, other, kind)[0] ?? [];
}

function refusedPlaces(drawn: DrawnWorld, part: string): string[] {
  const others = drawn.standIns.filter((it) => it.part === part && REFUSALS.includes(it.verdict)).map((it) => it.for);
  return PLACES.filter((place) => others.some((other) => other !== undefined && builtAt(drawn, other).includes(place)));
}

/** Every way in which a companion may stand, over what may belong in each of its places. */
function standings(drawn: WorldOfSets, part: string, kind: number): Stands[] {
  const sits = slowSits(drawn, part);
  const own = builtAt(drawn, part);
  const nowhere = { place: "", belongs: "nothing" };
  const worlds = product([
    ...(sits.length === 0 ? [[nowhere]] : []),
    ...(sits.length === 0 ? refusedPlaces(drawn, part) : sits).map((place) =>
      slowBelongs(drawn, place, kind).map((belongs) => ({ place, belongs })),
    ),
  ]);
  return worlds.map((places): Stands => {
    const mine = places.filter((it) => own.includes(it.place) && PARTS.includes(it.belongs));
    if (mine.length > 0 && mine.every((it) => it.belongs === part)) return "on";
    const each = places.map((it) => inPlace(drawn, part, it.belongs, kind));
    if (each.includes("closed")) return "closed";
    const asked = each.filter((it): it is Said[][] => Array.isArray(it) && it.length > 0);
    return asked.length === 0 ? [] : product(asked).map((ways) => ways.flat());
  });
}

function product<T>(lists: readonly (readonly T[])[]): T[][] {
  return lists.reduce<T[][]>((all, list) => all.flatMap((one) => list.map((it) => [...one, it])), [[]]);
}

/** The fewest parts to buy for a way; nothing where no set of parts has all that its parts ask for. */
function fewest(drawn: WorldOfSets, part: string, way: readonly Said[], how: ReadonlyMap<string, Stands>) {
  const others = PARTS.filter((it) => it !== part && how.get(it) !== "on");
  const sizes = product(others.map(() => [false, true])).flatMap((chosen) => {
    const set = others.filter((_, i) => chosen[i]);
    const has = (it: string): boolean => it === part || how.get(it) === "on" || set.includes(it);
    const asks = (steps: readonly Said[]): boolean =>
      steps.every((step) => alongOf(drawn, step.number, step.part).every(has));
    const isComplete =
      asks(way) &&
      set.every((it) => {
        const stands = how.get(it);
        return Array.isArray(stands) && (stands.length === 0 || stands.some(asks));
      });
    return isComplete ? [set.length] : [];
  });
  return sizes.length > 0 ? Math.min(...sizes) : undefined;
}

/**
 * Whether a part may go into a place of one kind of tractor, and with how many others at least: "as built", "no", "yes 0",
 * "on conditions 2". Several where it is not known what belongs there, or what the tractor has.
 */
export function slowMayGo(drawn: WorldOfSets, part: string, place: string, kind: number): string[] {
  const hows = product(PARTS.map((it) => standings(drawn, it, kind).map((stands) => [it, stands] as const)));
  const answers = slowBelongs(drawn, place, kind).flatMap((belongs) => {
    if (belongs === part) return ["as built"];
    if (belongs === "not on record") return ["no"];
    const other = PARTS.includes(belongs) ? belongs : undefined;
    const byLength = waysByLength(drawn, part, other, kind);
    return hows.map((how) => {
      for (const ways of byLength) {
        const open = ways.flatMap((way) => {
          const count = fewest(drawn, part, way, new Map(how));
          return count === undefined ? [] : [{ isPlain: way.every((it) => it.verdict === "yes"), count }];
        });
        const plain = open.filter((it) => it.isPlain);
        if (plain.length > 0) return `yes ${Math.min(...plain.map((it) => it.count))}`;
        if (open.length > 0) return `on conditions ${Math.min(...open.map((it) => it.count))}`;
      }
      return "no";
    });
  });
  return [...new Set(answers)].sort();
}
