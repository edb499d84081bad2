/** "What changed on this car against the year I know?" Composed, with every step's records; traps first, then by system. */

import type { ChangeRecord } from "../records/catalog.ts";
import { begins } from "../records/concerned.ts";
import { statementsOf } from "../records/statement.ts";
import { NONE } from "../scope/diagram.ts";
import { conflict } from "../scope/facts.ts";
import { type KnownCar, readCar } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { compareYears, namedIn } from "./compare-years.ts";
import { inPlaceOf } from "./in-place-of.ts";
import { sayFact } from "./look.ts";
import {
  HOLDS,
  HOLDS_NOT,
  holdsIn,
  isMatterItself,
  type Matter,
  type MatterChange,
  mattersOf,
  netChange,
  onlyYear,
  type Sides,
  sidesOf,
  twinFacts,
  type YearOfCar,
  yearSpan,
  yearsOfCar,
} from "./net-change.ts";
import { QuestionError } from "./question-error.ts";
import { reasonFor, reasonForRecord, uniqueReasons } from "./say.ts";
import type { CarInput } from "./shapes/car.ts";
import type { ChangeView, NetChangeAnswer, NotOnRecordView } from "./shapes/net-change.ts";
import { recordsOf, sayInPlaceOf, viewMatter, viewOneSided, viewRecord, type Years } from "./view-change.ts";

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
  const base = {
    question: "net-change" as const,
    from,
    to,
    facts,
    notNeeded: [],
    changes: [],
    notOnRecord: [],
    leftAlone: [],
  };
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
  const known: Years = { before, after };
  const net = mattersOf(catalog).map((matter) => ({ matter, ...netChange(knowledge, matter, years) }));
  const changed = net.flatMap((one) => one.changes);
  const told = new Set(changed.flatMap((change) => recordsOf(valuesOf(change))));
  const apart = net.flatMap(({ matter, oneSided }) =>
    oneSided.map((sides) => onOneSide(knowledge, known, matter, sides)),
  );
  const instead = new Map<string, Instead[]>();
  for (const one of apart)
    for (const { record } of one.view.see) instead.set(record, [...(instead.get(record) ?? []), one]);
  const changes = [
    ...changed.map((change) => viewMatter(knowledge, known, change)),
    ...[...catalog.records.values()].flatMap((record) => {
      const isOwn = !told.has(record.id) && isMatterItself(record);
      const taken = instead.get(record.id) ?? [];
      if (!isOwn && taken.length === 0) return [];
      const view = viewRecordChange(knowledge, record, known) ?? viewInstead(knowledge, record, known, taken);
      if (!view) return [];
      return { ...view, ...(taken.length > 0 ? { inPlaceOf: taken.map((it) => sayInPlaceOf(known, it.view)) } : {}) };
    }),
  ].sort((a, b) => Number(b.trap) - Number(a.trap) || order(knowledge, a.systems[0]) - order(knowledge, b.systems[0]));
  const records = [...new Set(changes.flatMap((change) => change.records))];
  const open = changes.find((change) => change.ask);
  return {
    ...base,
    verdict: changes.length === 0 ? "no change on record" : open ? "look first" : "changed",
    because: uniqueReasons([
      ...changed
        .flatMap(valuesOf)
        .flatMap((value) => value.statements)
        .map((it) => reasonFor(catalog, it)),
      ...records.map((id) => reasonForRecord(catalog, id)),
    ]),
    ...(open?.ask ? { ask: open.ask } : {}),
    changes,
    notOnRecord: apart.map((one) => one.view),
    leftAlone: leftAlone(knowledge, records, before, after),
  };
}

interface Instead {
  readonly view: NotOnRecordView;
  readonly sides: Sides;
}

function onOneSide(knowledge: CarKnowledge, years: Years, matter: Matter, sides: Sides): Instead {
  const { before, after } = years;
  const [first, last] = [
    { year: before, cars: sides.before },
    { year: after, cars: sides.cars },
  ];
  const isGone = sides.to.length === 0;
  const [silent, other] = isGone ? [last, first] : [first, last];
  const found = inPlaceOf(knowledge, matter, { values: isGone ? sides.from : sides.to, silent, other });
  return { sides, view: viewOneSided(knowledge, years, matter, sides, found) };
}

/**
 * A record that took the place of other values holds where they do not, whatever years it is about itself: it may have ended
 * them for older cars, or have come to the car with a part.
 */
function viewInstead(
  knowledge: CarKnowledge,
  record: ChangeRecord,
  years: Years,
  [one]: readonly Instead[],
): ChangeView | undefined {
  if (!one) return undefined;
  const value = (said: string) => [{ said, statements: [], cars: NONE }];
  const [from, to] = one.sides.to.length === 0 ? [HOLDS_NOT, HOLDS] : [HOLDS, HOLDS_NOT];
  const sides = { ...one.sides, from: value(from), to: [{ ...value(to)[0], cars: one.sides.cars }] } as Sides;
  return viewRecord(knowledge, years, record.id, sides, [sides]);
}

function valuesOf({ from, to, steps }: MatterChange) {
  return [from, ...steps.map((step) => step.values), to].flat();
}

function yearOf(knowledge: CarKnowledge, car: KnownCar): number {
  const only = onlyYear(knowledge.catalog, car);
  if (only !== undefined) return only;
  if (car.cars === NONE) return yearSpan(knowledge.catalog)[1];
  throw new QuestionError("The model year of the car is not known. Give it as a fact, or with --to.");
}

/** Throws a QuestionError for a year that the data does not have. */
export function checkYear(knowledge: CarKnowledge, year: number): void {
  const [first, last] = yearSpan(knowledge.catalog);
  if (!Number.isInteger(year) || year < first || year > last)
    throw new QuestionError(`Model year ${year} is not on record. Years run from ${first} to ${last}.`);
}

/** A record whose instruction holds for cars of one of the years and not for those of the other that are like them. */
function viewRecordChange(knowledge: CarKnowledge, record: ChangeRecord, years: Years): ChangeView | undefined {
  const from = holdsIn(knowledge, record, years.before);
  const to = holdsIn(knowledge, record, years.after);
  const { space } = knowledge.catalog;
  const cancels = knowledge.cancelsByRecord.get(record.id) ?? [];
  const scopes = [record, ...cancels].flatMap((it) => it.scope?.cars ?? []);
  const { changed } = compareYears(space, from, to, namedIn(space, scopes));
  if (changed.length === 0) return undefined;
  const sides = (pieces: typeof changed): Sides => sidesOf(space, from, to, pieces);
  return viewRecord(
    knowledge,
    years,
    record.id,
    sides(changed),
    changed.map((piece) => sides([piece])),
  );
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
