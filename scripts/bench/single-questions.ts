/** How long one question about one scope takes, each asked of many scopes once. */
import { applies } from "../../src/engine/scope/applies.ts";
import { decidingTraits } from "../../src/engine/scope/deciding.ts";
import { describe } from "../../src/engine/scope/describe.ts";
import type { CarSet } from "../../src/engine/scope/diagram.ts";
import { nextLook } from "../../src/engine/scope/question.ts";
import type { Scope } from "../../src/engine/scope/scope.ts";
import type { Space } from "../../src/engine/scope/space.ts";
import { median } from "./bench.ts";

/** In thousandths of a millisecond. */
export interface Times {
  readonly asked: number;
  readonly median: number;
  /** Of a hundred, 95 take no longer. */
  readonly p95: number;
}

/** Of each kind so many are asked, going round the cars; the last two only where the scope is open for them. */
export function singleQuestions(
  space: Space,
  scopes: readonly Scope[],
  cars: readonly CarSet[],
  most: number,
): Record<string, Times> {
  const { sets } = space;
  const some = scopes.slice(0, most);
  const other = (i: number): CarSet => (some[(i + 1) % some.length] as Scope).cars;
  const car = (i: number): CarSet => cars[i % cars.length] as CarSet;
  const open = some.flatMap((scope, i) => (applies(sets, car(i), scope.cars) === "look first" ? [{ scope, i }] : []));
  const each = (ask: (scope: CarSet, i: number) => unknown): Times =>
    times(some.map((scope, i) => () => ask(scope.cars, i)));
  return {
    and: each((scope, i) => sets.and(scope, other(i))),
    or: each((scope, i) => sets.or(scope, other(i))),
    minus: each((scope, i) => sets.minus(scope, other(i))),
    covers: each((scope, i) => sets.within(other(i), scope)),
    describe: times(some.map((scope) => () => describe(space, scope))),
    applies: each((scope, i) => applies(sets, car(i + 1), scope)),
    decidingTraits: times(
      open.map(
        ({ scope, i }) =>
          () =>
            decidingTraits(space, car(i), scope.cars),
      ),
    ),
    nextLook: times(
      open.map(
        ({ scope, i }) =>
          () =>
            nextLook(space, car(i), scope.cars),
      ),
    ),
  };
}

function times(asks: readonly (() => unknown)[]): Times {
  const taken = asks.map((ask) => {
    const start = performance.now();
    ask();
    return (performance.now() - start) * 1000;
  });
  const sorted = taken.toSorted((a, b) => a - b);
  return {
    asked: taken.length,
    median: taken.length === 0 ? 0 : median(taken),
    p95: sorted[Math.floor(sorted.length * 0.95)] ?? 0,
  };
}
