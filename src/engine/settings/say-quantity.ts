/** A quantity as text. */
import type Fraction from "fraction.js";
import { decimals, placesFor, stepsOf } from "./rounding.ts";
import type { Unit } from "./unit-table.ts";

/**
 * Without `digits` exactly, so that it reads back as the same: as a decimal; a 64th of an inch as a fraction too
 * ("7/64 in (0.109375 in)"); as a fraction alone where the decimal never ends ("2 1/3 turns").
 * With `digits` rounded to so many significant digits, halfway to the even one (NIST SP 811, B.7.1).
 */
export function sayQuantity(value: Fraction, unit: Unit, digits?: number): string {
  const said = `${sayNumber(value, digits)} ${unit.id}`;
  const drawn = digits === undefined && unit.id === "in" ? inchFraction(value) : undefined;
  return drawn === undefined ? said : `${drawn} in (${said})`;
}

/** The number by itself. */
export function sayNumber(value: Fraction, digits?: number): string {
  if (digits !== undefined) {
    const places = value.equals(0) ? 0 : placesFor(value, digits);
    return decimals(stepsOf(value, places, "nearest"), places);
  }
  const places = endOf(value);
  return places === undefined ? value.toFraction(true) : decimals(stepsOf(value, places, "nearest"), places);
}

/** As 64ths of an inch, in lowest terms, where a length in inches is one: "7/64", "1 1/2". */
export function inchFraction(inches: Fraction): string | undefined {
  return inches.mul(64).d === 1n && inches.d !== 1n ? inches.toFraction(true) : undefined;
}

/** How many decimal places a fraction has, or nothing where they never end. */
export function endOf(value: Fraction): number | undefined {
  let rest = value.d;
  let [twos, fives] = [0, 0];
  for (; rest % 2n === 0n; rest /= 2n) twos++;
  for (; rest % 5n === 0n; rest /= 5n) fives++;
  return rest === 1n ? Math.max(twos, fives) : undefined;
}
