import { companionStanding } from "../interchange/companion-standing.ts";
import type { PartIndex } from "../interchange/part-index.ts";
import { nothingReported } from "../interchange/reported.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";

/** Those of the cars on which a part that goes along is still to be fitted: they may not have it already, and no record refuses it. */
export function stillToFit(index: PartIndex, part: string, cars: CarSet): CarSet {
  const { sets } = index.space;
  const seen = index.space.askedFitted(part);
  const without = seen === undefined ? cars : sets.and(cars, index.space.where(seen, [[0, 0]]));
  if (without === NONE) return NONE;
  return index.space.any(
    companionStanding(index, part, without, nothingReported()).flatMap((it) =>
      it.how === "goes along" ? [it.cars] : [],
    ),
  );
}
