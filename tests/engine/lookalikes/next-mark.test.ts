import { describe, expect, test } from "vitest";
import { nextMarks, type Outcome } from "../../../src/engine/lookalikes/next-mark.ts";
import {
  ABSENT,
  drawMarks,
  ELSE,
  type PlainMark,
  type PlainSeen,
  randomNumbers,
  slowFits,
  tableOf,
} from "../../helpers/random-marks.ts";
import { SEED } from "../../helpers/seed.ts";

const column = (kind: PlainMark["kind"], effort: number, ...values: PlainMark["values"]): PlainMark => ({
  kind,
  effort,
  tolerance: 1,
  values,
});

describe("the order in which marks are looked at", () => {
  // the columns, the marks in order with their bits
  const CASES: [what: string, drawn: PlainMark[], order: string[]][] = [
    [
      "the most telling first, though it is harder to see",
      [column("durable", 1, "one", "one", "one", "two"), column("durable", 5, "one", "one", "two", "two")],
      ["m1 1.000", "m0 0.811"],
    ],
    [
      "of equal ones the easier one",
      [column("durable", 4, "one", "two"), column("measure", 2, 3, 6)],
      ["m1 1.000", "m0 1.000"],
    ],
    [
      "of these the order of the data",
      [column("durable", 2, "one", "two"), column("durable", 2, "two", "one")],
      ["m0 1.000", "m1 1.000"],
    ],
    [
      "paint counts only for what its presence would tell",
      [column("paint", 1, "one", "none"), column("measure", 5, 0, 6)],
      ["m1 1.000", "m0 0.500"],
    ],
    ["a mark that is the same on all is not looked at", [column("durable", 1, "one", "one")], []],
    ["nor one of which a tool tells nothing", [column("measure", 1, 3, 4)], []],
    ["nor paint of which only the lack is on record", [column("paint", 1, "none", undefined)], []],
    ["what is not on record may be anything", [column("durable", 1, "one", undefined)], ["m0 0.311"]],
    ["a single part needs no look", [column("durable", 1, "one")], []],
  ];
  test.each(CASES)("%s", (_, drawn, order) => {
    expect(nextMarks(tableOf(drawn)).map(({ mark, gain }) => `${mark.id} ${gain.toFixed(3)}`)).toEqual(order);
  });

  test("what was looked at already is left out", () => {
    const table = tableOf([column("durable", 1, "one", "two"), column("durable", 2, "two", "one")]);
    expect(nextMarks(table, new Set(["m0"])).map((it) => it.mark.id)).toEqual(["m1"]);
  });
});

test("each outcome says what it would leave", () => {
  const drawn = [column("durable", 1, "one", "two", undefined), column("paint", 2, "one", "none", "none")];
  expect(nextMarks(tableOf(drawn)).map(({ outcomes }) => outcomes.map(inWords))).toEqual([
    ["one: P0, P2", "two: P1, P2", "something else: P2"],
    ["one: P0", "none: P0, P1, P2"],
  ]);
});

function inWords({ seen, leaves }: Outcome): string {
  return `${seen.is === "value" ? seen.value : seen.is === "measured" ? seen.low : seen.is}: ${leaves.join(", ")}`;
}

/** The rule once more: outcome by outcome, part by part, with the chances written out. Bits before less bits left. */
function slowGain(drawn: PlainMark): number {
  const parts = drawn.values.map((_, part) => part);
  const stated = [...new Set(drawn.values.filter((it) => it !== undefined))];
  const outcomes: PlainSeen[] = [...stated];
  if (drawn.kind === "paint" && !outcomes.includes(ABSENT)) outcomes.push(ABSENT);
  if (drawn.kind !== "paint" && drawn.values.includes(undefined)) outcomes.push(ELSE);
  const shows = (part: number): PlainSeen[] => {
    const own = drawn.values[part];
    if (own === undefined) return outcomes;
    return drawn.kind === "measure" ? outcomes.filter((it) => it !== ELSE && slowFits(drawn, part, it)) : [own];
  };
  let left = 0;
  for (const outcome of outcomes) {
    const chances = parts.map((part) => (shows(part).includes(outcome) ? 1 / shows(part).length / parts.length : 0));
    const chance = chances.reduce((sum, it) => sum + it, 0);
    if (chance === 0) continue;
    if (drawn.kind === "paint" && outcome === ABSENT) left += chance * Math.log2(parts.length);
    else for (const it of chances) if (it > 0) left -= it * Math.log2(it / chance);
  }
  return Math.log2(parts.length) - left;
}

test("2,500 random tables: the gain is what the slow twin counts, never below zero, never above what is open", () => {
  const random = randomNumbers(SEED + 1);
  for (let i = 0; i < 2500; i++) {
    const drawn = drawMarks(random);
    const looks = nextMarks(tableOf(drawn));
    const open = Math.log2(drawn[0]?.values.length ?? 1);
    for (const { mark, gain, outcomes } of looks) {
      expect(gain).toBeCloseTo(slowGain(drawn[Number(mark.id.slice(1))] as PlainMark), 9);
      expect(gain).toBeGreaterThanOrEqual(0);
      expect(gain).toBeLessThanOrEqual(open + 1e-9);
      expect(outcomes.some((it) => it.leaves.length < (drawn[0]?.values.length ?? 0))).toBe(true);
    }
    // What is not asked rules nothing out, whatever is seen.
    drawn.forEach((column, mark) => {
      if (looks.some((it) => it.mark.id === `m${mark}`)) return;
      const seen = [...column.values.filter((it) => it !== undefined), ABSENT];
      const parts = column.values.map((_, part) => part);
      const telling = seen.filter((it) =>
        parts.some((part) => column.values.includes(it) && !slowFits(column, part, it)),
      );
      expect(telling).toEqual([]);
    });
    const order = looks.map(({ mark, gain }) => [-Math.round(gain * 1e9), mark.effort, Number(mark.id.slice(1))]);
    expect(order).toEqual([...order].sort(([a = 0, b = 0, c = 0], [x = 0, y = 0, z = 0]) => a - x || b - y || c - z));
  }
});
