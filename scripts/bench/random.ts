/** Chance that can be repeated: the same seed gives the same numbers on every machine. */
export interface Random {
  /** A whole number from `from` up to and with `to`. */
  whole(from: number, to: number): number;
  /** True so often of a hundred times. */
  percent(often: number): boolean;
  pick<T>(items: readonly T[]): T;
  /** So many of the items, in their own order. */
  some<T>(items: readonly T[], count: number): T[];
}

/** Mulberry32, a generator of 32 bits by Tommy Ettinger, in the public domain. */
export function random(seed: number): Random {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let bits = Math.imul(state ^ (state >>> 15), state | 1);
    bits ^= bits + Math.imul(bits ^ (bits >>> 7), bits | 61);
    return ((bits ^ (bits >>> 14)) >>> 0) / 2 ** 32;
  };
  const whole = (from: number, to: number): number => from + Math.floor(next() * (to - from + 1));
  return {
    whole,
    percent: (often) => next() * 100 < often,
    pick: (items) => items[whole(0, items.length - 1)] as (typeof items)[number],
    some: (items, count) => {
      let wanted = Math.min(count, items.length);
      return items.filter((_, i) => {
        const taken = next() * (items.length - i) < wanted;
        if (taken) wanted--;
        return taken;
      });
    },
  };
}
