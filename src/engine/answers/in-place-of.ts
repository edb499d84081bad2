/**
 * Which records say what to do where a matter is no longer on record, or not yet.
 *
 *   A record that ended, for cars of the silent year, the instruction that states the value of the other year.
 *   A record of the kind "procedure" about the same matter or component that holds for cars of the silent year and for none of
 *   the other year that they are compared with.
 *
 * So a figure that gave way to a look, or was withdrawn, is a change, and the record is what changed.
 */
import type { ChangeRecord } from "../records/catalog.ts";
import { begins } from "../records/concerned.ts";
import { statementsOf } from "../records/statement.ts";
import type { CarSet } from "../scope/diagram.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { HOLDS, holdsIn, isProcedure, type Matter, type Value, type YearOfCar } from "./net-change.ts";

export interface Replacing {
  readonly record: ChangeRecord;
  /** The record that it ends; left out where it gives a procedure. */
  readonly cancels?: string;
}

/** The cars of a year that something is asked of. */
interface Side {
  readonly year: YearOfCar;
  readonly cars: CarSet;
}

export function inPlaceOf(
  knowledge: CarKnowledge,
  matter: Matter,
  { values, silent, other }: { values: readonly Value[]; silent: Side; other: Side },
): Replacing[] {
  const { catalog } = knowledge;
  const { sets } = catalog.space;
  const stating = new Set(values.flatMap((value) => value.statements.map((it) => it.record)));
  const components = componentsOf(knowledge, matter);
  return [...catalog.records.values()].flatMap((record): Replacing[] => {
    const readIn = silent.year.readIn ?? silent.year.year;
    const out = (begins(catalog, record) ?? Number.POSITIVE_INFINITY) <= readIn;
    const cancel = statementsOf(record.statements, "cancels").find(
      (it) => stating.has(it.target) && (it.scope === undefined || sets.meet(silent.cars, it.scope.cars)),
    );
    if (out && cancel) return [{ record, cancels: cancel.target }];
    const isAbout =
      matter.statements.some((it) => it.record === record.id) || record.components.some((it) => components.has(it.id));
    if (!isProcedure(record) || !isAbout) return [];
    return holdsFor(knowledge, record, silent) && !holdsFor(knowledge, record, other) ? [{ record }] : [];
  });
}

function holdsFor(knowledge: CarKnowledge, record: ChangeRecord, { year, cars }: Side): boolean {
  return holdsIn(knowledge, record, { ...year, cars }).some((value) => value.said === HOLDS);
}

/** Of a place its component; of a figure the component that it names, or the main one of the records that state it. */
function componentsOf({ catalog }: CarKnowledge, { statements }: Matter): ReadonlySet<string> {
  return new Set(
    statements.flatMap((it) => {
      if (it.type === "built" || it.type === "mixed") return catalog.places.get(it.place)?.id ?? [];
      if (it.type === "setting" && it.component !== undefined) return it.component;
      return catalog.records.get(it.record)?.components[0]?.id ?? [];
    }),
  );
}
