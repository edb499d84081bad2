import type Fraction from "fraction.js";
import type { Unit } from "./unit-table.ts";

/** The same quantity counted in another unit, exactly. Throws a RangeError where the two do not measure the same thing. */
export function convertTo(value: Fraction, from: Unit, to: Unit): Fraction {
  if (from.dimension !== to.dimension)
    throw new RangeError(`${from.id} is a ${from.dimension}, ${to.id} a ${to.dimension}`);
  if (from.id === to.id) return value;
  const counted = (from.zero ? value.add(from.zero) : value).mul(from.size).div(to.size);
  return to.zero ? counted.sub(to.zero) : counted;
}
