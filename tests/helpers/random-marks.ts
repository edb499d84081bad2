/**
 * Random small tables of marks, and a slow twin that knows them as plain words and whole numbers: it decides by loops over all that
 * could be seen.
 */
import Fraction from "fraction.js";
import type { Mark, MarkTable, Value } from "../../src/engine/lookalikes/mark-table.ts";
import type { Observation, Seen } from "../../src/engine/lookalikes/possible-parts.ts";

/** One column as it was drawn. */
export interface PlainMark {
  readonly kind: "durable" | "paint" | "measure";
  readonly tolerance: number;
  readonly effort: number;
  /** Part by part; nothing where it is not on record. Measures are whole numbers. */
  readonly values: readonly (string | number | undefined)[];
}

/** What somebody sees, in plain words: a value, a whole number, or one of these. */
export type PlainSeen = string | number;
export const NOT_SEEN = "?";
export const ABSENT = "none";
export const ELSE = "else";

/** A stream of numbers from 0 up to 1, the same for the same seed. (Mulberry32.) */
export function randomNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

export function drawMarks(random: () => number): PlainMark[] {
  const upTo = (most: number): number => Math.floor(random() * most);
  const parts = 1 + upTo(5);
  return Array.from({ length: 1 + upTo(4) }, (): PlainMark => {
    const kind = (["durable", "paint", "measure"] as const)[upTo(3)] ?? "durable";
    const values = Array.from({ length: parts }, () => {
      if (random() < 0.25) return undefined;
      return kind === "measure" ? upTo(8) : ["none", "one", "two"][upTo(3)];
    });
    return { kind, tolerance: upTo(3), effort: 1 + upTo(5), values };
  });
}

/** The same for the engine. Parts are P0, P1 and so on, marks m0, m1. */
export function tableOf(drawn: readonly PlainMark[]): MarkTable {
  const marks = drawn.map(
    ({ kind, tolerance, effort }, i): Mark => ({
      id: `m${i}`,
      effort,
      wearsOff: kind === "paint",
      absent: ABSENT,
      tolerance: kind === "measure" ? new Fraction(tolerance) : undefined,
    }),
  );
  const numbers = drawn[0]?.values.map((_, part) => part) ?? [];
  return {
    marks,
    parts: numbers.map((part) => ({
      number: `P${part}`,
      marks: new Map(
        drawn.flatMap(({ values }, i): [string, Value][] => {
          const value = values[part];
          return value === undefined ? [] : [[`m${i}`, typeof value === "number" ? new Fraction(value) : value]];
        }),
      ),
    })),
  };
}

export function observationOf(mark: number, seen: PlainSeen): Observation {
  return { mark: `m${mark}`, seen: seenOf(seen) };
}

function seenOf(seen: PlainSeen): Seen {
  if (typeof seen === "number") return { is: "measured", low: new Fraction(seen), high: new Fraction(seen) };
  if (seen === NOT_SEEN) return { is: "not seen" };
  if (seen === ELSE) return { is: "something else" };
  return seen === ABSENT ? { is: "absent" } : { is: "value", value: seen };
}

/** Everything that could be seen of a mark. */
export function allSeen({ kind }: PlainMark): PlainSeen[] {
  const words = kind === "measure" ? [-3, -2, -1, 0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10] : ["one", "two"];
  return [...words, ABSENT, ELSE, NOT_SEEN];
}

/** Whether a part may look like this. */
export function slowFits({ kind, tolerance, values }: PlainMark, part: number, seen: PlainSeen): boolean {
  const stated = values[part];
  if (stated === undefined || seen === NOT_SEEN) return true;
  if (kind === "paint" && seen === ABSENT) return true;
  // Of two dabs one may be gone.
  if (kind === "paint" && seen === "one" && stated === "two") return true;
  if (typeof stated === "number" && typeof seen === "number") return Math.abs(stated - seen) <= tolerance;
  return stated === seen;
}
