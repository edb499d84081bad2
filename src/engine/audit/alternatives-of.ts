import { ALL, type CarSet } from "../scope/diagram.ts";
import { carsOf } from "../scope/read-scope.ts";
import type { Alternative, Scope } from "../scope/scope.ts";
import type { Space } from "../scope/space.ts";

export interface ToldAlternative {
  readonly alternative: Alternative;
  readonly cars: CarSet;
  /** Where it stands in the text of the scope. */
  readonly within: readonly [from: number, to: number];
}

/** The alternatives of a scope, each with its own cars. */
export function alternativesOf(space: Space, { alternatives, text }: Scope): ToldAlternative[] {
  let from = 0;
  const texts = text.split("||").map((piece) => {
    const start = from + piece.search(/\S|$/);
    from += piece.length + "||".length;
    return [start, start + piece.trim().length] as const;
  });
  return alternatives.map((alternative, i) => ({
    alternative,
    cars: alternative.reduce<CarSet>((set, clause) => space.sets.and(set, carsOf(space, clause)), ALL),
    within: texts[i] ?? [0, text.length],
  }));
}
