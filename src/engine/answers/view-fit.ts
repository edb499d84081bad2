/** How one fit is shown: what belongs there, the ways with all that goes along, or who refuses it. */
import { sayBelonging } from "../interchange/belongs.ts";
import type { Way } from "../interchange/companions.ts";
import type { Fit } from "../interchange/fits.ts";
import type { PartIndex } from "../interchange/part-index.ts";
import type { Reason } from "./answer.ts";
import { partName } from "./part-number.ts";
import { reasonFor } from "./say.ts";
import type { MayFitAnswer } from "./shapes/may-fit.ts";

export type FitView = MayFitAnswer["places"][number]["fits"][number];

export function viewFit(index: PartIndex, { verdict, belonging, because, ways, refusals }: Fit): FitView {
  return {
    verdict,
    belongs: sayBelonging(belonging),
    because: because.map((it) => reasonFor(index.catalog, it)),
    ways: ways.map((way) => viewWay(index, way)),
    refusals: refusals.map((it) => reasonFor(index.catalog, it)),
  };
}

function viewWay(index: PartIndex, way: Way): FitView["ways"][number] {
  const { catalog } = index;
  return {
    steps: way.steps.map((it) => reasonFor(catalog, it)),
    companions: way.companions.map(({ part, onTheCar, because }) => ({
      part,
      name: partName(catalog, part),
      onTheCar,
      contents: (index.contentsOf.get(part) ?? []).map((content) => ({ ...content })),
      because: reasonFor(catalog, because),
    })),
    do: workOf(way),
  };
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
