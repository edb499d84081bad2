import type { Catalog } from "../../records/catalog.ts";
import type { Place } from "../../records/complaint.ts";
import type { CarSet } from "../../scope/diagram.ts";
import type { Scope } from "../../scope/scope.ts";
import { alternativesOf } from "../alternatives-of.ts";
import { inRecord, placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/** Some built car is in the scope of every record, and in that of every statement; and in each of the alternatives of a scope. */
export const noSuchCar: Rule = {
  id: "no-such-car",
  gravity: "error",
  about: "Every scope has at least one car that was really built.",
  why: "The statement speaks to nobody: it was meant for other cars, and these are told nothing.",
  mend: "Compare the scope with vehicles/: most often a year, an engine or a plant is a slip.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": ["scope: line=B; at=K59#0412+\nbuilt", "scope: line=B; plant=D; my=1958\nbuilt"],
    },
    right: {},
  },
  *find({ catalog }) {
    for (const record of catalog.records.values()) {
      const scoped = [{ scope: record.scope as Scope | undefined, at: inRecord(record, "scope") }].concat(
        record.statements.flatMap((it) =>
          "scope" in it && it.scope ? [{ scope: it.scope, at: placeOf(catalog, it, "scope") }] : [],
        ),
      );
      for (const { scope, at } of scoped)
        for (const place of scope ? emptyIn(catalog, scope) : [])
          yield {
            at: { ...at, ...place.at },
            message: `no car that was built is in this ${place.what}`,
            hint: "compare it with the combinations in vehicles/",
            records: [record.id],
            names: [],
          };
    }
  },
};

/** The whole, or those of its alternatives that no car meets. */
function emptyIn({ space, buildable }: Catalog, scope: Scope): { what: string; at: Pick<Place, "within"> }[] {
  const isEmpty = (cars: CarSet): boolean => !space.sets.meet(buildable, cars);
  if (isEmpty(scope.cars)) return [{ what: "scope", at: {} }];
  if (scope.alternatives.length === 1) return [];
  return alternativesOf(space, scope).flatMap(({ cars, within }) =>
    isEmpty(cars) ? [{ what: "alternative of the scope", at: { within } }] : [],
  );
}
