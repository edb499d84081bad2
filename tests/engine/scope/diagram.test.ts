import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ALL, type CarSet, isBranch, NONE } from "../../../src/engine/scope/diagram.ts";
import { includes, ranges } from "../../../src/engine/scope/ranges.ts";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import { Space } from "../../../src/engine/scope/space.ts";
import { span, writtenValue } from "../../../src/engine/scope/trait.ts";
import { type Car, FLEET, FLEET_TRAITS, fleetSpace, holds } from "../../helpers/listed-fleet.ts";
import { SEED } from "../../helpers/seed.ts";
import { tractorTrait } from "../../helpers/tractor-space.ts";

/** A set of cars as it is put together. */
type Recipe =
  | { readonly make: "where"; readonly trait: number; readonly pairs: readonly (readonly [number, number])[] }
  | { readonly make: "and" | "or" | "minus"; readonly a: Recipe; readonly b: Recipe }
  | { readonly make: "not"; readonly a: Recipe }
  | { readonly make: "forget"; readonly a: Recipe; readonly traits: readonly number[] };

const someTrait = fc.nat(FLEET_TRAITS.length - 1);
const where = someTrait.chain((trait) => {
  const [from, to] = span(FLEET_TRAITS[trait] as (typeof FLEET_TRAITS)[number]);
  const value = fc.integer({ min: from - 1, max: to + 1 });
  return fc.record({
    make: fc.constant("where" as const),
    trait: fc.constant(trait),
    pairs: fc.array(fc.tuple(value, value).map(inOrder), { minLength: 1, maxLength: 2 }),
  });
});
const inOrder = ([a, b]: [number, number]): [number, number] => [Math.min(a, b), Math.max(a, b)];
const { recipe } = fc.letrec<{ recipe: Recipe }>((tie) => ({
  recipe: fc.oneof(
    { depthSize: "medium", withCrossShrink: true },
    { weight: 2, arbitrary: where },
    {
      weight: 4,
      arbitrary: fc.record({ make: fc.constantFrom("and", "or", "minus"), a: tie("recipe"), b: tie("recipe") }),
    },
    { weight: 1, arbitrary: fc.record({ make: fc.constant("not"), a: tie("recipe") }) },
    {
      weight: 1,
      arbitrary: fc.record({
        make: fc.constant("forget"),
        a: tie("recipe"),
        traits: fc.uniqueArray(someTrait, { maxLength: 2 }),
      }),
    },
  ),
}));

describe("sets of cars agree with the list of their cars", () => {
  test("put together by where, and, or, minus, not and forget", () => {
    const space = fleetSpace();
    let mixed = 0;
    fc.assert(
      fc.property(recipe, (made) => {
        const set = cook(space, made);
        const listed = list(made);
        expect(FLEET.map((car) => holds(set, car))).toEqual(listed);
        if (set !== ALL && set !== NONE) mixed++;
      }),
      { seed: SEED, numRuns: 800 },
    );
    // A check of nothing but empty and full sets would say little.
    expect(mixed).toBeGreaterThan(280);
  }, 60_000);

  test("the values that a trait takes in a set are those that its cars have", () => {
    const space = fleetSpace();
    fc.assert(
      fc.property(recipe, someTrait, (made, trait) => {
        const values = space.sets.valuesOf(cook(space, made), trait);
        const listed = list(made);
        const taken = new Set(FLEET.filter((_, i) => listed[i]).map((car) => car[trait] as number));
        expect(values).toEqual(ranges([...taken].map((value) => [value, value] as const)));
      }),
      { seed: SEED, numRuns: 500 },
    );
  }, 60_000);

  test("the pieces of a branch cover the domain once, each goes on in its own way, and the first come first", () => {
    const space = fleetSpace();
    fc.assert(
      fc.property(recipe, (made) => {
        for (const branch of branchesOf(cook(space, made))) {
          const pieces = space.sets.pieces(branch);
          const [from, to] = span(space.trait(branch.trait));
          for (let value = from; value <= to; value++) {
            const next = pieces.filter(([values]) => includes(values, value)).map(([, set]) => set);
            expect(next).toEqual([branch.next[branch.starts.findLastIndex((start) => start <= value)]]);
          }
          expect(new Set(pieces.map(([, set]) => set)).size).toBe(pieces.length);
          const firsts = pieces.map(([values]) => values[0]?.[0] as number);
          expect(firsts).toEqual([...firsts].sort((a, b) => a - b));
        }
      }),
      { seed: SEED, numRuns: 500 },
    );
  });
});

describe("equal sets are the same object, however they were made", () => {
  test("two recipes give one object exactly when they list the same cars", () => {
    const space = fleetSpace();
    let equal = 0;
    fc.assert(
      fc.property(recipe, recipe, (one, other) => {
        const same = list(one).join() === list(other).join();
        expect(cook(space, one) === cook(space, other)).toBe(same);
        if (same) equal++;
      }),
      { seed: SEED, numRuns: 300 },
    );
    expect(equal).toBeGreaterThan(0);
  }, 60_000);

  test("the laws of sets hold to the object", () => {
    fc.assert(
      fc.property(recipe, recipe, recipe, (one, other, third) => {
        const space = fleetSpace();
        const [a, b, c] = [one, other, third].map((made) => cook(space, made)) as [CarSet, CarSet, CarSet];
        const { and, or, minus, not } = {
          and: (x: CarSet, y: CarSet) => space.sets.and(x, y),
          or: (x: CarSet, y: CarSet) => space.sets.or(x, y),
          minus: (x: CarSet, y: CarSet) => space.sets.minus(x, y),
          not: (x: CarSet) => space.sets.not(x),
        };
        expect(and(a, b)).toBe(and(b, a));
        expect(or(a, b)).toBe(or(b, a));
        expect(and(a, and(b, c))).toBe(and(and(a, b), c));
        expect(or(a, or(b, c))).toBe(or(or(a, b), c));
        expect(and(a, or(b, c))).toBe(or(and(a, b), and(a, c)));
        expect(or(a, and(b, c))).toBe(and(or(a, b), or(a, c)));
        expect(not(and(a, b))).toBe(or(not(a), not(b)));
        expect(not(not(a))).toBe(a);
        expect(minus(a, b)).toBe(and(a, not(b)));
        expect(or(minus(a, b), and(a, b))).toBe(a);
        expect(and(a, not(a))).toBe(NONE);
        expect(or(a, not(a))).toBe(ALL);
        expect(or(a, and(a, b))).toBe(a);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });

  test("forgetting several traits is forgetting them one after the other, in any order", () => {
    fc.assert(
      fc.property(recipe, fc.uniqueArray(someTrait, { minLength: 2, maxLength: 3 }), (made, traits) => {
        const space = fleetSpace();
        const set = cook(space, made);
        const oneByOne = (order: number[]): CarSet =>
          order.reduce((left, trait) => space.sets.forget(left, new Set([trait])), set);
        expect(oneByOne(traits)).toBe(space.sets.forget(set, new Set(traits)));
        expect(oneByOne([...traits].reverse())).toBe(space.sets.forget(set, new Set(traits)));
        expect(space.sets.minus(set, space.sets.forget(set, new Set(traits)))).toBe(NONE);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test("a set put together car by car, in any order, is the set", () => {
    const small = new Space([
      tractorTrait("line"),
      FLEET_TRAITS[1] as (typeof FLEET_TRAITS)[number],
      tractorTrait("WN"),
    ]);
    const cars = [0, 1, 2].flatMap((line) =>
      [1957, 1958, 1959, 1960].flatMap((my) => [0, 1].map((wn) => [line, my, wn])),
    );
    const single = (car: Car): CarSet =>
      car.reduce<CarSet>((set, value, trait) => small.sets.and(set, small.where(trait, [[value, value]])), ALL);
    fc.assert(
      fc.property(fc.uniqueArray(fc.nat(cars.length - 1)), fc.uniqueArray(fc.nat(cars.length - 1)), (one, other) => {
        const put = (chosen: number[]): CarSet => small.any(chosen.map((i) => single(cars[i] as Car)));
        const sorted = put([...one].sort((a, b) => a - b));
        expect(put(one)).toBe(sorted);
        expect(put([...one].reverse())).toBe(sorted);
        expect(small.sets.minus(ALL, put(cars.map((_, i) => i).filter((i) => !one.includes(i))))).toBe(sorted);
        expect(put([...one, ...other])).toBe(small.sets.or(sorted, put(other)));
      }),
      { seed: SEED, numRuns: 500 },
    );
  });
});

describe("a point in a plant's production divides that plant's cars and no other's", () => {
  const plants = [0, 1];
  const years = [1957, 1958, 1959, 1960];
  const numbers = [0, 1, 5, 8, 9];

  test("by number, at every point of the fleet", () => {
    const space = fleetSpace();
    for (const plant of plants)
      for (const year of years)
        for (const number of numbers)
          for (const side of ["+", "-"])
            expectPoint(space, plant, year, `#${number}`, side, (car) => (car[3] as number) >= number);
  });

  test("by date, at every point of the fleet", () => {
    const space = fleetSpace();
    const [first, last] = span(space.trait(4));
    for (const plant of plants)
      for (const year of years)
        for (let day = first; day <= last; day++)
          for (const side of ["+", "-"])
            expectPoint(
              space,
              plant,
              year,
              `@${writtenValue(space.trait(4), day)}`,
              side,
              (car) => (car[4] as number) >= day,
            );
  });
});

/** Built there, and either later (earlier) by model year, or in that very model year at the point or beyond (before it). */
function expectPoint(
  space: Space,
  plant: number,
  year: number,
  point: string,
  side: string,
  reached: (car: Car) => boolean,
): void {
  const read = readScope(space, `at=${writtenValue(space.trait(2), plant)}${year}${point}${side}`);
  if ("slips" in read) throw new Error(read.slips[0]?.message);
  const wanted = FLEET.filter((car) => {
    const [, my, where] = car as [number, number, number];
    if (where !== plant) return false;
    if (my !== year) return side === "+" ? my > year : my < year;
    return reached(car) === (side === "+");
  });
  expect(FLEET.filter((car) => holds(read.scope.cars, car))).toEqual(wanted);
}

function cook(space: Space, made: Recipe): CarSet {
  const { sets } = space;
  switch (made.make) {
    case "where":
      return sets.where(made.trait, ranges(made.pairs));
    case "and":
      return sets.and(cook(space, made.a), cook(space, made.b));
    case "or":
      return sets.or(cook(space, made.a), cook(space, made.b));
    case "minus":
      return sets.minus(cook(space, made.a), cook(space, made.b));
    case "not":
      return sets.not(cook(space, made.a));
    case "forget":
      return sets.forget(cook(space, made.a), new Set(made.traits));
  }
}

/** For every car of the fleet, whether it is in. */
function list(made: Recipe): boolean[] {
  if (made.make === "where")
    return FLEET.map((car) => {
      const value = car[made.trait] as number;
      return made.pairs.some(([from, to]) => from <= value && value <= to);
    });
  const a = list(made.a);
  if (made.make === "not") return a.map((is) => !is);
  if (made.make === "forget") {
    const likeness = likenessWithout(made.traits);
    const found = new Set(likeness.filter((_, i) => a[i]));
    return likeness.map((like) => found.has(like));
  }
  const b = list(made.b);
  if (made.make === "and") return a.map((is, i) => is && (b[i] as boolean));
  if (made.make === "or") return a.map((is, i) => is || (b[i] as boolean));
  return a.map((is, i) => is && !b[i]);
}

const likenesses = new Map<string, readonly string[]>();

/** For every car of the fleet what it is like in all but these traits. Few choices of traits come up, each of them often. */
function likenessWithout(traits: readonly number[]): readonly string[] {
  const choice = [...traits].sort().join();
  const known = likenesses.get(choice);
  if (known) return known;
  const likeness = FLEET.map((car) => car.filter((_, trait) => !traits.includes(trait)).join());
  likenesses.set(choice, likeness);
  return likeness;
}

function branchesOf(set: CarSet, found = new Set<CarSet>()): Extract<CarSet, { starts: unknown }>[] {
  if (!isBranch(set) || found.has(set)) return [];
  found.add(set);
  return [set, ...set.next.flatMap((next) => branchesOf(next, found))];
}
