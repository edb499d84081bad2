/**
 * Sets of whole numbers, in one form: sorted, disjoint, never touching.
 *
 *   1971..1973, 1975   is   [[1971, 1973], [1975, 1975]]
 *
 * Every trait of a car (a year, a body, "has power brakes") is counted in whole numbers, so one loop serves all of them.
 */
export type Ranges = readonly (readonly [from: number, to: number])[];

/** Brings any list of pairs into the one form. A pair that runs backwards holds nothing. */
export function ranges(pairs: Iterable<readonly [number, number]>): Ranges {
  const sorted = [...pairs].filter(([from, to]) => from <= to).sort((a, b) => a[0] - b[0]);
  const merged: [number, number][] = [];
  for (const [from, to] of sorted) {
    const last = merged.at(-1);
    if (last && from <= last[1] + 1) last[1] = Math.max(last[1], to);
    else merged.push([from, to]);
  }
  return merged;
}

/** What `within` holds and `set` does not. */
export function outside(set: Ranges, within: readonly [number, number]): Ranges {
  const gaps: [number, number][] = [];
  let next = within[0];
  for (const [from, to] of set) {
    if (from > next) gaps.push([next, Math.min(from - 1, within[1])]);
    next = Math.max(next, to + 1);
  }
  if (next <= within[1]) gaps.push([next, within[1]]);
  return ranges(gaps);
}

/** What both sets hold. */
export function shared(a: Ranges, b: Ranges): Ranges {
  return ranges(
    a.flatMap(([from, to]) =>
      b.map(([otherFrom, otherTo]) => [Math.max(from, otherFrom), Math.min(to, otherTo)] as const),
    ),
  );
}

/** How many whole numbers the set holds. */
export function size(set: Ranges): number {
  return set.reduce((sum, [from, to]) => sum + to - from + 1, 0);
}

export function includes(set: Ranges, value: number): boolean {
  return set.some(([from, to]) => from <= value && value <= to);
}
