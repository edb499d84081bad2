/**
 * What changed, all in all, between two model years for the car at hand. (The third law of the answers.)
 *
 * A *matter* is a place and the part in it, a setting with its conditions, or an interval: something that has one value
 * at a time. Its value in the car's own year is what the records say of this car; in another year, what they say of the cars
 * of that year that are otherwise like it. Where they say several things, it depends on what is not known yet.
 *
 *   If the value of a matter in the later year is that of the earlier year, there is no net change, whatever lay between.
 *   Otherwise it is one change from the first value to the last; each year in which the value changed is a step, with its record.
 *   Which cars of the two years are compared, and what counts as a value, stands in compare-years.ts. What is on record in one
 *   of the years only is no change that anybody knows of: it is told apart (in-place-of.ts says which record to read instead).
 *
 * The year known is as the plant built it. The car at hand is as it is found: in the place of a part that was seen on it stands
 * that part, and the figures and procedures that belong to the part came to the car with it.
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
import type { Fact } from "../scope/facts.ts";
import type { Space } from "../scope/space.ts";
import { span } from "../scope/trait.ts";
import { type AsFound, asFound } from "./as-found.ts";
import { carsOf, type KnownCar } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { compareYears, type Difference, NOT_ON_RECORD, namedIn, runningTraits } from "./compare-years.ts";
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
  /** Somebody saw the part on the car at hand. */
  readonly asFound?: true;
}

/** The cars of one model year that are like the car at hand. */
export interface YearOfCar {
  readonly year: number;
  readonly cars: CarSet;
  /** Cancellations that came out by then count. Left out: by the end of the year. */
  readonly readIn?: number;
  /** Parts seen on the car at hand, by place. */
  readonly found?: ReadonlyMap<string, AsFound>;
}

export interface Step extends YearOfCar {
  readonly values: readonly Value[];
}

/** What two years differ in, for some of the cars. */
export interface Sides {
  readonly from: readonly Value[];
  readonly to: readonly Value[];
  /** The cars of the last year that have part in it, and those of the first that they are compared with. */
  readonly cars: CarSet;
  readonly before: CarSet;
  /** It is so of all cars of the last year, against every car of the first that is like them; otherwise only of, or against, some. */
  readonly certain: boolean;
}

export interface MatterChange extends Sides {
  readonly matter: Matter;
  /** The same by kinds of cars, each with its own values. */
  readonly pieces: readonly Sides[];
  readonly steps: readonly Step[];
}

export interface NetChange {
  readonly changes: readonly MatterChange[];
  /** For some cars the matter is on record in one of the years only; the other side is empty. */
  readonly oneSided: readonly Sides[];
}

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
 * Each year from the first to the last with its cars like this one; in years that the car itself may be of, that is the car. All
 * are as the plant built them, but for the last one: that is the car at hand, which is read today, with what was found on it.
 */
export function yearsOfCar(knowledge: CarKnowledge, car: KnownCar, from: number, to: number): YearOfCar[] {
  const { space, buildable } = knowledge.catalog;
  const yearTrait = space.role("year") as number;
  const years = from <= to ? range(from, to) : range(to, from).reverse();
  const facts = car.facts.filter((fact) => !isFittedSince(space, fact));
  const built = car.fitted.length === 0 ? car.cars : carsOf(knowledge, buildable, facts, []);
  return years.map((year, i) => {
    const isLast = i === years.length - 1;
    const own = space.sets.and(isLast ? car.cars : built, space.where(yearTrait, [[year, year]]));
    const twins = (): CarSet =>
      isLast
        ? carsOf(knowledge, buildable, twinFacts(space, car.facts, year), car.fitted)
        : carsOf(knowledge, buildable, twinFacts(space, facts, year), []);
    return {
      year,
      ...(isLast ? { readIn: Number.POSITIVE_INFINITY, found: asFound(knowledge, car) } : {}),
      cars: own === NONE ? twins() : own,
    };
  });
}

function isFittedSince(space: Space, fact: Fact): boolean {
  return fact.part !== undefined || space.isFitted(fact.trait);
}

/** What a car of another year that is like this one has in common with it: all but the year, and the numbers that run. */
export function twinFacts(space: Space, facts: readonly Fact[], year: number): Fact[] {
  const running = runningTraits(space);
  const yearTrait = space.role("year") as number;
  const text = `${space.trait(yearTrait).id}=${year}`;
  return [
    ...facts.filter((fact) => isFittedSince(space, fact) || !running.has(fact.trait)),
    { trait: yearTrait, values: [[year, year]], source: "said", text },
  ];
}

/**
 * What the records say of a matter for some cars of one year. Nothing said for some of them is a value too: "not on record".
 * In the place of a part that was found on the car at hand is that part, be it what the plant fitted or not.
 */
export function valuesIn(knowledge: CarKnowledge, matter: Matter, year: YearOfCar): Value[] {
  const built = statedIn(knowledge, matter, year);
  const found = matter.kind === "part" ? year.found?.get(matter.name) : undefined;
  if (!found) return built;
  const { space } = knowledge.catalog;
  const silent = built.filter((value) => value.said === NOT_ON_RECORD);
  const stated = space.any(built.filter((value) => !silent.includes(value)).map((value) => value.cars));
  // Of some cars that this can be the records know such a place: it is one of those. Or of none: then the part shows that there is one.
  const cars = stated === NONE ? year.cars : stated;
  const seen = found.parts.map((said): Value => ({ said, statements: [], cars, asFound: true }));
  const kept = found.certain
    ? []
    : built.filter((value) => !silent.includes(value) && !found.parts.includes(value.said));
  return [...kept, ...seen, ...(stated === NONE ? [] : silent)];
}

function statedIn(knowledge: CarKnowledge, matter: Matter, { year, cars, readIn = year }: YearOfCar): Value[] {
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

/**
 * The net change of one matter over some years: as a rule one. Where cars changed places, so that the values of the two years
 * are the same all in all, each piece is a change of its own.
 */
export function netChange(knowledge: CarKnowledge, matter: Matter, years: readonly YearOfCar[]): NetChange {
  const { space } = knowledge.catalog;
  const byYear = years.map((one) => ({ ...one, values: valuesIn(knowledge, matter, one) }));
  const first = byYear[0]?.values ?? [];
  const last = byYear.at(-1)?.values ?? [];
  const cancels = matter.statements.flatMap((it) => knowledge.cancelsByRecord.get(it.record) ?? []);
  const scopes = [...matter.statements, ...cancels].flatMap((it) => it.scope?.cars ?? []);
  const { changed, oneSided } = compareYears(space, first, last, namedIn(space, scopes));
  const part = (pieces: readonly Difference[]): MatterChange => ({
    matter,
    ...sidesOf(space, first, last, pieces),
    pieces: pieces.map((piece) => sidesOf(space, first, last, [piece])),
    steps: stepsOf(space, byYear, pieces),
  });
  const whole = changed.length > 0 ? [part(changed)] : [];
  return {
    changes: whole.some(({ from, to }) => sayAll(from) === sayAll(to)) ? changed.map((one) => part([one])) : whole,
    oneSided: oneSided.map((one) => sidesOf(space, first, last, [one])),
  };
}

/** What two years differ in, for cars of both: only the values of cars that have part in it. */
export function sidesOf(
  space: Space,
  first: readonly Value[],
  last: readonly Value[],
  pieces: readonly Difference[],
): Sides {
  const { sets } = space;
  const all = space.any(last.map((value) => value.cars));
  const restrict = (values: readonly Value[], said: readonly string[], kinds: CarSet): Value[] =>
    values.flatMap((value) => {
      const cars = sets.and(value.cars, kinds);
      if (cars === NONE || !said.includes(value.said)) return [];
      return { ...value, cars, statements: value.statements.filter((it) => sets.meet(cars, it.scope.cars)) };
    });
  const compared = space.any(pieces.map((piece) => piece.compared));
  const kinds = space.any(pieces.map((piece) => piece.kinds));
  const from = restrict(
    first,
    pieces.flatMap((piece) => piece.from),
    compared,
  );
  const to = restrict(
    last,
    pieces.flatMap((piece) => piece.to),
    kinds,
  );
  const cars = sets.and(all, kinds);
  const certain =
    cars === all && pieces.every((piece) => !piece.from.some((it) => it === NOT_ON_RECORD || piece.to.includes(it)));
  return { from, to, cars, before: sets.and(space.any(first.map((it) => it.cars)), compared), certain };
}

/**
 * The years in which the value changed of the kinds that have part in a change: those compared in the first year, the changed
 * ones in the last, and both in between.
 */
function stepsOf(
  space: Space,
  byYear: readonly (YearOfCar & { readonly values: readonly Value[] })[],
  pieces: readonly Difference[],
): Step[] {
  const ofKinds = byYear.map((one, i) => {
    const kinds = space.any(
      pieces.flatMap((piece) => [...(i < byYear.length - 1 ? [piece.compared] : []), ...(i > 0 ? [piece.kinds] : [])]),
    );
    const values = one.values.map((value) => ({ ...value, cars: space.sets.and(value.cars, kinds) }));
    return { ...one, values: values.filter(({ cars }) => cars !== NONE) };
  });
  return ofKinds.slice(1).filter(({ values }, i) => sayAll(values) !== sayAll(ofKinds[i]?.values ?? []));
}

/** The cars with everything forgotten that tells one from the next of its kind: what two years have in common. */
export function kindOfCar(space: Space, cars: CarSet): CarSet {
  return space.sets.forget(cars, runningTraits(space));
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

/** The model year of the car, where only one is possible. */
export function onlyYear({ space }: Catalog, { cars }: KnownCar): number | undefined {
  const [only, ...more] = space.sets.valuesOf(cars, space.role("year") as number);
  return only && more.length === 0 && only[0] === only[1] ? only[0] : undefined;
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

/**
 * For which cars of a year a record holds: begun, with them in its scope, and not cancelled for them by then; and for which not.
 * What a record tells people to do about a part that it brought holds for every car on which that part was found.
 */
export function holdsIn(knowledge: CarKnowledge, record: ChangeRecord, one: YearOfCar): Value[] {
  const { catalog } = knowledge;
  const { sets } = catalog.space;
  const { year, cars, readIn = year } = one;
  const begun = (begins(catalog, record) ?? Number.POSITIVE_INFINITY) <= year;
  const about = begun ? sets.and(cars, record.scope.cars) : NONE;
  const held = sets.minus(broughtPart(catalog, record, one) ? cars : about, endedBy(knowledge, record, readIn));
  return [
    { said: HOLDS, statements: [], cars: held },
    { said: HOLDS_NOT, statements: [], cars: sets.minus(cars, held) },
  ].filter((value) => value.cars !== NONE);
}

/** Whether a part was found on the car that the plant fits to the cars of a record that tells what to do. */
function broughtPart({ space }: Catalog, record: ChangeRecord, { found }: YearOfCar): boolean {
  if (!found || !isProcedure(record)) return false;
  const parts = new Set([...found.values()].flatMap((it) => it.parts));
  return statementsOf(record.statements, "built").some(
    (it) => it.part !== undefined && parts.has(it.part) && space.sets.within(it.scope.cars, record.scope.cars),
  );
}

/** Whether a record tells people in words what to do. */
export function isProcedure(record: ChangeRecord): boolean {
  return record.facts.kinds.includes("procedure") || record.statements.some((it) => it.type === "procedure");
}
