import fc from "fast-check";
import Fraction from "fraction.js";
import { expect, test } from "vitest";
import { type Judged, judge, type Limits, type Read } from "../../../src/engine/settings/judge.ts";
import { SEED } from "../../helpers/seed.ts";

// what was read, the instrument's error, the limits, verdict, by how much, from which limit
const CASES: [string, string, string, Judged, string | undefined, string | undefined][] = [
  ["5", "0", "4..8", "within", "1", "lower"],
  ["4", "0", "4..8", "within", "0", "lower"], // limits count as inside
  ["8", "0", "4..8", "within", "0", "upper"],
  ["3.999", "0", "4..8", "too low", "1/1000", "lower"],
  ["8.001", "0", "4..8", "too high", "1/1000", "upper"],
  ["1000000", "0", "54..", "within", "999946", "lower"],
  ["53", "0", "54..", "too low", "1", "lower"],
  ["0", "0", "..0.003", "within", "3/1000", "upper"],
  ["-1", "0", "..0.003", "within", "1003/1000", "upper"], // without a lower limit nothing is too low
  ["0.0031", "0", "..0.003", "too high", "1/10000", "upper"],
  ["7", "0", "..", "within", undefined, undefined],
  ["4", "0", "4..4", "within", "0", "lower"],
  ["4.5", "1", "4..8", "too near the limit to call", "1/2", "lower"],
  ["5", "1", "4..8", "within", "1", "lower"], // the error reaches the limit, and not beyond
  ["3", "1", "4..8", "too near the limit to call", "1", "lower"], // it may be 4
  ["2.9", "1", "4..8", "too low", "11/10", "lower"],
  ["9", "1", "4..8", "too near the limit to call", "1", "upper"],
  ["6", "3", "4..8", "too near the limit to call", "2", "lower"],
  ["6", "100", "4..8", "too near the limit to call", "2", "lower"],
  ["4", "0.1", "4..4", "too near the limit to call", "0", "lower"], // an exact value needs an exact tool
  // Between two gauges: the first goes, the next does not.
  ["52..67)", "0", "52..67", "within", "0", "lower"],
  ["52..67)", "0", "67..78", "too low", "0", "lower"], // it is below 67
  ["52..67]", "0", "67..78", "too near the limit to call", "0", "lower"],
  ["60..70)", "0", "52..67", "too near the limit to call", "0", "upper"],
  ["(67..78", "0", "52..67", "too high", "0", "upper"],
  ["67..78", "0", "52..67", "too near the limit to call", "0", "upper"],
  ["52..67)", "1", "67..78", "too near the limit to call", "0", "lower"], // the error blurs the open end
];

function readOf(text: string): Read {
  const [, open, low = "", high, end] = /^(\(?)(-?[\d.]+?)(?:\.\.(-?[\d.]+)([)\]]?))?$/.exec(text) ?? [];
  return {
    low: new Fraction(low),
    high: new Fraction(high ?? low),
    ...(open ? { openLow: true } : {}),
    ...(end === ")" ? { openHigh: true } : {}),
  };
}

function limitsOf(text: string): Limits {
  const [low, high] = text.split("..");
  return { low: low || undefined, high: high || undefined };
}

test.each(CASES)("%s ± %s against %s: %s by %s from the %s limit", (read, error, limits, verdict, by, limit) => {
  const judged = judge(readOf(read), limitsOf(limits), new Fraction(error));
  expect([judged.verdict, judged.by?.toFraction(), judged.limit]).toEqual([verdict, by, limit]);
});

test("without an error the instrument is taken as right", () => {
  expect(judge(readOf("4"), limitsOf("4..8"))).toEqual(judge(readOf("4"), limitsOf("4..8"), new Fraction(0)));
});

/** The slow twin: every eighth that it may be is looked at by itself; ends and limits are quarters. */
function slowVerdict({ low, high, openLow, openHigh }: Read, limits: Limits, error: Fraction): Judged {
  const step = new Fraction(1, 8);
  const seen = new Set<string>();
  const [from, to] = [low.sub(error), high.add(error)];
  const isOpen = error.equals(0);
  for (let at = from; at.lte(to); at = at.add(step)) {
    if (isOpen && ((openLow && at.equals(from)) || (openHigh && at.equals(to)))) continue;
    const isLow = limits.low !== undefined && at.lt(limits.low);
    const isHigh = limits.high !== undefined && at.gt(limits.high);
    seen.add(isLow ? "too low" : isHigh ? "too high" : "within");
  }
  const [only, ...more] = [...seen];
  return only === undefined || more.length > 0 ? "too near the limit to call" : (only as Judged);
}

const quarter = (from: number, to: number): fc.Arbitrary<Fraction> =>
  fc.integer({ min: from * 4, max: to * 4 }).map((count) => new Fraction(count, 4));

const asked = fc
  .record({
    low: quarter(-2, 6),
    width: fc.oneof(fc.constant(new Fraction(0)), quarter(0, 3)),
    open: fc.constantFrom("", "low", "high"),
    from: fc.option(quarter(-1, 3), { nil: undefined }),
    window: fc.option(quarter(0, 3), { nil: undefined }),
    error: fc.oneof(fc.constant(new Fraction(0)), quarter(0, 2)),
  })
  .map(({ low, width, open, from, window, error }) => {
    // A single value has no open end.
    const isOpen = (end: string): { openLow?: boolean; openHigh?: boolean } =>
      width.equals(0) || open !== end ? {} : end === "low" ? { openLow: true } : { openHigh: true };
    const read: Read = { low, high: low.add(width), ...isOpen("low"), ...isOpen("high") };
    const limits: Limits = {
      low: from?.toString(),
      high: window === undefined ? undefined : (from ?? new Fraction(1)).add(window).toString(),
    };
    return { read, limits, error };
  });

test("says what every point that it may be says, looked at one by one", () => {
  const counts = new Map<string, number>();
  fc.assert(
    fc.property(asked, ({ read, limits, error }) => {
      const { verdict } = judge(read, limits, error);
      expect(verdict).toBe(slowVerdict(read, limits, error));
      counts.set(verdict, (counts.get(verdict) ?? 0) + 1);
    }),
    { seed: SEED, numRuns: 2000 },
  );
  expect(Math.min(...counts.values())).toBeGreaterThan(100);
  expect(counts.size).toBe(4);
});

test("a worse instrument never turns one verdict into another, only into too near to call", () => {
  fc.assert(
    fc.property(asked, quarter(0, 1), ({ read, limits, error }, more) => {
      const [better, worse] = [judge(read, limits, error), judge(read, limits, error.add(more))];
      expect(["too near the limit to call", better.verdict]).toContain(worse.verdict);
      expect(worse.by?.lt(0) ?? false).toBe(false);
    }),
    { seed: SEED, numRuns: 500 },
  );
});

test("is the same for all, mirrored: too low above is too high below", () => {
  const turned = (text: string | undefined): string | undefined =>
    text === undefined ? undefined : new Fraction(text).neg().toString();
  const MIRROR: Partial<Record<Judged, Judged>> = { "too low": "too high", "too high": "too low" };
  fc.assert(
    fc.property(asked, ({ read, limits, error }) => {
      const { low, high, openLow, openHigh } = read;
      const mirrored: Read = {
        low: high.neg(),
        high: low.neg(),
        ...(openHigh ? { openLow: true } : {}),
        ...(openLow ? { openHigh: true } : {}),
      };
      const { verdict } = judge(read, limits, error);
      const other = judge(mirrored, { low: turned(limits.high), high: turned(limits.low) }, error);
      expect(other.verdict).toBe(MIRROR[verdict] ?? verdict);
    }),
    { seed: SEED, numRuns: 500 },
  );
});
