import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { applies } from "../../../src/engine/scope/applies.ts";
import { bestCover, decidingTraits } from "../../../src/engine/scope/deciding.ts";
import { span } from "../../../src/engine/scope/trait.ts";
import { type Car, FLEET_TRAITS, fleetSpace, holds } from "../../helpers/listed-fleet.ts";
import { askedSet, carsIn, setOf } from "../../helpers/random-sets.ts";
import { SEED } from "../../helpers/seed.ts";

/** Every set of traits: fewest first, then least effort, then the one whose traits come first. */
const CHOICES = Array.from({ length: 2 ** FLEET_TRAITS.length }, (_, bits) =>
  FLEET_TRAITS.map((_, i) => i).filter((i) => bits & (1 << i)),
).sort((a, b) => {
  const effort = (choice: readonly number[]): number =>
    choice.reduce((sum, i) => sum + (FLEET_TRAITS[i]?.effort ?? 0), 0);
  const at = a.findIndex((trait, i) => trait !== b[i]);
  return a.length - b.length || effort(a) - effort(b) || (at < 0 ? 0 : (a[at] as number) - (b[at] as number));
});

const FIRST = FLEET_TRAITS.map((trait) => span(trait)[0]);

/** Whether no car inside and no car outside look alike in the chosen traits, asked car by car. */
function settles(choice: readonly number[], inside: readonly Car[], outside: readonly Car[]): boolean {
  // One number for all the values of a look: each has ten of its steps to itself, as no trait of the fleet takes more values.
  const looks = (car: Car): number =>
    choice.reduce((sum, trait) => sum * 10 + (car[trait] as number) - (FIRST[trait] as number), 0);
  const seen = new Set(inside.map(looks));
  return outside.every((car) => !seen.has(looks(car)));
}

describe("the traits that settle the matter", () => {
  const space = fleetSpace();

  test("are the best of all sets of traits, tried one after the other", () => {
    let open = 0;
    fc.assert(
      fc.property(askedSet, askedSet, (known, about) => {
        const [cars, scope] = [setOf(space, known), setOf(space, about)];
        if (applies(space.sets, cars, scope) !== "look first") return;
        open++;
        const possible = carsIn(cars);
        const inside = possible.filter((car) => holds(scope, car));
        const outside = possible.filter((car) => !holds(scope, car));
        const best = CHOICES.find((choice) => settles(choice, inside, outside));
        expect(decidingTraits(space, cars, scope)).toEqual(best);
      }),
      { seed: SEED, numRuns: 2000 },
    );
    expect(open).toBeGreaterThan(500);
  }, 60_000);

  test("nothing settles what is settled", () => {
    const scope = space.where(1, [[1958, 1960]]);
    expect(decidingTraits(space, scope, scope)).toEqual([]);
  });
});

describe("the best cover", () => {
  // groups, effort by member, what covers them
  test.each<[number[][], number[], number[]]>([
    [[], [], []],
    [[[0, 1]], [2, 1], [1]],
    [
      [[0], [1]],
      [1, 1],
      [0, 1],
    ],
    [
      [
        [0, 2],
        [1, 2],
      ],
      [1, 1, 5],
      [2],
    ],
    [
      [
        [0, 1],
        [0, 1],
      ],
      [3, 3],
      [0],
    ],
  ])("of %j is %j", (groups, effort, covered) => {
    expect(bestCover(groups, (member) => effort[member] ?? 0)).toEqual(covered);
  });
});
