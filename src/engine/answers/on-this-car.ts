/**
 * Whether the plant built a part into the car at hand, in some places or in one.
 *
 *   yes: into every car that it can be; no: into none, though it was built into others; perhaps: into some of them, or where only
 *   looking tells. Unknown: no record says that the plant built it into any car.
 *   Beside it: whether a record permits it in place of a part that such a car was built with, or in an empty place; what refuses it in
 *   place of such a part; and, where a place is asked for, in which other places such a car has it.
 */
import { isPermission, whereHolds } from "../interchange/part-index.ts";
import type { StandsIn } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { partIndexOf } from "./part-indexes.ts";
import { VERDICT_WORDS } from "./say.ts";

export interface OnThisCar {
  readonly builtHere: "yes" | "no" | "perhaps" | "unknown";
  readonly mayStandIn: boolean;
  /** Statements that refuse it in place of what such a car was built with. */
  readonly refusals: readonly StandsIn[];
  readonly elsewhere: readonly string[];
}

export function onThisCar(
  { catalog }: CarKnowledge,
  { part, place, cars }: { part: string; place?: string | undefined; cars: CarSet },
): OnThisCar {
  const index = partIndexOf(catalog);
  const { sets } = catalog.space;
  const isHere = (it: { readonly place: string }): boolean => place === undefined || it.place === place;
  const carsWith = (one: string): { surely: CarSet; perhaps: CarSet } => {
    const built = (index.builtWith.get(one) ?? []).filter(isHere);
    const of = (type: "built" | "mixed"): CarSet =>
      catalog.space.any(built.filter((it) => it.type === type).map((it) => it.scope.cars));
    return { surely: of("built"), perhaps: of("mixed") };
  };
  const { surely, perhaps } = carsWith(part);
  const isAbout = (it: StandsIn): boolean => {
    const holds = whereHolds(index, it, cars, place ?? it.place);
    if (it.for === undefined) return holds !== NONE;
    const other = carsWith(it.for);
    return sets.meet(holds, sets.or(other.surely, other.perhaps));
  };
  const about = (index.standInsOf.get(part) ?? []).filter(isAbout);
  const mayStandIn = about.some(isPermission);
  const refusals = about.filter((it) => !isPermission(it));
  const others = (index.builtWith.get(part) ?? []).filter((it) => !isHere(it) && sets.meet(cars, it.scope.cars));
  const beside = { mayStandIn, refusals, elsewhere: [...new Set(others.map((it) => it.place))] };
  if ((index.builtWith.get(part) ?? []).length === 0) return { builtHere: "unknown", ...beside };
  if (sets.minus(cars, surely) === NONE) return { builtHere: "yes", ...beside };
  return { builtHere: sets.meet(cars, sets.or(surely, perhaps)) ? "perhaps" : "no", ...beside };
}

/** What a record says against a part in place of what such a car was built with. */
export interface RefusedHere {
  readonly for: string;
  readonly says: string;
  readonly why?: string | undefined;
  readonly record: string;
}

export function viewRefusal(it: StandsIn): RefusedHere {
  const why = it.why === undefined ? {} : { why: it.why };
  return { for: it.for ?? "nothing", says: VERDICT_WORDS[it.verdict], ...why, record: it.record };
}

export function sayRefusal(part: string, it: RefusedHere): string {
  const why = it.why ? `: ${it.why.replace(/\.$/, "")}` : "";
  return `${part} ${it.says} in place of ${it.for} on this car${why} (${it.record}).`;
}
