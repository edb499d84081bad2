import { describe, expect, test } from "vitest";
import { alikeGroups, compareMarks, MOST_GROUPS } from "../../../src/engine/lookalikes/alike.ts";
import type { Row } from "../../../src/engine/lookalikes/mark-table.ts";
import {
  allSeen,
  drawMarks,
  NOT_SEEN,
  type PlainMark,
  randomNumbers,
  slowFits,
  tableOf,
} from "../../helpers/random-marks.ts";
import { SEED } from "../../helpers/seed.ts";

const column = (kind: PlainMark["kind"], ...values: PlainMark["values"]): PlainMark => ({
  kind,
  effort: 1,
  tolerance: 1,
  values,
});

describe("parts that the records cannot tell apart", () => {
  const CASES: [what: string, drawn: PlainMark[], groups: string[]][] = [
    ["the same on both", [column("durable", "one", "one")], ["P0 P1"]],
    ["another value", [column("durable", "one", "two")], []],
    ["there and not there", [column("durable", "one", "none")], []],
    ["paint, as long as it is there", [column("paint", "one", "none")], []],
    ["measures as near as the tolerance", [column("measure", 3, 4)], ["P0 P1"]],
    ["measures further apart", [column("measure", 3, 5)], []],
    ["no measure and a measure", [column("measure", "none", 5)], []],
    ["nothing on record", [column("durable", undefined, "two"), column("durable", "one", undefined)], ["P0 P1"]],
    ["one may be like either of two that differ", [column("durable", "one", undefined, "two")], ["P0 P1", "P1 P2"]],
    ["all of a group are alike, each with each", [column("durable", "one", "one", "two", "one")], ["P0 P1 P3"]],
    ["nearness does not carry on", [column("measure", 1, 2, 3)], ["P0 P1", "P1 P2"]],
    ["a single part is like no other", [column("durable", "one")], []],
  ];
  test.each(CASES)("%s", (_, drawn, groups) => {
    expect(alikeGroups(tableOf(drawn)).map((group) => group.join(" "))).toEqual(groups);
  });
});

test("of very many groups the first are named", () => {
  // Twenty marks, each of them on record for three other parts: one of each three, in every way there is.
  const drawn = Array.from({ length: 20 }, (_, mark) =>
    column(
      "durable",
      ...Array.from({ length: 60 }, (_, part) =>
        Math.floor(part / 3) === mark ? ["none", "one", "two"][part % 3] : undefined,
      ),
    ),
  );
  const groups = alikeGroups(tableOf(drawn));
  expect([groups.length, new Set(groups.map((it) => it.length))]).toEqual([MOST_GROUPS, new Set([20])]);
});

test("of two parts: the marks that tell them apart, and those that are the same", () => {
  const { marks, parts } = tableOf([
    column("durable", "one", "two"),
    column("measure", 3, 4),
    column("durable", undefined, "two"),
  ]);
  const { apart, same } = compareMarks(marks, parts[0] as Row, parts[1] as Row);
  expect([apart.map((it) => it.id), same.map((it) => it.id)]).toEqual([["m0"], ["m1"]]);
});

/**
 * Whether something that a part shows as it is on record would rule out the other one. Of one mark after another, and so of every
 * sequence of looks: a sequence rules a part out if one of its looks does.
 */
function slowApart(drawn: readonly PlainMark[], one: number, other: number): boolean {
  const shownBy = (column: PlainMark, part: number): (string | number)[] =>
    column.values[part] === undefined
      ? []
      : allSeen(column).filter((seen) => seen !== NOT_SEEN && seen === column.values[part]);
  return drawn.some(
    (column) =>
      (column.values[other] !== undefined && shownBy(column, one).some((seen) => !slowFits(column, other, seen))) ||
      (column.values[one] !== undefined && shownBy(column, other).some((seen) => !slowFits(column, one, seen))),
  );
}

test("2,500 random tables: the groups are all the largest ones among all sets of parts", () => {
  const random = randomNumbers(SEED + 2);
  for (let i = 0; i < 2500; i++) {
    const drawn = drawMarks(random);
    const count = drawn[0]?.values.length ?? 0;
    const sets = Array.from({ length: 2 ** count }, (_, bits) =>
      Array.from({ length: count }, (_, part) => part).filter((part) => bits & (1 << part)),
    );
    const alike = sets.filter(
      (set) => set.length > 1 && set.every((a) => set.every((b) => a === b || !slowApart(drawn, a, b))),
    );
    const largest = alike.filter(
      (set) => !alike.some((other) => other.length > set.length && set.every((it) => other.includes(it))),
    );
    expect(
      alikeGroups(tableOf(drawn))
        .map((group) => group.join(" "))
        .sort(),
    ).toEqual(largest.map((set) => set.map((part) => `P${part}`).join(" ")).sort());
  }
});
