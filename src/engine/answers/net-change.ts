/**
 * What changed, all in all, between two model years for the car at hand. (The third law of the answers.)
 *
 * A *matter* is a place and the part in it, a setting with its conditions, or an interval: something that has one value
 * at a time. Its value in the car's own year is what the records say of this car; in another year, what they say of the cars
 * of that year that are otherwise like it. Where they say several things, it depends on what is not known yet.
 *
 *   If the value of a matter in the later year is that of the earlier year, there is no net change, whatever lay between.
 *   Otherwise it is one change from the first value to the last; each year in which the value changed is a step, with its record.
 *
 * A record that also tells people what to do (a procedure, a tool), or that states no matter at all, is a matter by itself:
 * it is new when it holds in the later year and not in the earlier one, and gone the other way round. A cancelled record
 * holds no longer. The car at hand is seen today: for it a cancellation counts whenever it came out, so nothing that was
 * cancelled since is ever new. Who knows another year knows what held in that year.
 */

import type { Catalog, ChangeRecord } from "../records/catalog.ts";
import { begins } from "../records/concerned.ts";
import { type Built, type Interval, type Mixed, type Setting, statementsOf } from "../records/statement.ts";
import { ALL, type CarSet, NONE } from "../scope/diagram.ts";
import { type Fact, NOT_ASKED } from "../scope/facts.ts";
import type { Space } from "../scope/space.ts";
import { span } from "../scope/trait.ts";
import { carsOf, type KnownCar } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { sayInterval, sayWindow } from "./say.ts";

type Valued = Built | Mixed | Setting | Interval;

export interface Matter {
  readonly kind: "part" | "setting" | "interval";
  /** The place, or the name of the setting or interval. */
  readonly name: string;
  readonly statements: readonly Valued[];
}

/** One value of a matter in a year: how it is said, who says so, and for which cars. */
export interface Value {
  readonly said: string;
  readonly statements: readonly Valued[];
  readonly cars: CarSet;
}

/** The cars of one model year that are like the car at hand. */
export interface YearOfCar {
  readonly year: number;
  readonly cars: CarSet;
  /** Cancellations that came out by then count. Left out: by the end of the year. */
  readonly readIn?: number;
}

export interface Step {
  readonly year: number;
  readonly values: readonly Value[];
}

export interface MatterChange {
  readonly matter: Matter;
  readonly from: readonly Value[];
  readonly to: readonly Value[];
  /** It has changed against every car of the first year that is like this one; otherwise only against some. */
  readonly certain: boolean;
  readonly steps: readonly Step[];
}

export const NOT_ON_RECORD = "not on record";
/** The values of a record that is a matter by itself. */
export const HOLDS = "holds";
export const HOLDS_NOT = "does not hold";

/** Every matter that the records state values for, each once, in the order of the records. */
export function mattersOf(catalog: Catalog): Matter[] {
  const matters = new Map<string, { kind: Matter["kind"]; name: string; statements: Valued[] }>();
  const add = (kind: Matter["kind"], name: string, statement: Valued): void => {
    const key = `${kind}:${name}`;
    const known = matters.get(key);
    if (known) known.statements.push(statement);
    else matters.set(key, { kind, name, statements: [statement] });
  };
  for (const record of catalog.records.values()) {
    for (const it of statementsOf(record.statements, "built")) add("part", it.place, it);
    for (const it of statementsOf(record.statements, "mixed")) add("part", it.place, it);
    for (const it of statementsOf(record.statements, "setting")) add("setting", it.name, it);
    for (const it of statementsOf(record.statements, "interval")) add("interval", it.name, it);
  }
  return [...matters.values()].flatMap((matter) => byConditions(catalog, matter));
}

/**
 * Two figures with different conditions are two settings, if one car has both. Where no car has both, the conditions are
 * part of what changed from one figure to the next.
 */
function byConditions({ space, buildable }: Catalog, matter: Matter): Matter[] {
  const groups = new Map<string, Valued[]>();
  for (const it of matter.statements) {
    const conditions = it.type === "setting" ? (it.conditions ?? "") : "";
    groups.set(conditions, [...(groups.get(conditions) ?? []), it]);
  }
  const sets = [...groups.values()].map((group) => space.any(group.map((it) => it.scope.cars)));
  const together = sets.some((a, i) =>
    sets.slice(i + 1).some((b) => space.sets.and(space.sets.and(a, b), buildable) !== NONE),
  );
  if (!together) return [matter];
  return [...groups].map(([conditions, statements]) => ({
    ...matter,
    name: conditions ? `${matter.name} (${conditions})` : matter.name,
    statements,
  }));
}

/**
 * Each year from the first to the last with its cars like this one; in years that the car itself may be of, that is the car.
 * The last one is the car at hand, which is read today.
 */
export function yearsOfCar(knowledge: CarKnowledge, car: KnownCar, from: number, to: number): YearOfCar[] {
  const { space } = knowledge.catalog;
  const yearTrait = space.role("year") as number;
  const years = from <= to ? range(from, to) : range(to, from).reverse();
  return years.map((year, i) => {
    const own = space.sets.and(car.cars, space.where(yearTrait, [[year, year]]));
    return {
      year,
      ...(i === years.length - 1 ? { readIn: Number.POSITIVE_INFINITY } : {}),
      cars:
        own === NONE
          ? carsOf(knowledge, knowledge.catalog.buildable, twinFacts(space, car.facts, year), car.fitted)
          : own,
    };
  });
}

/** What a car of another year that is like this one has in common with it: all but the year, and the numbers that run. */
export function twinFacts(space: Space, facts: readonly Fact[], year: number): Fact[] {
  const running = runningTraits(space);
  const yearTrait = space.role("year") as number;
  const text = `${space.trait(yearTrait).id}=${year}`;
  return [
    ...facts.filter(({ trait }) => trait === NOT_ASKED || !running.has(trait) || space.isFitted(trait)),
    { trait: yearTrait, values: [[year, year]], source: "said", text },
  ];
}

/** The traits that tell one car from the next of its kind: year, running numbers, serials, and what is fitted today. */
function runningTraits(space: Space): ReadonlySet<number> {
  return new Set(
    [...space.traits.keys()].filter((index) => {
      const { role, kind, of } = space.trait(index);
      return (
        role === "year" ||
        role === "sequence" ||
        role === "date" ||
        kind === "serial" ||
        of !== undefined ||
        index >= space.declared.length
      );
    }),
  );
}

/** What the records say of a matter for some cars of one year. Nothing said for some of them is a value too: "not on record". */
export function valuesIn(knowledge: CarKnowledge, matter: Matter, { year, cars, readIn = year }: YearOfCar): Value[] {
  const { catalog } = knowledge;
  const { sets } = catalog.space;
  const values = new Map<string, { statements: Valued[]; cars: CarSet }>();
  let silent = cars;
  for (const statement of matter.statements) {
    const record = catalog.records.get(statement.record);
    if (record && holdsFrom(record) > year) continue;
    const stated = sets.and(cars, statement.scope.cars);
    // What the plant fitted stays fitted; a figure or an interval ends with its record.
    const isInstruction = statement.type === "setting" || statement.type === "interval";
    const here = isInstruction && record ? sets.minus(stated, endedBy(knowledge, record, readIn)) : stated;
    if (here === NONE) continue;
    silent = sets.minus(silent, here);
    for (const said of sayValues(statement)) {
      const same = values.get(said);
      if (same) {
        same.statements.push(statement);
        same.cars = sets.or(same.cars, here);
      } else values.set(said, { statements: [statement], cars: here });
    }
  }
  const stated = [...values].map(([said, value]) => ({ said, ...value }));
  return silent === NONE ? stated : [...stated, { said: NOT_ON_RECORD, statements: [], cars: silent }];
}

/** The cars for which other records have ended a record's instructions by a year. */
function endedBy({ catalog, cancelsByRecord }: CarKnowledge, record: ChangeRecord, year: number): CarSet {
  const cancels = (cancelsByRecord.get(record.id) ?? []).filter((cancel) => {
    const by = catalog.records.get(cancel.record);
    return by !== undefined && (begins(catalog, by) ?? Number.POSITIVE_INFINITY) <= year;
  });
  return catalog.space.any(cancels.map((cancel) => cancel.scope?.cars ?? ALL));
}

/** A record about cars of every year says nothing for the years before it came out. */
function holdsFrom(record: ChangeRecord): number {
  return record.facts["in-force-from"] ?? Number.NEGATIVE_INFINITY;
}

/** Several in a mixed stretch, of which a car has one or the other. */
function sayValues(statement: Valued): readonly string[] {
  if (statement.type === "built") return [statement.part ?? "nothing fitted"];
  if (statement.type === "mixed") return statement.parts;
  if (statement.type === "interval") return [sayInterval(statement)];
  return [
    `${sayWindow(statement.low, statement.high)} ${statement.unit}${statement.conditions ? `, ${statement.conditions}` : ""}`,
  ];
}

/** The net change of one matter over some years; nothing where there is none for any car that this can be. */
export function netChange(
  knowledge: CarKnowledge,
  matter: Matter,
  years: readonly YearOfCar[],
): MatterChange | undefined {
  const byYear = years.map((one) => ({ year: one.year, values: valuesIn(knowledge, matter, one) }));
  const first = byYear[0]?.values ?? [];
  const last = byYear.at(-1)?.values ?? [];
  const { space } = knowledge.catalog;
  const cancels = matter.statements.flatMap((it) => knowledge.cancelsByRecord.get(it.record) ?? []);
  const scopes = [...matter.statements, ...cancels].flatMap((it) => it.scope?.cars ?? []);
  const changed = changedCars(space, first, last, namedIn(space, scopes));
  if (changed === "none") return undefined;
  const steps = byYear.slice(1).filter(({ values }, i) => sayAll(values) !== sayAll(byYear[i]?.values ?? []));
  return { matter, from: first, to: last, certain: changed === "all", steps };
}

/** The cars with everything forgotten that tells one from the next of its kind: what two years have in common. */
export function kindOfCar(space: Space, cars: CarSet): CarSet {
  return space.sets.forget(cars, runningTraits(space));
}

/**
 * Each car of the last year is compared with those of the first year that are like it in what the matter depends on: the traits
 * that its statements name, but for what runs. Where there was none, with those that are alike but for equipment; where there
 * was none, with those of the same line; or else with any of them.
 * Changed for all: none of the cars compared has the same value. For none: no value differs.
 */
export function changedCars(
  space: Space,
  first: readonly Value[],
  last: readonly Value[],
  named: ReadonlySet<number>,
): "all" | "some" | "none" {
  if (first.length === 1 && last.length === 1) return first[0]?.said === last[0]?.said ? "none" : "all";
  const { sets } = space;
  let same = false;
  let differing = false;
  let rest = last;
  for (const traits of likenesses(space, named)) {
    const before = first.map(({ said, cars }) => ({ said, kind: sets.forget(cars, traits) }));
    const matched = space.any(before.map(({ kind }) => kind));
    for (const after of rest)
      for (const { said, kind } of before) {
        if (sets.and(after.cars, kind) === NONE) continue;
        if (said === after.said) same = true;
        else differing = true;
      }
    rest = rest
      .map((value) => ({ ...value, cars: sets.minus(value.cars, matched) }))
      .filter(({ cars }) => cars !== NONE);
    if (rest.length === 0) break;
  }
  if (!differing) return "none";
  return same ? "some" : "all";
}

/** What is not looked at when cars of two years are compared, from the closest likeness to none at all. */
function likenesses(space: Space, named: ReadonlySet<number>): ReadonlySet<number>[] {
  const running = runningTraits(space);
  const all = [...space.traits.keys()];
  const line = space.role("line");
  const besides = all.filter((trait) => running.has(trait) || !named.has(trait));
  return [
    new Set(besides),
    new Set([...besides, ...all.filter((trait) => space.trait(trait).kind === "flag")]),
    new Set(all.filter((trait) => trait !== line)),
    new Set(all),
  ];
}

/** The traits that the scopes of some statements ask for. */
export function namedIn(space: Space, scopes: Iterable<CarSet>): ReadonlySet<number> {
  return new Set([...scopes].flatMap((cars) => [...space.sets.traitsOf(cars)]));
}

function sayAll(values: readonly Value[]): string {
  return values
    .map((value) => value.said)
    .sort()
    .join("; ");
}

function range(from: number, to: number): number[] {
  return Array.from({ length: to - from + 1 }, (_, i) => from + i);
}

/** The years of the data. */
export function yearSpan({ space }: Catalog): readonly [number, number] {
  return span(space.trait(space.role("year") as number));
}

/** Whether a record tells people what to do, or states no matter at all: then it is new, or gone, by itself. */
export function isMatterItself(record: ChangeRecord): boolean {
  const types = new Set(record.statements.map((it) => it.type));
  return (
    types.has("procedure") ||
    types.has("tool") ||
    !["built", "mixed", "setting", "interval"].some((type) => types.has(type as "built"))
  );
}

/** For which cars of a year a record holds: begun, with them in its scope, and not cancelled for them by then; and for which not. */
export function holdsIn(
  knowledge: CarKnowledge,
  record: ChangeRecord,
  { year, cars, readIn = year }: YearOfCar,
): Value[] {
  const { catalog } = knowledge;
  const { sets } = catalog.space;
  const begun = (begins(catalog, record) ?? Number.POSITIVE_INFINITY) <= year;
  const held = begun ? sets.minus(sets.and(cars, record.scope.cars), endedBy(knowledge, record, readIn)) : NONE;
  return [
    { said: HOLDS, statements: [], cars: held },
    { said: HOLDS_NOT, statements: [], cars: sets.minus(cars, held) },
  ].filter((value) => value.cars !== NONE);
}
