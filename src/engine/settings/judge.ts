/**
 * Whether a reading passes. (The eighth law of the answers.)
 *
 *   What was read is a value, or a window between two gauges; the instrument may be wrong by its error, to both sides.
 *   If all of it lies within the limits, which count as inside, the reading is *within*.
 *   If all of it lies below the lower limit it is *too low*; above the upper one, *too high*.
 *   Otherwise it lies on both sides of a limit: *too near the limit to call*.
 *
 * Everything is compared exactly, in the unit of the record.
 */
import Fraction from "fraction.js";

export const JUDGED = ["within", "too low", "too high", "too near the limit to call"] as const;
export type Judged = (typeof JUDGED)[number];

export interface Read {
  readonly low: Fraction;
  readonly high: Fraction;
  /** The end itself is not part of what was read. */
  readonly openLow?: boolean;
  readonly openHigh?: boolean;
}

/** Limits as the record writes them; a missing one is no limit. */
export interface Limits {
  readonly low: string | undefined;
  readonly high: string | undefined;
}

export interface Judgement {
  readonly verdict: Judged;
  /** How far the reading lies beyond the limit, or, where it does not, from the nearest one; left out where there is no limit. */
  readonly by: Fraction | undefined;
  /** The limit that decided, or the nearest one. */
  readonly limit: "lower" | "upper" | undefined;
}

export function judge(read: Read, limits: Limits, error: Fraction = new Fraction(0)): Judgement {
  const low = limits.low === undefined ? undefined : new Fraction(limits.low);
  const high = limits.high === undefined ? undefined : new Fraction(limits.high);
  const from = read.low.sub(error);
  const to = read.high.add(error);
  // An error blurs the end that a gauge left open.
  const open: Partial<Read> = error.equals(0) ? read : {};
  if (low && (to.lt(low) || (open.openHigh && to.equals(low))))
    return { verdict: "too low", by: low.sub(read.high), limit: "lower" };
  if (high && (from.gt(high) || (open.openLow && from.equals(high))))
    return { verdict: "too high", by: read.low.sub(high), limit: "upper" };
  const below = low && away(read, low);
  const above = high && away(read, high);
  const isLower = below !== undefined && (above === undefined || below.lte(above));
  const nearest = isLower
    ? ({ by: below, limit: "lower" } as const)
    : { by: above, limit: above && ("upper" as const) };
  const isWithin = (low === undefined || from.gte(low)) && (high === undefined || to.lte(high));
  return { verdict: isWithin ? "within" : "too near the limit to call", ...nearest };
}

/** How far a limit lies outside of what was read; nothing where it lies inside. */
function away({ low, high }: Read, limit: Fraction): Fraction {
  if (limit.lt(low)) return low.sub(limit);
  return limit.gt(high) ? limit.sub(high) : new Fraction(0);
}
