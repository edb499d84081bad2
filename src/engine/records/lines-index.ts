/**
 * What a page needs before it knows which model line a car is of: the traits, how plates are read, and what was built of
 * every line. The records of a line come after, as a slice.
 */
import type { CarSet } from "../scope/diagram.ts";
import { type PackedSet, packSet, unpackSet } from "../scope/pack.ts";
import { Space } from "../scope/space.ts";
import type { Trait } from "../scope/trait.ts";
import type { Catalog, Line, Plate } from "./catalog.ts";
import { yearsOf } from "./concerned.ts";

type PackedLine = Omit<Line, "cars"> & {
  readonly cars: PackedSet;
  /** The model years in which it was built. */
  readonly years: readonly number[];
};

export interface LinesIndex {
  readonly format: "yearmark-lines/1";
  readonly traits: readonly Trait[];
  readonly plates: readonly Plate[];
  readonly years: readonly number[];
  readonly lines: readonly PackedLine[];
}

/** The index, opened. Slices are opened in its space, so that sets of cars can be joined across all of them. */
export interface Lines {
  readonly space: Space;
  /** Every car that was built, of whatever line. */
  readonly buildable: CarSet;
  readonly plates: readonly Plate[];
  readonly years: readonly number[];
  readonly lines: readonly (Line & { readonly years: readonly number[] })[];
}

export function linesIndexOf({ space, plates, years, lines }: Catalog): LinesIndex {
  return {
    format: "yearmark-lines/1",
    traits: space.declared,
    plates,
    years,
    lines: lines.map((line) => ({ ...line, cars: packSet(line.cars), years: yearsOf(space, line.cars) })),
  };
}

export function openLinesIndex(index: LinesIndex): Lines {
  const space = new Space(index.traits);
  const lines = index.lines.map((line) => ({ ...line, cars: unpackSet(space, line.cars) }));
  return { ...index, space, lines, buildable: space.any(lines.map((line) => line.cars)) };
}
