/** A quantity or a window of two limits, as typed: "30..40 ft-lb", "30 to 40 ft-lb", "0.5 mm..0.03 in". */
import { convertTo } from "./convert.ts";
import { clearWord } from "./find-unit.ts";
import { type ReadQuantity, readQuantity } from "./read-quantity.ts";
import type { Unit } from "./unit-table.ts";

/** The unit of the second limit is that of the first, where the first has none; else the first one's is kept. */
export function readWindow(typed: string, expected?: Unit): ReadQuantity {
  const [, from, to] = /^\s*(.*?\S)\s*(?:\.\.+|…|\bto\b|\s[-–—]\s|[–—])\s*(\S.*?)\s*$/i.exec(typed) ?? [];
  if (from === undefined || to === undefined) return readQuantity(typed, expected);
  const high = readQuantity(to, expected);
  if (high.as !== "quantity") return high;
  const isBare = /^[-+−]?[\d.,/ ]+$/.test(from);
  const low = readQuantity(isBare ? `${from} ${clearWord(high.unit)}` : from, high.unit);
  if (low.as !== "quantity") return low;
  const end = convertTo(high.high, high.unit, low.unit);
  if (low.low.gt(end)) return { as: "refused", why: `'${typed.trim()}' begins above its end.` };
  return { ...low, high: end, written: typed.trim() };
}
