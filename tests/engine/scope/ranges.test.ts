import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { includes, outside, ranges, shared, size } from "../../../src/engine/scope/ranges.ts";
import { SEED } from "../../helpers/seed.ts";
import { IN_ONE_FORM, OUTSIDE, SHARED } from "./ranges.cases.ts";

describe("pairs come into one form: sorted, apart, never touching", () => {
  test.each(IN_ONE_FORM)("%j is %j", (given, form) => {
    expect(ranges(given)).toEqual(form);
  });

  test("the list that was given is left as it was", () => {
    const given = [
      [4, 5],
      [1, 2],
    ] as const;
    ranges(given);
    expect(given).toEqual([
      [4, 5],
      [1, 2],
    ]);
  });
});

test.each(OUTSIDE)("outside %j within %j lies %j", (set, within, left) => {
  expect(outside(set, within)).toEqual(left);
});

test.each(SHARED)("%j and %j share %j, in either order", (a, b, both) => {
  expect(shared(a, b)).toEqual(both);
  expect(shared(b, a)).toEqual(both);
});

test("ranges agree with plain sets of numbers that are listed one by one", () => {
  const pairs = fc.array(fc.tuple(fc.integer({ min: -6, max: 12 }), fc.integer({ min: -6, max: 12 })), {
    maxLength: 5,
  });
  const domain = Array.from({ length: 19 }, (_, i) => i - 6);
  const listed = (list: readonly (readonly [number, number])[]): number[] =>
    domain.filter((n) => list.some(([from, to]) => from <= n && n <= to));
  fc.assert(
    fc.property(pairs, pairs, (a, b) => {
      const [left, right] = [ranges(a), ranges(b)];
      expect(domain.filter((n) => includes(left, n))).toEqual(listed(a));
      expect(size(left)).toBe(listed(a).length);
      expect(listed(shared(left, right))).toEqual(listed(a).filter((n) => listed(b).includes(n)));
      expect(listed(outside(left, [-6, 12]))).toEqual(domain.filter((n) => !listed(a).includes(n)));
      left.slice(1).forEach(([from], i) => {
        expect(from).toBeGreaterThan((left[i]?.[1] as number) + 1);
      });
    }),
    { seed: SEED, numRuns: 1000 },
  );
});
