import { expect, test } from "vitest";
import { fitsAt } from "../../../src/engine/interchange/fits.ts";
import { openPartIndex } from "../../../src/engine/interchange/part-index.ts";
import { nothingReported } from "../../../src/engine/interchange/reported.ts";
import { takenBack } from "../../../src/engine/interchange/taken-back.ts";
import { openSets } from "../../helpers/sets-folder.ts";

const BUILT = ["place: pump, part: A-1, scope: line=B; my<=1958", "place: pump, part: A-2, scope: line=B; my>=1959"];
const REFUSED = "part: A-2, for: A-1, verdict: must-not-be-used, why: It leaks, scope: line=B; eq=PT";
const order = (scope: string) => `supersedes:\n  - { old: A-2, new: A-1, scope: ${scope} }`;

/** What is said of a part on the Badgers of 1960, with power take-off and without. */
function verdicts(part: string, standIns: string[], orders: string): string[] {
  const { catalog, badgers } = openSets(BUILT, standIns, orders);
  const { space } = catalog;
  const index = openPartIndex(catalog);
  const late = space.sets.and(badgers, space.where(space.role("year") as number, [[1959, 1959]]));
  return [1, 0].map((has) => {
    const cars = space.sets.and(late, space.where(space.find("PT") as number, [[has, has]]));
    const fits = fitsAt(index, { part, place: "pump", cars, on: nothingReported() });
    expect(takenBack(index, part, cars).length).toBe(fits[0]?.refusals.length ? 1 : 0);
    return fits.map((it) => it.verdict).join();
  });
}

const BACK = 'part: A-1, for: A-2, verdict: "yes", scope: line=B; eq=PT';

test("refused for certain cars, and delivered as another part for them: it is taken back there, and only there", () => {
  expect(verdicts("A-2", [REFUSED, BACK], order("line=B; eq=PT"))).toEqual([
    "goes on but must not be used",
    "as built",
  ]);
  expect(verdicts("A-1", [REFUSED, BACK], order("line=B; eq=PT"))).toEqual(["yes", "not on record"]);
});

test("delivered by way of another number, or to all cars where the refusal can speak of no others", () => {
  const steps = (scope: string): string =>
    `supersedes:\n  - { old: A-2, new: C-1${scope} }\n  - { old: C-1, new: A-1${scope} }`;
  const expected = ["goes on but must not be used", "as built"];
  expect(verdicts("A-2", [REFUSED], steps(", scope: line=B; eq=PT"))).toEqual(expected);
  const own = REFUSED.replace("line=B; eq=PT", "line=B; my=1959; eq=PT");
  expect(verdicts("A-2", [own], steps(""))).toEqual(expected);
  // Here it can speak of cars that were built with the other part, and does.
  expect(verdicts("A-2", [REFUSED], order("all").replace(", scope: all", ""))).toEqual(["as built", "as built"]);
});

test("a refusal alone speaks of cars where the other part belongs, and so does one without a scope", () => {
  expect(verdicts("A-2", [REFUSED], order("line=B; my<=1958"))).toEqual(["as built", "as built"]);
  const unscoped = "part: A-2, for: A-1, verdict: must-not-be-used, why: It leaks";
  expect(verdicts("A-2", [unscoped], order("line=B; eq=PT"))).toEqual(["as built", "as built"]);
});
