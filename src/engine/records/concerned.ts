/** Which lines and years a scope reaches, and when a change begins for each. */
import { type CarSet, NONE } from "../scope/diagram.ts";
import type { Scope } from "../scope/scope.ts";
import type { Space } from "../scope/space.ts";
import type { Catalog, ChangeRecord, Line } from "./catalog.ts";

/** The model years in which some car of the set was built. */
export function yearsOf(space: Space, cars: CarSet): number[] {
  const trait = space.role("year");
  if (trait === undefined) return [];
  return space.sets
    .valuesOf(cars, trait)
    .flatMap(([from, to]) => Array.from({ length: to - from + 1 }, (_, i) => from + i));
}

/** The model lines and years in which a scope holds for some car that was built. */
export function concerned(catalog: Catalog, scope: Scope): { lines: string[]; years: number[] } {
  const { space, buildable } = catalog;
  const cars = space.sets.and(buildable, scope.cars);
  return {
    lines: catalog.lines.filter((line) => space.sets.and(line.cars, cars) !== NONE).map((line) => line.id),
    years: yearsOf(space, cars),
  };
}

/** The model years in which a record's scope holds for some car of a line. */
export function yearsOnLine(catalog: Catalog, record: ChangeRecord, line: Line): number[] {
  return yearsOf(catalog.space, catalog.space.sets.and(line.cars, record.scope.cars));
}

/**
 * The model year with which a record is new on a line: the year that the record says it is in force from, where it also
 * holds for cars built earlier; otherwise the first year with cars in its scope. Nothing where it never concerns the line.
 */
export function beginsOnLine(catalog: Catalog, record: ChangeRecord, line: Line): number | undefined {
  const [first] = yearsOnLine(catalog, record, line);
  return first === undefined ? undefined : (record.facts["in-force-from"] ?? first);
}

/** The model year with which a record is new on the first line that it concerns. */
export function begins(catalog: Catalog, record: ChangeRecord): number | undefined {
  return record.facts["in-force-from"] ?? concerned(catalog, record.scope).years[0];
}
