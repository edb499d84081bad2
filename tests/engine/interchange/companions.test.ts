import { describe, expect, test } from "vitest";
import { blockedBy, companionsOf } from "../../../src/engine/interchange/companions.ts";
import { openPartIndex } from "../../../src/engine/interchange/part-index.ts";
import type { StandsIn } from "../../../src/engine/records/statement.ts";
import { NONE } from "../../../src/engine/scope/diagram.ts";
import { openSets } from "../../helpers/sets-folder.ts";

const BUILT = [
  "place: pump, part: A-1, scope: line=B; my=1957",
  "place: pump gasket, part: B-1, scope: line=B",
  "place: lift arms, part: C-1, scope: line=B; my<=1958",
  "place: lift arms, part: C-2, scope: line=B; my>=1959",
];
const SET = "part: A-2, for: A-1, verdict: on-conditions, with: [B-2, C-2]";

/** The set, and what else is said of its parts. */
function open(...more: readonly string[]) {
  const { catalog, badgers } = openSets(BUILT, [SET, ...more]);
  const index = openPartIndex(catalog);
  const [way] = index.standInsOf.get("A-2") as [StandsIn];
  return { index, badgers, way: [way], space: catalog.space };
}

describe("companions", () => {
  test("those of companions too, each once; one that all these cars were built with is marked", () => {
    const { index, badgers, way, space } = open(
      "part: B-2, for: B-1, verdict: on-conditions, with: [A-2, C-1], do: Scrape it.",
    );
    const late = space.sets.and(badgers, space.where(space.role("year") as number, [[1959, 1960]]));
    const found = companionsOf(index, way, late).map((it) => [it.part, it.onTheCar, it.do.map((one) => one.do)]);
    expect(found).toEqual([
      ["B-2", false, ["Scrape it."]],
      ["C-2", true, []],
      ["C-1", false, []],
    ]);
    expect(companionsOf(index, way, badgers).find((it) => it.part === "C-2")?.onTheCar).toBe(false);
  });

  test("that a companion is refused by itself is no objection", () => {
    const { index, badgers, way } = open("part: B-2, for: B-1, verdict: must-not-be-used, why: It leaks by itself.");
    expect(blockedBy(index, way, badgers, []).cars).toBe(NONE);
  });

  test("that it is refused for certain cars closes the way for these, unless it is on the car", () => {
    const { index, badgers, way, space } = open(
      "part: B-2, for: B-1, verdict: does-not-go-on, why: No room., scope: line=B; my=1958",
    );
    const blocked = blockedBy(index, way, badgers, []);
    expect(blocked.cars).toBe(space.sets.and(badgers, space.where(space.role("year") as number, [[1958, 1958]])));
    expect(blocked.because.map((it) => it.why)).toEqual(["No room."]);
    expect(blockedBy(index, way, badgers, ["B-2"]).cars).toBe(NONE);
  });

  test("a refusal in place of a part that does not belong there closes nothing", () => {
    const { index, badgers, way } = open(
      "part: C-2, for: C-1, verdict: does-not-go-on, why: Too wide., scope: line=B; my>=1959",
    );
    expect(blockedBy(index, way, badgers, []).cars).toBe(NONE);
  });
});
