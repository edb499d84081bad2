import { describe, expect, test } from "vitest";
import { begins, beginsOnLine, concerned, yearsOf, yearsOnLine } from "../../../src/engine/records/concerned.ts";
import { NONE } from "../../../src/engine/scope/diagram.ts";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import { Space } from "../../../src/engine/scope/space.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";

// The tiny maker built Badgers from 1957 to 1960, in 1957 only at Kelby, and Herons from 1959 to 1961; Dunmoor opened in 1959.
// scope, lines and model years of cars that were built
const REACHES: [scope: string, lines: string[], years: number[]][] = [
  ["all", ["B", "H"], [1957, 1958, 1959, 1960, 1961]],
  ["line=B", ["B"], [1957, 1958, 1959, 1960]],
  ["line=H", ["H"], [1959, 1960, 1961]],
  ["my=1958", ["B"], [1958]],
  ["my=1959", ["B", "H"], [1959]],
  ["my=1961", ["H"], [1961]],
  ["line=B; my=1961", [], []],
  ["plant=D", ["B", "H"], [1959, 1960, 1961]],
  ["plant=D; my<1959", [], []],
  ["line=B; eq=PT", ["B"], [1958, 1959, 1960]], // not offered in 1957
  ["line=B; no=PT", ["B"], [1957, 1958, 1959]], // standard in 1960
  ["line=H; no=PT", [], []],
  ["eq=WN", ["H"], [1959, 1960, 1961]],
  ["eq=WN; plant=K", [], []],
  ["at=K59#0412+", ["B", "H"], [1959, 1960, 1961]],
  ["at=K59#0000-", ["B"], [1957, 1958]],
  ["my=1957 || line=H; my=1961", ["B", "H"], [1957, 1961]],
  ["fitted=HT-101", ["B", "H"], [1957, 1958, 1959, 1960, 1961]], // today's parts settle nothing about how it was built
];

describe("which lines and years a scope reaches", () => {
  const catalog = catalogOf();
  test.each(REACHES)("%s reaches %j in %j", (text, lines, years) => {
    const read = readScope(catalog.space, text);
    if ("slips" in read) throw new Error(read.slips[0]?.message);
    expect(concerned(catalog, read.scope)).toEqual({ lines, years });
  });

  test("no car has no year, and without a trait of years there is none", () => {
    expect(yearsOf(catalog.space, NONE)).toEqual([]);
    const yearless = new Space([]);
    expect(yearsOf(yearless, NONE)).toEqual([]);
  });
});

// scope, in-force-from, years on Badger and on Heron, with which year it begins on either, and at all
type Year = number | undefined;
const BEGINNINGS: [string, Year, number[], number[], Year, Year, Year][] = [
  ["line=B; my>=1959", undefined, [1959, 1960], [], 1959, undefined, 1959],
  ["my>=1959", undefined, [1959, 1960], [1959, 1960, 1961], 1959, 1959, 1959],
  ["all", undefined, [1957, 1958, 1959, 1960], [1959, 1960, 1961], 1957, 1959, 1957],
  ["all", 1960, [1957, 1958, 1959, 1960], [1959, 1960, 1961], 1960, 1960, 1960],
  ["line=H", 1961, [], [1959, 1960, 1961], undefined, 1961, 1961],
  ["line=B; my=1961", undefined, [], [], undefined, undefined, undefined],
  ["line=B; my=1961", 1961, [], [], undefined, undefined, 1961],
];

describe("when a change begins", () => {
  test.each(BEGINNINGS)("%s, in force from %s", (scope, from, onBadger, onHeron, badger, heron, at) => {
    const catalog = catalogOf(
      spoiled({
        "changes/1958/FR58-01.md": [
          "scope: my>=1958",
          `scope: ${scope}${from === undefined ? "" : `\nin-force-from: ${from}`}`,
        ],
      }),
    );
    const record = catalog.records.get("FR58-01");
    const [lineB, lineH] = catalog.lines;
    if (!record || !lineB || !lineH) throw new Error("the tiny folder changed");
    expect([yearsOnLine(catalog, record, lineB), yearsOnLine(catalog, record, lineH)]).toEqual([onBadger, onHeron]);
    expect([beginsOnLine(catalog, record, lineB), beginsOnLine(catalog, record, lineH)]).toEqual([badger, heron]);
    expect(begins(catalog, record)).toBe(at);
  });
});
