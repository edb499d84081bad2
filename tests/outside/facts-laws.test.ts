/**
 * What must hold whatever is known of a car, without a judge: laws over random tables of built cars, random facts and random scopes.
 * Source: fast-check, which invents the cases and makes a failing one small.
 */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Applies, applies } from "../../src/engine/scope/applies.ts";
import type { CarSet } from "../../src/engine/scope/diagram.ts";
import { carsWith, conflict, type Fact, type FactSource, readFacts } from "../../src/engine/scope/facts.ts";
import { readScope } from "../../src/engine/scope/read-scope.ts";
import { Space } from "../../src/engine/scope/space.ts";
import { type AskedScope, askedScope, FLAGS, POOLS, written } from "../helpers/random-scopes.ts";
import { SEED } from "../helpers/seed.ts";
import { TRACTOR_TRAITS } from "../helpers/tractor-space.ts";

/** The number of an axle goes with the fuel here, so that facts as found can take each other's place. */
const space = new Space(TRACTOR_TRAITS.map((trait) => (trait.id === "axle" ? { ...trait, of: "fuel" } : trait)));

function setOf(scope: AskedScope): CarSet {
  const read = readScope(space, written(scope));
  if ("slips" in read) throw new Error(read.slips[0]?.message);
  return read.scope.cars;
}

const pools = { ...POOLS, ...Object.fromEntries(FLAGS.map((flag) => [flag, ["yes", "no"]])) };
function fact(...sources: FactSource[]): fc.Arbitrary<Fact> {
  return fc
    .constantFrom(...Object.entries(pools))
    .chain(([trait, pool]) =>
      fc
        .tuple(fc.subarray([...pool], { minLength: 1, maxLength: 2 }), fc.constantFrom(...sources))
        .map(([values, source]) => readFacts(space, { [trait]: values }, source)[0] as Fact),
    );
}
const facts = fc.array(fact("said", "said", "plate", "as found"), { maxLength: 5 });
const moreFacts = fc.array(fact("said", "plate"), { minLength: 1, maxLength: 3 });

/** A row limits line, year and plant, and some more. */
const row: fc.Arbitrary<AskedScope> = fc
  .record(
    {
      line: fc.subarray([...(POOLS.line as string[])], { minLength: 1, maxLength: 1 }),
      my: fc.subarray([...(POOLS.my as string[])], { minLength: 1, maxLength: 3 }),
      plant: fc.subarray([...(POOLS.plant as string[])], { minLength: 1, maxLength: 1 }),
      fuel: fc.subarray([...(POOLS.fuel as string[])], { minLength: 1, maxLength: 2 }),
      PT: fc.constantFrom(["yes"], ["no"]),
    },
    { requiredKeys: ["line", "my", "plant"] },
  )
  .map((limits) => [
    Object.entries(limits).map(([trait, values]) => ({
      ask: "values" as const,
      trait,
      not: false,
      items: values.map((value) => [value, value] as const),
    })),
  ]);
const table = fc.array(row, { minLength: 1, maxLength: 8 }).map((rows) => rows.flat());

const verdict = (built: CarSet, known: readonly Fact[], about: CarSet): Applies =>
  applies(space.sets, carsWith(space, built, known), about);

describe("whatever is known of a car", () => {
  test("more facts never turn yes into no or no into yes", () => {
    const before: Record<Applies, number> = { yes: 0, no: 0, "look first": 0, "no such car": 0 };
    let kept = 0;
    fc.assert(
      fc.property(table, facts, moreFacts, askedScope, (rows, known, more, scope) => {
        const [built, about] = [setOf(rows), setOf(scope)];
        const first = verdict(built, known, about);
        const then = verdict(built, [...known, ...more], about);
        before[first]++;
        if (first === "look first") return;
        // What was sure stays as it was, unless the new facts say that there is no such car.
        expect([first, "no such car"]).toContain(then);
        if (first !== "no such car" && then === first) kept++;
      }),
      { seed: SEED, numRuns: 2500 },
    );
    console.log(`before: ${JSON.stringify(before)}, sure and kept: ${kept}`);
    expect(kept).toBeGreaterThan(200);
  }, 60_000);

  test("the order of facts does not matter, for the cars and for the size of the smallest contradiction", () => {
    let contradicted = 0;
    fc.assert(
      fc.property(
        table,
        fc
          .array(fact("said", "said", "said", "plate", "as found"), { minLength: 2, maxLength: 6 })
          .chain((all) => fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length }))),
        (rows, [known, shuffled]) => {
          const built = setOf(rows);
          expect(carsWith(space, built, shuffled)).toBe(carsWith(space, built, known));
          const found = conflict(space, built, known);
          expect(conflict(space, built, shuffled).length).toBe(found.length);
          if (found.length > 0) contradicted++;
        },
      ),
      { seed: SEED, numRuns: 2500 },
    );
    expect(contradicted).toBeGreaterThan(300);
  }, 60_000);

  test("one more row of built cars never turns look first into yes or no", () => {
    let open = 0;
    fc.assert(
      fc.property(table, row, facts, askedScope, (rows, added, known, scope) => {
        const about = setOf(scope);
        if (verdict(setOf(rows), known, about) !== "look first") return;
        open++;
        expect(verdict(setOf([...rows, ...added]), known, about)).toBe("look first");
      }),
      { seed: SEED, numRuns: 2500 },
    );
    expect(open).toBeGreaterThan(800);
  }, 60_000);
});
