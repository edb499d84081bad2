/**
 * Does a scope hold for the car at hand? (The first law of the answers.)
 *
 * Let K be the cars that were built and fit what is known of this one.
 *   If K is empty, there is no answer: no such car was built, or it is no longer as built.
 *   If the scope holds for every car of K, the answer is yes.
 *   If it holds for none of them, the answer is no.
 *   Otherwise it depends on what is not known yet: look first.
 */
import { type CarSet, type CarSets, NONE } from "./diagram.ts";

export const APPLIES = ["yes", "no", "look first", "no such car"] as const;
export type Applies = (typeof APPLIES)[number];

export function applies(sets: CarSets, cars: CarSet, scope: CarSet): Applies {
  if (cars === NONE) return "no such car";
  if (!sets.meet(cars, scope)) return "no";
  return sets.within(cars, scope) ? "yes" : "look first";
}
