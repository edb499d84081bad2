/** A car that was not built, or is no longer as built: which of its facts do not go together. */
import type { Catalog } from "../records/catalog.ts";
import { conflict } from "../scope/facts.ts";
import type { KnownCar } from "./car.ts";
import { sayFact } from "./look.ts";
import type { FactView } from "./shapes/look.ts";

export const NO_SUCH_CAR =
  "No such car was built, or it is no longer as built. Read the plate again, or say what was found on the car.";

export interface ConflictView {
  readonly facts: FactView[];
  readonly notNeeded: FactView[];
  readonly conflict: FactView[];
}

/** A smallest set of facts that no car was built with carries the verdict; the others change nothing. For spreading into an answer. */
export function sayConflict({ space, buildable }: Catalog, { facts }: KnownCar): ConflictView {
  const clash = conflict(space, buildable, facts);
  const say = (some: KnownCar["facts"]): FactView[] => some.map((fact) => sayFact(space, fact));
  return { facts: say(clash), notNeeded: say(facts.filter((fact) => !clash.includes(fact))), conflict: say(clash) };
}
