/**
 * Scopes judged from outside. Source: SQLite (the database in Node). Every tractor of a made-up fleet is a row, what a scope asks
 * is put into a WHERE by a translator of its own, and the rows must be the cars that the engine finds.
 */
import { DatabaseSync } from "node:sqlite";
import fc from "fast-check";
import { expect, test } from "vitest";
import { readScope } from "../../src/engine/scope/read-scope.ts";
import { numberOf } from "../../src/engine/scope/trait.ts";
import { holds } from "../helpers/listed-fleet.ts";
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

const COLUMNS = [...Object.keys(POOLS), ...FLAGS, ...FITTED_PARTS];
const FLEET = fc.sample(
  fc.tuple(
    ...Object.values(POOLS).map((pool) => fc.constantFrom(...pool)),
    ...[...FLAGS, ...FITTED_PARTS].map(() => fc.constantFrom("yes", "no")),
  ),
  { seed: SEED, numRuns: 500 },
) as string[][];

test("SQLite finds the same tractors for 2,500 random scopes", () => {
  const space = tractorSpace();
  const parts = FITTED_PARTS.map((part) => space.fitted(part));
  const cars = FLEET.map((row) => {
    const car: number[] = [];
    COLUMNS.forEach((column, i) => {
      const trait = FITTED_PARTS.includes(column)
        ? (parts[FITTED_PARTS.indexOf(column)] as number)
        : (space.find(column) as number);
      car[trait] = numberOf(space.trait(trait), row[i] as string) as number;
    });
    return car;
  });
  const table = fleetTable();
  let divided = 0;
  fc.assert(
    fc.property(askedScope, (scope) => {
      const read = readScope(space, written(scope));
      if ("slips" in read) throw new Error(read.slips[0]?.message);
      const found = cars.flatMap((car, i) => (holds(read.scope.cars, car) ? [i] : []));
      const rows = table.prepare(`SELECT id FROM tractors WHERE ${where(scope)} ORDER BY id`).all();
      expect(found).toEqual(rows.map((row) => row.id));
      if (found.length > 0 && found.length < cars.length) divided++;
    }),
    { seed: SEED, numRuns: 2500 },
  );
  // Scopes that hold nobody or everybody would prove little.
  expect(divided).toBeGreaterThan(1500);
}, 60_000);

function fleetTable(): DatabaseSync {
  const table = new DatabaseSync(":memory:");
  const type = (column: string): string => (["my", "tilt"].includes(column) ? "INTEGER" : "TEXT");
  table.exec(
    `CREATE TABLE tractors (id INTEGER PRIMARY KEY, ${COLUMNS.map((name) => `"${name}" ${type(name)}`).join(", ")})`,
  );
  const insert = table.prepare(`INSERT INTO tractors VALUES (${["?", ...COLUMNS.map(() => "?")].join(", ")})`);
  FLEET.forEach((row, i) => {
    insert.run(i, ...row);
  });
  return table;
}

function where(scope: AskedScope): string {
  return scope.map((clauses) => `(${clauses.map(condition).join(" AND ")})`).join(" OR ");
}

/** Years and tilts compare as numbers; days and padded serials compare as text. */
function condition(asked: Asked): string {
  const value = (trait: string, text: string): string => (["my", "tilt"].includes(trait) ? text : `'${text}'`);
  switch (asked.ask) {
    case "values": {
      const any = asked.items
        .map(([a, b]) => `"${asked.trait}" BETWEEN ${value(asked.trait, a)} AND ${value(asked.trait, b)}`)
        .join(" OR ");
      return asked.not ? `NOT (${any})` : `(${any})`;
    }
    case "bound": {
      const compare = `"${asked.trait}" ${asked.sign} ${value(asked.trait, asked.value)}`;
      return asked.trait === "axle" ? `(axle LIKE '${asked.value[0]}%' AND ${compare})` : compare;
    }
    case "flags":
      return `${asked.not ? "NOT" : ""} (${asked.traits.map((id) => `"${id}" = 'yes'`).join(" OR ")})`;
    case "fitted":
      return `${asked.not ? "NOT" : ""} (${asked.parts.map((id) => `"${id}" = 'yes'`).join(" OR ")})`;
    case "point": {
      const [beyond, reached] = asked.from ? [">", ">="] : ["<", "<"];
      return `(plant = '${asked.plant}' AND (my ${beyond} ${asked.year} OR (my = ${asked.year} AND "${asked.by}" ${reached} '${asked.at}')))`;
    }
  }
}
