import Fraction from "fraction.js";
import { describe, expect, test } from "vitest";
import type { Mark, Value } from "../../../src/engine/lookalikes/mark-table.ts";
import { isAbsent, possibleParts, rulesOut, type Seen } from "../../../src/engine/lookalikes/possible-parts.ts";
import {
  ABSENT,
  allSeen,
  drawMarks,
  observationOf,
  type PlainSeen,
  randomNumbers,
  slowFits,
  tableOf,
} from "../../helpers/random-marks.ts";
import { SEED } from "../../helpers/seed.ts";

const mark = (kind: string): Mark => ({
  id: "m",
  effort: 1,
  wearsOff: kind === "paint",
  absent: "none",
  tolerance: kind === "measure" ? new Fraction("0.002") : undefined,
});
const value = (text: string): Value | undefined =>
  text === "" ? undefined : /\d/.test(text) ? new Fraction(text) : text;
const seen = (text: string): Seen => {
  if (text === "something else" || text === "not seen" || text === "absent") return { is: text };
  const [, low, high, error] = /^(\d+\.\d+)(?:\.\.(\d+\.\d+))?(?: ± (\d+\.\d+))?$/.exec(text) ?? [];
  if (low === undefined) return { is: "value", value: text };
  return {
    is: "measured",
    low: new Fraction(low),
    high: new Fraction(high ?? low),
    error: error === undefined ? undefined : new Fraction(error),
  };
};

describe("whether what was seen rules a part out", () => {
  // how the mark is made, what is on record, what was seen, whether it is ruled out
  const CASES: [kind: string, stated: string, seen: string, out: boolean][] = [
    ["durable", "two", "two", false],
    ["durable", "two", "one", true],
    ["durable", "two", "absent", true],
    ["durable", "none", "absent", false],
    ["durable", "none", "none", false],
    ["durable", "none", "two", true],
    ["durable", "two", "something else", true],
    ["durable", "", "something else", false],
    ["durable", "", "two", false],
    ["durable", "two", "not seen", false],
    ["paint", "green", "green", false],
    ["paint", "green", "red", true],
    ["paint", "none", "green", true],
    ["paint", "green", "absent", false],
    ["paint", "green", "none", false],
    ["paint", "none", "absent", false],
    ["paint", "green", "something else", true],
    ["paint", "", "green", false],
    ["measure", "0.180", "0.180", false],
    ["measure", "0.180", "0.182", false],
    ["measure", "0.180", "0.178", false],
    ["measure", "0.180", "0.1820001", true],
    ["measure", "0.180", "0.1779999", true],
    ["measure", "0.180", "0.185 ± 0.003", false],
    ["measure", "0.180", "0.185 ± 0.0029", true],
    ["measure", "0.180", "0.170..0.178", false],
    ["measure", "0.180", "0.182..0.190", false],
    ["measure", "0.180", "0.183..0.190", true],
    ["measure", "0.180", "absent", true],
    ["measure", "none", "absent", false],
    ["measure", "none", "0.180", true],
    ["measure", "0.180", "not seen", false],
  ];
  test.each(CASES)("%s, on record '%s', seen '%s': %s", (kind, stated, what, out) => {
    expect(rulesOut(mark(kind), value(stated), seen(what))).toBe(out);
  });
});

test("nothing there may be said so, or by the value that stands for it", () => {
  expect(
    [seen("absent"), seen("none"), seen("green"), seen("not seen")].map((it) => isAbsent(mark("paint"), it)),
  ).toEqual([true, true, false, false]);
});

test("a mark that the table does not have rules nothing out", () => {
  const table = tableOf([{ kind: "durable", tolerance: 0, effort: 1, values: ["one", "two"] }]);
  expect(possibleParts(table, [observationOf(7, "one")])).toHaveLength(2);
});

describe("2,500 random tables", () => {
  const random = randomNumbers(SEED);
  const choice = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
  const CASES = Array.from({ length: 2500 }, () => {
    const drawn = drawMarks(random);
    const looks = drawn.map((it): PlainSeen => choice(allSeen(it)));
    const numbers = drawn[0]?.values.map((_, part) => part) ?? [];
    return { drawn, looks, numbers, table: tableOf(drawn), observations: looks.map((it, i) => observationOf(i, it)) };
  });
  const possible = (it: (typeof CASES)[number], observations = it.observations): string[] =>
    possibleParts(it.table, observations).map((part) => part.number);

  test("the slow twin finds the same parts", () => {
    for (const it of CASES)
      expect(possible(it)).toEqual(
        it.numbers
          .filter((part) => it.drawn.every((column, i) => slowFits(column, part, it.looks[i] as PlainSeen)))
          .map((part) => `P${part}`),
      );
  });

  test("more observations never bring a part back, and their order does not matter", () => {
    for (const it of CASES) {
      const all = possible(it);
      const fewer = possible(it, it.observations.slice(1));
      expect(all.filter((part) => !fewer.includes(part))).toEqual([]);
      expect(possible(it, [...it.observations].reverse())).toEqual(all);
    }
  });

  test("missing paint never rules a part out", () => {
    for (const it of CASES) {
      const missing = it.drawn.flatMap(({ kind }, i) => (kind === "paint" ? [observationOf(i, ABSENT)] : []));
      expect(possible(it, missing)).toHaveLength(it.numbers.length);
    }
  });
});

test("of two painted stripes one may have worn off; a third one was never there", () => {
  const paint = { id: "stripes", effort: 1, wearsOff: true, absent: "none", tolerance: undefined };
  const seen = (value: string) => ({ is: "value" as const, value });
  expect(["none", "one", "two", "three"].map((value) => rulesOut(paint, "two", seen(value)))).toEqual([
    false,
    false,
    false,
    true,
  ]);
  expect(rulesOut({ ...paint, wearsOff: false }, "two", seen("one"))).toBe(true);
});
