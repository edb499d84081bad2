import { describe } from "../scope/describe.ts";
import { ALL, type CarSet, NONE } from "../scope/diagram.ts";
import { pick, sayCar } from "../scope/pick.ts";
import { readScope } from "../scope/read-scope.ts";
import type { Space } from "../scope/space.ts";
import { writeScope } from "../scope/write-scope.ts";

/** One car that shows a fault: as facts, and in words. */
export interface ExampleCar {
  /** Trait by trait, as `answer --fact` takes them. */
  readonly facts: Readonly<Record<string, string>>;
  readonly words: string;
}

/**
 * The first car of a set, in the order of traits and values, told by its line, its year and as few other traits as will do: every built
 * car of which these are true is in the set. What does not matter is left out, the last traits first.
 */
export function exampleCar({
  cars,
  among,
  space,
}: {
  cars: CarSet;
  among: CarSet;
  space: Space;
}): ExampleCar | undefined {
  const { sets } = space;
  const first = pick(cars);
  if (!first) return undefined;
  const always = [space.role("line"), space.role("year")];
  const kept = new Map(first);
  for (const trait of [...first.keys()].sort((a, b) => b - a)) {
    if (always.includes(trait)) continue;
    const without = new Map([...kept].filter(([one]) => one !== trait));
    if (sets.within(sets.and(among, setOf(space, without)), cars)) kept.delete(trait);
  }
  const told = new Map([...kept].sort(([a], [b]) => a - b));
  const text = writeScope(space, setOf(space, told), 1) ?? "";
  const read = readScope(space, text);
  return { facts: sayCar(space, told), words: "scope" in read ? describe(space, read.scope) : text };
}

function setOf(space: Space, values: ReadonlyMap<number, number>): CarSet {
  return [...values].reduce<CarSet>(
    (set, [trait, value]) => (set === NONE ? NONE : space.sets.and(set, space.where(trait, [[value, value]]))),
    ALL,
  );
}
