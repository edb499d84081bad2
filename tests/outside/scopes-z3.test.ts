/**
 * Scopes judged from outside. Source: Z3, SMT-LIB 2 (the theorem prover, npm z3-solver). SQLite looks at the cars of one fleet;
 * Z3 answers for every car there could be. It is told what a scope, a table of built cars and facts ask, never what the engine
 * made of them, except where the engine's own set is what is judged.
 */
import fc from "fast-check";
import { afterAll, expect, test } from "vitest";
import { init } from "z3-solver";
import { type Applies, applies } from "../../src/engine/scope/applies.ts";
import { type Compared, compare } from "../../src/engine/scope/compare.ts";
import { type CarSet, isBranch, NONE } from "../../src/engine/scope/diagram.ts";
import { carsWith, type Fact, type FactSource } from "../../src/engine/scope/facts.ts";
import type { Car } from "../../src/engine/scope/pick.ts";
import { ranges } from "../../src/engine/scope/ranges.ts";
import { readScope } from "../../src/engine/scope/read-scope.ts";
import { Space } from "../../src/engine/scope/space.ts";
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
import { TRACTOR_TRAITS } from "../helpers/tractor-space.ts";

const { Z3, em } = await init();
const context = Z3.mk_context(Z3.mk_config());
afterAll(() => em.PThread.terminateAllThreads());

/** The number of an axle goes with the fuel here, so that facts as found can take each other's place. */
const space = new Space(TRACTOR_TRAITS.map((trait) => (trait.id === "axle" ? { ...trait, of: "fuel" } : trait)));
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

/** The car that is asked about, and the same car as it left the plant. */
type Name = (trait: string) => string;
const today: Name = (trait) => `|${trait}|`;
const asBuilt: Name = (trait) => `|${trait} as built|`;

test("Z3 finds no car on which the engine's set and what 800 random scopes ask differ", () => {
  for (const chunk of chunks(fc.sample(askedScope, { seed: SEED, numRuns: 800 }), 200)) {
    const read = chunk.map((scope) => [scope, engineSet(scope)] as const);
    const wrong = differ(read).flatMap((isWrong, i) => (isWrong ? [written(chunk[i] as AskedScope)] : []));
    expect(wrong).toEqual([]);
  }
}, 60_000);

test("Z3 does find the car where a scope is read wrongly", () => {
  const read = fc.sample(askedScope, { seed: SEED, numRuns: 20 }).map((scope, i) => {
    const set = engineSet(scope);
    return [scope, i % 2 ? space.sets.not(set) : set] as const;
  });
  expect(differ(read)).toEqual(read.map((_, i) => i % 2 === 1));
});

/** For each scope whether there is a car that it asks for and its set does not hold, or the other way round. */
function differ(read: readonly (readonly [AskedScope, CarSet])[]): boolean[] {
  const told = [...declared(today), ...tellSets(read.map(([, set]) => set))];
  return exist(
    told,
    read.map(([scope, set]) => `(xor ${asks(scope)} ${setName(set)})`),
  );
}

/** A row of a table of built cars: what some of the traits are limited to. */
const row = fc
  .record(
    {
      line: fc.subarray([...(POOLS.line as string[])], { minLength: 1, maxLength: 1 }),
      my: fc.subarray([...(POOLS.my as string[])], { minLength: 1, maxLength: 2 }),
      plant: fc.subarray([...(POOLS.plant as string[])], { minLength: 1, maxLength: 1 }),
      fuel: fc.subarray([...(POOLS.fuel as string[])], { minLength: 1, maxLength: 2 }),
      PT: fc.constantFrom(["yes"], ["no"]),
      WN: fc.constantFrom(["yes"], ["no"]),
      number: fc.constantFrom(["0000-0411"], ["0412-9998"], ["0001-0412"], ["9999"]),
    },
    { requiredKeys: ["line", "my", "plant", "fuel", "PT", "number"] },
  )
  .map((limits) => Object.entries(limits).map(([trait, values]) => among(trait, values)));
const table: fc.Arbitrary<AskedScope> = fc.array(row, { minLength: 20, maxLength: 60 });

test("Z3 agrees, for 800 pairs of scopes under tables of built cars, which cars are in both, in one, in neither", () => {
  const pairs = fc.sample(fc.tuple(askedScope, askedScope), { seed: SEED + 1, numRuns: 800 }).map(related);
  const tables = fc.sample(table, { seed: SEED + 2, numRuns: 16 });
  const verdicts: Record<Compared, number> = { equal: 0, covers: 0, "is covered": 0, overlaps: 0, disjoint: 0 };
  let empty = 0;
  for (const [t, chunk] of chunks(pairs, 50).entries()) {
    const rows = tables[t] as AskedScope;
    const built = engineSet(rows);
    const said = chunk.map(([a, b]) => sayPair(built, engineSet(a), engineSet(b)));
    const shown = said.flatMap(({ found }, i) => [
      ...isNot(found.both, `a${i} b${i}`),
      ...isNot(found.onlyA, `a${i} (not b${i})`),
      ...isNot(found.onlyB, `b${i} (not a${i})`),
    ]);
    const told = chunk.flatMap(([a, b], i) => [
      `(define-fun a${i} () Bool ${asks(a)})`,
      `(define-fun b${i} () Bool ${asks(b)})`,
    ]);
    const claims = chunk.flatMap((_, i) => [
      `(and was-built a${i} b${i})`,
      `(and was-built a${i} (not b${i}))`,
      `(and was-built b${i} (not a${i}))`,
      `(and was-built (not (or a${i} b${i})))`,
    ]);
    const judged = exist(
      [...declared(today), `(define-fun was-built () Bool ${asks(rows)})`, ...told],
      [...claims, or(shown)],
    );
    chunk.forEach(([a, b], i) => {
      const [both, onlyA, onlyB, neither] = judged.slice(i * 4, i * 4 + 4) as [boolean, boolean, boolean, boolean];
      expect(said[i]?.answers, [a, b, rows].map(written).join("\n")).toEqual({
        verdict: verdictOf(both, onlyA, onlyB),
        shown: [both, onlyA, onlyB],
        empty: [!both && !onlyA, !both && !onlyB, !neither],
        applies: [appliesOf(both, onlyA), appliesOf(both, onlyB)],
      });
      verdicts[verdictOf(both, onlyA, onlyB)]++;
      if (!both && !onlyA) empty++;
    });
    // No car that is shown is other than what it is shown for.
    expect(judged.at(-1), rows.map((one) => written([one])).join("\n")).toBe(false);
  }
  console.log(`pairs of scopes: ${JSON.stringify(verdicts)}, nothing in the first: ${empty}`);
  for (const times of [...Object.values(verdicts), empty]) expect(times).toBeGreaterThan(20);
}, 60_000);

/** Everything the engine says of a pair, in two ways where it has two. */
function sayPair(built: CarSet, a: CarSet, b: CarSet) {
  const { sets } = space;
  const [inA, inB] = [sets.and(built, a), sets.and(built, b)];
  const found = compare(space, built, a, b);
  const answers = {
    verdict: found.verdict,
    shown: [found.both, found.onlyA, found.onlyB].map((car) => car !== undefined),
    empty: [inA, inB, sets.minus(built, sets.or(a, b))].map((set) => set === NONE),
    applies: [applies(sets, inA, b), applies(sets, inB, a)],
  };
  return { found, answers };
}

/** Pairs of every kind: as they come, and one inside the other. */
function related([a, b]: [AskedScope, AskedScope], i: number): [AskedScope, AskedScope] {
  const first = a[0] as readonly Asked[];
  const second = b[0] as readonly Asked[];
  switch (i % 4) {
    case 0:
      return [a, [...b, ...a]];
    case 1:
      return [[...a, ...b], b];
    case 2:
      return [a, [...a, [...first, ...second]]];
    default:
      return [a, b];
  }
}

function verdictOf(both: boolean, onlyA: boolean, onlyB: boolean): Compared {
  if (!onlyA && !onlyB) return "equal";
  if (!both) return "disjoint";
  if (onlyA && onlyB) return "overlaps";
  return onlyA ? "covers" : "is covered";
}
function appliesOf(inside: boolean, outside: boolean): Applies {
  if (inside) return outside ? "look first" : "yes";
  return outside ? "no" : "no such car";
}

/** The claim that a car which looks like this one is not what it is shown for. */
function isNot(car: Car | undefined, what: string): string[] {
  if (!car) return [];
  const looks = [...car].map(([trait, value]) => {
    const id = NAMES[trait] as string;
    return between(id, today, value, value);
  });
  return [`(and ${looks.join(" ")} (not (and was-built ${what})))`];
}

const AS_FOUND_TAKES_THE_PLACE_OF: Record<string, readonly string[]> = {
  fuel: ["fuel", "axle"],
  axle: ["fuel", "axle"],
};

interface KnownFact {
  readonly trait: string;
  readonly items: readonly (readonly [first: number, last: number])[];
  readonly source: FactSource;
}
const knownFact: fc.Arbitrary<KnownFact> = fc.constantFrom(...NAMES).chain((trait) => {
  const pool = (POOLS[trait] ?? ["no", "yes"]).map((value) => numbered(trait, value)).sort((a, b) => a - b);
  const item = fc
    .tuple(fc.constantFrom(...pool), fc.constantFrom(...pool), fc.boolean())
    .map(([a, b, single]) => [Math.min(a, b), single ? Math.min(a, b) : Math.max(a, b)] as const);
  return fc.record({
    trait: fc.constant(trait),
    items: fc.array(item, { minLength: 1, maxLength: 2 }),
    source: fc.constantFrom<FactSource[]>("said", "said", "said", "said", "said", "plate", "plate", "as found"),
  });
});
const knownFacts = fc.uniqueArray(knownFact, {
  selector: (one) => one.trait,
  minLength: 1,
  maxLength: 12,
  size: "max",
});

test("Z3 agrees, for 800 cars known in part, whether a scope holds for them", () => {
  const cases = fc.sample(
    fc.tuple(
      knownFacts,
      fc.oneof(
        askedScope,
        askedScope.map((all) => all.slice(0, 1)),
      ),
    ),
    { seed: SEED + 3, numRuns: 800 },
  );
  const tables = fc.sample(table, { seed: SEED + 4, numRuns: 16 });
  const verdicts: Record<Applies, number> = { yes: 0, no: 0, "look first": 0, "no such car": 0 };
  let asFound = 0;
  const parameters = NAMES.map((trait) => `(${today(trait)} ${sort(trait)})`).join(" ");
  for (const [t, chunk] of chunks(cases, 50).entries()) {
    const rows = tables[t] as AskedScope;
    const built = engineSet(rows);
    const told = [
      ...declared(today),
      ...declared(asBuilt),
      `(define-fun was-built (${parameters}) Bool ${asks(rows)})`,
      ...chunk.map(([facts], i) => `(define-fun known${i} () Bool ${knownToBe(facts)})`),
      ...chunk.map(([, scope], i) => `(define-fun scope${i} () Bool ${asks(scope)})`),
    ];
    const judged = exist(
      told,
      chunk.flatMap((_, i) => [`(and known${i} scope${i})`, `(and known${i} (not scope${i}))`]),
    );
    chunk.forEach(([facts, scope], i) => {
      const expected = appliesOf(judged[i * 2] as boolean, judged[i * 2 + 1] as boolean);
      const cars = carsWith(space, built, facts.map(engineFact));
      const told = [JSON.stringify(facts), written(scope), written(rows)].join("\n");
      expect(applies(space.sets, cars, engineSet(scope)), told).toBe(expected);
      verdicts[expected]++;
      if (facts.some((fact) => fact.source === "as found")) asFound++;
    });
  }
  console.log(`cars known in part: ${JSON.stringify(verdicts)}, some fact as found: ${asFound}`);
  for (const times of [...Object.values(verdicts), asFound]) expect(times).toBeGreaterThan(20);
}, 60_000);

/**
 * Told of the car today and the car as it left the plant. The two are alike, but for what was found on the car and what goes with
 * that. The one was built, with the other facts; the facts as found hold for the other.
 */
function knownToBe(facts: readonly KnownFact[]): string {
  const found = facts.filter((fact) => fact.source === "as found");
  const replaced = new Set(found.flatMap(({ trait }) => AS_FOUND_TAKES_THE_PLACE_OF[trait] ?? [trait]));
  const before: Name = (trait) => (replaced.has(trait) ? asBuilt(trait) : today(trait));
  const hold = facts.map(({ trait, items, source }) => {
    const name = source === "as found" ? today : before;
    return or(items.map(([from, to]) => between(trait, name, from, to)));
  });
  return and([`(was-built ${NAMES.map(before).join(" ")})`, ...hold]);
}

function engineFact({ trait, items, source }: KnownFact): Fact {
  const number = NAMES.indexOf(trait);
  return { trait: number, values: ranges(items), source, text: trait };
}

/** Is there a car as told for each of these claims? The claims are told all at once and asked one after the other. */
function exist(told: readonly string[], claims: readonly string[]): boolean[] {
  const text = [
    `(reset)(set-logic QF_FD)`, // Finite domains: a question about them is always answered.
    ...told,
    ...claims.map((claim, i) => `(declare-const q${i} Bool)(assert (=> q${i} ${claim}))`),
    ...claims.map((_, i) => `(check-sat-assuming (q${i}))`),
  ].join("\n");
  // Not Z3.eval_smtlib2_string: it lets go of a long text before its thread has read it.
  const said: string = em.ccall("Z3_eval_smtlib2_string", "string", ["number", "string"], [context, text]);
  const answers = said.trim().split("\n");
  return claims.map((_, i) => {
    if (answers.length !== claims.length || !/^(un)?sat$/.test(answers[i] as string))
      throw new Error(`Z3 says: ${said.slice(0, 500)}`);
    return answers[i] === "sat";
  });
}

/** A trait is counted from its first value on, in as many bits as it takes, one value beyond the last included. */
function bits(trait: string): number {
  const [from, to] = DOMAINS[trait] as [number, number];
  return Math.ceil(Math.log2(to - from + 2));
}
function val(trait: string, value: number): string {
  return `(_ bv${value - (DOMAINS[trait] as [number, number])[0]} ${bits(trait)})`;
}
function sort(trait: string): string {
  return `(_ BitVec ${bits(trait)})`;
}
/** A car of which only the domains are known. */
function declared(name: Name): string[] {
  return NAMES.map((trait) => {
    const [, to] = DOMAINS[trait] as [number, number];
    return `(declare-const ${name(trait)} ${sort(trait)})(assert (bvule ${name(trait)} ${val(trait, to)}))`;
  });
}
function between(trait: string, name: Name, from: number, to: number): string {
  if (from > to) return "false";
  if (from === to) return `(= ${name(trait)} ${val(trait, from)})`;
  return `(and (bvule ${val(trait, from)} ${name(trait)}) (bvule ${name(trait)} ${val(trait, to)}))`;
}
function or(claims: readonly string[]): string {
  return claims.length === 1 ? (claims[0] as string) : `(or ${claims.join(" ")})`;
}
function and(claims: readonly string[]): string {
  return claims.length === 1 ? (claims[0] as string) : `(and ${claims.join(" ")})`;
}
function among(trait: string, values: readonly string[]): Asked {
  const items = values.map((value) => {
    const [from, to = from] = value.split("-") as [string, string?];
    return [from, to] as const;
  });
  return { ask: "values", trait, not: false, items };
}

function engineSet(scope: AskedScope): CarSet {
  const read = readScope(space, written(scope));
  if ("slips" in read) throw new Error(read.slips[0]?.message);
  return read.scope.cars;
}

/** The engine's diagrams, told to Z3 branch by branch, each branch once; what a set holds is then called by its name. */
function tellSets(sets: readonly CarSet[]): string[] {
  const told = new Map<CarSet, string>();
  const tell = (set: CarSet): void => {
    if (told.has(set) || !isBranch(set)) return;
    set.next.forEach(tell);
    const trait = NAMES[set.trait] as string;
    const held = set.starts.reduce(
      (before, start, i) =>
        `(ite (bvule ${val(trait, start)} ${today(trait)}) ${setName(set.next[i] as CarSet)} ${before})`,
      "false",
    );
    told.set(set, `(define-fun ${setName(set)} () Bool ${held})`);
  };
  sets.forEach(tell);
  return [...told.values()];
}
function setName(set: CarSet): string {
  return isBranch(set) ? `set${set.id}` : String(set !== NONE);
}

/** What a scope asks, told to Z3 without the engine. */
function asks(scope: AskedScope, name: Name = today): string {
  return or(scope.map((clauses) => and(clauses.map((clause) => asksClause(clause, name)))));
}

function asksClause(asked: Asked, name: Name): string {
  const say = (not: boolean, claim: string): string => (not ? `(not ${claim})` : claim);
  switch (asked.ask) {
    case "values": {
      const { trait } = asked;
      const any = asked.items.map(([a, b]) => between(trait, name, numbered(trait, a), numbered(trait, b)));
      return say(asked.not, or(any));
    }
    case "bound": {
      // An axle number is before or after another only among those of its letter.
      const { trait, sign } = asked;
      const limit = numbered(trait, asked.value);
      const letter = "ABC".indexOf(asked.value[0] as string) * 1000;
      const [first, last] = trait === "axle" ? [letter, letter + 999] : (DOMAINS[trait] as [number, number]);
      if (sign.startsWith(">")) return between(trait, name, sign === ">" ? limit + 1 : limit, last);
      return between(trait, name, first, sign === "<" ? limit - 1 : limit);
    }
    case "flags":
    case "fitted":
      return say(
        asked.not,
        or((asked.ask === "flags" ? asked.traits : asked.parts).map((id) => between(id, name, 1, 1))),
      );
    case "point": {
      const { by, year } = asked;
      const [[first, last], [firstYear, lastYear]] = [DOMAINS[by], DOMAINS.my] as [[number, number], [number, number]];
      const limit = numbered(by, asked.at);
      const beyond = asked.from ? between("my", name, year + 1, lastYear) : between("my", name, firstYear, year - 1);
      const side = asked.from ? between(by, name, limit, last) : between(by, name, first, limit - 1);
      const plant = numbered("plant", asked.plant);
      return `(and ${between("plant", name, plant, plant)} (or ${beyond} (and ${between("my", name, year, year)} ${side})))`;
    }
  }
}

/** The number of a written value, worked out without the engine. */
function numbered(trait: string, text: string): number {
  if (trait === "my" || trait === "tilt" || trait === "number") return Number(text);
  if (trait === "built")
    return Date.UTC(Number(text.slice(0, 4)), Number(text.slice(5, 7)) - 1, Number(text.slice(8))) / 86_400_000;
  if (trait === "axle") return "ABC".indexOf(text[0] as string) * 1000 + Number(text.slice(1));
  if (text === "yes" || text === "no") return Number(text === "yes");
  return (POOLS[trait] as readonly string[]).indexOf(text);
}

function chunks<T>(list: readonly T[], size: number): T[][] {
  return Array.from({ length: Math.ceil(list.length / size) }, (_, i) => list.slice(i * size, (i + 1) * size));
}
