import { belongsAt } from "../../interchange/belongs.ts";
import { companionStanding } from "../../interchange/companion-standing.ts";
import { fitsAt, mayBeFitted } from "../../interchange/fits.ts";
import { carsBuiltWith, isPermission, type PartIndex, whereHolds } from "../../interchange/part-index.ts";
import { builtPlaces, isOtherHand } from "../../interchange/places.ts";
import { nothingReported } from "../../interchange/reported.ts";
import { standsFor } from "../../interchange/stands-for.ts";
import type { StandsIn, Statement, Supersedes } from "../../records/statement.ts";
import { type CarSet, NONE } from "../../scope/diagram.ts";
import { placeOf } from "../place-of.ts";
import type { Fault, Rule, World } from "../rule.ts";

/**
 * Wherever a permission holds, by the place and by what the plant fitted there, some set of companions can go on with the part; where
 * another part belongs in the place of a companion, a record speaks of the two; and what a delivery rule sends along is not refused
 * on the cars that it sends it to.
 */
export const closedPermission: Rule = {
  id: "closed-permission",
  gravity: "error",
  about: "Everything that must go along, or is in the kit, can go on, on every car that the statement is about.",
  why: "The permission cannot be carried out: the last part of the set is refused when the car is already in pieces.",
  mend: "Take the cars that the companion is refused on out of the scope, or name the companion that these cars need. What is in a kit for some cars only stands there by its name.",
  example: {
    wrong: {
      "changes/1959/HY59-01.md": [
        "why: It runs dry. }",
        "why: It runs dry. }\n  - { part: HT-201, for: none, verdict: does-not-go-on, why: The flange is square., scope: my<=1958 }",
      ],
    },
    right: {
      "changes/1959/HY59-01.md": [
        "with: [HT-201] }\n",
        "with: [HT-201], scope: my>=1959 }\n",
        "do: Bleed the lift., scope: fitted=HT-201 }",
        "do: Bleed the lift., scope: my>=1959; fitted=HT-201 }",
        "why: It runs dry. }",
        "why: It runs dry. }\n  - { part: HT-201, for: none, verdict: does-not-go-on, why: The flange is square., scope: my<=1958 }",
      ],
    },
  },
  *find(world) {
    const { catalog, index } = world;
    for (const statements of index.standInsOf.values())
      for (const it of statements)
        if (isPermission(it)) {
          if (it.with.length > 0 || hasCompanions(index, it) || index.contentsOf.has(it.part))
            yield* closedFits(world, it);
          yield* unspokenCompanions(world, it);
        }
    for (const orders of index.ordersOf.values())
      for (const order of orders)
        for (const [i, part] of order.with.entries()) {
          const cars = catalog.space.sets.and(catalog.buildable, whereHolds(index, order, asked(index, order)));
          if (cars === NONE) continue;
          for (const standing of companionStanding(index, part, cars, nothingReported()))
            if (standing.how === "closed" && standing.by.length > 0)
              yield fault(world, order, standing.cars, standing.by, `${part} is ordered along, and cannot go on`, [
                "with",
                i,
              ]);
        }
  },
};

/** A part that is asked along by it may ask for more by its own statements. */
function hasCompanions(index: PartIndex, { part }: StandsIn): boolean {
  return (index.standInsOf.get(part) ?? []).some((it) => it.with.length > 0);
}

function asked(index: PartIndex, { old }: Supersedes): CarSet {
  const built = carsBuiltWith(index, old);
  return built === NONE ? index.catalog.buildable : built;
}

function* closedFits(world: World, it: StandsIn): Generator<Fault> {
  const { catalog, index } = world;
  const { sets } = catalog.space;
  for (const place of placesOf(world, it)) {
    if (place !== undefined && isOtherHand(index, it.part, place)) continue;
    const there = place === undefined ? catalog.buildable : belongs(index, place, it.for);
    const cars = sets.and(whereHolds(index, it, catalog.buildable, place), there);
    if (cars === NONE || isRefused(index, it, cars, place)) continue;
    for (const fit of fitsAt(index, { part: it.part, place, cars, on: nothingReported() })) {
      if (mayBeFitted(fit.verdict)) continue;
      const belonging = fit.belonging.what === "part" ? fit.belonging.part : undefined;
      if (belonging !== it.for || fit.belonging.what === "not on record") continue;
      yield fault(
        world,
        it,
        fit.cars,
        fit.refusals,
        `${it.part} may go on here, but not all that ${index.contentsOf.has(it.part) ? "is in it or " : ""}must go along with it`,
        [it.with.length > 0 ? "with" : "part"],
      );
      return;
    }
  }
}

/** Where it permits its part; a part that goes nowhere in particular, such as a kit, has no place. */
function placesOf(world: World, it: StandsIn): readonly (string | undefined)[] {
  const { catalog, index } = world;
  if (it.place !== undefined) return [it.place];
  if (it.for !== undefined) return builtPlaces(index, it.for);
  const own = catalog.components.get(componentOf(world, it.part))?.places ?? [];
  return own.length > 0 ? own : [undefined];
}

/** A companion in whose place another part belongs, of which no record says that the companion may stand in for it, or may not. */
function* unspokenCompanions(world: World, it: StandsIn): Generator<Fault> {
  const { catalog, index } = world;
  const built = it.for === undefined ? catalog.buildable : carsBuiltWith(index, it.for);
  const cars = catalog.space.sets.and(catalog.buildable, whereHolds(index, it, built, it.place));
  for (const [i, companion] of it.with.entries())
    for (const place of builtPlaces(index, companion).filter((one) => !isOtherHand(index, companion, one)))
      for (const { belonging, because, cars: here } of belongsAt(index, place, cars)) {
        if (belonging.what !== "part" || belonging.part === companion) continue;
        const silent = standsFor(index, companion, belonging.part, here, place).find(
          (stands) => stands.verdict === "not on record",
        );
        if (!silent) continue;
        const message = `${companion} is to go along, and no record says that it may take the place of ${belonging.part} on these cars`;
        const found = fault(world, it, silent.cars, [], message, ["with", i]);
        yield {
          ...found,
          records: [it.record, ...because.map(({ record }) => record)],
          also: because.map((one) => ({ ...placeOf(catalog, one), message: `${belonging.part} belongs there` })),
        };
        return;
      }
}

/** The cars of which a statement says that this part, or nothing, belongs in a place. */
function belongs(index: PartIndex, place: string, part: string | undefined): CarSet {
  const there = (index.builtAt.get(place) ?? []).filter((it) =>
    it.type === "mixed" ? part !== undefined && it.parts.includes(part) : it.part === part,
  );
  return index.space.any(there.map((statement) => statement.scope.cars));
}

/** What a record refuses by name is the matter of another rule. */
function isRefused(index: PartIndex, it: StandsIn, cars: CarSet, place: string | undefined): boolean {
  return (index.standInsOf.get(it.part) ?? []).some(
    (other) => !isPermission(other) && other.for === it.for && whereHolds(index, other, cars, place) !== NONE,
  );
}

function componentOf({ catalog }: World, part: string): string {
  return catalog.parts.get(part)?.component ?? "";
}

function fault(
  { catalog }: World,
  it: StandsIn | Supersedes,
  cars: CarSet,
  by: readonly StandsIn[],
  message: string,
  field: readonly (string | number)[],
): Fault {
  const refusals = by.filter((other) => other !== it && !isPermission(other));
  return {
    at: placeOf(catalog, it, ...field),
    message: refusals.length > 0 ? `${message}: ${refusals.map(sayRefusal).join("; ")}` : message,
    hint: "take these cars out of the scope, or name what they need instead",
    records: [it.record, ...new Set(refusals.map(({ record }) => record))],
    names: [...(it.type === "stands-in" ? [it.part, it.for ?? ""] : [it.old, it.new]), ...it.with].filter(Boolean),
    also: refusals.map((other) => ({ ...placeOf(catalog, other as Statement), message: sayRefusal(other) })),
    cars,
  };
}

function sayRefusal({ record, part, for: other, why }: StandsIn): string {
  return `${record} refuses ${part}${other === undefined ? "" : ` in place of ${other}`} (${why})`;
}
