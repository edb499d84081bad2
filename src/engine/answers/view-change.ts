/** How one change, and one matter that is on record in one of the years only, is shown. */
import { isTrap } from "../records/is-trap.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import type { ScopeWords } from "./answer.ts";
import { cancelledFor } from "./cancelled-for.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import type { Replacing } from "./in-place-of.ts";
import { lookAmong } from "./look.ts";
import { kindOfCar, type Matter, type MatterChange, type Sides, type Value, type YearOfCar } from "./net-change.ts";
import { sayCars } from "./say-cars.ts";
import type { Look } from "./shapes/look.ts";
import type { ChangeView, NotOnRecordView, ValueView } from "./shapes/net-change.ts";

/** More kinds of cars than this nobody reads under a change. */
const MOST = 12;

/** The first year, as known, and the last one, that of the car at hand. */
export interface Years {
  readonly before: YearOfCar;
  readonly after: YearOfCar;
}

type Common = Pick<ChangeView, "systems" | "trap" | "verdict" | "records" | "cancelled" | "byCars" | "ask">;

export function viewMatter(knowledge: CarKnowledge, years: Years, change: MatterChange): ChangeView {
  const steps = change.steps.map((step) => ({
    year: step.year,
    values: step.values.map(viewValue),
    ...cancelledIn(knowledge, recordsOf(step.values), step.cars),
  }));
  const records = recordsOf([change.from, change.to, ...change.steps.map((step) => step.values)].flat());
  const { matter } = change;
  const common = commonOf(knowledge, years, change, change.pieces, records);
  const cancelled = [...(common.cancelled ?? []), ...steps.flatMap((step) => step.cancelled ?? [])];
  return {
    kind: matter.kind,
    name: matter.name,
    from: change.from.map(viewValue),
    to: change.to.map(viewValue),
    steps,
    ...common,
    ...(cancelled.length > 0 ? { cancelled: [...new Map(cancelled.map((it) => [it.record, it])).values()] } : {}),
  };
}

/** A record that is a matter by itself: it holds in one of the years and not in the other. */
export function viewRecord(
  knowledge: CarKnowledge,
  years: Years,
  id: string,
  sides: Sides,
  pieces: readonly Sides[],
): ChangeView {
  const view = (value: Value): ValueView => ({ value: value.said, records: [id] });
  return {
    kind: "record",
    name: knowledge.catalog.records.get(id)?.facts.title ?? id,
    from: sides.from.map(view),
    to: sides.to.map(view),
    steps: [],
    ...commonOf(knowledge, years, sides, pieces, [id]),
  };
}

function commonOf(
  knowledge: CarKnowledge,
  { before, after }: Years,
  sides: Sides,
  pieces: readonly Sides[],
  ids: readonly string[],
): Common {
  const records = ids.flatMap((id) => knowledge.catalog.records.get(id) ?? []);
  const ask = whatDecides(knowledge, after, sides);
  return {
    systems: [...new Set(records.flatMap((record) => record.systems))],
    trap: records.some(isTrap),
    verdict: ask || onlyThePartTells(sides.to) ? "look first" : sides.certain ? "changed" : "changed against some",
    records: [...ids],
    ...byCars(knowledge, after, pieces),
    ...cancelledIn(knowledge, ids, after.cars, before.cars),
    ...(ask ? { ask } : {}),
  };
}

/** Which cars have part in it, where that is not one change for all. */
function byCars(knowledge: CarKnowledge, { cars }: YearOfCar, pieces: readonly Sides[]): Pick<ChangeView, "byCars"> {
  if (pieces.length === 1 && pieces[0]?.cars === cars) return {};
  const said = (values: readonly Value[]): string[] => values.map((value) => value.said);
  return {
    byCars: pieces.map((piece) => ({
      ...carsAmong(knowledge, cars, piece.cars),
      from: said(piece.from),
      to: said(piece.to),
    })),
  };
}

/** Some of the cars that this can be, in as few words as tell them from the others. */
function carsAmong({ catalog }: CarKnowledge, all: CarSet, cars: CarSet): { cars?: ScopeWords } {
  const said = cars === all ? undefined : sayCars(catalog, cars, all, MOST);
  return said ? { cars: said } : {};
}

/**
 * What to look at on the car: what settles whether it has part in the change, and with which value. Where that is known, what
 * settles with which cars of the first year it compares, if looking settles that: what ran with the numbers of another car
 * cannot be seen on this one.
 */
function whatDecides(
  { catalog: { space } }: CarKnowledge,
  { cars }: YearOfCar,
  { from, to, cars: changed }: Sides,
): Look | undefined {
  const { sets } = space;
  const kept = { said: "no change on record", cars: sets.minus(cars, changed) };
  const values = kept.cars === NONE ? to : [...to, kept];
  const own = values.length > 1 ? lookAmong(space, cars, values) : undefined;
  if (own) return own;
  const kinds = from.map((value) => ({ said: value.said, cars: kindOfCar(space, value.cars) }));
  const apart = kinds.every((a, i) => kinds.slice(i + 1).every((b) => sets.and(a.cars, b.cars) === NONE));
  if (!apart || kinds.length < 2) return undefined;
  const known = sets.and(cars, space.any(kinds.map((kind) => kind.cars)));
  return lookAmong(space, known, kinds, (left) => `before ${left}`);
}

function viewValue(value: Value): ValueView {
  return { value: value.said, records: recordsOf([value]), ...(value.asFound ? { asFound: true as const } : {}) };
}

/** In a mixed stretch, and where a part found on the car may sit in several places. */
function onlyThePartTells(values: readonly Value[]): boolean {
  return values.some(
    (value) => value.statements.some((it) => it.type === "mixed") || (value.asFound && values.length > 1),
  );
}

export function recordsOf(values: readonly Value[]): string[] {
  return [...new Set(values.flatMap((value) => value.statements.map((it) => it.record)))];
}

/** Which of some records others end: for the first cars that a record is about at all. */
function cancelledIn(
  knowledge: CarKnowledge,
  ids: readonly string[],
  ...inOrder: readonly CarSet[]
): Pick<ChangeView, "cancelled"> {
  const cancelled = ids.flatMap((id) => {
    const record = knowledge.catalog.records.get(id);
    const cars = record && inOrder.find((cars) => knowledge.catalog.space.sets.meet(cars, record.scope.cars));
    const by = record && cars && cancelledFor(knowledge, cars, record).cancelled;
    return by ? [{ record: id, by }] : [];
  });
  return cancelled.length > 0 ? { cancelled } : {};
}

/** A matter that is on record in one of the years only, and the records that took its place. */
export function viewOneSided(
  knowledge: CarKnowledge,
  { before, after }: Years,
  matter: Matter,
  sides: Sides,
  instead: readonly Replacing[],
): NotOnRecordView {
  const isGone = sides.to.length === 0;
  const values = isGone ? sides.from : sides.to;
  const records = recordsOf(values);
  const named = records.flatMap((id) => knowledge.catalog.records.get(id) ?? []);
  return {
    kind: matter.kind,
    name: matter.name,
    systems: [...new Set(named.flatMap((record) => record.systems))],
    year: (isGone ? after : before).year,
    values: values.map(viewValue),
    ...carsAmong(knowledge, after.cars, sides.cars),
    records,
    see: instead.map(({ record: { id, facts }, cancels }) => ({
      record: id,
      words:
        cancels === undefined ? `${id} gives a procedure: ${facts.title}.` : `${id} ends ${cancels}: ${facts.title}.`,
    })),
  };
}

/** "gap: 1 to 2 mm in 1958, not on record in 1959. HY59-01 gives a procedure: ….", for the record that took its place. */
export function sayInPlaceOf({ before, after }: Years, { name, year, values }: NotOnRecordView): string {
  const other = year === after.year ? before.year : after.year;
  return `${name}: ${values.map((it) => it.value).join(" or ")} in ${other}; not on record in ${year}.`;
}
