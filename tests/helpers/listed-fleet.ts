/**
 * A made-up fleet whose every car is listed: the slow, obvious twin of sets of cars. A set is then simply the list of its
 * cars, and every question is asked car by car.
 */
import { type CarSet, isBranch } from "../../src/engine/scope/diagram.ts";
import { Space } from "../../src/engine/scope/space.ts";
import { span } from "../../src/engine/scope/trait.ts";
import { tractorTrait } from "./tractor-space.ts";

/** The value of each trait, in the order of the traits. */
export type Car = readonly number[];

export const FLEET_TRAITS = [
  tractorTrait("line"),
  { ...tractorTrait("my"), kind: "whole", from: 1957, to: 1960 } as const,
  tractorTrait("plant"),
  { ...tractorTrait("number"), kind: "serial", prefixes: [""], digits: 1 } as const,
  { ...tractorTrait("built"), kind: "date", from: "1958-12-30", to: "1959-01-01" } as const,
  tractorTrait("WN"),
];

export function fleetSpace(): Space {
  return new Space(FLEET_TRAITS);
}

/** Every car that the traits allow: 3 lines × 4 years × 2 plants × 10 numbers × 3 days × winch or not. */
export const FLEET: readonly Car[] = FLEET_TRAITS.reduce<Car[]>(
  (cars, trait) => {
    const [from, to] = span(trait);
    const values = Array.from({ length: to - from + 1 }, (_, i) => from + i);
    return cars.flatMap((car) => values.map((value) => [...car, value]));
  },
  [[]],
);

/** Whether one car is in the set: from branch to branch, by the car's values. */
export function holds(set: CarSet, car: Car): boolean {
  let at = set;
  while (isBranch(at)) {
    const value = car[at.trait] as number;
    at = at.next[at.starts.findLastIndex((start) => start <= value)] as CarSet;
  }
  return at.id === 1;
}
