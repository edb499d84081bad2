/**
 * A set of built cars with as few traits as tell it from all others that were built: what no car lacks need not be said.
 * "Heron of 1959 with a winch" in place of every body, engine and plant that such a car may have.
 */
import type { CarSet } from "./diagram.ts";
import type { Space } from "./space.ts";

/** A page says the same cars many times over, and a set is one object however it came about: (built, cars) -> in short. */
const said = new WeakMap<CarSet, WeakMap<CarSet, CarSet>>();

/** A set that holds the same ones of the built cars; traits go that can, the last in their order first. */
export function shorter(space: Space, cars: CarSet, built: CarSet): CarSet {
  const ofThese = said.get(built) ?? new WeakMap<CarSet, CarSet>();
  said.set(built, ofThese);
  const found = ofThese.get(cars) ?? shortened(space, cars, built);
  ofThese.set(cars, found);
  return found;
}

function shortened({ sets, traits }: Space, cars: CarSet, built: CarSet): CarSet {
  const others = sets.minus(built, cars);
  const named = sets.traitsOf(cars);
  return [...traits.keys()].reverse().reduce((best, trait) => {
    if (!named.has(trait)) return best;
    const less = sets.forget(best, new Set([trait]));
    return sets.meet(less, others) ? best : less;
  }, cars);
}
