/**
 * Which number is current for a car: the delivery rules followed from a number on, each within its scope, until none goes on.
 * A number with no rule for the car is current. It promises nothing about fitting.
 */
import { idOf, type Supersedes } from "../records/statement.ts";
import { type CarSet, NONE } from "../scope/diagram.ts";
import { companionStanding } from "./companion-standing.ts";
import { carsBuiltWith, type PartIndex, whereHolds } from "./part-index.ts";
import type { Reported } from "./reported.ts";

export interface Current {
  readonly part: string;
  readonly cars: CarSet;
  /** Rule by rule from the number asked. */
  readonly steps: readonly Supersedes[];
  /** The rules lead back to a number that they came from: an author's error. The part is the last one before that. */
  readonly circle: boolean;
}

/** So many ways round are all told. Beyond them an author's error is likely, and the first way to each number counts. */
const MOST_ROUTES = 1_000;

/** The cars cut into pieces, each with its number. Where rules send the same car to several numbers, it is in several pieces. */
export function currentOf(index: PartIndex, part: string, cars: CarSet): Current[] {
  const { sets } = index.space;
  const found = new Map<string, Current>();
  const followed = new Map<string, CarSet>();
  const keep = (current: Current): void => {
    const key = `${current.steps.map(idOf).join()} ${current.circle}`;
    const before = found.get(key);
    found.set(key, before ? { ...before, cars: sets.or(before.cars, current.cars) } : current);
  };
  let told = 0;
  /** Those of the cars that this way is told for. */
  const news = ({ at, cars: here }: Route): CarSet => {
    const before = followed.get(at) ?? NONE;
    followed.set(at, sets.or(before, here));
    return ++told <= MOST_ROUTES ? here : sets.minus(here, before);
  };
  const routes: Route[] = [{ at: part, cars, steps: [], seen: new Set([part]) }];
  // Routes are added while they are walked, so that shorter ones come first.
  for (const route of routes) {
    const here = news(route);
    let left = here;
    for (const rule of here === NONE ? [] : (index.ordersOf.get(route.at) ?? [])) {
      const sent = whereHolds(index, rule, here);
      if (sent === NONE) continue;
      left = sets.minus(left, sent);
      if (route.seen.has(rule.new)) keep({ part: route.at, cars: sent, steps: route.steps, circle: true });
      else {
        const seen = new Set([...route.seen, rule.new]);
        routes.push({ at: rule.new, cars: sent, steps: [...route.steps, rule], seen });
      }
    }
    if (left !== NONE) keep({ part: route.at, cars: left, steps: route.steps, circle: false });
  }
  return [...found.values()];
}

interface Route {
  readonly at: string;
  readonly cars: CarSet;
  readonly steps: readonly Supersedes[];
  readonly seen: ReadonlySet<string>;
}

/** The cars that a number is asked for: those that were built with it, if it may be one of them. */
export function askedFor(index: PartIndex, part: string, cars: CarSet): CarSet {
  const { sets } = index.space;
  const built = carsBuiltWith(index, part);
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
