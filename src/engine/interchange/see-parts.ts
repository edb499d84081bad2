/**
 * From the parts that somebody saw on a car to what is where.
 *
 *   A part that the plant fitted to all of these cars is where the plant put it. Any other one is in a place where it may be
 *   fitted; in one where nothing permits it only if there is no better one. With several such places it may be in each of them.
 *   A part that only goes on along with others was fitted along with them, if it was done right: they may be there as well, and so
 *   may what is in a kit. A part that may not go on by itself may have come along with another, which then may be there.
 *   A part that nothing permits in any of its places is a misfit. What goes on only along with the part that ought to be there is
 *   doubtful until that is put right.
 */
import type { StandsIn } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import { belongsAt, isPart, partIn } from "./belongs.ts";
import { carsBuiltWith, isPermission, type PartIndex, whereHolds } from "./part-index.ts";
import { builtPlaces, sitsAt } from "./places.ts";
import { type Misfit, nothingReported, type Reported } from "./reported.ts";
import { isPermitted, standsFor } from "./stands-for.ts";

export function seeParts(
  index: PartIndex,
  cars: CarSet,
  fitted: readonly string[],
  foreign: ReadonlySet<number> = new Set(),
): Reported {
  if (fitted.length === 0) return { ...nothingReported(), foreign };
  const parts = new Set(fitted);
  const at = new Map<string, string[]>();
  const perhapsAt = new Map<string, string[]>();
  const misfits: Misfit[] = [];
  for (const part of parts) {
    const permitted = wherePermitted(index, part, cars);
    const places = permitted.length > 0 ? permitted : sitsAt(index, part);
    for (const place of places) note(places.length === 1 ? at : perhapsAt, place, part);
    // Of a set that is not whole yet a part may be there already.
    if (permitted.length === 0 && places.length > 0 && askedBy(index, part, cars).length === 0)
      misfits.push({ part, by: refusalsOf(index, part, cars) });
  }
  for (const part of comesAlong(index, cars, fitted))
    for (const place of sitsAt(index, part)) note(perhapsAt, place, part);
  return {
    foreign,
    parts,
    at,
    perhapsAt,
    misfits,
    doubtful: new Map(misfits.flatMap((it) => doubtfulWith(index, it, cars))),
  };
}

function note(map: Map<string, string[]>, place: string, part: string): void {
  const before = map.get(place) ?? [];
  if (!before.includes(part)) map.set(place, [...before, part]);
}

function isBuiltIn(index: PartIndex, part: string, cars: CarSet): boolean {
  return index.space.sets.within(cars, carsBuiltWith(index, part));
}

function wherePermitted(index: PartIndex, part: string, cars: CarSet): readonly string[] {
  const own = builtPlaces(index, part).filter((place) =>
    belongsAt(index, place, cars).some(({ belonging }) => isPart(belonging, part)),
  );
  if (own.length > 0 && isBuiltIn(index, part, cars)) return own;
  return sitsAt(index, part).filter((place) => own.includes(place) || isPermittedAt(index, part, place, cars));
}

/** Who refuses a part in place of what belongs in its places. */
function refusalsOf(index: PartIndex, part: string, cars: CarSet): StandsIn[] {
  const found = belongingIn(index, part, cars).flatMap(({ other, cars: here, place }) =>
    standsFor(index, part, other, here, place).flatMap((it) => it.refusals),
  );
  return [...new Set(found)];
}

function belongingIn(index: PartIndex, part: string, cars: CarSet): { other: string; cars: CarSet; place: string }[] {
  return sitsAt(index, part).flatMap((place) =>
    belongsAt(index, place, cars).flatMap(({ belonging, cars: here }) =>
      belonging.what === "part" && belonging.part !== part ? [{ other: belonging.part, cars: here, place }] : [],
    ),
  );
}

/** The parts that some statement permits only along with what belongs where the misfit is. */
function doubtfulWith(index: PartIndex, misfit: Misfit, cars: CarSet): [string, Misfit][] {
  const displaced = new Set(belongingIn(index, misfit.part, cars).map((it) => it.other));
  return [...index.standInsOf.values()]
    .flat()
    .flatMap((it): [string, Misfit][] =>
      isPermission(it) && it.with.some((one) => displaced.has(one)) ? [[it.part, misfit]] : [],
    );
}

function isPermittedAt(index: PartIndex, part: string, place: string, cars: CarSet): boolean {
  return belongsAt(index, place, cars).some(
    ({ belonging, cars: here }) =>
      belonging.what !== "not on record" &&
      standsFor(index, part, partIn(belonging), here, place).some((it) => isPermitted(it.verdict)),
  );
}

/** The parts that may be on the car because others were seen, in the order in which they follow; without the plant's own. */
export function comesAlong(index: PartIndex, cars: CarSet, fitted: readonly string[]): string[] {
  const found = fitted.flatMap((part) => (isBuiltIn(index, part, cars) ? [] : comesWith(index, part, cars)));
  return [...new Set(found)].filter((part) => !fitted.includes(part) && !isBuiltIn(index, part, cars));
}

/** What one part asks for, by itself or where it goes in place of others by a chain; what is in a kit; and so on from each. */
function comesWith(index: PartIndex, part: string, cars: CarSet): string[] {
  const found: string[] = [];
  const todo = [part];
  for (const one of todo)
    for (const other of [...asksFor(index, one, cars), ...inKit(index, one)]) {
      if (other === part || found.includes(other)) continue;
      found.push(other);
      todo.push(other);
    }
  if (sitsAt(index, part).some((place) => isPermittedAt(index, part, place, cars))) return found;
  return [...found, ...askedBy(index, part, cars)];
}

function asksFor(index: PartIndex, part: string, cars: CarSet): string[] {
  const steps: StandsIn[] = [];
  const chain = [part];
  for (const one of chain)
    for (const it of index.standInsOf.get(one) ?? []) {
      if (!isPermission(it) || whereHolds(index, it, cars, it.place) === NONE) continue;
      steps.push(it);
      if (it.for !== undefined && !chain.includes(it.for)) chain.push(it.for);
    }
  return steps.flatMap((it) => it.with);
}

function inKit(index: PartIndex, part: string): string[] {
  return (index.contentsOf.get(part) ?? []).flatMap((content) => content.part ?? []);
}

function askedBy(index: PartIndex, part: string, cars: CarSet): string[] {
  return [...index.standInsOf.values()]
    .flat()
    .filter((it) => it.with.includes(part) && isPermission(it) && whereHolds(index, it, cars, it.place) !== NONE)
    .map((it) => it.part);
}
