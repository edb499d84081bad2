/**
 * "What is due on this car, and how does that differ from last year's?"
 *
 * An interval is a matter like a setting: it holds for the cars of its scope, but for those for which a record ended it. A part found
 * on the car brings its own interval along where the scope of the interval asks what is fitted. Each is set beside that of cars like
 * this one of another year, as they were built.
 */
import type { Interval } from "../records/statement.ts";
import { NONE } from "../scope/diagram.ts";
import { checkYear } from "./answer-net-change.ts";
import { asItLeft, type KnownCar, readCar } from "./car.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { NOT_ON_RECORD } from "./compare-years.ts";
import { lookAmong, sayFact } from "./look.ts";
import { type Matter, mattersOf, onlyYear, type Value, valuesIn, yearSpan, yearsOfCar } from "./net-change.ts";
import { reasonFor, sayInterval, uniqueReasons } from "./say.ts";
import { sayCars } from "./say-cars.ts";
import { NO_SUCH_CAR, sayConflict } from "./say-conflict.ts";
import type { CarInput } from "./shapes/car.ts";
import type { ScheduleAnswer } from "./shapes/setting.ts";

type Item = ScheduleAnswer["items"][number];

const MOST_KINDS = 4;

export function answerSchedule(
  knowledge: CarKnowledge,
  { car: input, from }: { car: CarInput; from?: number | undefined },
): ScheduleAnswer {
  const { catalog } = knowledge;
  const car = readCar(knowledge, input);
  const base = {
    question: "schedule" as const,
    because: [],
    facts: car.facts.map((fact) => sayFact(catalog.space, fact)),
    notNeeded: [],
    items: [],
  };
  if (car.cars === NONE)
    return {
      ...base,
      ...sayConflict(catalog, car),
      verdict: "no such car",
      words: NO_SUCH_CAR,
    };
  const against = yearBefore(knowledge, car, from);
  const before = against === undefined ? undefined : carsOfYear(knowledge, car, against);
  const items = mattersOf(catalog)
    .filter((matter) => matter.kind === "interval")
    .flatMap((matter) => itemOf(knowledge, car, matter, against, before) ?? []);
  const open = items.find((item) => item.verdict === "look first");
  const differ = items.filter((item) => !["same", "not compared"].includes(item.change)).length;
  return {
    ...base,
    verdict: items.length === 0 ? "not on record" : open ? "look first" : "schedule",
    because: uniqueReasons(items.flatMap((item) => item.because)),
    ...(open?.ask ? { ask: open.ask } : {}),
    ...(against === undefined ? {} : { against }),
    items,
    words:
      items.length === 0
        ? "No record gives an interval for this car."
        : `${items.length} intervals are on record for this car${against === undefined ? "" : `; ${differ} differ, or may differ, from those of ${against}`}.`,
  };
}

/** The year asked for, or the one before the car's, where the car's is known and not the first on record. */
function yearBefore(knowledge: CarKnowledge, car: KnownCar, from: number | undefined): number | undefined {
  if (from !== undefined) {
    checkYear(knowledge, from);
    return from;
  }
  const year = onlyYear(knowledge.catalog, car);
  return year !== undefined && year > yearSpan(knowledge.catalog)[0] ? year - 1 : undefined;
}

/** Cars like this one of another year, as they were built. */
function carsOfYear(knowledge: CarKnowledge, car: KnownCar, year: number) {
  const [one] = yearsOfCar(
    knowledge,
    asItLeft(knowledge, car),
    year,
    year === yearSpan(knowledge.catalog)[0] ? year + 1 : year - 1,
  );
  return one?.cars ?? NONE;
}

function itemOf(
  knowledge: CarKnowledge,
  car: KnownCar,
  matter: Matter,
  against: number | undefined,
  before: KnownCar["cars"] | undefined,
): Item | undefined {
  const { catalog } = knowledge;
  const now = valuesIn(knowledge, matter, {
    year: Number.POSITIVE_INFINITY,
    cars: car.cars,
    readIn: Number.POSITIVE_INFINITY,
  });
  const earlier =
    against === undefined || before === undefined || before === NONE
      ? undefined
      : valuesIn(knowledge, matter, { year: against, cars: before });
  const stated = now.filter((value) => value.said !== NOT_ON_RECORD);
  const had = (earlier ?? []).filter((value) => value.said !== NOT_ON_RECORD);
  if (stated.length === 0 && had.length === 0) return undefined;
  const isOpen = now.length > 1;
  const ask = isOpen ? lookAmong(catalog.space, car.cars, now) : undefined;
  const [first] = matter.statements;
  const component = first && catalog.records.get(first.record)?.components[0];
  return {
    name: matter.name,
    ...(component ? { component: component.name } : {}),
    verdict: stated.length === 0 ? "not on record" : isOpen ? "look first" : "in force",
    due: viewDue(knowledge, now, car.cars),
    before: earlier === undefined ? [] : viewDue(knowledge, earlier, before as KnownCar["cars"]),
    change: changeOf(now, earlier),
    perhapsNone: isOpen && now.some((value) => value.said === NOT_ON_RECORD),
    ...(ask ? { ask } : {}),
    because: uniqueReasons(
      [...stated, ...had].flatMap((value) => value.statements).map((it) => reasonFor(catalog, it)),
    ),
  };
}

function viewDue({ catalog }: CarKnowledge, values: readonly Value[], among: KnownCar["cars"]): Item["due"] {
  return values.flatMap((value) => {
    const [interval] = value.statements as readonly Interval[];
    if (!interval) return [];
    const { months, miles, once, none, note } = interval;
    const cars = values.length === 1 ? undefined : sayCars(catalog, value.cars, among, MOST_KINDS);
    return {
      said: sayInterval({ ...interval, note: undefined }),
      ...(months === undefined ? {} : { months }),
      ...(miles === undefined ? {} : { miles }),
      once,
      none,
      ...(note === undefined ? {} : { note }),
      ...(cars ? { cars } : {}),
      records: [...new Set(value.statements.map((it) => it.record))],
    };
  });
}

/** Notes are no part of the interval: what is due is compared. */
function changeOf(now: readonly Value[], before: readonly Value[] | undefined): Item["change"] {
  if (before === undefined) return "not compared";
  const dues = (values: readonly Value[]): string[] =>
    values
      .map((value) => {
        const [interval] = value.statements as readonly Interval[];
        return interval ? sayInterval({ ...interval, note: undefined }) : NOT_ON_RECORD;
      })
      .sort();
  const [a, b] = [dues(before), dues(now)];
  if (a.join("\n") === b.join("\n")) return "same";
  if (a.length > 1 || b.length > 1) return "open";
  if (a[0] === NOT_ON_RECORD) return "new";
  return b[0] === NOT_ON_RECORD ? "no longer on record" : "changed";
}
