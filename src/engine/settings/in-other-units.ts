/** A figure in the other unit system, beside the one it is written in. */
import Fraction from "fraction.js";
import { convertTo } from "./convert.ts";
import { decimals, placesFor, type Side, stepsOf, tenTo } from "./rounding.ts";
import { unitNamed } from "./unit-named.ts";
import type { Unit } from "./unit-table.ts";

export interface Converted {
  readonly low: string | undefined;
  readonly high: string | undefined;
  readonly unit: string;
}

/** A window in the other unit system, or nothing when the unit has none (notches, rpm, volts). */
export function inOtherUnits(low: string | undefined, high: string | undefined, unit: string): Converted | undefined {
  const from = unitNamed(unit);
  if (from.beside === undefined) return undefined;
  const [one, other] = [low, high].map((text) => (text === undefined ? undefined : exactly(text)));
  const digits = Math.max(...[low, high].map((text) => significantDigits(text ?? "")));
  return windowIn(one, other, from, unitNamed(from.beside), digits);
}

/**
 * A window in another unit of its dimension.
 *
 * Limits are rounded inward, the lower one up and the upper one down, so that the converted window never admits what
 * the original refuses. Both are written to the same decimal place: the coarser of the two at which a limit keeps as many
 * significant digits as the wider-written limit of the original has, at least three. Where a narrow window would close by that,
 * the place moves on until it stays open.
 * A single value (low equal to high) is rounded to the nearest instead: inward would leave nothing.
 */
export function windowIn(
  low: Fraction | undefined,
  high: Fraction | undefined,
  from: Unit,
  to: Unit,
  writtenDigits: number,
): Converted {
  const [one, other] = [low, high].map((limit) => limit && convertTo(limit, from, to));
  // A unit that counts the other way round turns the window.
  const turns = from.size.s !== to.size.s;
  const [first, last] = turns ? [other, one] : [one, other];
  const limits = [first, last].filter((limit) => limit !== undefined);
  const digits = Math.max(3, writtenDigits);
  let places = Math.min(...limits.map((limit) => placesFor(limit, digits)));
  // Zero has no digits to keep, so it follows the other limit.
  if (places === Number.POSITIVE_INFINITY) places = 0;
  const show = (value: Fraction | undefined, side: Side): string | undefined =>
    value && decimals(stepsOf(value, places, side), places);
  if (first && last && first.equals(last)) {
    const single = show(first, "nearest");
    return { low: single, high: single, unit: to.id };
  }
  while (first && last && stepsOf(first, places, "up") >= stepsOf(last, places, "down")) places++;
  return { low: show(first, "up"), high: show(last, "down"), unit: to.id };
}

/** One value in the other unit system, rounded to the nearest at `digits` significant digits. */
export function valueInOtherUnits(
  value: number,
  unit: string,
  digits = 3,
): { value: string; unit: string } | undefined {
  const from = unitNamed(unit);
  if (from.beside === undefined) return undefined;
  const converted = convertTo(exactly(String(value)), from, unitNamed(from.beside));
  const places = converted.equals(0) ? 0 : placesFor(converted, digits);
  return { value: decimals(stepsOf(converted, places, "nearest"), places), unit: from.beside };
}

/** A decimal number as it is written, with or without an exponent. */
function exactly(text: string): Fraction {
  const [, number, exponent = "0"] = /^(-?\d+(?:\.\d+)?)(?:e([+-]?\d+))?$/.exec(text) ?? [];
  if (number === undefined) throw new RangeError(`'${text}' is no decimal number`);
  return new Fraction(number).mul(tenTo(Number(exponent)));
}

/** How many digits of a written number carry meaning: "0.0300" has three. */
export function significantDigits(text: string): number {
  return text.replace(/^-?0*\.?0*/, "").replace(".", "").length;
}
