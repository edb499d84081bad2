/** The rule of what two years differ in, tractor by tractor, with lists in place of sets. */
import type { Tractor } from "./listed-tractors.ts";

export interface SlowDifference {
  readonly car: Tractor;
  /** What is on record for the kinds that it is compared with, and for its own; one of them may be empty. */
  readonly from: readonly string[];
  readonly to: readonly string[];
  /** Of some car in question nothing is on record. */
  readonly silentBefore: boolean;
}

type Said = (car: Tractor) => readonly string[];
type Trait = "line" | "plant" | "PT" | "WN";

/** The tractors of the last year for which something differs; `said` is all that is on record of one tractor. */
export function slowCompare(
  before: readonly Tractor[],
  after: readonly Tractor[],
  said: Said,
  named: readonly Trait[],
): SlowDifference[] {
  const alikeIn = (traits: readonly Trait[], a: Tractor, b: Tractor): boolean => traits.every((it) => a[it] === b[it]);
  const kindOf = (car: Tractor, all: readonly Tractor[]): Tractor[] => all.filter((it) => alikeIn(named, it, car));
  const sayAll = (cars: readonly Tractor[]): string[] => [...new Set(cars.flatMap(said))].sort();
  const stages: readonly (readonly Trait[])[] = [named, named.filter((it) => it !== "PT" && it !== "WN"), ["line"], []];
  return after.flatMap((car) => {
    const alike = stages
      .map((traits) => before.filter((other) => alikeIn(traits, other, car)))
      .find((cars) => cars.length > 0) as Tractor[];
    const gone = alike.filter((other) => kindOf(other, after).length === 0);
    const kinds = (gone.length > 0 ? gone : alike).map((other) => kindOf(other, before));
    const to = sayAll(kindOf(car, after));
    if ([...kinds, kinds.flat()].some((cars) => sayAll(cars).join() === to.join())) return [];
    const stated = kinds.filter((kind) => sayAll(kind).length > 0).flat();
    return { car, from: sayAll(stated), to, silentBefore: stated.some((it) => said(it).length === 0) };
  });
}
