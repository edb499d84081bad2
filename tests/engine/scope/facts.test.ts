import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { NONE } from "../../../src/engine/scope/diagram.ts";
import { carsWith, conflict, type Fact, FactError, neededFacts, readFacts } from "../../../src/engine/scope/facts.ts";
import { ranges } from "../../../src/engine/scope/ranges.ts";
import { Space } from "../../../src/engine/scope/space.ts";
import type { ListTrait } from "../../../src/engine/scope/trait.ts";
import { FLEET_TRAITS, fleetSpace } from "../../helpers/listed-fleet.ts";
import { askedSet, setOf } from "../../helpers/random-sets.ts";
import { SEED } from "../../helpers/seed.ts";

const space = fleetSpace();

describe("facts as given", () => {
  // given, which trait, which values
  test.each<[Parameters<typeof readFacts>[1], string, [number, number][]]>([
    [{ my: 1958 }, "my", [[1958, 1958]]],
    [{ my: "1958" }, "my", [[1958, 1958]]],
    [
      { my: [1957, 1959] },
      "my",
      [
        [1957, 1957],
        [1959, 1959],
      ],
    ],
    [{ my: { from: 1958 } }, "my", [[1958, 1960]]],
    [{ my: { to: 1958 } }, "my", [[1957, 1958]]],
    [{ WN: true }, "WN", [[1, 1]]],
    [{ eq: ["WN"] }, "WN", [[1, 1]]],
    [{ no: "WN" }, "WN", [[0, 0]]],
  ])("%j", (given, trait, values) => {
    const [fact, ...more] = readFacts(space, given, "said");
    expect(more).toEqual([]);
    expect([space.trait(fact?.trait ?? -1).id, fact?.values]).toEqual([trait, values]);
  });

  test.each<[Parameters<typeof readFacts>[1]]>([
    [{ nonsense: 1 }],
    [{ my: 1999 }],
    [{ my: [] }],
    [{ my: { from: 1960, to: 1957 } }],
    [{ line: { from: "B" } }],
    [{ eq: ["my"] }],
  ])("%j is refused with a message", (given) => {
    expect(() => readFacts(space, given, "said")).toThrow(FactError);
  });
});

const fact = fc.nat(FLEET_TRAITS.length - 1).chain((trait) => {
  const [from, to] = space.span(trait);
  return fc.uniqueArray(fc.integer({ min: from, max: to }), { minLength: 1, maxLength: 3 }).map(
    (values): Fact => ({
      trait,
      values: ranges(values.map((value) => [value, value])),
      source: "said",
      text: `${trait}=${values}`,
    }),
  );
});
const facts = fc.array(fact, { maxLength: 6 });

describe("a smallest conflict", () => {
  test("is as small as any, tried one after the other, and is none where some car fits", () => {
    let conflicts = 0;
    fc.assert(
      fc.property(askedSet, facts, (built, known) => {
        const cars = setOf(space, built);
        if (cars === NONE) return;
        const found = conflict(space, cars, known);
        const subsets = Array.from({ length: 2 ** known.length }, (_, bits) => known.filter((_, i) => bits & (1 << i)));
        const clashing = subsets.filter((subset) => carsWith(space, cars, subset) === NONE);
        const smallest = Math.min(...clashing.map((subset) => subset.length));
        if (clashing.length > 0) conflicts++;
        expect(found.length).toBe(clashing.length > 0 ? smallest : 0);
        if (found.length > 0) expect(carsWith(space, cars, found)).toBe(NONE);
      }),
      { seed: SEED, numRuns: 4000 },
    );
    expect(conflicts).toBeGreaterThan(500);
  });

  test("the order of facts does not matter for the cars", () => {
    fc.assert(
      fc.property(askedSet, facts, (built, known) => {
        const cars = setOf(space, built);
        expect(carsWith(space, cars, known.toReversed())).toBe(carsWith(space, cars, known));
      }),
      { seed: SEED, numRuns: 1000 },
    );
  });
});

describe("facts as found", () => {
  const traits = FLEET_TRAITS.map((trait) => (trait.id === "number" ? { ...trait, of: "plant" } : trait));
  const withParts = new Space(traits);
  const [plant, number] = ["plant", "number"].map((id) => withParts.find(id)) as [number, number];
  // Built only: plant 0 with numbers up to 4.
  const built = withParts.sets.and(withParts.where(plant, [[0, 0]]), withParts.where(number, [[0, 4]]));
  const say = (trait: number, value: number, source: Fact["source"]): Fact => ({
    trait,
    values: [[value, value]],
    source,
    text: "",
  });

  test("take the place of what was built, and of the numbers that go with it", () => {
    expect(carsWith(withParts, built, [say(plant, 1, "said")])).toBe(NONE);
    const found = carsWith(withParts, built, [say(plant, 1, "as found")]);
    expect(found).toBe(withParts.where(plant, [[1, 1]]));
  });

  test("a number found takes the place of what it goes with", () => {
    expect(carsWith(withParts, built, [say(number, 7, "as found")])).toBe(withParts.where(number, [[7, 7]]));
  });

  test("a number found with a letter tells what it goes with, also a number that no car left the plant with", () => {
    const { values = [] } = FLEET_TRAITS[plant] as ListTrait;
    const letters = values.slice(0, 2).map(({ id }) => id);
    const lettered = new Space(
      FLEET_TRAITS.map((trait) =>
        trait.id === "number"
          ? { ...trait, of: "plant", kind: "serial" as const, prefixes: letters, digits: 2 }
          : trait,
      ),
    );
    const { sets } = lettered;
    // Of each of two plants 1 to 40, with its own letter.
    const pairs = [0, 1].map((one) =>
      sets.and(lettered.where(plant, [[one, one]]), lettered.where(number, [[one * 100 + 1, one * 100 + 40]])),
    );
    const all = lettered.any(pairs);
    const found = carsWith(lettered, all, [say(plant, 0, "said"), say(number, 177, "as found")]);
    expect(sets.valuesOf(found, plant)).toEqual([[1, 1]]);
    expect(carsWith(lettered, all, [say(plant, 0, "as found"), say(number, 177, "as found")])).toBe(NONE);
  });
});

test("facts that carry nothing are left out, later ones first", () => {
  const [a, b, c] = [0, 1, 2].map(
    (trait): Fact => ({ trait, values: [[0, 0]], source: "said", text: String(trait) }),
  ) as [Fact, Fact, Fact];
  expect(neededFacts([a, b, c], (kept) => kept.includes(a) || kept.includes(c))).toEqual([a]);
  expect(neededFacts([a, b, c], (kept) => kept.includes(b))).toEqual([b]);
  expect(neededFacts([a, b, c], () => true)).toEqual([]);
});
