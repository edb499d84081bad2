/**
 * Scopes judged from outside. Source: Z3 (the theorem prover, npm z3-solver). SQLite looks at the cars of one fleet; Z3 proves for
 * every car there could be: that the engine's set is what the scope asks, and that the engine is right when it says that one
 * scope is inside another or that two share no car.
 */
import fc from "fast-check";
import { afterAll, expect, test } from "vitest";
import { type Bool, init } from "z3-solver";
import { type CarSet, isBranch, NONE } from "../../src/engine/scope/diagram.ts";
import { readScope } from "../../src/engine/scope/read-scope.ts";
import {
  type Asked,
  type AskedScope,
  askedScope,
  FITTED_PARTS,
  FLAGS,
  POOLS,
  written,
} from "../helpers/random-scopes.ts";
import { SEED } from "../helpers/seed.ts";
import { tractorSpace } from "../helpers/tractor-space.ts";

const { Context, em } = await init();
const z3 = Context("scopes");
afterAll(() => em.PThread.terminateAllThreads());

const space = tractorSpace();
const NAMES = [...space.declared.map((trait) => trait.id), ...FITTED_PARTS];
FITTED_PARTS.forEach((part) => {
  space.fitted(part);
});

/** First and last number of each trait, counted here anew. */
const DOMAINS: Record<string, [number, number]> = {
  line: [0, 2],
  my: [1957, 1962],
  plant: [0, 1],
  number: [0, 9999],
  built: [numbered("built", "1956-08-01"), numbered("built", "1962-07-31")],
  fuel: [0, 2],
  tilt: [-3, 3],
  axle: [0, 2999],
  ...Object.fromEntries([...FLAGS, ...FITTED_PARTS].map((flag) => [flag, [0, 1]])),
};

/** Enough for every number above and below nought. */
const BITS = 15;
type Car = Record<string, ReturnType<typeof z3.BitVec.const>>;
type Formula = Bool<"scopes">;

/** A car of which only the domains are known. */
function someCar(name: string): { car: Car; known: Formula } {
  const car = Object.fromEntries(NAMES.map((trait) => [trait, z3.BitVec.const(`${name} ${trait}`, BITS)]));
  const within = NAMES.map((trait) => {
    const [from, to] = DOMAINS[trait] as [number, number];
    return between(car, trait, from, to);
  });
  return { car, known: z3.And(...within) };
}

const of = (car: Car, trait: string): Car[string] => car[trait] as Car[string];
const is = (car: Car, trait: string, value: number): Formula => of(car, trait).eq(z3.BitVec.val(value, BITS));
const between = (car: Car, trait: string, from: number, to: number): Formula =>
  z3.And(of(car, trait).sge(from), of(car, trait).sle(to));

test("Z3 finds no car on which the engine's set and what 700 random scopes ask differ", async () => {
  const { car, known } = someCar("car");
  for (const chunk of chunks(fc.sample(askedScope, { seed: SEED, numRuns: 700 }), 100)) {
    const differs = chunk.map((scope) => asks(scope, car).neq(holdsFor(engineSet(scope), car)));
    expect(await answer(z3.And(known, z3.Or(...differs))), chunk.map(written).join("\n")).toBe("unsat");
  }
}, 60_000);

test("Z3 does find the car when one scope of a hundred is read wrongly", async () => {
  const { car, known } = someCar("car");
  const scopes = fc.sample(askedScope, { seed: SEED, numRuns: 100 });
  const differs = scopes.map((scope, i) => {
    const set = engineSet(scope);
    return asks(scope, car).neq(holdsFor(i === 50 ? space.sets.not(set) : set, car));
  });
  expect(await answer(z3.And(known, z3.Or(...differs)))).toBe("sat");
});

test("Z3 agrees, for 250 pairs of scopes, which share a car and which lie inside each other", async () => {
  const pairs = fc.sample(fc.tuple(askedScope, askedScope), { seed: SEED + 1, numRuns: 250 });
  // Half of the pairs are made so that the first lies inside the second.
  const nested = pairs.map(([a, b], i): [AskedScope, AskedScope] => (i % 2 ? [a, [...b, ...a]] : [a, b]));
  let [apart, inside] = [0, 0];
  for (const chunk of chunks(nested, 50)) {
    const { car, known } = someCar("car");
    const refuted: Formula[] = [];
    const shown: Formula[] = [];
    chunk.forEach(([a, b], i) => {
      const [left, right] = [engineSet(a), engineSet(b)];
      // What the engine says is nowhere must be nowhere; what it says is somewhere must be on some car of its own.
      const say = (isNone: boolean, claim: (one: Car) => Formula): void => {
        if (isNone) refuted.push(claim(car));
        else {
          const witness = someCar(`car ${i} ${shown.length}`);
          shown.push(z3.And(witness.known, claim(witness.car)));
        }
      };
      const disjoint = space.sets.and(left, right) === NONE;
      const contained = space.sets.minus(left, right) === NONE;
      say(disjoint, (one) => z3.And(asks(a, one), asks(b, one)));
      say(contained, (one) => z3.And(asks(a, one), z3.Not(asks(b, one))));
      if (disjoint) apart++;
      if (contained) inside++;
    });
    expect(await answer(z3.And(known, z3.Or(...refuted)))).toBe("unsat");
    expect(await answer(z3.And(...shown))).toBe("sat");
  }
  expect(apart).toBeGreaterThan(10);
  expect(inside).toBeGreaterThan(100);
}, 60_000);

async function answer(formula: Formula): Promise<string> {
  const solver = new z3.Solver("QF_FD"); // Finite domains: a question about them is always answered.
  solver.add(formula);
  return solver.check();
}

function engineSet(scope: AskedScope): CarSet {
  const read = readScope(space, written(scope));
  if ("slips" in read) throw new Error(read.slips[0]?.message);
  return read.scope.cars;
}

/** The engine's diagram, told to Z3 branch by branch. */
function holdsFor(set: CarSet, car: Car): Formula {
  if (!isBranch(set)) return z3.Bool.val(set !== NONE);
  const trait = NAMES[set.trait] as string;
  return set.next
    .map((next, i) => [set.starts[i] as number, holdsFor(next, car)] as const)
    .reduce((before, [start, next]) => z3.If(of(car, trait).sge(start), next, before), z3.Bool.val(false) as Formula);
}

/** What a scope asks, told to Z3 without the engine. */
function asks(scope: AskedScope, car: Car): Formula {
  return z3.Or(...scope.map((clauses) => z3.And(...clauses.map((clause) => asksClause(clause, car)))));
}

function asksClause(asked: Asked, car: Car): Formula {
  switch (asked.ask) {
    case "values": {
      const any = z3.Or(
        ...asked.items.map(([a, b]) => between(car, asked.trait, numbered(asked.trait, a), numbered(asked.trait, b))),
      );
      return asked.not ? z3.Not(any) : any;
    }
    case "bound": {
      const value = of(car, asked.trait);
      const limit = numbered(asked.trait, asked.value);
      const compared =
        asked.sign === ">="
          ? value.sge(limit)
          : asked.sign === ">"
            ? value.sgt(limit)
            : asked.sign === "<="
              ? value.sle(limit)
              : value.slt(limit);
      if (asked.trait !== "axle") return compared;
      const letter = "ABC".indexOf(asked.value[0] as string) * 1000;
      return z3.And(compared, between(car, "axle", letter, letter + 999));
    }
    case "flags":
    case "fitted": {
      const any = z3.Or(...(asked.ask === "flags" ? asked.traits : asked.parts).map((id) => is(car, id, 1)));
      return asked.not ? z3.Not(any) : any;
    }
    case "point": {
      const [my, value, limit] = [of(car, "my"), of(car, asked.by), numbered(asked.by, asked.at)];
      const beyond = asked.from ? my.sgt(asked.year) : my.slt(asked.year);
      const reached = z3.And(is(car, "my", asked.year), asked.from ? value.sge(limit) : value.slt(limit));
      return z3.And(is(car, "plant", numbered("plant", asked.plant)), z3.Or(beyond, reached));
    }
  }
}

/** The number of a written value, worked out without the engine. */
function numbered(trait: string, text: string): number {
  if (trait === "my" || trait === "tilt" || trait === "number") return Number(text);
  if (trait === "built")
    return Date.UTC(Number(text.slice(0, 4)), Number(text.slice(5, 7)) - 1, Number(text.slice(8))) / 86_400_000;
  if (trait === "axle") return "ABC".indexOf(text[0] as string) * 1000 + Number(text.slice(1));
  return (POOLS[trait] as readonly string[]).indexOf(text);
}

function chunks<T>(list: readonly T[], size: number): T[][] {
  return Array.from({ length: Math.ceil(list.length / size) }, (_, i) => list.slice(i * size, (i + 1) * size));
}
