import type { Place } from "../../records/complaint.ts";
import { ALL, type CarSet, NONE } from "../../scope/diagram.ts";
import { carsOf } from "../../scope/read-scope.ts";
import type { Alternative, Clause, Scope } from "../../scope/scope.ts";
import type { Space } from "../../scope/space.ts";
import type { Trait } from "../../scope/trait.ts";
import { inRecord, placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/**
 * In a record of the kind 'running', each alternative of its scope and of what the plant fitted names a plant, a point in a plant's
 * production, or a component's own number; but for alternatives about cars of a kind which the record parts nowhere. Where its
 * words say "whatever the plant", a date or a number of the car will do.
 */
export const runningChangeWithoutPlant: Rule = {
  id: "running-change-without-plant",
  gravity: "error",
  about: "A running change says from which point on it holds, and at which plant, or 'whatever the plant'.",
  why: "Cars of the plant that went on with the old part are told that they have the new one.",
  mend: "Write at=<plant><year>#<number>+ or plant=… into each alternative, or use the component's own number.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "part: HT-102, scope: line=B; at=K59#0412+ }",
        "part: HT-102, scope: line=B; my>=1960 }",
      ],
    },
    right: {
      "changes/1959/HY59-01.md": [
        "part: HT-102, scope: line=B; at=K59#0412+ }",
        "part: HT-102, scope: line=B; plant=K; my>=1960 }",
      ],
    },
  },
  *find({ catalog }) {
    const { space, buildable } = catalog;
    for (const record of catalog.records.values()) {
      if (!record.facts.kinds.includes("running") || record.facts.withdrawn !== undefined) continue;
      const isFree = /\bwhatever the plant\b/i.test(record.facts.starts);
      const told = [
        ...alternativesOf(space, record.scope, inRecord(record, "scope")),
        ...record.statements.flatMap((it) =>
          it.type === "built" || it.type === "mixed"
            ? alternativesOf(space, it.scope, placeOf(catalog, it, "scope"))
            : [],
        ),
      ].map((it) => ({ ...it, isPlaced: isPlaced(space, it.alternative, isFree) }));
      const placed = told.filter((it) => it.isPlaced);
      const changing = space.sets.forget(
        space.any(placed.map((it) => space.sets.and(buildable, it.cars))),
        pointsOf(space),
      );
      const seen = new Set<string>();
      for (const { at, cars, isPlaced } of told) {
        // Other cars, which this record parts nowhere, may be spoken of as well.
        const concerned = placed.length === 0 ? cars : space.sets.and(cars, changing);
        const set = space.sets.and(buildable, concerned);
        if (isPlaced || set === NONE || seen.has(`${at.path}`)) continue;
        seen.add(`${at.path}`);
        yield {
          at,
          message: "this running change names no plant and no point here",
          hint: "write at=<plant><year>#<number>+ or plant=…, or the component's own number",
          records: [record.id],
          names: [],
          cars: set,
        };
      }
    }
  },
};

interface Told {
  readonly at: Place;
  readonly alternative: Alternative;
  readonly cars: CarSet;
}

function alternativesOf(space: Space, { alternatives }: Scope, at: Place): Told[] {
  return alternatives.map((alternative) => ({
    at,
    alternative,
    cars: alternative.reduce<CarSet>((set, clause) => space.sets.and(set, carsOf(space, clause)), ALL),
  }));
}

/** What a change within the year is parted by. */
function pointsOf(space: Space): ReadonlySet<number> {
  return new Set([...space.declared.keys()].filter((trait) => isPoint(space.trait(trait))));
}

function isPoint({ role, kind, of }: Trait): boolean {
  return (
    role === "plant" ||
    role === "sequence" ||
    role === "date" ||
    (role === undefined && (kind === "serial" || (kind === "whole" && of !== undefined)))
  );
}

function isPlaced(space: Space, alternative: Alternative, isFree: boolean): boolean {
  const places = (clause: Clause): boolean => {
    if (clause.type === "point") return true;
    if (clause.type === "flags") return clause.traits.some((trait) => space.isFitted(trait));
    const trait = space.trait(clause.trait);
    // Numbers and dates of the car are each plant's own.
    return isPoint(trait) && (isFree || (trait.role !== "sequence" && trait.role !== "date"));
  };
  return alternative.some(places);
}
