/** A result rounded as the trade rounds it, as text. The value itself is kept beside it, so nothing is lost. */
import { undusted } from "./num.ts";
import type { Rounding } from "./sum.ts";

/**
 * To whole steps of the unit, but to finer ones where fewer than `digits` significant digits would be left; halves go away from
 * zero. Without a step: to `digits` significant digits, no zeros at the end.
 */
export function show(value: number, unit: string, { steps, digits }: Rounding): string {
  const step = steps?.[unit];
  const first = value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value)));
  if (step === undefined) {
    const wanted = steps === undefined ? digits : Math.max(3, digits);
    return withoutZeros(undusted(value).toFixed(Math.min(20, Math.max(0, wanted - 1 - first))));
  }
  const used = value === 0 ? step : Math.min(step, 10 ** (first - digits + 1));
  const count = Math.round(undusted(Math.abs(value) / used)) * Math.sign(value);
  return (count * used + 0).toFixed(Math.min(20, Math.max(0, -Math.floor(Math.log10(used) + 1e-9))));
}

function withoutZeros(text: string): string {
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}
