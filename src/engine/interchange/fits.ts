/**
 * How a part stands to a place, for cars known in part. The cars are cut into pieces with one verdict each.
 *
 *   Where the plant fitted the part: *as built*.
 *   Elsewhere what the records say of it in place of what belongs there decides (`stands-for.ts`).
 *   A part reported in that place overrules: what is asked must be right in place of that part too, and the worse verdict counts.
 *   Where the inside of a unit is asked about and another unit is reported on the car, what belongs there came with that unit.
 */
import type { Built, Mixed, StandsIn } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import { type Belonging, belongsAt } from "./belongs.ts";
import { blockedBy } from "./companions.ts";
import { type PartIndex, placesOf } from "./part-index.ts";
import { isPermitted, STANDS, type StandsFor, standsFor } from "./stands-for.ts";

/** Worst first. */
export const FITS = [...STANDS, "as built"] as const;
export type FitVerdict = (typeof FITS)[number];

export interface Fit {
  readonly verdict: FitVerdict;
  readonly cars: CarSet;
  readonly belonging: Belonging;
  /** Who says what belongs there. */
  readonly because: readonly (Built | Mixed)[];
  /** Refusals; or ways to go, each a chain of statements. One way is enough. */
  readonly ways: readonly (readonly StandsIn[])[];
}

export interface FitQuestion {
  readonly part: string;
  /** Left out for a part of which no record names a place. */
  readonly place: string | undefined;
  readonly cars: CarSet;
  /** Parts reported on the car. */
  readonly fitted: readonly string[];
}

/** Cars of a mixed stretch are in several pieces: there only the part on the car tells which one counts. */
export function fitsAt(index: PartIndex, { part, place, cars, fitted }: FitQuestion): Fit[] {
  const belongs =
    place === undefined
      ? [{ belonging: { what: "nothing" } as const, cars, because: [] }]
      : belongsAt(index, place, cars);
  const asBuilt = belongs.flatMap(({ belonging, cars: here, because }): Fit[] => {
    if (belonging.what === "part" && belonging.part === part)
      return [{ verdict: "as built", cars: here, belonging, because, ways: [] }];
    const other = belonging.what === "part" ? belonging.part : undefined;
    return standsFor(index, part, other, here).map((stands) => ({ ...stands, belonging, because }));
  });
  const found = fitted.filter((it) => it !== part && place !== undefined && placesOf(index, it).includes(place));
  const asFound = found.reduce((fits, it) => fits.flatMap((fit) => overruled(index, part, it, fit)), asBuilt);
  const open = asFound.flatMap((fit) => withoutBlocked(index, fit, fitted));
  return [...open, ...fromOtherUnits(index, { part, place, cars, fitted }, open)];
}

/** What a fit would be if the inside of a reported unit came with that unit; only where it would be another answer. */
function fromOtherUnits(index: PartIndex, { part, place, fitted }: FitQuestion, fits: readonly Fit[]): Fit[] {
  const component = place === undefined ? undefined : index.catalog.places.get(place);
  if (place === undefined || component === undefined) return [];
  const units = fitted.filter((unit) => {
    const places = placesOf(index, unit);
    return unit !== part && !places.includes(place) && places.some((it) => index.catalog.places.get(it) === component);
  });
  return units.flatMap((unit) => {
    const left = index.space.any((index.builtWith.get(unit) ?? []).map((it) => it.scope.cars));
    const inside = belongsAt(index, place, index.space.sets.and(left, index.catalog.buildable));
    return inside.flatMap(({ belonging, because }) =>
      fits.flatMap((fit): Fit[] => {
        if (belonging.what !== "part" || same(belonging, fit.belonging)) return [];
        const would: Fit[] =
          belonging.part === part
            ? [{ verdict: "as built", cars: fit.cars, belonging, because, ways: [] }]
            : standsFor(index, part, belonging.part, fit.cars).map((it) => ({ ...it, belonging, because }));
        return would.filter((it) => mayBeFitted(it.verdict) !== mayBeFitted(fit.verdict));
      }),
    );
  });
}

function same(one: Belonging, other: Belonging): boolean {
  return one.what === "part" && other.what === "part" ? one.part === other.part : one.what === other.what;
}

export function mayBeFitted(verdict: FitVerdict): boolean {
  return verdict === "as built" || isPermitted(verdict);
}

/** What is left of a fit where another part is reported in the place. */
function overruled(index: PartIndex, part: string, found: string, fit: Fit): Fit[] {
  return standsFor(index, part, found, fit.cars).map((stands) => {
    const isWorse = FITS.indexOf(stands.verdict) <= FITS.indexOf(fit.verdict);
    const belonging: Belonging = { what: "part", part: found };
    return { ...fit, belonging, cars: stands.cars, ...(isWorse ? pick(stands) : {}) };
  });
}

function pick({ verdict, ways }: StandsFor): Pick<Fit, "verdict" | "ways"> {
  return { verdict, ways };
}

/** A way is closed where a part that must go along is refused on these cars; a car with no way left has the refusals. */
function withoutBlocked(index: PartIndex, fit: Fit, fitted: readonly string[]): Fit[] {
  if (!isPermitted(fit.verdict)) return [fit];
  const { sets } = index.space;
  const done: Fit[] = [];
  let left = fit.cars;
  const refusals: StandsIn[] = [];
  for (const way of fit.ways) {
    if (left === NONE) break;
    const blocked = blockedBy(index, way, left, fitted);
    refusals.push(...blocked.because);
    const open = sets.minus(left, blocked.cars);
    if (open !== NONE) done.push({ ...fit, cars: open, ways: open === fit.cars ? fit.ways : [way] });
    left = sets.and(left, blocked.cars);
  }
  if (left === NONE) return done;
  const verdict = refusals.every((it) => it.verdict === "does-not-go-on")
    ? "does not go on"
    : "goes on but must not be used";
  return [...done, { ...fit, verdict, cars: left, ways: refusals.map((it) => [it]) }];
}
