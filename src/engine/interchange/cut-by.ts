/** Cuts cars so that each of some sets holds all cars of a piece, or none of them. */
import { type CarSet, NONE } from "../scope/diagram.ts";
import type { Space } from "../scope/space.ts";

export interface Piece<T> {
  readonly cars: CarSet;
  /** Whose sets hold these cars, in the order given. */
  readonly items: readonly T[];
}

export function cutBy<T>(
  { sets }: Space,
  cars: CarSet,
  held: readonly { readonly item: T; readonly cars: CarSet }[],
): Piece<T>[] {
  let pieces: Piece<T>[] = cars === NONE ? [] : [{ cars, items: [] }];
  for (const { item, cars: its } of held)
    pieces = pieces.flatMap((piece) => {
      const inside = sets.and(piece.cars, its);
      if (inside === NONE) return [piece];
      const outside = sets.minus(piece.cars, its);
      const held = { cars: inside, items: [...piece.items, item] };
      return outside === NONE ? [held] : [held, { cars: outside, items: piece.items }];
    });
  return pieces;
}
