/**
 * A part that the plant fitted, and that a later record took back: on cars where one record refuses it in place of another part,
 * and what is delivered for it is that other part, it must not be used again, whatever the plant did.
 *
 *   Only a refusal for certain cars can speak of the plant's own; without a scope it speaks of cars where the other part belongs.
 *   A delivery for certain cars counts, by one number or several. One without a scope counts where the refusal can speak of nothing
 *   else: none of its cars was built with the other part.
 */
import type { StandsIn, Supersedes } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import { cutBy, type Piece } from "./cut-by.ts";
import { carsBuiltWith, isPermission, type PartIndex, whereHolds } from "./part-index.ts";

export interface TakenBack {
  readonly cars: CarSet;
  readonly by: StandsIn;
}

/** For which of the cars a part was taken back, and by which refusals. */
export function takenBack(index: PartIndex, part: string, cars: CarSet): TakenBack[] {
  const { sets } = index.space;
  return (index.standInsOf.get(part) ?? []).flatMap((refusal): TakenBack[] => {
    const { for: other, scope } = refusal;
    if (isPermission(refusal) || other === undefined || scope === undefined) return [];
    const isOfOwn = !sets.meet(scope.cars, carsBuiltWith(index, other));
    const counts = (order: Supersedes): boolean => order.scope !== undefined || isOfOwn;
    const delivered = deliveredAs(index, part, other, whereHolds(index, refusal, cars), counts);
    return delivered === NONE ? [] : [{ cars: delivered, by: refusal }];
  });
}

/** The cars cut by who took the part back there; nobody where it may stay. */
export function cutByTakenBack(index: PartIndex, part: string, cars: CarSet): Piece<StandsIn>[] {
  const held = takenBack(index, part, cars).map(({ by, cars: its }) => ({ item: by, cars: its }));
  return cutBy(index.space, cars, held);
}

/** Those of the cars for which one part is delivered as another, number by number. */
function deliveredAs(
  index: PartIndex,
  part: string,
  wanted: string,
  cars: CarSet,
  counts: (order: Supersedes) => boolean,
): CarSet {
  const { sets } = index.space;
  const reached = new Map<string, CarSet>([[part, cars]]);
  const todo = [part];
  for (const one of todo)
    for (const order of (index.ordersOf.get(one) ?? []).filter(counts)) {
      const before = reached.get(order.new) ?? NONE;
      const here = sets.or(before, whereHolds(index, order, reached.get(one) ?? NONE));
      if (here === before) continue;
      reached.set(order.new, here);
      if (order.new !== wanted) todo.push(order.new);
    }
  return wanted === part ? NONE : (reached.get(wanted) ?? NONE);
}
