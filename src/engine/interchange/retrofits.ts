/**
 * The permitted ways forward for a car: every part that may go on where another belongs or where nothing is, each as the smallest
 * set of replacements that has all its companions, theirs too, and in which nothing rules another thing out. And the closed ways.
 */
import type { Setting } from "../records/statement.ts";
import type { CarSet } from "../scope/diagram.ts";
import { isPart } from "./belongs.ts";
import { type Fit, fitsAt, toBuy } from "./fits.ts";
import type { PartIndex } from "./part-index.ts";
import { placesToAsk } from "./places.ts";
import type { Reported } from "./reported.ts";
import { resetBy } from "./reset-by.ts";
import { isPermitted } from "./stands-for.ts";

export interface Retrofit {
  readonly part: string;
  readonly place: string | undefined;
  readonly fit: Fit;
  /** All that goes on, the part itself first; without what these cars have already. */
  readonly set: readonly string[];
  /** Settings that hold once the set is on the car, and did not before. */
  readonly reset: readonly Setting[];
}

export interface Blocked {
  readonly part: string;
  readonly place: string | undefined;
  /** With what refuses it, or the statements whose companions rule each other out. */
  readonly fit: Fit;
}

export interface Retrofits {
  readonly open: readonly Retrofit[];
  readonly blocked: readonly Blocked[];
}

/** `wanted` picks the parts that are looked at. What is on record for some of the cars only is given with these cars. */
export function retrofitsFor(
  index: PartIndex,
  cars: CarSet,
  on: Reported,
  wanted: (part: string) => boolean,
): Retrofits {
  const open: Retrofit[] = [];
  const blocked: Blocked[] = [];
  for (const part of index.standInsOf.keys()) {
    if (!wanted(part) || on.parts.has(part)) continue;
    for (const place of placesToAsk(index, part))
      for (const fit of fitsAt(index, { part, place, cars, on })) {
        // The plant's own part is no way forward, even where it was taken back.
        if (isPart(fit.belonging, part)) continue;
        if (isPermitted(fit.verdict)) {
          const set = [part, ...toBuy(fit)];
          open.push({ part, place, fit, set, reset: resetBy(index, fit.cars, set) });
        } else if (fit.refusals.length > 0) blocked.push({ part, place, fit });
      }
  }
  return { open, blocked };
}
