/** "What changed on this car against the year I know?" Composed, with every step's records; traps first, then by system. */

import type { ChangeRecord } from "../records/catalog.ts";
import { begins } from "../records/concerned.ts";
import { isTrap } from "../records/is-trap.ts";
import { statementsOf } from "../records/statement.ts";
import { NONE } from "../scope/diagram.ts";
import { conflict } from "../scope/facts.ts";
import { type KnownCar, readCar } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { lookAmong, sayFact } from "./look.ts";
import {
  changedCars,
  holdsIn,
  isMatterItself,
  kindOfCar,
  type MatterChange,
  mattersOf,
  namedIn,
  netChange,
  twinFacts,
  type Value,
  type YearOfCar,
  yearSpan,
  yearsOfCar,
} from "./net-change.ts";
import { QuestionError } from "./question-error.ts";
import { reasonFor, reasonForRecord } from "./say.ts";
import type { CarInput } from "./shapes/car.ts";
import type { Look } from "./shapes/look.ts";
import type { ChangeView, NetChangeAnswer, ValueView } from "./shapes/net-change.ts";

export interface NetChangeQuestion {
  readonly car: CarInput;
  /** The model year that the technician knows. */
  readonly from: number;
  /** The model year of the car; left out where its facts say it. */
  readonly to?: number | undefined;
}

export function answerNetChange(
  knowledge: CarKnowledge,
  { car: input, from, to: given }: NetChangeQuestion,
): NetChangeAnswer {
  const { catalog } = knowledge;
  const { space } = catalog;
  const car = readCar(knowledge, input);
  const to = given ?? yearOf(knowledge, car);
  for (const year of [from, to]) checkYear(knowledge, year);
  const facts = car.facts.map((fact) => sayFact(space, fact));
  const base = { question: "net-change" as const, from, to, facts, notNeeded: [], changes: [], leftAlone: [] };
  if (car.cars === NONE) {
    const clash = conflict(space, catalog.buildable, car.facts).map((fact) => sayFact(space, fact));
    return { ...base, verdict: "no such car", because: [], conflict: clash };
  }
  const years = yearsOfCar(knowledge, car, from, to);
  const [before, after] = [years[0], years.at(-1)] as [YearOfCar, YearOfCar];
  const missing = [before, after].find((one) => one.cars === NONE);
  if (missing) {
    const clash = conflict(space, catalog.buildable, twinFacts(space, car.facts, missing.year));
    return {
      ...base,
      verdict: "no such car in that year",
      because: [],
      conflict: clash.map((fact) => sayFact(space, fact)),
    };
  }
  const changed = mattersOf(catalog).flatMap((matter) => netChange(knowledge, matter, years) ?? []);
  const told = new Set(changed.flatMap((change) => recordsOf(change)));
  const changes = [
    ...changed.map((change) => viewMatter(knowledge, car, change)),
    ...[...catalog.records.values()]
      .filter((record) => !told.has(record.id) && isMatterItself(record))
      .flatMap((record) => viewRecordChange(knowledge, car, record, before, after) ?? []),
  ].sort((a, b) => Number(b.trap) - Number(a.trap) || order(knowledge, a.systems[0]) - order(knowledge, b.systems[0]));
  const records = [...new Set(changes.flatMap((change) => change.records))];
  const open = changes.find((change) => change.ask);
  return {
    ...base,
    verdict: changes.length === 0 ? "no change on record" : open ? "look first" : "changed",
    because: [
      ...changed
        .flatMap((change) => [change.from, ...change.steps.map((step) => step.values), change.to].flat())
        .flatMap((value) => value.statements)
        .map((it) => reasonFor(catalog, it)),
      ...records.map((id) => reasonForRecord(catalog, id)),
    ].filter((reason, i, all) => all.findIndex((other) => other.address === reason.address) === i),
    ...(open?.ask ? { ask: open.ask } : {}),
    changes,
    leftAlone: leftAlone(knowledge, records, before, after),
  };
}

function yearOf(knowledge: CarKnowledge, car: KnownCar): number {
  const { space } = knowledge.catalog;
  const years = space.sets.valuesOf(car.cars, space.role("year") as number);
  const [only] = years;
  if (years.length === 1 && only && only[0] === only[1]) return only[0];
  if (car.cars === NONE) return yearSpan(knowledge.catalog)[1];
  throw new QuestionError("The model year of the car is not known. Give it as a fact, or with --to.");
}

function checkYear(knowledge: CarKnowledge, year: number): void {
  const [first, last] = yearSpan(knowledge.catalog);
  if (!Number.isInteger(year) || year < first || year > last)
    throw new QuestionError(`Model year ${year} is not on record. Years run from ${first} to ${last}.`);
}

function recordsOf(change: MatterChange): string[] {
  const values = [...change.from, ...change.to, ...change.steps.flatMap((step) => step.values)];
  return [...new Set(values.flatMap((value) => value.statements.map((it) => it.record)))];
}

function viewMatter(knowledge: CarKnowledge, car: KnownCar, change: MatterChange): ChangeView {
  const { catalog } = knowledge;
  const records = recordsOf(change).flatMap((id) => catalog.records.get(id) ?? []);
  const ask = whatDecides(knowledge, car, change);
  return {
    kind: change.matter.kind,
    name: change.matter.name,
    systems: [...new Set(records.flatMap((record) => record.systems))],
    trap: records.some(isTrap),
    verdict: ask || isMixed(change.to) ? "look first" : change.certain ? "changed" : "changed against some",
    from: change.from.map(viewValue),
    to: change.to.map(viewValue),
    steps: change.steps.map(({ year, values }) => ({ year, values: values.map(viewValue) })),
    records: records.map((record) => record.id),
    ...(ask ? { ask } : {}),
  };
}

/**
 * What to look at on the car: what settles its own value. Where that is known, what settles with which cars of the first year
 * it compares, if looking settles that: what ran with the numbers of another car cannot be seen on this one.
 */
function whatDecides(
  { catalog: { space } }: CarKnowledge,
  car: KnownCar,
  { from, to }: Pick<MatterChange, "from" | "to">,
): Look | undefined {
  const { sets } = space;
  const own = to.length > 1 ? lookAmong(space, car.cars, to) : undefined;
  if (own) return own;
  const kinds = from.map(({ said, cars }) => ({ said, cars: kindOfCar(space, cars) }));
  const apart = kinds.every((a, i) => kinds.slice(i + 1).every((b) => sets.and(a.cars, b.cars) === NONE));
  if (!apart || kinds.length < 2) return undefined;
  const known = sets.and(car.cars, space.any(kinds.map((kind) => kind.cars)));
  return lookAmong(space, known, kinds, (left) => `before ${left}`);
}

function viewValue(value: Value): ValueView {
  return { value: value.said, records: [...new Set(value.statements.map((it) => it.record))] };
}

/** In a mixed stretch only the part itself tells which it is. */
function isMixed(values: readonly Value[]): boolean {
  return values.some((value) => value.statements.some((it) => it.type === "mixed"));
}

/** A record whose instruction holds for cars of one of the years and not for those of the other that are like them. */
function viewRecordChange(
  knowledge: CarKnowledge,
  car: KnownCar,
  record: ChangeRecord,
  before: YearOfCar,
  after: YearOfCar,
): ChangeView | undefined {
  const from = holdsIn(knowledge, record, before);
  const to = holdsIn(knowledge, record, after);
  const { space } = knowledge.catalog;
  const cancels = knowledge.cancelsByRecord.get(record.id) ?? [];
  const scopes = [record, ...cancels].flatMap((it) => it.scope?.cars ?? []);
  const changed = changedCars(space, from, to, namedIn(space, scopes));
  if (changed === "none") return undefined;
  const ask = whatDecides(knowledge, car, { from, to });
  const view = (value: Value): ValueView => ({ value: value.said, records: [record.id] });
  return {
    kind: "record",
    name: record.facts.title,
    systems: [...record.systems],
    trap: isTrap(record),
    verdict: ask ? "look first" : changed === "all" ? "changed" : "changed against some",
    from: from.map(view),
    to: to.map(view),
    steps: [],
    records: [record.id],
    ...(ask ? { ask } : {}),
  };
}

/** What the records between the two years say was left alone on cars like these. */
function leftAlone(
  knowledge: CarKnowledge,
  records: readonly string[],
  before: YearOfCar,
  after: YearOfCar,
): NetChangeAnswer["leftAlone"] {
  const { catalog } = knowledge;
  const { space } = catalog;
  const [earlier, later] = before.year <= after.year ? [before, after] : [after, before];
  return [...catalog.records.values()]
    .filter((record) => {
      const year = begins(catalog, record) ?? Number.NEGATIVE_INFINITY;
      const between = year > earlier.year && year <= later.year;
      return (between || records.includes(record.id)) && space.sets.and(later.cars, record.scope.cars) !== NONE;
    })
    .flatMap((record) =>
      statementsOf(record.statements, "left-alone").map((it) => ({ record: record.id, what: it.what })),
    );
}

function order({ catalog }: CarKnowledge, system: string | undefined): number {
  const index = catalog.systems.findIndex((one) => one.id === system);
  return index < 0 ? catalog.systems.length : index;
}
