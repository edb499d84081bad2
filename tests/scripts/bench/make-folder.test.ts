import { expect, test } from "vitest";
import { makeFolder } from "../../../scripts/bench/make-folder.ts";
import type { Catalog } from "../../../src/engine/records/catalog.ts";
import { type CarSet, NONE } from "../../../src/engine/scope/diagram.ts";
import { inShort, readTexts } from "../../helpers/tiny-folder.ts";

const folder = makeFolder(150);
const read = readTexts(Object.fromEntries(folder));

test("the same number of records gives the same folder, another number another one", () => {
  expect(makeFolder(150)).toEqual(folder);
  expect(makeFolder(151)).not.toEqual(folder);
});

test("the check has nothing to say about it", () => {
  expect(read.complaints.map(inShort)).toEqual([]);
});

test("it has as many records as were asked for, in 20 systems of 150 components, and about two parts a record", () => {
  const { records, systems, components, parts, bulletins } = read.catalog as Catalog;
  expect([records.size, systems.length, components.size]).toEqual([150, 20, 150]);
  expect(parts.size / records.size).toBeGreaterThan(1.5);
  expect(parts.size / records.size).toBeLessThan(3);
  expect(bulletins.size).toBeGreaterThan(0);
});

test("all sorts of statements are in it, and stand-ins in both directions", () => {
  const statements = [...(read.catalog as Catalog).records.values()].flatMap((record) => record.statements);
  const types = new Set(statements.map((statement) => statement.type));
  for (const type of ["built", "supersedes", "stands-in", "kit", "service-only", "setting", "procedure", "interval"])
    expect(types).toContain(type);
  const standIns = statements.filter((statement) => statement.type === "stands-in");
  const pairs = new Set(standIns.map(({ part, for: other }) => `${part} ${other}`));
  expect(standIns.filter(({ part, for: other }) => !pairs.has(`${other} ${part}`))).toEqual([]);
});

test("at no place is a car built with two parts", () => {
  const { records, space } = read.catalog as Catalog;
  const built = [...records.values()].flatMap((record) => record.statements).filter((it) => it.type === "built");
  const places = Map.groupBy(built, (it) => it.place);
  expect(places.size).toBeGreaterThan(50);
  for (const statements of places.values()) {
    // A part is stated twice: as what follows in one record, as what went before in the next.
    const byPart = Map.groupBy(statements, (it) => it.part);
    let taken: CarSet = NONE;
    for (const own of byPart.values()) {
      const cars = space.any(own.map((it) => it.scope.cars));
      expect(space.sets.and(taken, cars)).toBe(NONE);
      taken = space.sets.or(taken, cars);
    }
  }
});
