import fc from "fast-check";
import { expect, test } from "vitest";
import { NONE } from "../../../src/engine/scope/diagram.ts";
import { pick, sayCar } from "../../../src/engine/scope/pick.ts";
import { span } from "../../../src/engine/scope/trait.ts";
import { FLEET_TRAITS, fleetSpace, holds } from "../../helpers/listed-fleet.ts";
import { askedSet, setOf } from "../../helpers/random-sets.ts";
import { SEED } from "../../helpers/seed.ts";

test("a picked car is in the set, whatever the traits that it leaves out", () => {
  const space = fleetSpace();
  expect(pick(NONE)).toBeUndefined();
  fc.assert(
    fc.property(askedSet, askedSet, (asked, other) => {
      const set = setOf(space, asked);
      for (const car of [pick(set), pick(set, pick(setOf(space, other)))]) {
        expect(car === undefined).toBe(set === NONE);
        if (!car) continue;
        const [low, high] = [0, 1].map((end) =>
          FLEET_TRAITS.map((trait, i) => car.get(i) ?? (span(trait)[end] as number)),
        );
        expect([holds(set, low as number[]), holds(set, high as number[])]).toEqual([true, true]);
      }
    }),
    { seed: SEED, numRuns: 1000 },
  );
});

test("a car near to another one keeps its values where the set allows them", () => {
  const space = fleetSpace();
  const set = space.where(1, [[1957, 1958]]);
  expect(pick(set, new Map([[1, 1958]]))?.get(1)).toBe(1958);
  expect(pick(set, new Map([[1, 1960]]))?.get(1)).toBe(1957);
});

test("a car is said by trait and value", () => {
  const space = fleetSpace();
  expect(
    sayCar(
      space,
      new Map([
        [1, 1958],
        [5, 1],
      ]),
    ),
  ).toEqual({ my: "1958", WN: "yes" });
});
