import { expect, test } from "vitest";
import { partIndexOf } from "../../../src/engine/answers/part-indexes.ts";
import { reasonsOf, viewFit, workOf } from "../../../src/engine/answers/view-fit.ts";
import { fitsAt } from "../../../src/engine/interchange/fits.ts";
import { nothingReported } from "../../../src/engine/interchange/reported.ts";
import { openSets } from "../../helpers/sets-folder.ts";

const { catalog, badgers } = openSets(
  ["place: pump, part: A-1, scope: line=B", "place: pump gasket, part: B-1, scope: line=B"],
  [
    "part: A-2, for: A-1, verdict: on-conditions, with: [B-2], do: Bleed it.",
    "part: B-2, for: B-1, verdict: on-conditions, do: Scrape it.",
    "part: D-1, for: A-1, verdict: does-not-go-on, why: Too long.",
  ],
  "settings:\n  - { name: lift play, window: 1..2, unit: mm, conditions: warm, scope: fitted=B-2 }",
);
const index = partIndexOf(catalog);

function fitOf(part: string) {
  const [only] = fitsAt(index, { part, place: "pump", cars: badgers, on: nothingReported() });
  if (!only) throw new Error("no fit");
  return only;
}

test("a way with all that goes along, and the work that belongs to it", () => {
  const view = viewFit(index, "A-2", fitOf("A-2"));
  expect(view).toMatchObject({ verdict: "yes, on conditions", belongs: "A-1", refusals: [] });
  expect(view.ways[0]).toMatchObject({
    chain: ["A-2", "A-1"],
    companions: [{ part: "B-2", name: "part B-2", onTheCar: false }],
    do: ["Bleed it.", "Scrape it."],
    reset: ["lift play: 1 to 2 mm, warm"],
  });
  expect(fitOf("A-2").ways.map(workOf)).toEqual([["Bleed it.", "Scrape it."]]);
  expect(reasonsOf(view).map((it) => it.statement)).toEqual(["built 1", "stands-in 1", "stands-in 1"]);
});

test("who refuses it", () => {
  const view = viewFit(index, "D-1", fitOf("D-1"));
  expect([view.verdict, view.ways, reasonsOf(view).map((it) => it.statement)]).toEqual([
    "does not go on",
    [],
    ["built 1", "stands-in 3"],
  ]);
});
