/**
 * What follows from knowing a car in part, judged from outside. Source: SQLite (the database in Node). Every car that was built is a
 * row; the scope stands in the SELECT, what is known in the WHERE.
 */
import { DatabaseSync, type StatementSync } from "node:sqlite";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Applies, applies } from "../../src/engine/scope/applies.ts";
import { decidingTraits } from "../../src/engine/scope/deciding.ts";
import { ALL, type CarSet, NONE } from "../../src/engine/scope/diagram.ts";
import { carsWith, conflict, type Fact } from "../../src/engine/scope/facts.ts";
import { ranges } from "../../src/engine/scope/ranges.ts";
import { Space } from "../../src/engine/scope/space.ts";
import { FLEET, FLEET_TRAITS } from "../helpers/listed-fleet.ts";
import { SEED } from "../helpers/seed.ts";

/** Some traits take more effort than others to look at. */
const EFFORTS = [1, 1, 2, 4, 3, 1];
const space = new Space(FLEET_TRAITS.map((trait, i) => ({ ...trait, effort: EFFORTS[i] as number })));
const COLUMNS = FLEET_TRAITS.map(({ id }) => `"${id}"`);
const TRAITS = COLUMNS.map((_, i) => i);
/** Every set of traits, and every set of up to six facts, by places. */
const CHOICES = Array.from({ length: 2 ** TRAITS.length }, (_, bits) => TRAITS.filter((i) => bits & (1 << i)));

/** What is asked of a car, put together with "and", "or" and "not". */
type Asked =
  | { readonly ask: "in"; readonly trait: number; readonly values: readonly number[] }
  | { readonly ask: "and" | "or"; readonly of: readonly Asked[] }
  | { readonly ask: "not"; readonly of: Asked };
type OneOf = Extract<Asked, { ask: "in" }>;

const valuesOf = (trait: number, most: number): fc.Arbitrary<OneOf> => {
  const [from, to] = space.span(trait);
  const values = fc.uniqueArray(fc.integer({ min: from, max: to }), { minLength: 1, maxLength: most });
  return fc.record({ ask: fc.constant("in" as const), trait: fc.constant(trait), values });
};
const clause = fc.constantFrom(...TRAITS).chain((trait) => valuesOf(trait, 5));
const { asked } = fc.letrec<{ asked: Asked }>((tie) => ({
  asked: fc.oneof(
    { depthSize: "small", withCrossShrink: true },
    clause,
    fc.record({
      ask: fc.constantFrom("and" as const, "or" as const),
      of: fc.array(tie("asked"), { minLength: 2, maxLength: 3 }),
    }),
    fc.record({ ask: fc.constant("not" as const), of: tie("asked") }),
  ),
}));
const scope: fc.Arbitrary<Asked> = fc.record({
  ask: fc.constantFrom("and" as const, "or" as const),
  of: fc.array(asked, { minLength: 2, maxLength: 4 }),
});

/** A table of built cars: 5 to 15 rows, each limiting every trait. */
const row = fc
  .tuple(...TRAITS.map((trait) => valuesOf(trait, trait === 3 ? 4 : 2)))
  .map((of): Asked => ({ ask: "and", of }));
const table = fc.array(row, { minLength: 5, maxLength: 15 }).map((of): Asked => ({ ask: "or", of }));

/** What is known: for some traits one value or a few. */
const facts = (least: number, most: number): fc.Arbitrary<readonly OneOf[]> =>
  fc.array(
    fc.constantFrom(...TRAITS).chain((trait) => valuesOf(trait, 3)),
    { minLength: least, maxLength: most, size: "max" },
  );

function setOf(one: Asked): CarSet {
  const { sets } = space;
  switch (one.ask) {
    case "in":
      return space.where(one.trait, rangesOf(one));
    case "and":
      return one.of.map(setOf).reduce((a, b) => sets.and(a, b));
    case "or":
      return space.any(one.of.map(setOf));
    case "not":
      return sets.not(setOf(one.of));
  }
}
function rangesOf({ values }: OneOf) {
  return ranges(values.map((value) => [value, value]));
}
function engineFact(fact: OneOf): Fact {
  return { trait: fact.trait, values: rangesOf(fact), source: "said", text: sql(fact) };
}

function sql(one: Asked): string {
  switch (one.ask) {
    case "in":
      return `${COLUMNS[one.trait]} IN (${one.values.join(", ")})`;
    case "not":
      return `NOT (${sql(one.of)})`;
    default:
      return `(${one.of.map(sql).join(` ${one.ask.toUpperCase()} `)})`;
  }
}
function all(facts: readonly OneOf[]): string {
  return facts.map(sql).join(" AND ") || "1";
}

/** The fleet, the cars of it that were built, and those of them that the car at hand can be, with x: does the scope hold? */
const database = new DatabaseSync(":memory:");
database.exec(`CREATE TABLE fleet (${COLUMNS.map((column) => `${column} INTEGER`).join(", ")})`);
database.exec(
  "CREATE TABLE built AS SELECT * FROM fleet WHERE 0; CREATE TABLE possible AS SELECT *, 1 AS x FROM built",
);
const insert = database.prepare(`INSERT INTO fleet VALUES (${COLUMNS.map(() => "?").join(", ")})`);
for (const car of FLEET) insert.run(...car);

function build(rows: Asked): CarSet {
  database.exec(`DELETE FROM built; INSERT INTO built SELECT * FROM fleet WHERE ${sql(rows)}`);
  return setOf(rows);
}
function askAbout(known: readonly OneOf[], about: Asked): void {
  database.exec(`DELETE FROM possible; INSERT INTO possible SELECT *, ${sql(about)} FROM built WHERE ${all(known)}`);
}

/** Cases of a kind, a hundred to a table. */
function withTables<T>(seed: number, cases: fc.Arbitrary<T>, numRuns: number, look: (built: CarSet, one: T) => void) {
  const tables = fc.sample(table, { seed, numRuns: numRuns / 100 });
  fc.sample(cases, { seed, numRuns }).forEach((one, i) => {
    if (i % 100 === 0) current = build(tables[i / 100] as Asked);
    look(current, one);
  });
}
let current: CarSet = NONE;

describe("SQLite agrees on cars of random tables", () => {
  test("whether a scope holds, for 1,000 of them", () => {
    const [least, most] = ["min", "max"].map((name) => `${name}(x) AS ${name}`);
    const ends = database.prepare(`SELECT ${least}, ${most} FROM possible`);
    const verdicts: Record<Applies, number> = { yes: 0, no: 0, "look first": 0, "no such car": 0 };
    withTables(SEED, fc.tuple(facts(0, 6), scope), 1000, (built, [known, about]) => {
      askAbout(known, about);
      const { min, max } = ends.get() as { min: number | null; max: number | null };
      const expected = min === null ? "no such car" : min === 1 ? "yes" : max === 0 ? "no" : "look first";
      const cars = carsWith(space, built, known.map(engineFact));
      expect(applies(space.sets, cars, setOf(about)), `${all(known)}\n${sql(about)}`).toBe(expected);
      verdicts[expected]++;
    });
    console.log(`verdicts: ${JSON.stringify(verdicts)}`);
    for (const times of Object.values(verdicts)) expect(times).toBeGreaterThan(70);
  }, 60_000);

  test("which traits settle the matter best, for 600 of them where it is open", () => {
    // Fewest traits first, then least effort, then those that come first.
    const effort = (choice: readonly number[]): number => choice.reduce((sum, i) => sum + (EFFORTS[i] as number), 0);
    const inTurn = CHOICES.toSorted(
      (a, b) => a.length - b.length || effort(a) - effort(b) || (a.join() < b.join() ? -1 : 1),
    );
    // A row comes where a car inside and a car outside look alike in the choice.
    const unsettled = inTurn.map((choice): [readonly number[], StatementSync] => {
      const groups = choice.map((i) => COLUMNS[i]).join(", ") || "NULL";
      return [choice, database.prepare(`SELECT 1 FROM possible GROUP BY ${groups} HAVING min(x) <> max(x) LIMIT 1`)];
    });
    const sizes: number[] = [];
    let settledByEffort = 0;
    withTables(SEED + 1, fc.tuple(facts(0, 2), scope), 2400, (built, [known, about]) => {
      askAbout(known, about);
      const [none] = unsettled as [[readonly number[], StatementSync]];
      if (!none[1].get()) return;
      const best = unsettled.find(([, question]) => !question.get())?.[0];
      const cars = carsWith(space, built, known.map(engineFact));
      expect(decidingTraits(space, cars, setOf(about)), `${all(known)}\n${sql(about)}`).toEqual(best);
      const size = best?.length ?? 0;
      sizes[size] = (sizes[size] ?? 0) + 1;
      const others = unsettled.filter(([choice]) => choice !== best && choice.length === size);
      if (others.some(([, question]) => !question.get())) settledByEffort++;
    });
    const open = sizes.reduce((a, b) => a + b, 0);
    console.log(`open: ${open}, by size of the best set: ${sizes.join(" ")}, several of that size: ${settledByEffort}`);
    expect(open).toBeGreaterThanOrEqual(600);
    expect(settledByEffort).toBeGreaterThan(15);
  }, 60_000);

  test("which facts contradict each other, for 600 of them that were not built", () => {
    let contradicted = 0;
    const sizes: number[] = [];
    withTables(SEED + 2, facts(4, 6), 1500, (built, known) => {
      const count = (some: readonly OneOf[]): unknown =>
        database.prepare(`SELECT count(*) AS cars FROM built WHERE ${all(some)}`).get()?.cars;
      // Smallest first, and of those the one whose facts were given first.
      const inTurn = CHOICES.filter((places) => places.every((i) => i < known.length)).sort(
        (a, b) => a.length - b.length || (a.join() < b.join() ? -1 : 1),
      );
      const smallest =
        count(known) === 0 ? inTurn.find((places) => count(places.map((i) => known[i] as OneOf)) === 0) : [];
      const given = known.map(engineFact);
      const found = conflict(space, built, given).map((fact) => given.indexOf(fact));
      expect(found, known.map(sql).join("\n")).toEqual(smallest);
      if (found.length > 0) contradicted++;
      sizes[found.length] = (sizes[found.length] ?? 0) + 1;
    });
    console.log(`contradictions: ${contradicted}, by size of the smallest: ${sizes.join(" ")}`);
    expect(contradicted).toBeGreaterThanOrEqual(600);
    expect(sizes.slice(2).reduce((a, b) => a + b, 0)).toBeGreaterThan(300);
  }, 60_000);
});

// Source: SQL three-valued logic, where NULL stands for a value that is not known.
describe("SQL with NULL for what is not known", () => {
  const known = fc.tuple(
    ...TRAITS.map((trait) => {
      const [min, max] = space.span(trait);
      return fc.option(fc.integer({ min, max }), { nil: null });
    }),
  );
  function judged(car: readonly (number | null)[], about: Asked): unknown {
    const columns = car.map((value, i) => `${value ?? "NULL"} AS ${COLUMNS[i]}`).join(", ");
    return database.prepare(`SELECT ${sql(about)} AS x FROM (SELECT ${columns})`).get()?.x;
  }
  function said(car: readonly (number | null)[], about: Asked): Applies {
    const facts = car.flatMap((value, trait) =>
      value === null ? [] : [engineFact({ ask: "in", trait, values: [value] })],
    );
    return applies(space.sets, carsWith(space, ALL, facts), setOf(about));
  }

  test("is never contradicted where it is sure, for 1,000 scopes", () => {
    const times = { true: 0, false: 0, unknown: 0, "known to the engine all the same": 0 };
    for (const [car, about] of fc.sample(fc.tuple(known, scope), { seed: SEED + 3, numRuns: 1000 })) {
      const judge = judged(car, about);
      const engine = said(car, about);
      if (judge !== null) expect(engine, `${car}: ${sql(about)}`).toBe(judge === 1 ? "yes" : "no");
      times[judge === null ? "unknown" : judge === 1 ? "true" : "false"]++;
      if (judge === null && engine !== "look first") times["known to the engine all the same"]++;
    }
    console.log(`three-valued logic: ${JSON.stringify(times)}`);
    for (const number of Object.values(times)) expect(number).toBeGreaterThan(20);
  });

  test("does not know that a year is this one or another, and the engine does", () => {
    const year: Asked = { ask: "in", trait: 1, values: [1958] };
    const either: Asked = { ask: "or", of: [year, { ask: "not", of: year }] };
    const nothing = TRAITS.map(() => null);
    expect([judged(nothing, either), said(nothing, either)]).toEqual([null, "yes"]);
  });
});
