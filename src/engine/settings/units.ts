/**
 * The other unit system beside the one a figure is written in.
 *
 * Factors are exact where the definition is: inch 25.4 mm, pound 0.45359237 kg, standard gravity 9.80665 m/s², US gallon
 * 231 cubic inches. Source: NIST SP 811 (2008), appendix B; inHg is the conventional inch of mercury there.
 */

interface Conversion {
  readonly to: string;
  /** How many of `to` one unit is; `offset` is added afterwards. */
  readonly factor: number;
  readonly offset?: number;
}

const POUND_FORCE = 0.45359237 * 9.80665;
const INCH = 0.0254;
const GALLON_US = 231 * 2.54 ** 3 * 1e-3;

const CONVERSIONS: Readonly<Record<string, Conversion>> = {
  in: { to: "mm", factor: 25.4 },
  "ft-lb": { to: "N·m", factor: POUND_FORCE * 0.3048 },
  "in-lb": { to: "N·m", factor: POUND_FORCE * INCH },
  lbf: { to: "N", factor: POUND_FORCE },
  lb: { to: "kg", factor: 0.45359237 },
  psi: { to: "kPa", factor: POUND_FORCE / INCH ** 2 / 1000 },
  inHg: { to: "kPa", factor: 3.38638867 },
  "US qt": { to: "L", factor: GALLON_US / 4 },
  "fl oz": { to: "mL", factor: (GALLON_US / 128) * 1000 },
  "deg F": { to: "°C", factor: 1 / 1.8, offset: -32 / 1.8 },
  mile: { to: "km", factor: 1.609344 },
  miles: { to: "km", factor: 1.609344 },
  mph: { to: "km/h", factor: 1.609344 },
  mm: { to: "in", factor: 1 / 25.4 },
  N·m: { to: "ft-lb", factor: 1 / (POUND_FORCE * 0.3048) },
  N: { to: "lbf", factor: 1 / POUND_FORCE },
  kg: { to: "lb", factor: 1 / 0.45359237 },
  kPa: { to: "psi", factor: 1000 / (POUND_FORCE / INCH ** 2) },
  bar: { to: "psi", factor: 100_000 / (POUND_FORCE / INCH ** 2) },
  L: { to: "US qt", factor: 4 / GALLON_US },
  mL: { to: "fl oz", factor: 128 / (GALLON_US * 1000) },
  "°C": { to: "deg F", factor: 1.8, offset: 32 },
  km: { to: "miles", factor: 1 / 1.609344 },
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
 * the original refuses. They keep as many significant digits as the wider-written limit of the original, at least three.
 * A single value (low equal to high) is rounded to the nearest instead: inward would leave nothing.
 */
export function inOtherUnits(low: string | undefined, high: string | undefined, unit: string): Converted | undefined {
  const conversion = CONVERSIONS[unit];
  if (!conversion) return undefined;
  const convert = (text: string): number => Number(text) * conversion.factor + (conversion.offset ?? 0);
  const digits = Math.max(3, ...[low, high].map((text) => significantDigits(text ?? "")));
  const step = Math.max(
    ...[low, high].filter((text) => text !== undefined).map((text) => stepFor(convert(text), digits)),
  );
  const round = (text: string | undefined, how: (n: number) => number): string | undefined =>
    text === undefined ? undefined : atStep(convert(text), step, how);
  if (low === high) return { low: round(low, Math.round), high: round(high, Math.round), unit: conversion.to };
  return { low: round(low, Math.ceil), high: round(high, Math.floor), unit: conversion.to };
}

/** One value in the other unit system, rounded to the nearest at `digits` significant digits. */
export function valueInOtherUnits(
  value: number,
  unit: string,
  digits = 3,
): { value: string; unit: string } | undefined {
  const conversion = CONVERSIONS[unit];
  if (!conversion) return undefined;
  const converted = value * conversion.factor + (conversion.offset ?? 0);
  return { value: atStep(converted, stepFor(converted, digits), Math.round), unit: conversion.to };
}

function significantDigits(text: string): number {
  return text.replace(/^-?0*\.?0*/, "").replace(".", "").length;
}

/** The power of ten that the last of so many significant digits counts. */
function stepFor(value: number, digits: number): number {
  if (value === 0) return 10 ** -digits;
  return 10 ** (Math.floor(Math.log10(Math.abs(value))) - digits + 1);
}

function atStep(value: number, step: number, how: (n: number) => number): string {
  const places = Math.max(0, Math.round(-Math.log10(step)));
  const steps = how(Number((value / step).toPrecision(12)));
  return (steps * step).toFixed(places);
}
