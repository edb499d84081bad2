/**
 * Which figures of a setting hold for the car at hand. (The eighth and tenth laws of the answers.)
 *
 *   A figure holds for the cars of its scope, but for those for which a record ended it. For cars of which no figure says anything
 *   there is none on record.
 *   A figure belongs to the part it was issued for, and moves with it: where a part was found that the plant did not fit to this car, the
 *   figures issued for that part come in place of the car's own. A figure is issued for a part where all of its cars were built with it.
 *     If a figure asks itself what is fitted, the scopes have already said it.
 *     If several were issued for it, those for cars that are like this one but for year and running numbers.
 *     If the part may also sit elsewhere, the car's own figures remain possible beside them.
 *     If none was issued for it, the car's own figure stands, and it is said that no record ties one to the part found.
 */
import { statementsOf } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import { asFound } from "./as-found.ts";
import type { KnownCar } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { NOT_ON_RECORD } from "./compare-years.ts";
import { componentOf, type SettingMatter } from "./find-settings.ts";
import { builtWith, perhapsBuiltWith } from "./fitted.ts";
import { kindOfCar, type Value, valuesIn } from "./net-change.ts";

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
    const issued = issuedFor(knowledge, car, matter, part);
    if (issued.length === 0) continue;
    const moved = valuesIn(
      knowledge,
      { ...matter, statements: issued.map((it) => ({ ...it, scope: { ...it.scope, cars: car.cars } })) },
      today,
    ).map((value): Value => ({ ...value, asFound: true }));
    const isCertain = [...asFound(knowledge, car)].some(
      ([place, found]) => found.certain && found.parts.includes(part) && placesOfMatter(knowledge, matter).has(place),
    );
    const values = isCertain
      ? moved
      : [...moved, ...own.filter((it) => moved.every((other) => other.said !== it.said))];
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

function placesOfMatter({ catalog }: CarKnowledge, matter: SettingMatter): ReadonlySet<string> {
  return new Set(matter.statements.flatMap((it) => componentOf(catalog, it)?.places ?? []));
}

function asksFor({ catalog: { space } }: CarKnowledge, matter: SettingMatter, part: string): boolean {
  const trait = space.askedFitted(part);
  return trait !== undefined && matter.statements.some((it) => space.sets.traitsOf(it.scope.cars).has(trait));
}

function issuedFor(
  knowledge: CarKnowledge,
  car: KnownCar,
  matter: SettingMatter,
  part: string,
): SettingMatter["statements"] {
  const { space, buildable } = knowledge.catalog;
  const { sets } = space;
  const with_ = sets.or(builtWith(knowledge, part), perhapsBuiltWith(knowledge, part));
  const issued = matter.statements.filter((it) => {
    const cars = sets.and(it.scope.cars, buildable);
    return cars !== NONE && sets.within(cars, with_);
  });
  const kind = kindOfCar(space, car.cars);
  const alike = issued.filter((it) => sets.meet(kindOfCar(space, it.scope.cars), kind));
  return alike.length > 0 ? alike : issued;
}

/** The cars of which no figure says anything. */
export function silentAmong(values: readonly Value[]): CarSet {
  return values.find((value) => value.said === NOT_ON_RECORD)?.cars ?? NONE;
}

/** The parts of the setting's component that some of these cars left the plant with. */
export function partsBuilt(knowledge: CarKnowledge, matter: SettingMatter, cars: CarSet): string[] {
  const { catalog } = knowledge;
  const places = placesOfMatter(knowledge, matter);
  const statements = [...catalog.records.values()].flatMap((record) => record.statements);
  const built = statementsOf(statements, "built").flatMap((it) =>
    it.part !== undefined && places.has(it.place) && catalog.space.sets.meet(cars, it.scope.cars) ? it.part : [],
  );
  const mixed = statementsOf(statements, "mixed").flatMap((it) =>
    places.has(it.place) && catalog.space.sets.meet(cars, it.scope.cars) ? it.parts : [],
  );
  return [...new Set([...built, ...mixed])];
}
