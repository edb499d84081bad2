/** A result rounded as the trade rounds it, as text. The value itself is kept beside it, so nothing is lost. */
import { undusted } from "./num.ts";
import type { Rounding } from "./sum.ts";

/**
 * To whole steps of the unit, but to finer ones where fewer than `digits` significant digits would be left; halves go away from
 * zero, unless a side is given. Without a step: to `digits` significant digits, no zeros at the end. `finer`: with so many more places.
 */
export function show(value: number, unit: string, { steps, digits: least, side }: Rounding, finer = 0): string {
  const coarse = steps?.[unit];
  const step = coarse === undefined ? undefined : coarse / 10 ** finer;
  const digits = least + finer;
  const first = value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value)));
  if (step === undefined) {
    const wanted = steps === undefined ? digits : Math.max(3, digits);
    const places = Math.min(20, Math.max(0, wanted - 1 - first));
    if (side === undefined) return withoutZeros(undusted(value).toFixed(places));
    return withoutZeros((toSide(value * 10 ** places, side) / 10 ** places).toFixed(places));
  }
  const used = value === 0 ? step : Math.min(step, 10 ** (first - least + 1));
  const count = side ? toSide(value / used, side) : Math.round(undusted(Math.abs(value) / used)) * Math.sign(value);
  return (count * used + 0).toFixed(Math.min(20, Math.max(0, -Math.floor(Math.log10(used) + 1e-9))));
}

/** A millionth of a step is dust of the computer's. */
function toSide(count: number, side: "up" | "down"): number {
  return side === "up" ? Math.ceil(count - 1e-6) : Math.floor(count + 1e-6);
}

function withoutZeros(text: string): string {
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}
