/** "What may this car be improved with?" Every permitted way forward with all that goes along, and the closed ways with their reasons. */
import { sayBelonging } from "../interchange/belongs.ts";
import type { Way } from "../interchange/companions.ts";
import { type Blocked, type Retrofit, retrofitsFor } from "../interchange/retrofits.ts";
import { seeParts } from "../interchange/see-parts.ts";
import type { Catalog } from "../records/catalog.ts";
import { isUnder } from "../records/is-under.ts";
import type { StandsIn } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import type { Scope } from "../scope/scope.ts";
import type { Space } from "../scope/space.ts";
import { readCar } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { findComponent } from "./find-component.ts";
import { sayFact } from "./look.ts";
import { partIndexOf } from "./part-indexes.ts";
import { partName } from "./part-number.ts";
import { QuestionError } from "./question-error.ts";
import { reasonFor, uniqueReasons } from "./say.ts";
import { sayConflict } from "./say-conflict.ts";
import type { CarInput } from "./shapes/car.ts";
import type { RetrofitsAnswer } from "./shapes/retrofits.ts";
import { saySetting, workOf } from "./view-fit.ts";

export function answerRetrofits(
  knowledge: CarKnowledge,
  { component: typed, car: input }: { component?: string | undefined; car: CarInput },
): RetrofitsAnswer {
  const { catalog } = knowledge;
  const { space } = catalog;
  const component = typed === undefined ? undefined : requireComponent(catalog, typed);
  const car = readCar(knowledge, input);
  const facts = car.facts.map((fact) => sayFact(space, fact));
  const base = { question: "retrofits" as const, ...(component === undefined ? {} : { component }), notNeeded: [] };
  if (car.cars === NONE) {
    const { facts: clash, conflict } = sayConflict(catalog, car);
    return { ...base, verdict: "no such car", because: [], facts: clash, conflict, paths: [], blocked: [] };
  }
  const wanted = (part: string): boolean =>
    component === undefined || isUnder(catalog.components, catalog.parts.get(part)?.component, component);
  const index = partIndexOf(catalog);
  const { open, blocked: refused } = retrofitsFor(
    index,
    car.cars,
    seeParts(index, car.cars, car.fitted, car.foreign),
    wanted,
  );
  const blocked = refused.filter((way) => isAboutLine(catalog, car.cars, way));
  const holding = carsOfSame([...open, ...blocked], space);
  const path = (way: OneWay) => {
    const { part, place, fit } = way;
    return {
      ...{ part, name: partName(catalog, part), ...(place === undefined ? {} : { place }), verdict: fit.verdict },
      instead: sayBelonging(fit.belonging),
      certain: space.sets.within(car.cars, holding.get(sameAs(way)) ?? NONE),
    };
  };
  const paths = open.map((it) => ({
    ...path(it),
    set: it.set.map((part) => ({ part, name: partName(catalog, part) })),
    do: it.fit.ways.slice(0, 1).flatMap(workOf),
    reset: it.reset.map(saySetting),
    because: it.fit.ways
      .slice(0, 1)
      .flatMap(statementsOf)
      .map((step) => reasonFor(catalog, step)),
  }));
  const closed = blocked.map((it) => ({
    ...path(it),
    because: it.fit.refusals.map((step) => reasonFor(catalog, step)),
  }));
  return {
    ...base,
    verdict: paths.length + closed.length > 0 ? "on record" : "not on record",
    because: uniqueReasons([...paths, ...closed].flatMap((it) => it.because)),
    facts,
    paths,
    blocked: closed,
  };
}

/**
 * A part of which no record names a place is refused by the names of parts alone, which nothing ties to the car: that closes a way
 * only where a record that refuses it says something of cars of the same line.
 */
function isAboutLine({ space, records }: Catalog, cars: CarSet, { place, fit }: Blocked): boolean {
  if (place !== undefined || fit.verdict !== "not on record") return true;
  const line = space.sets.keep(cars, [space.role("line") as number]);
  const speaks = (scope: Scope | undefined): boolean => scope !== undefined && space.sets.meet(line, scope.cars);
  return fit.refusals
    .flatMap((it) => records.get(it.record) ?? [])
    .some(({ scope, statements }) => speaks(scope) || statements.some((it) => "scope" in it && speaks(it.scope)));
}

type OneWay = Blocked & Partial<Pick<Retrofit, "set">>;

/**
 * The cars for which the same holds: the same part at the same place, with the same verdict and the same set, in place of
 * whatever belongs there. A way that holds wherever one of two parts belongs is certain though it is not known which.
 */
function carsOfSame(ways: readonly OneWay[], space: Space): Map<string, CarSet> {
  const same = Map.groupBy(ways, sameAs);
  return new Map([...same].map(([key, its]) => [key, space.any(its.map((it) => it.fit.cars))]));
}

function sameAs({ part, place, fit, set = [] }: OneWay): string {
  return JSON.stringify([part, place, fit.verdict, [...set].sort()]);
}

/** The statements that permit the part and what goes along with it, each once. */
function statementsOf({ steps, companions }: Way): StandsIn[] {
  return [...new Set([...steps, ...companions.flatMap((it) => it.steps)])];
}

function requireComponent(catalog: Catalog, typed: string): string {
  const found = findComponent(catalog, typed);
  if (!found) throw new QuestionError(`No component is called '${typed.trim()}'.`);
  return found.id;
}
