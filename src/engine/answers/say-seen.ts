/** What was seen of a mark, or is on record for it, in words. */
import Fraction from "fraction.js";
import type { Mark, Value } from "../lookalikes/mark-table.ts";
import { isAbsent, type Seen } from "../lookalikes/possible-parts.ts";
import type { Feature } from "../records/catalog.ts";

export function sayValue(feature: Feature, value: Value | undefined): string {
  if (value === undefined) return "nothing";
  return value instanceof Fraction ? withUnit(feature, value) : value;
}

/** Typed again, it reads back as the same. */
export function saySeen(feature: Feature, seen: Seen): string {
  switch (seen.is) {
    case "value":
      return seen.value;
    case "measured": {
      const { low, high, error } = seen;
      const reading = low.equals(high) ? withUnit(feature, low) : `${decimal(low)} to ${withUnit(feature, high)}`;
      return error && !error.equals(0) ? `${reading} ± ${decimal(error)}` : reading;
    }
    case "absent":
      return feature.absent ?? (feature.made === "counted" ? "0" : "none");
    case "something else":
    case "not seen":
      return seen.is;
  }
}

/** An outcome of a look, for somebody who is to choose it. */
export function sayOutcome(feature: Feature, mark: Mark, seen: Seen): string {
  if (mark.wearsOff && isAbsent(mark, seen)) return `${saySeen(feature, seen)}, or worn off: proves nothing`;
  return seen.is === "something else" ? "none of these" : saySeen(feature, seen);
}

function withUnit({ unit }: Feature, value: Fraction): string {
  return unit === undefined ? decimal(value) : `${decimal(value)} ${unit}`;
}

/** Readings may come from units in which they do not end; a person needs no more than six places. */
function decimal(value: Fraction): string {
  const text = value.toString();
  return text.includes("(") ? String(Number(value.valueOf().toFixed(6))) : text;
}
