/** What has to be set anew once parts are on a car: the settings that hold with them, and did not hold before. */
import type { Setting } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import type { PartIndex } from "./part-index.ts";

export function resetBy({ space, settings }: PartIndex, cars: CarSet, parts: readonly string[]): Setting[] {
  const { sets } = space;
  const traits = parts.flatMap((part) => space.askedFitted(part) ?? []);
  if (traits.length === 0) return [];
  const kind = sets.forget(cars, new Set(traits));
  const after = traits.reduce<CarSet>((left, trait) => sets.and(left, space.where(trait, [[1, 1]])), kind);
  if (after === NONE) return [];
  return settings.filter((it) => sets.within(after, it.scope.cars) && !sets.within(cars, it.scope.cars));
}
