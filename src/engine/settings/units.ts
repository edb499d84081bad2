/**
 * The other unit system beside the one a figure is written in.
 *
 * Everything here is counted in fractions of whole numbers, so a limit is decided exactly. Floating point decides by luck
 * where a converted limit falls on a whole step: 0.60 in are 15.24 mm, but 0.6 * 25.4 is 15.239999999999998.
 *
 * Definitions: inch 25.4 mm, pound 0.45359237 kg, standard gravity 9.80665 m/s², US gallon 231 cubic inches, conventional
 * mercury 13595.1 kg/m³. Source: NIST SP 811 (2008), appendix B.
 */

interface Fraction {
  readonly over: bigint;
  /** Never below one. */
  readonly under: bigint;
}

interface Unit {
  /** What one of it is in units of the SI without prefix. */
  readonly size: Fraction;
  /** What is added to a reading before it is counted from zero; for temperatures. */
  readonly zero?: Fraction;
  /** The unit that stands beside it. */
  readonly beside: string;
}

const INCH = exactly("0.0254");
const FOOT = times(exactly("12"), INCH);
const MILE = times(exactly("5280"), FOOT);
const POUND = exactly("0.45359237");
const GRAVITY = exactly("9.80665");
const POUND_FORCE = times(POUND, GRAVITY);
const GALLON = times(exactly("231"), INCH, INCH, INCH);
const HOUR = exactly("3600");
const ONE = exactly("1");

const UNITS: Readonly<Record<string, Unit>> = {
  in: { size: INCH, beside: "mm" },
  mm: { size: exactly("0.001"), beside: "in" },
  "ft-lb": { size: times(FOOT, POUND_FORCE), beside: "N·m" },
  "in-lb": { size: times(INCH, POUND_FORCE), beside: "N·m" },
  N·m: { size: ONE, beside: "ft-lb" },
  lbf: { size: POUND_FORCE, beside: "N" },
  N: { size: ONE, beside: "lbf" },
  lb: { size: POUND, beside: "kg" },
  kg: { size: ONE, beside: "lb" },
  psi: { size: divided(POUND_FORCE, times(INCH, INCH)), beside: "kPa" },
  inHg: { size: times(exactly("13595.1"), GRAVITY, INCH), beside: "kPa" },
  kPa: { size: exactly("1000"), beside: "psi" },
  bar: { size: exactly("100000"), beside: "psi" },
  "US qt": { size: divided(GALLON, exactly("4")), beside: "L" },
  L: { size: exactly("0.001"), beside: "US qt" },
  "fl oz": { size: divided(GALLON, exactly("128")), beside: "mL" },
  mL: { size: exactly("0.000001"), beside: "fl oz" },
  "deg F": { size: divided(exactly("5"), exactly("9")), zero: exactly("459.67"), beside: "°C" },
  "°C": { size: ONE, zero: exactly("273.15"), beside: "deg F" },
  mile: { size: MILE, beside: "km" },
  miles: { size: MILE, beside: "km" },
  km: { size: exactly("1000"), beside: "miles" },
  mph: { size: divided(MILE, HOUR), beside: "km/h" },
  "km/h": { size: divided(exactly("1000"), HOUR), beside: "mph" },
};

export interface Converted {
  readonly low: string | undefined;
  readonly high: string | undefined;
  readonly unit: string;
}

/**
 * A window in the other unit system, or nothing when the unit has none (notches, rpm, volts).
 *
 * Limits are rounded inward, the lower one up and the upper one down, so that the converted window never admits what
 * the original refuses. Both are written to the same decimal place: the coarser of the two at which a limit keeps as many
 * significant digits as the wider-written limit of the original, at least three. Where a narrow window would close by that,
 * the place moves on until it stays open.
 * A single value (low equal to high) is rounded to the nearest instead: inward would leave nothing.
 */
export function inOtherUnits(low: string | undefined, high: string | undefined, unit: string): Converted | undefined {
  const other = UNITS[unit]?.beside;
  if (other === undefined) return undefined;
  const [from, to] = [low, high].map((text) => (text === undefined ? undefined : convert(exactly(text), unit, other)));
  const limits = [from, to].filter((limit) => limit !== undefined);
  const digits = Math.max(3, ...[low, high].map((text) => significantDigits(text ?? "")));
  let places = Math.min(...limits.map((limit) => placesFor(limit, digits)));
  // Zero has no digits to keep, so it follows the other limit.
  if (places === Number.POSITIVE_INFINITY) places = 0;
  if (from && to && compare(from, to) === 0) {
    const single = written(steps(from, places, "nearest"), places);
    return { low: single, high: single, unit: other };
  }
  const inward = (): (bigint | undefined)[] => [from && steps(from, places, "up"), to && steps(to, places, "down")];
  let [first, last] = inward();
  while (from && to && compare(from, to) < 0 && (first as bigint) >= (last as bigint)) {
    places++;
    [first, last] = inward();
  }
  const show = (count: bigint | undefined): string | undefined =>
    count === undefined ? undefined : written(count, places);
  return { low: show(first), high: show(last), unit: other };
}

/** One value in the other unit system, rounded to the nearest at `digits` significant digits. */
export function valueInOtherUnits(
  value: number,
  unit: string,
  digits = 3,
): { value: string; unit: string } | undefined {
  const other = UNITS[unit]?.beside;
  if (other === undefined) return undefined;
  const converted = convert(exactly(String(value)), unit, other);
  const places = converted.over === 0n ? 0 : placesFor(converted, digits);
  return { value: written(steps(converted, places, "nearest"), places), unit: other };
}

function convert(value: Fraction, unit: string, other: string): Fraction {
  const [a, b] = [UNITS[unit], UNITS[other]] as [Unit, Unit];
  const counted = divided(times(a.zero ? plus(value, a.zero) : value, a.size), b.size);
  return b.zero ? plus(counted, negative(b.zero)) : counted;
}

/** A decimal number as it is written, with or without an exponent. */
function exactly(text: string): Fraction {
  const [, sign = "", whole = "", part = "", exponent = "0"] =
    /^(-?)(\d+)(?:\.(\d+))?(?:e([+-]?\d+))?$/.exec(text) ?? [];
  if (whole === "") throw new RangeError(`'${text}' is no decimal number`);
  const shift = Number(exponent) - part.length;
  const digits = BigInt(sign + whole + part);
  return { over: digits * tenTo(shift), under: tenTo(-shift) };
}

function times(...factors: readonly Fraction[]): Fraction {
  return factors.reduce((a, b) => ({ over: a.over * b.over, under: a.under * b.under }));
}

/** `by` is above zero. */
function divided(a: Fraction, by: Fraction): Fraction {
  return { over: a.over * by.under, under: a.under * by.over };
}

function plus(a: Fraction, b: Fraction): Fraction {
  return { over: a.over * b.under + b.over * a.under, under: a.under * b.under };
}

function negative({ over, under }: Fraction): Fraction {
  return { over: -over, under };
}

/** Below zero, zero or above zero, as a is below, equal to or above b. */
function compare(a: Fraction, b: Fraction): number {
  const difference = a.over * b.under - b.over * a.under;
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}

/** Ten to the power, or one where the power is below zero. */
function tenTo(power: number): bigint {
  return 10n ** BigInt(Math.max(0, power));
}

function significantDigits(text: string): number {
  return text.replace(/^-?0*\.?0*/, "").replace(".", "").length;
}

/** How many decimal places show so many significant digits; below zero where the last of them stands before the point. */
function placesFor({ over, under }: Fraction, digits: number): number {
  if (over === 0n) return Number.POSITIVE_INFINITY;
  const size = over < 0n ? -over : over;
  // As many digits over as under: the first digit is the ones, or the tenths when `over` is the smaller one.
  const power = String(size).length - String(under).length;
  const isSmaller = size * tenTo(-power) < under * tenTo(power);
  return digits - 1 - (isSmaller ? power - 1 : power);
}

/** How many steps of the last decimal place a value has. Halfway between two it is nearest to the even one (NIST SP 811, B.7.1). */
function steps(value: Fraction, places: number, side: "up" | "down" | "nearest"): bigint {
  const over = value.over * tenTo(places);
  const under = value.under * tenTo(-places);
  const rest = ((over % under) + under) % under;
  const below = (over - rest) / under;
  if (rest === 0n || side === "down") return below;
  if (side === "up" || rest * 2n > under) return below + 1n;
  return rest * 2n < under || below % 2n === 0n ? below : below + 1n;
}

function written(count: bigint, places: number): string {
  if (places <= 0) return String(count * tenTo(-places));
  const digits = String(count < 0n ? -count : count).padStart(places + 1, "0");
  return `${count < 0n ? "-" : ""}${digits.slice(0, -places)}.${digits.slice(-places)}`;
}
