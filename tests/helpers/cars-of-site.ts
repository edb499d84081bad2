/** Cars of whatever maker a catalog is of, for tests that must not know its names. */
import type { Catalog, Line } from "../../src/engine/records/catalog.ts";
import { yearsOf } from "../../src/engine/records/concerned.ts";
import { NONE } from "../../src/engine/scope/diagram.ts";
import { writtenValue } from "../../src/engine/scope/trait.ts";

export interface LineAndYear {
  readonly line: Line;
  readonly year: number;
  /** The two as steps of the address of "this car". */
  readonly query: string;
  /** The two as facts of a question. */
  readonly facts: Record<string, string>;
}

/** Each model line with the latest of its years that has one before it. */
export function linesAndYears(catalog: Catalog): LineAndYear[] {
  const [line, year] = [traitOf(catalog, "line"), traitOf(catalog, "year")];
  return catalog.lines.map((one) => {
    const latest = yearsOf(catalog.space, one.cars).at(-1) ?? 0;
    return {
      line: one,
      year: latest,
      query: `fact=${line}:${one.id}&fact=${year}:${latest}`,
      facts: { [line]: one.id, [year]: String(latest) },
    };
  });
}

export function traitOf({ space }: Catalog, role: "line" | "year" | "plant" | "sequence"): string {
  return space.trait(space.role(role) as number).id;
}

/** A line with a value of some list that no car of it was built with, though other lines had it. */
export function conflictOf({ space, lines }: Catalog): { line: Line; trait: string; value: string } {
  for (const line of lines)
    for (const [index, trait] of space.declared.entries()) {
      if (trait.kind !== "list" || trait.role !== undefined) continue;
      for (const value of trait.values.keys())
        if (space.sets.and(line.cars, space.where(index, [[value, value]])) === NONE)
          return { line, trait: trait.id, value: writtenValue(trait, value) };
    }
  throw new Error("every line was built with everything");
}
