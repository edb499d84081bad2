import { describe, expect, test } from "vitest";
import { companionStanding, oneOfEach } from "../../../src/engine/interchange/companion-standing.ts";
import { openPartIndex } from "../../../src/engine/interchange/part-index.ts";
import { seeParts } from "../../../src/engine/interchange/see-parts.ts";
import type { Chain } from "../../../src/engine/interchange/stands-for.ts";
import { openSets } from "../../helpers/sets-folder.ts";

const BUILT = [
  "place: pump, part: A-1, scope: line=B",
  "place: lift arms, part: C-1, scope: line=B; my<=1958",
  "place: lift arms, part: C-2, scope: line=B; my>=1959",
  'place: "arm, left", part: E-1, scope: line=B',
  'place: "arm, right", part: E-1, scope: line=B; my<=1958',
  'place: "arm, right", part: E-2R, scope: line=B; my>=1959',
];

/** How a part stands on Badgers of a year: "on the car", "closed", or its ways. */
function standings(
  part: string,
  year: number,
  standIns: readonly string[],
  fitted: readonly string[] = [],
  rest = "",
): string[] {
  const { catalog, badgers } = openSets(BUILT, standIns, rest, fitted);
  const { space } = catalog;
  const index = openPartIndex(catalog);
  const cars = space.sets.and(badgers, space.where(space.role("year") as number, [[year, year]]));
  return companionStanding(index, part, cars, seeParts(index, cars, fitted)).map((it) =>
    it.how === "goes along" ? `ways ${it.ways.map((way) => way.map((step) => step.for ?? "none").join("+"))}` : it.how,
  );
}

describe("a part that goes along", () => {
  test("is on the car where the plant fitted it, or where somebody saw it", () => {
    expect(standings("C-2", 1959, [])).toEqual(["on the car"]);
    expect(standings("C-2", 1958, ['part: C-2, for: C-1, verdict: "yes"'])).toEqual(["ways C-1"]);
    expect(standings("C-2", 1958, ['part: C-2, for: C-1, verdict: "yes"'], ["C-2"])).toEqual(["on the car"]);
  });

  test("may not stay where a later record took it back, seen or not", () => {
    const back = "part: C-1, for: C-2, verdict: must-not-be-used, why: It cracks, scope: line=B; my=1958";
    const order = "supersedes: [{ old: C-1, new: C-2, scope: line=B; my=1958 }]";
    expect(standings("C-1", 1958, [back], [], order)).toEqual(["closed"]);
    expect(standings("C-1", 1958, [back], ["C-1"], order)).toEqual(["closed"]);
    expect(standings("C-1", 1957, [back], [], order)).toEqual(["on the car"]);
    expect(standings("C-1", 1958, [back])).toEqual(["on the car"]);
  });

  test("that it could also go into another place does not matter", () => {
    expect(standings("C-2", 1959, ['part: C-2, for: A-1, verdict: "yes"'])).toEqual(["on the car"]);
  });

  test("of a pair it is on the car only where both are", () => {
    expect(standings("E-1", 1958, [])).toEqual(["on the car"]);
    expect(standings("E-1", 1959, ['part: E-1, for: E-2R, verdict: "yes"'])).toEqual(["ways E-2R"]);
  });

  test("is no longer where another part was seen", () => {
    const both = ['part: B-3, for: C-2, verdict: "yes"', 'part: C-2, for: B-3, verdict: "yes"'];
    expect(standings("C-2", 1959, both, ["B-3"])).toEqual(["ways B-3"]);
    expect(standings("C-2", 1959, both.slice(0, 1), ["B-3"])).toEqual(["closed"]);
  });

  test("without a word about it nothing is asked", () => {
    expect(standings("D-1", 1959, [])).toEqual(["ways "]);
  });
});

test("one of each: every choice, with what is in both once", () => {
  const [a, b, c] = ["a", "b", "c"] as unknown as [Chain[number], Chain[number], Chain[number]];
  expect(oneOfEach([[[a], [b]], [[b, c]]])).toEqual([
    [a, b, c],
    [b, c],
  ]);
  expect(oneOfEach([])).toEqual([[]]);
});
