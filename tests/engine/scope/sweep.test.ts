import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Applies, applies } from "../../../src/engine/scope/applies.ts";
import { ALL, type CarSet, NONE } from "../../../src/engine/scope/diagram.ts";
import { carsWith, type Given, readFacts } from "../../../src/engine/scope/facts.ts";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import type { Scope } from "../../../src/engine/scope/scope.ts";
import type { Space } from "../../../src/engine/scope/space.ts";
import { Sweep } from "../../../src/engine/scope/sweep.ts";
import { askedScope, FLAGS, POOLS, written } from "../../helpers/random-scopes.ts";
import { SEED } from "../../helpers/seed.ts";
import { tractorSpace } from "../../helpers/tractor-space.ts";

function read(space: Space, text: string): Scope {
  const result = readScope(space, text);
  if ("slips" in result) throw new Error(result.slips[0]?.message);
  return result.scope;
}

/** A car known in part: of some traits one value, of others a few. */
const pools = { ...POOLS, ...Object.fromEntries(FLAGS.map((flag) => [flag, ["yes", "no"]])) };
const known: fc.Arbitrary<Record<string, Given>> = fc
  .uniqueArray(
    fc
      .constantFrom(...Object.entries(pools))
      .chain(([trait, pool]) => fc.tuple(fc.constant(trait), fc.subarray([...pool], { minLength: 1, maxLength: 2 }))),
    { selector: ([trait]) => trait, maxLength: 8, size: "max" },
  )
  .map((facts) => Object.fromEntries(facts));

/** The verdicts one by one, the plain way. */
function plain(space: Space, cars: CarSet, scopes: readonly Scope[]): Applies[] {
  return scopes.map((scope) => applies(space.sets, cars, scope.cars));
}

describe("very many scopes at once", () => {
  // how many scopes at once, how often, for how many cars each
  test.each([
    [1, 200, 4],
    [10, 100, 4],
    [200, 16, 5],
    [4000, 2, 6],
  ])(
    "%i scopes, %i times, for %i cars known in part, as one by one",
    (size, times, carsEach) => {
      const counts: Record<Applies, number> = { yes: 0, no: 0, "look first": 0, "no such car": 0 };
      for (let round = 0; round < times; round++) {
        const seed = SEED + size * 1000 + round;
        const space = tractorSpace();
        const scopes = fc.sample(askedScope, { seed, numRuns: size }).map((scope) => read(space, written(scope)));
        const [built] = fc.sample(askedScope, { seed: seed + 1, numRuns: 1 });
        const sweep = new Sweep(space, scopes);
        // Half of the cars come from a limited range of built ones, half from all there could be.
        fc.sample(known, { seed, numRuns: carsEach }).forEach((facts, i) => {
          const all = i % 2 ? ALL : read(space, written(built ?? [])).cars;
          const cars = carsWith(space, all, readFacts(space, facts, "said"));
          const expected = plain(space, cars, scopes);
          expect(sweep.verdicts(cars), `seed ${seed}, ${JSON.stringify(facts)}`).toEqual(expected);
          for (const verdict of expected) counts[verdict]++;
        });
      }
      console.log(`sweeps of ${size}: ${JSON.stringify(counts)}`);
      for (const verdict of ["yes", "no", "look first"] as const) expect(counts[verdict]).toBeGreaterThan(50);
    },
    60_000,
  );

  test("a car that was not built has no answer, whatever the scope", () => {
    const space = tractorSpace();
    const sweep = new Sweep(space, [read(space, "all"), read(space, "my=1958")]);
    expect(sweep.verdicts(NONE)).toEqual(["no such car", "no such car"]);
  });

  test("of no scopes there is nothing to say", () => {
    expect(new Sweep(tractorSpace(), []).verdicts(ALL)).toEqual([]);
    expect(new Sweep(tractorSpace(), []).verdicts(NONE)).toEqual([]);
  });

  // scope, what it is of a car of which nothing is known
  test.each<[string, Applies]>([
    ["all", "yes"],
    ["my=1958; my=1959", "no"],
    ["my=1958 || my!=1958", "yes"],
    ["my<=1959 || my=1960 || my>1960", "yes"],
    ["my=1958; line=B || my!=1958; line=B", "look first"],
    ["eq=PT,WN", "look first"],
    ["eq=PT || no=PT", "yes"],
    ["eq=PT; no=PT,WN", "no"],
    ["at=K59#0412+ || at=K59#0412-", "look first"],
    ["at=K59#0412+ || at=K59#0412- || plant=D2", "yes"],
    ["at=K59#0412+; at=K59#0412-", "no"],
    ["at=K59@1959-01-01+; my<1959", "no"],
    ["fitted=HT-101", "look first"],
    ["fitted=HT-101 || fitted!=HT-101", "yes"],
  ])("%s is '%s' of any car", (text, verdict) => {
    const space = tractorSpace();
    expect(new Sweep(space, [read(space, text)]).verdicts(ALL)).toEqual([verdict]);
  });

  test("one sweep answers for one car after the other", () => {
    const space = tractorSpace();
    const sweep = new Sweep(
      space,
      ["my=1958", "my>=1959", "line=B; my=1958"].map((text) => read(space, text)),
    );
    const of = (text: string): Applies[] => sweep.verdicts(read(space, text).cars);
    expect(of("my=1958")).toEqual(["yes", "no", "look first"]);
    expect(of("my=1960")).toEqual(["no", "yes", "no"]);
    expect(of("my=1958; line=B")).toEqual(["yes", "no", "yes"]);
    expect(of("my=1958")).toEqual(["yes", "no", "look first"]);
  });
});
