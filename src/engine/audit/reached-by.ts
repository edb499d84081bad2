import { askedFor } from "../interchange/current.ts";
import { type PartIndex, whereHolds } from "../interchange/part-index.ts";
import type { StandsIn, Supersedes } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";

/**
 * The built cars that a permission or a delivery rule speaks of: within its scope, and not ended,
 *   those built with the part whose place is taken, or for which another is delivered;
 *   where no car was built with it, all of them, for it may be on any;
 *   where the place is empty, those of which a record says so; if none says it of any car, all of them.
 */
export function reachedBy(index: PartIndex, it: StandsIn | Supersedes): CarSet {
  const { buildable } = index.catalog;
  const old = it.type === "supersedes" ? it.old : it.for;
  const cars = old === undefined ? withNothing(index, it as StandsIn) : askedFor(index, old, buildable);
  return whereHolds(index, it, cars, it.type === "stands-in" ? it.place : undefined);
}

function withNothing({ catalog, builtAt, space }: PartIndex, { part, place }: StandsIn): CarSet {
  const component = catalog.components.get(catalog.parts.get(part)?.component ?? "");
  const places = place === undefined ? (component?.places ?? []) : [place];
  const empty = space.any(
    places.flatMap((one) =>
      (builtAt.get(one) ?? []).flatMap((it) => (it.type === "built" && it.part === undefined ? [it.scope.cars] : [])),
    ),
  );
  const cars = space.sets.and(catalog.buildable, empty);
  return cars === NONE ? catalog.buildable : cars;
}
