/** How one fit is shown: what belongs there, the ways with all that goes along, or who refuses it. */
import { sayBelonging } from "../interchange/belongs.ts";
import type { Way } from "../interchange/companions.ts";
import type { Fit } from "../interchange/fits.ts";
import type { PartIndex } from "../interchange/part-index.ts";
import { resetBy } from "../interchange/reset-by.ts";
import type { Setting } from "../records/statement.ts";
import type { Reason } from "./answer.ts";
import { partName } from "./part-number.ts";
import { reasonFor, sayWindow } from "./say.ts";
import type { MayFitAnswer } from "./shapes/may-fit.ts";

export type FitView = MayFitAnswer["places"][number]["fits"][number];

export function viewFit(index: PartIndex, part: string, fit: Fit): FitView {
  const { verdict, belonging, because, ways, refusals } = fit;
  return {
    verdict,
    belongs: sayBelonging(belonging),
    because: because.map((it) => reasonFor(index.catalog, it)),
    ways: ways.map((way) => viewWay(index, part, way, fit)),
    refusals: refusals.map((it) => reasonFor(index.catalog, it)),
  };
}

function viewWay(index: PartIndex, part: string, way: Way, { cars }: Fit): FitView["ways"][number] {
  const { catalog } = index;
  const goesOn = [part, ...way.companions.filter((it) => !it.onTheCar).map((it) => it.part)];
  return {
    steps: way.steps.map((it) => reasonFor(catalog, it)),
    chain: [part, ...way.steps.flatMap((it) => it.for ?? [])],
    companions: way.companions.map(({ part, onTheCar, because }) => ({
      part,
      name: partName(catalog, part),
      onTheCar,
      contents: (index.contentsOf.get(part) ?? []).map((content) => ({ ...content })),
      because: reasonFor(catalog, because),
    })),
    do: workOf(way),
    reset: resetBy(index, cars, goesOn).map(saySetting),
  };
}

/** "toe-in: 1 to 3 mm". */
export function saySetting({ name, low, high, unit, conditions }: Setting): string {
  return `${name}: ${sayWindow(low, high)} ${unit}${conditions ? `, ${conditions}` : ""}`;
}

/** The work that belongs to a way, that of its companions included. */
export function workOf({ steps, companions }: Way): string[] {
  const all = [...steps, ...companions.flatMap((it) => it.steps)];
  return [...new Set(all.flatMap((step) => (step.do === undefined ? [] : [step.do])))];
}

/** The statements that carry a fit, in the order of the argument. */
export function reasonsOf(fit: FitView): Reason[] {
  const ways = fit.ways.flatMap((way) => [...way.steps, ...way.companions.map((it) => it.because)]);
  return [...fit.because, ...ways, ...fit.refusals];
}
