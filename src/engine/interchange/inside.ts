/**
 * What belongs inside a unit that was seen on the car, such as the repair kit of another pump: it may have come with that unit.
 * A place is inside a unit if its component is that of the unit, or lies under it.
 */

import { isUnder } from "../records/is-under.ts";
import type { Built, Mixed } from "../records/statement.ts";
import { NONE } from "../scope/diagram.ts";
import { type Belonging, belongsAt } from "./belongs.ts";
import type { PartIndex } from "./part-index.ts";
import { carsBuiltWith } from "./part-index.ts";
import { sitsAt } from "./places.ts";
import type { Reported } from "./reported.ts";

export interface Inside {
  readonly belonging: Belonging;
  readonly because: readonly (Built | Mixed)[];
  /** The unit ought not to be on the car. */
  readonly isMisfit: boolean;
}

/** What the units on the car brought to a place, each once; "not on record" where no car was built with the unit. */
export function broughtAlong(index: PartIndex, place: string, on: Reported): Inside[] {
  const { space, catalog } = index;
  const component = catalog.places.get(place)?.id;
  if (component === undefined) return [];
  const units = [...on.parts].filter((unit) => {
    const places = sitsAt(index, unit);
    if (places.includes(place)) return false;
    return places.some((it) => isUnder(catalog.components, component, catalog.places.get(it)?.id));
  });
  const found = new Map<string, Inside>();
  for (const unit of units) {
    const built = carsBuiltWith(index, unit);
    const cars = space.sets.and(built, catalog.buildable);
    const its = cars === NONE ? [NOT_KNOWN] : belongsAt(index, place, cars);
    const isMisfit = on.misfits.some((it) => it.part === unit);
    for (const { belonging, because } of its) {
      const key = JSON.stringify(belonging);
      if (found.get(key)?.isMisfit !== false) found.set(key, { belonging, because, isMisfit });
    }
  }
  return [...found.values()];
}

const NOT_KNOWN = { belonging: { what: "not on record" }, because: [] } as const;
