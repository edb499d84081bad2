/** "On which cars may this part go, and for which parts may it stand in?" May it go on, asked the other way round. */
import { sayBelonging } from "../interchange/belongs.ts";
import { type Fit, fitsAt, mayBeFitted } from "../interchange/fits.ts";
import { isPermission, type PartIndex } from "../interchange/part-index.ts";
import { placesOf, placesToAsk } from "../interchange/places.ts";
import { nothingReported } from "../interchange/reported.ts";
import type { CarKnowledge } from "./car-knowledge.ts";
import { partIndexOf } from "./part-indexes.ts";
import { requirePart } from "./part-number.ts";
import { reasonFor, uniqueReasons } from "./say.ts";
import { sayCars } from "./say-cars.ts";
import type { CarsForPartAnswer } from "./shapes/cars-for-part.ts";

type FitView = CarsForPartAnswer["places"][number]["fits"][number];

/** More kinds of cars than this nobody reads. */
const MOST = 60;

export function answerCarsForPart({ catalog }: CarKnowledge, { part: typed }: { part: string }): CarsForPartAnswer {
  const index = partIndexOf(catalog);
  const part = requirePart(catalog, typed);
  const cars = catalog.buildable;
  const views = placesToAsk(index, part.number).map((place) => ({
    ...(place === undefined ? {} : { place }),
    fits: fitsAt(index, { part: part.number, place, cars, on: nothingReported() })
      .filter((fit) => fit.verdict !== "not on record")
      .map((fit) => viewFit(index, fit)),
  }));
  const told = views.flatMap((view) => view.fits);
  return {
    question: "cars-for-part",
    verdict: told.length > 0 ? "on record" : "not on record",
    because: uniqueReasons(told.flatMap((fit) => fit.because)),
    part: { number: part.number, name: part.name },
    places: views.filter((view) => view.fits.length > 0),
    standsInFor: permittedFor(index, part.number),
    replacedBy: leadingTo(index, part.number).filter((other) => permittedFor(index, other).includes(part.number)),
  };
}

function viewFit(index: PartIndex, fit: Fit): FitView {
  const { catalog } = index;
  const scope = sayCars(catalog, fit.cars, catalog.buildable, MOST);
  return {
    verdict: fit.verdict,
    belongs: sayBelonging(fit.belonging),
    ...(scope ? { scope } : {}),
    because: [...fit.because, ...fit.ways.flatMap((way) => way.steps), ...fit.refusals].map((it) =>
      reasonFor(catalog, it),
    ),
  };
}

/** The parts from which permissions lead to this one, whatever the car, in the order of the catalog: no other can replace it. */
function leadingTo({ catalog, standInsOf }: PartIndex, part: string): string[] {
  const permissions = [...standInsOf.values()].flat().filter(isPermission);
  const before = Map.groupBy(permissions, (it) => it.for);
  const found = new Set([part]);
  // A set that grows while it is walked is walked to its new end.
  for (const one of found) for (const it of before.get(one) ?? []) found.add(it.part);
  return [...catalog.parts.keys()].filter((other) => other !== part && found.has(other));
}

/** The parts in whose places it may go on some car, directly or by a chain. */
function permittedFor(index: PartIndex, part: string): string[] {
  const found = placesOf(index, part).flatMap((place) =>
    fitsAt(index, { part, place, cars: index.catalog.buildable, on: nothingReported() }),
  );
  return [
    ...new Set(
      found.flatMap(({ verdict, belonging }) =>
        mayBeFitted(verdict) && belonging.what === "part" && belonging.part !== part ? [belonging.part] : [],
      ),
    ),
  ];
}
