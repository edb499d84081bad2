/**
 * The parts that somebody saw on the car at hand, by place. As found beats as built. (The tenth law of the answers.)
 *
 *   A part sits where it may sit; of these places only those count of which the records say something for cars like this one,
 *   if there are any. If that leaves one place, the part is in it. If it leaves several, it is in one of them or in all: in each
 *   it may be the part, or what the plant fitted.
 */
import { statementsOf } from "../records/statement.ts";
import type { KnownCar } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { placesOf } from "./fitted.ts";

export interface AsFound {
  readonly parts: readonly string[];
  /** Whether one of the parts is certainly in the place. */
  readonly certain: boolean;
}

export function asFound(knowledge: CarKnowledge, car: KnownCar): ReadonlyMap<string, AsFound> {
  const found = new Map<string, AsFound>();
  if (car.fitted.length === 0) return found;
  const own = placesOnCar(knowledge, car);
  for (const part of car.fitted) {
    const all = [...placesOf(knowledge, part)];
    const ofCar = all.filter((place) => own.has(place));
    const places = ofCar.length > 0 ? ofCar : all;
    for (const place of places) {
      const before = found.get(place);
      found.set(place, {
        parts: [...(before?.parts ?? []), part].sort(),
        certain: before?.certain === true || places.length === 1,
      });
    }
  }
  return found;
}

/** The places of which the records say what the plant put there, for some of the cars. */
function placesOnCar({ catalog }: CarKnowledge, { cars }: KnownCar): ReadonlySet<string> {
  const statements = [...catalog.records.values()].flatMap((record) => record.statements);
  return new Set(
    [...statementsOf(statements, "built"), ...statementsOf(statements, "mixed")]
      .filter((it) => catalog.space.sets.meet(cars, it.scope.cars))
      .map((it) => it.place),
  );
}
