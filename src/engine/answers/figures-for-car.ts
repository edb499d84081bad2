/**
 * Which figures of a setting hold for the car at hand. (The eighth and tenth laws of the answers.)
 *
 *   A figure holds for the cars of its scope, but for those for which a record ended it. For cars of which no figure says anything
 *   there is none on record.
 *   A figure belongs to the part it was issued for, and moves with it: where a part was found that the plant did not fit to this car, the
 *   figures of the cars that were built with that part come in place of the car's own; of these, those of cars that are like this one but
 *   for year and running numbers, if there are any.
 *     If a figure asks itself what is fitted, the scopes have already said it.
 *     If no car like this one was built with the part, or it does not certainly sit in every place of the component on this car, the
 *     car's own figures remain possible beside them.
 *     If no figure is on record for the cars built with it, the car's own stands, and it is said that no record ties one to the part.
 */
import { type CarSet, NONE } from "../scope/diagram.ts";
import { asFound } from "./as-found.ts";
import { asItLeft, type KnownCar } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { NOT_ON_RECORD } from "./compare-years.ts";
import { componentOf, type SettingMatter } from "./find-settings.ts";
import { builtWith, perhapsBuiltWith } from "./fitted.ts";
import { kindOfCar, type Value, valuesIn, yearSpan, yearsOfCar } from "./net-change.ts";

export interface FiguresForCar {
  /** What may be in force, each with its cars; among them "not on record" where no record says anything. */
  readonly values: readonly Value[];
  /** The part that brought the figures along. */
  readonly movedWith: string | undefined;
  /** Parts found on the car to which no record ties a figure of this setting. */
  readonly unsaid: readonly string[];
}

export function figuresForCar(knowledge: CarKnowledge, car: KnownCar, matter: SettingMatter): FiguresForCar {
  const today = { year: Number.POSITIVE_INFINITY, cars: car.cars, readIn: Number.POSITIVE_INFINITY };
  const own = valuesIn(knowledge, matter, today);
  const parts = foreignParts(knowledge, car, matter);
  const asked = parts.filter((part) => !asksFor(knowledge, matter, part));
  for (const part of asked) {
    const { cars, isAlike } = carsWithPart(knowledge, car, part);
    const moved = valuesIn(knowledge, matter, { ...today, cars }).map(
      (value): Value => ({ ...value, cars: car.cars, asFound: true }),
    );
    if (moved.every((value) => value.said === NOT_ON_RECORD)) continue;
    const isCertain = sitsEverywhere(knowledge, car, matter, asked);
    const also = own.filter((it) => moved.every((other) => other.said !== it.said));
    const values = isAlike && isCertain ? moved : [...moved, ...also];
    return { values, movedWith: part, unsaid: [] };
  }
  return { values: own, movedWith: undefined, unsaid: asked };
}

/** Parts found on the car, of the setting's component, that not every such car was built with. */
function foreignParts(knowledge: CarKnowledge, car: KnownCar, matter: SettingMatter): string[] {
  const { catalog } = knowledge;
  const components = new Set(matter.statements.map((it) => componentOf(catalog, it)?.id));
  return car.fitted.filter(
    (part) =>
      components.has(catalog.parts.get(part)?.component) &&
      !catalog.space.sets.within(car.cars, builtWith(knowledge, part)),
  );
}

/** Whether some parts certainly sit in every place of the setting's component that this car has. */
function sitsEverywhere(
  knowledge: CarKnowledge,
  car: KnownCar,
  matter: SettingMatter,
  parts: readonly string[],
): boolean {
  const found = asFound(knowledge, car);
  const places = [...placesOfMatter(knowledge, matter)];
  const sits = (place: string): boolean => {
    const there = found.get(place);
    return there?.certain === true && there.parts.some((part) => parts.includes(part));
  };
  return places.some(sits) && places.every((place) => sits(place) || !isBuiltIn(knowledge, place, car.cars));
}

/** Whether the plant put a part into a place on some of these cars. */
function isBuiltIn({ catalog }: CarKnowledge, place: string, cars: CarSet): boolean {
  return [...catalog.records.values()]
    .flatMap((record) => record.statements)
    .some(
      (it) =>
        (it.type === "mixed" || (it.type === "built" && it.part !== undefined)) &&
        it.place === place &&
        catalog.space.sets.meet(cars, it.scope.cars),
    );
}

function placesOfMatter({ catalog }: CarKnowledge, matter: SettingMatter): ReadonlySet<string> {
  return new Set(matter.statements.flatMap((it) => componentOf(catalog, it)?.places ?? []));
}

function asksFor({ catalog: { space } }: CarKnowledge, matter: SettingMatter, part: string): boolean {
  const trait = space.askedFitted(part);
  return trait !== undefined && matter.statements.some((it) => space.sets.traitsOf(it.scope.cars).has(trait));
}

/** The cars that left the plant with a part: those like the car at hand, if there are any. */
function carsWithPart(knowledge: CarKnowledge, car: KnownCar, part: string): { cars: CarSet; isAlike: boolean } {
  const { space, buildable } = knowledge.catalog;
  const { sets } = space;
  const all = sets.and(sets.or(builtWith(knowledge, part), perhapsBuiltWith(knowledge, part)), buildable);
  const alike = sets.and(all, kindOfCar(space, car.cars));
  return alike === NONE ? { cars: all, isAlike: false } : { cars: alike, isAlike: true };
}

/** The cars of which no figure says anything. */
export function silentAmong(values: readonly Value[]): CarSet {
  return values.find((value) => value.said === NOT_ON_RECORD)?.cars ?? NONE;
}

/** Cars like this one, of every year, as they were built. */
export function carsLikeIt(knowledge: CarKnowledge, car: KnownCar): CarSet {
  const { catalog } = knowledge;
  const [first, last] = yearSpan(catalog);
  return catalog.space.any(yearsOfCar(knowledge, asItLeft(knowledge, car), first, last).map((year) => year.cars));
}

/** The parts of a component that some of these cars left the plant with. */
export function partsBuilt({ catalog }: CarKnowledge, component: string, cars: CarSet): string[] {
  const places = new Set(catalog.components.get(component)?.places);
  const here = [...catalog.records.values()]
    .flatMap((record) => record.statements)
    .filter((it) => it.type === "built" || it.type === "mixed")
    .filter((it) => places.has(it.place) && catalog.space.sets.meet(cars, it.scope.cars));
  return [...new Set(here.flatMap((it) => (it.type === "mixed" ? it.parts : (it.part ?? []))))];
}
