/**
 * Which number is current for a car: the delivery rules followed from a number on, each within its scope, until none goes on.
 * A number with no rule for the car is current. It promises nothing about fitting.
 */
import type { Supersedes } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import { companionStanding } from "./companion-standing.ts";
import { type PartIndex, whereHolds } from "./part-index.ts";
import type { Reported } from "./reported.ts";

export interface Current {
  readonly part: string;
  readonly cars: CarSet;
  /** Rule by rule from the number asked. */
  readonly steps: readonly Supersedes[];
  /** The rules lead back to a number that they came from: an author's error. The part is the last one before that. */
  readonly circle: boolean;
}

/** The cars cut into pieces, each with its number. Where rules send the same car to several numbers, it is in several pieces. */
export function currentOf(index: PartIndex, part: string, cars: CarSet): Current[] {
  const { sets } = index.space;
  const found = new Map<string, Current>();
  const keep = (current: Current): void => {
    const key = `${current.steps.map((step) => `${step.record} ${step.index}`).join()} ${current.circle}`;
    const before = found.get(key);
    found.set(key, before ? { ...before, cars: sets.or(before.cars, current.cars) } : current);
  };
  const follow = (from: string, here: CarSet, steps: readonly Supersedes[], seen: ReadonlySet<string>): void => {
    let left = here;
    for (const rule of index.ordersOf.get(from) ?? []) {
      const sent = whereHolds(index, rule, here);
      if (sent === NONE) continue;
      left = sets.minus(left, sent);
      if (seen.has(rule.new)) keep({ part: from, cars: sent, steps, circle: true });
      else follow(rule.new, sent, [...steps, rule], new Set([...seen, rule.new]));
    }
    if (left !== NONE) keep({ part: from, cars: left, steps, circle: false });
  };
  if (cars !== NONE) follow(part, cars, [], new Set([part]));
  return [...found.values()];
}

/** The cars that a number is asked for: those that were built with it, if it may be one of them. */
export function askedFor(index: PartIndex, part: string, cars: CarSet): CarSet {
  const { sets } = index.space;
  const built = index.space.any((index.builtWith.get(part) ?? []).map((it) => it.scope.cars));
  const own = sets.and(cars, built);
  return own === NONE ? cars : own;
}

export interface OrderedAlong {
  readonly part: string;
  readonly because: Supersedes;
  /** Every one of the cars has it already. */
  readonly onTheCar: boolean;
}

/** What must be ordered along, each once, in the order of the rules. */
export function orderedAlong(index: PartIndex, { steps, cars }: Current, on: Reported): OrderedAlong[] {
  const found = new Map<string, OrderedAlong>();
  for (const step of steps)
    for (const part of step.with)
      if (!found.has(part)) {
        const standings = companionStanding(index, part, cars, on);
        found.set(part, { part, because: step, onTheCar: standings.every((it) => it.how === "on the car") });
      }
  return [...found.values()];
}
