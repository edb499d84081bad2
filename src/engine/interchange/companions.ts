/**
 * What must go along. A companion that a statement names goes on in the same job: that the records refuse it by itself, wherever
 * its counterpart belongs, is no objection, for the set is another matter. A refusal for certain cars is one.
 */
import type { StandsIn } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import { belongsAt } from "./belongs.ts";
import { isPermission, type PartIndex, placesOf, whereHolds } from "./part-index.ts";
import { isPermitted, standsFor } from "./stands-for.ts";

export interface Companion {
  readonly part: string;
  /** All cars at hand were built with it. */
  readonly onTheCar: boolean;
  /** The statement that asks for it. */
  readonly because: StandsIn;
  /** What its own statement asks to be done, where it stands in for another part. */
  readonly do: readonly StandsIn[];
}

/** All companions of a way, those of companions too, each once. */
export function companionsOf(index: PartIndex, way: readonly StandsIn[], cars: CarSet): Companion[] {
  const asked = new Set(way.map((step) => step.part));
  const result: Companion[] = [];
  const todo = way.flatMap((step) => step.with.map((part) => ({ part, because: step })));
  for (const { part, because } of todo) {
    if (asked.has(part)) continue;
    asked.add(part);
    const own = conditionsOf(index, part, cars);
    result.push({ part, because, onTheCar: isBuiltIn(index, part, cars), do: own.filter((it) => it.do !== undefined) });
    todo.push(...own.flatMap((step) => step.with.map((further) => ({ part: further, because: step }))));
  }
  return result;
}

/** The cars on which a companion of the way is refused, and who refuses it. */
export function blockedBy(
  index: PartIndex,
  way: readonly StandsIn[],
  cars: CarSet,
  fitted: readonly string[],
): { cars: CarSet; because: StandsIn[] } {
  const { sets } = index.space;
  let blocked: CarSet = NONE;
  const because: StandsIn[] = [];
  for (const { part } of companionsOf(index, way, cars)) {
    if (fitted.includes(part)) continue;
    for (const statement of index.standInsOf.get(part) ?? []) {
      if (statement.scope === undefined || isPermission(statement)) continue;
      const here = sets.and(whereHolds(index, statement, cars), whereBelongs(index, part, statement.for, cars));
      if (here === NONE) continue;
      blocked = sets.or(blocked, here);
      because.push(statement);
    }
  }
  return { cars: blocked, because };
}

/** The cars in whose places for `part` the other one belongs, or nothing. */
function whereBelongs(index: PartIndex, part: string, other: string | undefined, cars: CarSet): CarSet {
  const places = placesOf(index, part);
  if (other === undefined && places.length === 0) return cars;
  const belongs = places.flatMap((place) => belongsAt(index, place, cars));
  return belongs.reduce<CarSet>((sum, { belonging, cars: here }) => {
    const same = belonging.what === "part" ? belonging.part === other : other === undefined;
    return same ? index.space.sets.or(sum, here) : sum;
  }, NONE);
}

/** Under what conditions a companion stands in for what it takes the place of, on some of the cars. */
export function conditionsOf(index: PartIndex, part: string, cars: CarSet): StandsIn[] {
  const found = placesOf(index, part).flatMap((place) =>
    belongsAt(index, place, cars).flatMap(({ belonging, cars: here }) =>
      belonging.what === "part" && belonging.part !== part
        ? standsFor(index, part, belonging.part, here)
            .filter((it) => isPermitted(it.verdict))
            .flatMap((it) => it.ways.flat())
        : [],
    ),
  );
  return [...new Set(found)];
}

/** Whether all of the cars were built with a part, in all of its places. */
export function isBuiltIn(index: PartIndex, part: string, cars: CarSet): boolean {
  const places = placesOf(index, part);
  return (
    places.length > 0 &&
    places.every((place) => {
      const belongs = belongsAt(index, place, cars);
      return belongs.length > 0 && belongs.every(({ belonging: it }) => it.what === "part" && it.part === part);
    })
  );
}
