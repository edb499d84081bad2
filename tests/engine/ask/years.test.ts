import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { split } from "../../../src/engine/ask/split.ts";
import { beyondYears, type SaidYears, yearsAt } from "../../../src/engine/ask/years.ts";
import { SEED } from "../../helpers/seed.ts";

const YEARS = ["1957", "1958", "1959", "1960", "1961", "1962"];
const at = (said: string, from = 0, known = YEARS): SaidYears | undefined => yearsAt(split(said), from, known);

// what is said at the beginning, first and last year of it (nothing: no year), how many words that takes
const SAID: [said: string, first?: string, last?: string, length?: number][] = [
  // that year, where only one year of the data ends so
  ["1959", "1959", "1959", 1],
  ["'59", "1959", "1959", 1],
  ["59", "1959", "1959", 1],
  ["59s", "1959", "1959", 1],
  ["1959s", "1959", "1959", 1],
  ["'59s", "1959", "1959", 1],
  ["59's", "1959", "1959", 1],
  ["59 pump", "1959", "1959", 1],
  ["1963"],
  ["63"],
  ["9"],
  ["059"],
  ["00059"],
  ["19590"],
  ["59.5"],
  ["-59", "1959", "1959", 1],
  ["pump 59"],
  [""],
  ["fifty-nine"],
  ["__proto__"],
  ["constructor"],

  // every year between, where they stand in that order
  ["1957-59", "1957", "1959", 1],
  ["57-59", "1957", "1959", 1],
  ["'57-'59", "1957", "1959", 1],
  ["57/59", "1957", "1959", 1],
  ["57–59", "1957", "1959", 1],
  ["1957-1957", "1957", "1957", 1],
  ["57 to 59", "1957", "1959", 3],
  ["57 thru 59", "1957", "1959", 3],
  ["57 Through '59", "1957", "1959", 3],
  ["57 till 59", "1957", "1959", 3],
  ["57 until 59", "1957", "1959", 3],
  ["59-57"],
  ["57-1959"], // a part number may look so
  ["57-63"],
  ["56-58"],
  ["59 to 57", "1959", "1959", 1],
  ["59 to 63", "1959", "1959", 1],
  ["59 to", "1959", "1959", 1],
  ["59 to pump", "1959", "1959", 1],
  ["57 and 59", "1957", "1957", 1], // two years

  // that year and every later one
  ["since 60", "1960", "1962", 2],
  ["Since the 60s", "1960", "1962", 3],
  ["starting 60", "1960", "1962", 2],
  ["60 onwards", "1960", "1962", 2],
  ["60 onward", "1960", "1962", 2],
  ["60 up", "1960", "1962", 2],
  ["60 and up", "1960", "1962", 3],
  ["60 and on", "1960", "1962", 3],
  ["60 and later", "1960", "1962", 3],
  ["60 or newer", "1960", "1962", 3],
  ["60 on", "1960", "1962", 2],
  ["60 on the pump", "1960", "1960", 1], // "on" begins what it is about
  ["since 57", "1957", "1962", 2],
  ["not before 60", "1960", "1962", 3],
  ["no earlier than 60", "1960", "1962", 4],
  ["60 plus", "1960", "1962", 2],

  // every earlier year, without it
  ["before 60", "1957", "1959", 2],
  ["before the 60s", "1957", "1959", 3],
  ["before model 60", "1957", "1959", 3],
  ["prior to 60", "1957", "1959", 3],
  ["older than 60", "1957", "1959", 3],
  ["earlier than a 60", "1957", "1959", 4],
  ["pre 60", "1957", "1959", 2],
  ["pre-60", "1957", "1959", 1],
  ["Pre60", "1957", "1959", 1],
  ["pre-'60", "1957", "1959", 1],

  // that year and every earlier one
  ["up to 58", "1957", "1958", 3],
  ["until 58", "1957", "1958", 2],
  ["till 58", "1957", "1958", 2],
  ["through 58", "1957", "1958", 2],
  ["58 and earlier", "1957", "1958", 3],
  ["58 or older", "1957", "1958", 3],
  ["not after 58", "1957", "1958", 3],
  ["no later than the 58s", "1957", "1958", 5],

  // every later year, without it
  ["after 60", "1961", "1962", 2],
  ["post-60", "1961", "1962", 1],
  ["post 60", "1961", "1962", 2],
  ["newer than 60", "1961", "1962", 3],
  ["later than 60", "1961", "1962", 3],

  // words that say which side, and no year
  ["since"],
  ["before the pump"],
  ["before 63"],
  ["up 60"],
  ["pre-63"],
  ["prefix"],
];

describe("what is said of years", () => {
  test.each(SAID)("%s", (said, first, last, length) => {
    const found = at(said);
    expect([found?.years[0], found?.years.at(-1), found?.length]).toEqual([first, last, length]);
    if (first !== undefined && last !== undefined)
      expect(found?.years).toEqual(YEARS.filter((year) => first <= year && year <= last));
  });

  test("'between' before two years makes a run of them", () => {
    expect(at("between 57 and 59", 1)).toEqual({ years: ["1957", "1958", "1959"], length: 3 });
    expect(at("the 57 and 59", 1)).toEqual({ years: ["1957"], length: 1 });
  });

  test("no year is before the first, nor after the last", () => {
    expect(at("before 57")).toEqual({ years: [], length: 2 });
    expect(at("after 62")).toEqual({ years: [], length: 2 });
  });

  test("without years in the data none is read", () => {
    for (const said of ["1959", "since 59", "pre-59", "57-59"]) expect(at(said, 0, [])).toBeUndefined();
  });

  test("behind the last word nothing is said", () => {
    expect(at("59", 1)).toBeUndefined();
    expect(at("59 to 60", 7)).toBeUndefined();
  });

  test("where two years of the data end alike, four figures tell them apart and two say nothing", () => {
    const known = ["1859", "1860", "1959"];
    expect(at("59", 0, known)).toBeUndefined();
    expect(at("since 59", 0, known)).toBeUndefined();
    expect(at("1859", 0, known)?.years).toEqual(["1859"]);
    expect(at("1859-60", 0, known)?.years).toEqual(["1859", "1860"]);
    expect(at("1859-59", 0, known)).toBeUndefined();
  });

  test("years that the data leaves out are left out of a run, too", () => {
    expect(at("57-60", 0, ["1957", "1959", "1960"])?.years).toEqual(["1957", "1959", "1960"]);
    expect(at("57-58", 0, ["1957", "1959", "1960"])).toBeUndefined();
  });
});

// word, the year beyond the data that it names, it may be something else
const BEYOND: [word: string, year?: string, short?: boolean][] = [
  ["1963", "1963", false],
  ["2019", "2019", false],
  ["'63", "63", false],
  ["63", "63", true],
  ["63s", "63", true],
  ["1959"], // within it
  ["59"],
  ["'59"],
  ["1863"],
  ["063"],
  ["963"],
  ["63.5"],
  ["63-64"],
  ["1957-63", "1957-63", false], // a run of which one end lies beyond
  ["1957-1963", "1957-1963", false],
  ["'57-63"], // two figures may be anything
  ["1956-58", "1956-58", false],
  ["1956/1958", "1956/1958", false],
  ["1957-59"], // both within it
  ["1959-57"],
  ["57-63"],
  ["57-1963"],
  ["sixty-three"],
  [""],
];
test.each(BEYOND)("'%s' names the year %s beyond the data, or else something: %s", (word, year, short) => {
  expect(beyondYears([word], 0, YEARS)).toEqual(year === undefined ? undefined : { year, short });
});

test("without years in the data, and behind the last word, none is beyond", () => {
  expect(beyondYears(["1963"], 0, [])).toBeUndefined();
  expect(beyondYears(["1963"], 1, YEARS)).toBeUndefined();
});

describe("any words", () => {
  const word = fc.oneof(
    fc.constantFrom(...SAID.flatMap(([said]) => split(said))),
    fc.constantFrom("between", "and", "to", "the", "on"),
    fc.string({ maxLength: 6 }),
    fc.integer({ min: 1950, max: 1970 }).map(String),
    fc.integer({ min: 50, max: 70 }).map(String),
  );
  const known = fc
    .tuple(fc.integer({ min: 1950, max: 1970 }), fc.nat(8))
    .map(([from, more]) => Array.from({ length: more + 1 }, (_, i) => String(from + i)));

  test("name years of the data, one after the other without a gap, out of words that are there", () => {
    fc.assert(
      fc.property(fc.array(word, { maxLength: 6 }), fc.nat(6), known, (words, from, years) => {
        const found = yearsAt(words, from, years);
        if (!found) return;
        expect(years.join()).toContain(found.years.join());
        expect(found.length).toBeGreaterThan(0);
        expect(from + found.length).toBeLessThanOrEqual(words.length);
        expect(/\d/.test(words.slice(from, from + found.length).join())).toBe(true);
      }),
      { seed: SEED, numRuns: 3000 },
    );
  });

  test("that are read two ways as a run of years agree: 57-59, 57 to 59", () => {
    fc.assert(
      fc.property(fc.integer({ min: 57, max: 62 }), fc.integer({ min: 57, max: 62 }), (first, last) => {
        fc.pre(first <= last);
        const runs = [`${first}-${last}`, `19${first}-${last}`, `'${first}/'${last}`, `${first} to ${last}`];
        for (const run of runs) expect([run, at(run)?.years]).toEqual([run, at(`19${first}-19${last}`)?.years]);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  test("since and before a year part the years in two; so do up to and after it", () => {
    for (const year of YEARS)
      for (const [late, early] of [
        ["since", "before"],
        ["after", "up to"],
        ["after", "until"],
      ])
        expect([...(at(`${early} ${year}`)?.years ?? []), ...(at(`${late} ${year}`)?.years ?? [])]).toEqual(YEARS);
  });
});
