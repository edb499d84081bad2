/** Exact rounding of fractions to decimal places, which may lie before the point. */
import Fraction from "fraction.js";

export type Side = "up" | "down" | "nearest";

/** How many decimal places show so many significant digits; below zero where the last of them stands before the point. */
export function placesFor(value: Fraction, digits: number): number {
  if (value.equals(0)) return Number.POSITIVE_INFINITY;
  // As many digits over as under: the first digit is the ones, or the tenths when the number over is the smaller one.
  const power = String(value.n).length - String(value.d).length;
  const isSmaller = value.abs().lt(tenTo(power));
  return digits - 1 - (isSmaller ? power - 1 : power);
}

/** How many steps of the last decimal place a value has. Halfway between two it is nearest to the even one (NIST SP 811, B.7.1). */
export function stepsOf(value: Fraction, places: number, side: Side): bigint {
  const steps = value.mul(tenTo(places));
  const below = whole(steps.floor());
  const rest = steps.sub(below);
  if (rest.equals(0) || side === "down") return below;
  const half = rest.compare(new Fraction(1, 2));
  if (side === "up" || half > 0) return below + 1n;
  return half < 0 || below % 2n === 0n ? below : below + 1n;
}

/** A count of steps of a decimal place as a decimal number. */
export function decimals(count: bigint, places: number): string {
  if (places <= 0) return String(count * 10n ** BigInt(-places));
  const digits = String(count < 0n ? -count : count).padStart(places + 1, "0");
  return `${count < 0n ? "-" : ""}${digits.slice(0, -places)}.${digits.slice(-places)}`;
}

export function tenTo(power: number): Fraction {
  const size = 10n ** BigInt(Math.abs(power));
  return power < 0 ? new Fraction(1n, size) : new Fraction(size);
}

function whole(value: Fraction): bigint {
  return value.s * value.n;
}
