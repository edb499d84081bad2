import { expect, test } from "vitest";
import { contradiction } from "../../../src/engine/lookalikes/contradiction.ts";
import {
  ABSENT,
  allSeen,
  drawMarks,
  NOT_SEEN,
  observationOf,
  type PlainMark,
  type PlainSeen,
  randomNumbers,
  slowFits,
  tableOf,
} from "../../helpers/random-marks.ts";
import { SEED } from "../../helpers/seed.ts";

const column = (kind: PlainMark["kind"], ...values: PlainMark["values"]): PlainMark => ({
  kind,
  effort: 1,
  tolerance: 0,
  values,
});
const DRAWN = [column("durable", "one", "two"), column("paint", "one", "none"), column("durable", "two", "one")];

// what was seen of each mark, the smallest set, what is left without each
const CASES: [seen: PlainSeen[], smallest: string[] | undefined, without: string[]][] = [
  [["one", "one", "two"], undefined, []],
  [["two", ABSENT, "one"], undefined, []],
  [
    ["two", "one", "one"],
    ["m0", "m1"],
    ["m0:", "m1:P1", "m2:"],
  ],
  [
    ["one", NOT_SEEN, "one"],
    ["m0", "m2"],
    ["m0:P1", "m2:P0"],
  ],
  [["else", "one", "two"], ["m0"], ["m0:P0", "m1:", "m2:"]],
];
test.each(CASES)("%j: %j", (seen, smallest, without) => {
  const found = contradiction(
    tableOf(DRAWN),
    seen.map((it, i) => observationOf(i, it)),
  );
  expect(found?.smallest.map((it) => it.mark)).toEqual(smallest);
  expect(found?.without.map((it) => `${it.observation.mark}:${it.leaves.join(",")}`) ?? []).toEqual(without);
});

test("of no parts nothing is contradicted", () => {
  expect(contradiction({ marks: [], parts: [] }, [observationOf(0, "one")])).toBeUndefined();
});

test("2,500 random tables: no smaller set of observations rules out every part", () => {
  const random = randomNumbers(SEED + 3);
  for (let i = 0; i < 2500; i++) {
    const drawn = drawMarks(random);
    const looks = drawn.map((it) => {
      const all = allSeen(it);
      return all[Math.floor(random() * all.length)] as PlainSeen;
    });
    const parts = drawn[0]?.values.map((_, part) => part) ?? [];
    const fitsNone = (marks: readonly number[]): boolean =>
      !parts.some((part) => marks.every((mark) => slowFits(drawn[mark] as PlainMark, part, looks[mark] as PlainSeen)));
    const sets = Array.from({ length: 2 ** drawn.length }, (_, bits) =>
      [...drawn.keys()].filter((it) => bits & (1 << it)),
    );
    const fewest = Math.min(...sets.filter(fitsNone).map((set) => set.length));
    const found = contradiction(
      tableOf(drawn),
      looks.map((it, mark) => observationOf(mark, it)),
    );
    expect(found?.smallest.length ?? Number.POSITIVE_INFINITY).toBe(fewest);
    if (found) expect(fitsNone(found.smallest.map((it) => Number(it.mark.slice(1))))).toBe(true);
  }
});
