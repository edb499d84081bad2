/**
 * What belongs in a place of some cars: the part that the plant fitted there, nothing, or "not on record".
 * Where the plant used either of several parts, or records contradict each other, the same cars are under several of them.
 */
import type { Built, Mixed } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import type { Space } from "../scope/space.ts";
import type { PartIndex } from "./part-index.ts";

export type Belonging =
  | { readonly what: "part"; readonly part: string }
  | { readonly what: "nothing" }
  | { readonly what: "not on record" };

export interface Belongs {
  readonly belonging: Belonging;
  readonly cars: CarSet;
  readonly because: readonly (Built | Mixed)[];
}

/** Every car is under at least one of the results. */
export function belongsAt(index: PartIndex, place: string, cars: CarSet): Belongs[] {
  const { sets } = index.space;
  const found = new Map<string, { belonging: Belonging; cars: CarSet; because: (Built | Mixed)[] }>();
  let silent = cars;
  for (const statement of index.builtAt.get(place) ?? []) {
    const here = sets.and(cars, statement.scope.cars);
    if (here === NONE) continue;
    silent = sets.minus(silent, here);
    for (const part of statement.type === "mixed" ? statement.parts : [statement.part]) {
      const key = part ?? "";
      const before = found.get(key);
      if (before) {
        before.cars = sets.or(before.cars, here);
        before.because.push(statement);
      } else {
        const belonging: Belonging = part === undefined ? { what: "nothing" } : { what: "part", part };
        found.set(key, { belonging, cars: here, because: [statement] });
      }
    }
  }
  const result: Belongs[] = [...found.values()];
  if (silent !== NONE) result.push({ belonging: { what: "not on record" }, cars: silent, because: [] });
  return result;
}

/** The part that belongs there, if one does. */
export function partIn(belonging: Belonging): string | undefined {
  return belonging.what === "part" ? belonging.part : undefined;
}

/** Whether this part belongs there. */
export function isPart(belonging: Belonging, part: string | undefined): boolean {
  return part !== undefined && partIn(belonging) === part;
}

/** The part, "nothing", or "not on record". */
export function sayBelonging(belonging: Belonging): string {
  return belonging.what === "part" ? belonging.part : belonging.what;
}

/** What belongs there once parts were seen in the place: of several parts that the plant used, one of those seen. */
export function settledBy({ sets }: Space, belongs: readonly Belongs[], seen: readonly string[]): Belongs[] {
  const isSeen = ({ belonging }: Belongs): boolean => belonging.what === "part" && seen.includes(belonging.part);
  const settled = belongs.filter(isSeen).reduce<CarSet>((sum, it) => sets.or(sum, it.cars), NONE);
  if (settled === NONE) return [...belongs];
  return belongs
    .map((it) => (isSeen(it) ? it : { ...it, cars: sets.minus(it.cars, settled) }))
    .filter((it) => it.cars !== NONE);
}
