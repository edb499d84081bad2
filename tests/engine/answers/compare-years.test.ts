/** What two years differ in, against a slow twin that looks at every tractor by itself. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compareYears, NOT_ON_RECORD, namedIn, runningTraits } from "../../../src/engine/answers/compare-years.ts";
import { type CarSet, NONE } from "../../../src/engine/scope/diagram.ts";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import { TRACTORS, type Tractor } from "../../helpers/listed-tractors.ts";
import { SEED } from "../../helpers/seed.ts";
import { slowCompare } from "../../helpers/slow-compare.ts";
import { catalogOf } from "../../helpers/tiny-folder.ts";

const { space, buildable } = catalogOf();
const { sets } = space;
const carsOf = (text: string): CarSet => {
  const read = readScope(space, text);
  if (!("scope" in read)) throw new Error(text);
  return sets.and(read.scope.cars, buildable);
};
const SETS = new Map(
  TRACTORS.map((car) => {
    const { line, my, plant, PT, WN, half } = car;
    const number = half === "lower" ? "0000-4999" : "5000-9999";
    const flags = `PT=${PT ? "yes" : "no"}; WN=${WN ? "yes" : "no"}`;
    return [car, carsOf(`line=${line}; my=${my}; plant=${plant}; ${flags}; number=${number}`)];
  }),
);
const setOf = (car: Tractor): CarSet => SETS.get(car) as CarSet;
const NAMED = namedIn(space, [carsOf("line=B; plant=K; PT=yes; WN=no")]);

/** What may be on record of one tractor: one value, several, or none. */
const SAID = [["1 mm"], ["1 mm"], ["2 mm"], ["3 mm"], ["1 mm", "2 mm"], []] as const;
/** Most tractors of a kind have one value in all years; some kinds and years have another one, for one half of the numbers or for both. */
const stated = fc
  .record({
    kinds: fc.array(fc.constantFrom(...SAID), { minLength: 16, maxLength: 16 }),
    cells: fc.array(fc.option(fc.constantFrom(...SAID), { freq: 3 }), { minLength: 80, maxLength: 80 }),
    tractors: fc.array(fc.option(fc.constantFrom(...SAID), { freq: 2 }), { minLength: 160, maxLength: 160 }),
    running: fc.boolean(),
  })
  .map(({ kinds, cells, tractors, running }) => ({ line, plant, PT, WN, my, half }: Tractor): readonly string[] => {
    const bits = [line === "B", plant === "K", PT, WN];
    const kind = bits.reduce((sum, bit, i) => sum + (bit ? 2 ** i : 0), 0);
    const cell = kind * 5 + my - 1957;
    const own = running && kind % 3 === 0 ? tractors[cell * 2 + (half === "lower" ? 0 : 1)] : undefined;
    return own ?? cells[cell] ?? kinds[kind] ?? [];
  });

test("is what tractor by tractor has other values than its kind, or the kinds most like it, had in the first year", () => {
  const seen = { same: 0, changed: 0, gone: 0, added: 0, silent: 0 };
  fc.assert(
    fc.property(
      stated,
      fc.subarray([...TRACTORS], { minLength: 20 }),
      fc.constantFrom(1957, 1958, 1959, 1960, 1961),
      fc.constantFrom(1957, 1958, 1959, 1960, 1961),
      (said, cars, from, to) => {
        const [before, after] = [cars.filter((it) => it.my === from), cars.filter((it) => it.my === to)];
        if (before.length === 0 || after.length === 0) return;
        const valuesOf = (all: readonly Tractor[]) =>
          [...new Set(all.flatMap((car) => said(car))), NOT_ON_RECORD].flatMap((value) => {
            const has = all.filter((car) =>
              value === NOT_ON_RECORD ? said(car).length === 0 : said(car).includes(value),
            );
            return has.length === 0 ? [] : [{ said: value, cars: space.any(has.map(setOf)) }];
          });
        const { changed, oneSided } = compareYears(space, valuesOf(before), valuesOf(after), NAMED);
        const slow = slowCompare(before, after, said, ["line", "plant", "PT", "WN"]);
        const known = (values: readonly string[]): string[] => values.filter((it) => it !== NOT_ON_RECORD);
        for (const car of after) {
          const expected = slow.find((it) => it.car === car);
          const found = [...changed, ...oneSided].filter((it) => sets.and(it.kinds, setOf(car)) !== NONE);
          expect(found.map((it) => [known(it.from), known(it.to)])).toEqual(
            expected ? [[expected.from, expected.to]] : [],
          );
          if (!expected) seen.same++;
          else if (expected.to.length === 0) seen.gone++;
          else if (expected.from.length === 0) seen.added++;
          else {
            seen.changed++;
            expect(changed).toContain(found[0]);
            expect(found[0]?.from.includes(NOT_ON_RECORD)).toBe(expected.silentBefore);
            if (expected.silentBefore) seen.silent++;
          }
        }
        // No two sides of a change are the same.
        for (const { from, to } of changed) expect(known(from)).not.toEqual(known(to));
      },
    ),
    { seed: SEED, numRuns: 400 },
  );
  expect(Object.entries(seen).filter(([, count]) => count <= 30)).toEqual([]);
});

describe("kinds of tractors", () => {
  const compared = (first: [string, string][], last: [string, string][]) => {
    const values = (year: number, list: [string, string][]) =>
      list.map(([said, text]) => ({ said, cars: carsOf(`my=${year}; ${text}`) }));
    const { changed, oneSided } = compareYears(space, values(1959, first), values(1960, last), NAMED);
    const words = ({ from, to }: { from: readonly string[]; to: readonly string[] }): string =>
      `${from.join(" or ")} > ${to.join(" or ")}`;
    return [changed.map(words), oneSided.map(words)];
  };
  // in 1959, in 1960, what changed, what is on record in one of the years only
  test.each<[string, [string, string][], [string, string][], string[], string[]]>([
    [
      "each keeps what it had",
      [
        ["A", "line=B"],
        ["B", "line=H"],
      ],
      [
        ["A", "line=B"],
        ["B", "line=H"],
      ],
      [],
      [],
    ],
    [
      "one changes, one keeps it",
      [["A", "line=B,H"]],
      [
        ["A", "line=B"],
        ["B", "line=H"],
      ],
      ["A > B"],
      [],
    ],
    [
      "they change places",
      [
        ["A", "line=B"],
        ["B", "line=H"],
      ],
      [
        ["B", "line=B"],
        ["A", "line=H"],
      ],
      ["A > B", "B > A"],
      [],
    ],
    [
      "both values in both years, by number",
      [
        ["A", "number<=0499"],
        ["B", "number>=0500"],
      ],
      [
        ["B", "number<=0099"],
        ["A", "number>=0100"],
      ],
      [],
      [],
    ],
    [
      "what ran within a year has run out",
      [
        ["A", "number<=0499"],
        ["B", "number>=0500"],
      ],
      [["B", "line=B,H"]],
      ["A or B > B"],
      [],
    ],
    ["nothing on record before", [[NOT_ON_RECORD, "line=B,H"]], [["A", "line=B,H"]], [], [" > A"]],
    ["nothing on record since", [["A", "line=B,H"]], [[NOT_ON_RECORD, "line=B,H"]], [], ["A > "]],
    [
      "on record for some numbers only",
      [
        ["A", "number<=0499"],
        [NOT_ON_RECORD, "number>=0500"],
      ],
      [["B", "line=B,H"]],
      ["A or not on record > B"],
      [],
    ],
    [
      "the same, as far as it is on record",
      [
        ["A", "number<=0499"],
        [NOT_ON_RECORD, "number>=0500"],
      ],
      [["A", "line=B,H"]],
      [],
      [],
    ],
    [
      "a new kind came in place of one that is no more",
      [
        ["A", "line=B; PT=no"],
        ["B", "line=B; PT=yes"],
      ],
      [["B", "line=B"]],
      [],
      [],
    ],
  ])("%s", (_, first, last, changed, oneSided) => {
    expect(compared(first, last)).toEqual([changed, oneSided]);
  });

  test("one that is new is compared with those that it came in place of", () => {
    // 1959 had Dunmoor and Kelby; of 1958 there were Kelby tractors only, which went on being built.
    const first = [
      { said: "A", cars: carsOf("my=1958; line=B; PT=no") },
      { said: "B", cars: carsOf("my=1958; line=B; PT=yes") },
    ];
    const last = [{ said: "B", cars: carsOf("my=1960; line=H; WN=no") }];
    // No Badger any more: all kinds are gone, and one of them had the value.
    expect(compareYears(space, first, last, NAMED).changed).toEqual([]);
    const withBadger = [...last, { said: "B", cars: carsOf("my=1960; line=B") }];
    // Badgers with power take-off went on; the new Herons came in place of those without it.
    expect(compareYears(space, first, withBadger, NAMED).changed.map(({ from, to }) => [from, to])).toEqual([
      [["A"], ["B"]],
    ]);
  });
});

test("what runs, and what was fitted since, tells no kinds apart", () => {
  expect([...runningTraits(space)].map((trait) => space.trait(trait).id)).toEqual(["my", "number", "fitted HT-201"]);
  expect([...NAMED].map((trait) => space.trait(trait).id)).toContain("PT");
});
