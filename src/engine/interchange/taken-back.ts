/**
 * A part that the plant fitted, and that a later record took back: on cars where one record refuses it in place of another part,
 * and what is delivered for it is that other part, it must not be used again, whatever the plant did.
 */
import type { StandsIn } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import { isPermission, type PartIndex, whereHolds } from "./part-index.ts";

export interface TakenBack {
  readonly cars: CarSet;
  readonly by: StandsIn;
}

/** For which of the cars a part was taken back, and by which refusals. Only a refusal for certain cars can speak of the plant's own. */
export function takenBack(index: PartIndex, part: string, cars: CarSet): TakenBack[] {
  const { sets } = index.space;
  return (index.standInsOf.get(part) ?? []).flatMap((refusal): TakenBack[] => {
    if (isPermission(refusal) || refusal.for === undefined || refusal.scope === undefined) return [];
    const refused = whereHolds(index, refusal, cars);
    const orders = (index.ordersOf.get(part) ?? []).filter((it) => it.new === refusal.for && it.scope !== undefined);
    const delivered = orders.reduce<CarSet>((sum, it) => sets.or(sum, whereHolds(index, it, refused)), NONE);
    return delivered === NONE ? [] : [{ cars: delivered, by: refusal }];
  });
}
