/**
 * The permitted ways forward for a car: every part that may go on where another belongs or where nothing is, each as the smallest
 * set of replacements that has all its companions, theirs too, and in which nothing rules another thing out. And the closed ways.
 */
import type { Setting, StandsIn } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import { conditionsOf, isBuiltIn } from "./companions.ts";
import { type Fit, fitsAt } from "./fits.ts";
import { type PartIndex, placesToAsk } from "./part-index.ts";
import { smallestSet } from "./smallest-set.ts";
import { isPermitted } from "./stands-for.ts";

export interface Retrofit {
  readonly part: string;
  readonly place: string | undefined;
  readonly fit: Fit;
  /** All that goes on, the part itself among it; without what these cars were built with. */
  readonly set: readonly string[];
  /** The statements that ask for each of these, and those that permit the part. */
  readonly because: readonly StandsIn[];
  /** Settings that hold once the set is on the car, and did not before. */
  readonly reset: readonly Setting[];
}

export interface Blocked {
  readonly part: string;
  readonly place: string | undefined;
  /** A refusal; or a permission whose companions rule each other out. */
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
  fitted: readonly string[],
  wanted: (part: string) => boolean,
): Retrofits {
  const open: Retrofit[] = [];
  const blocked: Blocked[] = [];
  for (const part of index.standInsOf.keys()) {
    if (!wanted(part) || fitted.includes(part)) continue;
    for (const place of placesToAsk(index, part))
      for (const fit of fitsAt(index, { part, place, cars, fitted })) {
        if (fit.verdict === "as built" || fit.verdict === "not on record") continue;
        const set = isPermitted(fit.verdict) ? setOf(index, part, fit, fitted) : undefined;
        if (!set) blocked.push({ part, place, fit });
        else open.push({ part, place, fit, ...set, reset: resetBy(index, fit.cars, set.set) });
      }
  }
  return { open, blocked };
}

/** The smallest set for one fit; nothing where its parts rule each other out. */
function setOf(
  index: PartIndex,
  part: string,
  fit: Fit,
  fitted: readonly string[],
): Pick<Retrofit, "set" | "because"> | undefined {
  const has = (one: string): boolean => fitted.includes(one) || isBuiltIn(index, one, fit.cars);
  const waysOf = new Map<string, (readonly StandsIn[])[]>([[part, [...fit.ways]]]);
  const parts = [part];
  for (const one of parts)
    for (const companion of (waysOf.get(one) ?? []).flat().flatMap((step) => step.with)) {
      if (waysOf.has(companion) || has(companion)) continue;
      const own = conditionsOf(index, companion, fit.cars);
      waysOf.set(companion, own.length > 0 ? [own] : []);
      parts.push(companion);
    }
  const ways = (one: string): string[][] =>
    (waysOf.get(one) ?? []).map((way) =>
      [...new Set(way.flatMap((step) => step.with))].filter((it) => it !== one && !has(it)),
    );
  const set = smallestSet({ parts, wanted: [part], ways, clashes: clashesAmong(index, parts, waysOf, fit.cars) });
  if (!set) return undefined;
  const because = set.flatMap((one) => {
    const own = waysOf.get(one) ?? [];
    return own.find((way) => way.every((step) => step.with.every((it) => set.includes(it) || has(it)))) ?? [];
  });
  return { set, because: [...new Set(because)] };
}

/** One part rules out another where all that permits it holds only while the other is not on the car. */
function clashesAmong(
  { space }: PartIndex,
  parts: readonly string[],
  waysOf: ReadonlyMap<string, readonly (readonly StandsIn[])[]>,
  cars: CarSet,
): [string, string][] {
  const { sets } = space;
  const kind = sets.forget(cars, new Set([...space.traits.keys()].filter((trait) => space.isFitted(trait))));
  return parts.flatMap((part) => {
    const steps = (waysOf.get(part) ?? []).flat();
    return parts.flatMap((other): [string, string][] => {
      const trait = space.askedFitted(other);
      if (trait === undefined || other === part || steps.length === 0) return [];
      const together = sets.and(kind, space.where(trait, [[1, 1]]));
      return steps.every((step) => step.scope && !sets.meet(together, step.scope.cars)) ? [[part, other]] : [];
    });
  });
}

function resetBy({ space, settings }: PartIndex, cars: CarSet, set: readonly string[]): Setting[] {
  const { sets } = space;
  const traits = set.flatMap((part) => space.askedFitted(part) ?? []);
  if (traits.length === 0) return [];
  const kind = sets.forget(cars, new Set(traits));
  const after = traits.reduce<CarSet>((left, trait) => sets.and(left, space.where(trait, [[1, 1]])), kind);
  if (after === NONE) return [];
  return settings.filter((it) => sets.within(after, it.scope.cars) && !sets.within(cars, it.scope.cars));
}
