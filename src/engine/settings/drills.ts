/**
 * Twist drills, whose shanks serve as gauges: a bigger number is a smaller drill, then come the letters; fractions of an inch
 * overlap both. The steps are uneven.
 *
 * Sizes of number and letter drills: ASME B94.11M, here from memory of the printed table. Fractions and millimetres are their own size.
 */
import Fraction from "fraction.js";

export interface Drill {
  /** "No. 42", "letter E", "7/64 in", "2.5 mm". */
  readonly name: string;
  readonly kind: "number" | "letter" | "fraction" | "metric";
  readonly inches: Fraction;
}

/** No. 1 first, in inches. */
const NUMBERS = `
  0.228 0.221 0.213 0.209 0.2055 0.204 0.201 0.199 0.196 0.1935
  0.191 0.189 0.185 0.182 0.18 0.177 0.173 0.1695 0.166 0.161
  0.159 0.157 0.154 0.152 0.1495 0.147 0.144 0.1405 0.136 0.1285
  0.12 0.116 0.113 0.111 0.11 0.1065 0.104 0.1015 0.0995 0.098
  0.096 0.0935 0.089 0.086 0.082 0.081 0.0785 0.076 0.073 0.07
  0.067 0.0635 0.0595 0.055 0.052 0.0465 0.043 0.042 0.041 0.04
  0.039 0.038 0.037 0.036 0.035 0.033 0.032 0.031 0.0292 0.028
  0.026 0.025 0.024 0.0225 0.021 0.02 0.018 0.016 0.0145 0.0135`;
/** A first, in inches. */
const LETTERS = `
  0.234 0.238 0.242 0.246 0.25 0.257 0.261 0.266 0.272 0.277
  0.281 0.29 0.295 0.302 0.316 0.323 0.332 0.339 0.348 0.358
  0.368 0.377 0.386 0.397 0.404 0.413`;

const sizes = (text: string): Fraction[] =>
  text
    .trim()
    .split(/\s+/)
    .map((size) => new Fraction(size));

/** From the smallest to the largest; drills of one size in the order number, letter, fraction, metric. */
export const DRILLS: readonly Drill[] = [
  ...sizes(NUMBERS).map((inches, i): Drill => ({ name: `No. ${i + 1}`, kind: "number", inches })),
  ...sizes(LETTERS).map(
    (inches, i): Drill => ({ name: `letter ${String.fromCharCode(65 + i)}`, kind: "letter", inches }),
  ),
  ...Array.from({ length: 64 }, (_, i): Drill => {
    const inches = new Fraction(i + 1, 64);
    return { name: `${inches.toFraction()} in`, kind: "fraction", inches };
  }),
  ...Array.from({ length: 128 }, (_, i): Drill => {
    const tenths = i + 3;
    return { name: `${tenths / 10} mm`, kind: "metric", inches: new Fraction(tenths, 254) };
  }),
].sort((a, b) => a.inches.compare(b.inches));

/** The number drill "42", the letter drill "e", or none. */
export function drillCalled(text: string): Drill | undefined {
  const name = /^\d+$/.test(text) ? `No. ${Number(text)}` : `letter ${text.toUpperCase()}`;
  return DRILLS.find((drill) => drill.name === name);
}

/** The drills of just this size, the next below and the next above. */
export function drillsNear(inches: Fraction): { exact: Drill[]; below: Drill | undefined; above: Drill | undefined } {
  return {
    exact: DRILLS.filter((drill) => drill.inches.equals(inches)),
    below: DRILLS.findLast((drill) => drill.inches.lt(inches)),
    above: DRILLS.find((drill) => drill.inches.gt(inches)),
  };
}
