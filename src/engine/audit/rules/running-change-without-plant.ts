import type { Catalog } from "../../records/catalog.ts";
import type { Place } from "../../records/complaint.ts";
import { groupBy } from "../../records/group-by.ts";
import type { CarSet } from "../../scope/diagram.ts";
import type { Alternative, Clause, Scope } from "../../scope/scope.ts";
import type { Space } from "../../scope/space.ts";
import type { Trait } from "../../scope/trait.ts";
import { alternativesOf } from "../alternatives-of.ts";
import { inRecord, placeOf } from "../place-of.ts";
import type { Rule } from "../rule.ts";

/**
 * In a record of the kind 'running', each alternative of its scope, and of what the plant fitted in a place, names a plant, a point in
 * a plant's production, or a component's own number; but for alternatives about cars of a kind which no other one of that place
 * parts. Where its words say "whatever the plant", a year, a date or a number of the car will do.
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
      const built = record.statements.filter((it) => it.type === "built" || it.type === "mixed");
      const byPlace = [...groupBy(built, (it) => [it.place]).values()].map((statements) =>
        statements.flatMap((it) => toldOf(space, it.scope, placeOf(catalog, it, "scope"))),
      );
      const own = toldOf(space, record.scope, inRecord(record, "scope"));
      const seen = new Set<string>();
      for (const told of [own, ...byPlace])
        for (const { at, cars } of loose(catalog, told, told === own, isFree)) {
          if (seen.has(`${at.path}`)) continue;
          seen.add(`${at.path}`);
          yield {
            at,
            message: "this running change names no plant and no point here",
            hint: "write at=<plant><year>#<number>+ or plant=…, or the component's own number",
            records: [record.id],
            names: [],
            cars: space.sets.and(buildable, cars),
          };
        }
    }
  },
};

/** Alternatives that name no plant, about cars of a kind that others beside them part; of a record's own scope also where none does. */
function loose({ space, buildable }: Catalog, told: readonly Told[], isOwn: boolean, isFree: boolean): Told[] {
  const placed = told.filter((it) => isPlaced(space, it.alternative, isFree));
  const parted = space.sets.forget(space.any(placed.map((it) => space.sets.and(buildable, it.cars))), pointsOf(space));
  return told
    .filter((it) => !placed.includes(it))
    .map((it) => ({ ...it, cars: isOwn && placed.length === 0 ? it.cars : space.sets.and(it.cars, parted) }))
    .filter((it) => space.sets.meet(buildable, it.cars));
}

interface Told {
  readonly at: Place;
  readonly alternative: Alternative;
  readonly cars: CarSet;
}

function toldOf(space: Space, scope: Scope, at: Place): Told[] {
  return alternativesOf(space, scope).map(({ alternative, cars }) => ({ at, alternative, cars }));
}

/** What stretches of a running change are told apart by; it goes on into later years. */
function pointsOf(space: Space): ReadonlySet<number> {
  return new Set(
    [...space.declared.keys()].filter((trait) => isPoint(space.trait(trait)) || space.trait(trait).role === "year"),
  );
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
    return (
      (isFree && trait.role === "year") ||
      (isPoint(trait) && (isFree || (trait.role !== "sequence" && trait.role !== "date")))
    );
  };
  return alternative.some(places);
}
