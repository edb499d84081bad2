import { expect, test } from "vitest";
import { sayBelonging } from "../../../src/engine/interchange/belongs.ts";
import { broughtAlong } from "../../../src/engine/interchange/inside.ts";
import { openPartIndex } from "../../../src/engine/interchange/part-index.ts";
import { seeParts } from "../../../src/engine/interchange/see-parts.ts";
import { openSets } from "../../helpers/sets-folder.ts";

/** The gasket is a component under the pump. */
const BUILT = [
  "place: pump, part: A-1, scope: line=B; my<=1958",
  "place: pump, part: A-2, scope: line=B; my>=1959",
  "place: pump gasket, part: B-1, scope: line=B; my<=1958",
  "place: pump gasket, part: B-2, scope: line=B; my>=1959",
  "place: lift arms, part: C-1, scope: line=B; my<=1958",
  "place: lift arms, part: C-2, scope: line=B; my>=1959",
];
const BOTH_WAYS = ['part: A-2, for: A-1, verdict: "yes"', 'part: A-1, for: A-2, verdict: "yes"'];

function brought(place: string, fitted: string, standIns: readonly string[] = BOTH_WAYS): [string, boolean][] {
  const { catalog, badgers } = openSets(BUILT, standIns, "", [fitted]);
  const { space } = catalog;
  const index = openPartIndex(catalog);
  const cars = space.sets.and(badgers, space.where(space.role("year") as number, [[1958, 1958]]));
  return broughtAlong(index, place, seeParts(index, cars, [fitted])).map((it) => [
    sayBelonging(it.belonging),
    it.isMisfit,
  ]);
}

test("what is inside another unit came with it", () => {
  expect(brought("pump gasket", "A-2")).toEqual([["B-2", false]]);
  expect(brought("pump gasket", "A-1")).toEqual([["B-1", false]]);
});

test("the unit does not come with what is inside, nor its neighbour with it", () => {
  expect(brought("pump", "B-2", ['part: B-2, for: B-1, verdict: "yes"'])).toEqual([]);
  expect(brought("lift arms", "A-2")).toEqual([]);
});

test("a unit that no record permits there is marked", () => {
  expect(brought("pump gasket", "A-2", [])).toEqual([["B-2", true]]);
});

test("a unit that no car was built with brought what is not on record", () => {
  expect(brought("pump gasket", "D-1", ['part: D-1, for: A-1, verdict: "yes"'])).toEqual([["not on record", false]]);
});
