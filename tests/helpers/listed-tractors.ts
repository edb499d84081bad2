/**
 * Every tractor of the tiny folder that differs from another in more than the last digits of its number, one by one: the vehicle
 * files written once more as plain loops. And random things that the records say of them, cell by cell.
 */
import fc from "fast-check";
import type { CarInput } from "../../src/engine/answers/shapes/car.ts";

export interface Tractor {
  readonly line: string;
  readonly my: number;
  readonly plant: string;
  readonly PT: boolean;
  readonly WN: boolean;
  /** The lower half of the numbers, or the upper. */
  readonly half: "lower" | "upper";
}
const YEARS = [1957, 1958, 1959, 1960, 1961];
const NUMBERS = { lower: "0000-4999", upper: "5000-9999" };

export const TRACTORS: readonly Tractor[] = ["B", "H"].flatMap((line) =>
  YEARS.flatMap((my) =>
    ["K", "D"].flatMap((plant) =>
      [true, false].flatMap((PT) =>
        [true, false].flatMap((WN) =>
          (["lower", "upper"] as const).map((half): Tractor => ({ line, my, plant, PT, WN, half })).filter(wasBuilt),
        ),
      ),
    ),
  ),
);

function wasBuilt({ line, my, plant, PT, WN }: Tractor): boolean {
  if (plant === "D" && my < 1959) return false;
  if (line === "H") return my >= 1959 && PT && (!WN || plant === "D");
  return my <= 1960 && !WN && (my !== 1958 && my !== 1959 ? PT === my >= 1960 : true);
}

/** Facts of which each is known or not; a car that was built has them, more often than not. */
export const knownInPart: fc.Arbitrary<Partial<Tractor>> = fc
  .tuple(fc.constantFrom(...TRACTORS), fc.subarray(["line", "my", "plant", "PT", "half"] as const))
  .map(([car, known]) => Object.fromEntries(known.map((trait) => [trait, car[trait]])));

export function fits(known: Partial<Tractor>): (car: Tractor) => boolean {
  return (car) => Object.entries(known).every(([trait, value]) => car[trait as keyof Tractor] === value);
}

export function asked({ half, ...known }: Partial<Tractor>): CarInput {
  const [from, to] = half ? NUMBERS[half].split("-") : [];
  return { facts: { ...known, ...(half ? { number: { from, to } } : {}) } };
}

/** One value for each line, year, plant and half of the numbers. Neighbouring years often have the same one. */
export function saidOfCells<T>(value: fc.Arbitrary<T>): fc.Arbitrary<(car: Tractor) => T> {
  const cell = fc.record({ first: value, second: value, takes: fc.nat(3), splits: fc.nat(3) });
  return fc.array(cell, { minLength: 20, maxLength: 20 }).map((cells) => (car) => {
    const row = (car.line === "B" ? 0 : 10) + (car.plant === "K" ? 0 : 5);
    let at = row + car.my - 1957;
    // What began in an earlier year goes on.
    while (at > row && cells[at]?.takes !== 0) at--;
    const { first, second, splits } = cells[at] as (typeof cells)[number];
    // A change in the course of the year in which it begins; later years have the later value.
    const late = at < row + car.my - 1957 || car.half === "upper";
    return splits === 0 && late ? second : first;
  });
}

/** The cars of which one thing is said, as an editor writes them. */
export function scopeOf(holds: (car: Tractor) => boolean): string | undefined {
  const rows = TRACTORS.filter(holds).map(
    ({ line, my, plant, half }) => `line=${line}; my=${my}; plant=${plant}; number=${NUMBERS[half]}`,
  );
  return rows.length > 0 ? [...new Set(rows)].join(" || ") : undefined;
}
