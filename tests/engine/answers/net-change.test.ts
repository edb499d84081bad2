/** Net change against a slow twin: every kind of car is looked at by itself, year by year. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readCar } from "../../../src/engine/answers/car.ts";
import {
  holdsIn,
  isMatterItself,
  kindOfCar,
  mattersOf,
  netChange,
  type Sides,
  twinFacts,
  valuesIn,
  yearSpan,
  yearsOfCar,
} from "../../../src/engine/answers/net-change.ts";
import type { ChangeRecord } from "../../../src/engine/records/catalog.ts";
import { knowledgeOf } from "../../helpers/one-record.ts";
import { SEED } from "../../helpers/seed.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

/** Line and plant: what the statements below name, so that nothing else counts. */
type Kind = readonly [line: string, plant: string];
const YEARS = [1957, 1958, 1959, 1960, 1961];
/** The vehicle files of the tiny folder, car by car. */
function kindsOf(year: number): Kind[] {
  const kinds: Kind[] = [];
  for (const plant of ["K", "D"]) {
    if (plant === "D" && year < 1959) continue;
    if (year <= 1960) kinds.push(["B", plant]);
    if (year >= 1959) kinds.push(["H", plant]);
  }
  return kinds;
}
const PARTS = ["HT-101", "HT-102", "HT-201"];
const CELLS = ["B", "H"].flatMap((line) => ["K", "D"].flatMap((plant) => YEARS.map((year) => ({ line, plant, year }))));

/** The kinds of a year that a kind of another year is most like; if it came in place of some that are no more, those. */
function comparedWith([line, plant]: Kind, before: readonly Kind[], after: readonly Kind[]): readonly Kind[] {
  const same = before.filter((kind) => kind[0] === line && kind[1] === plant);
  if (same.length > 0) return same;
  const ofLine = before.filter((kind) => kind[0] === line);
  const alike = ofLine.length > 0 ? ofLine : before;
  const gone = alike.filter((kind) => !after.some((other) => other.join() === kind.join()));
  return gone.length > 0 ? gone : alike;
}

const said = (value: { readonly said: string }): string => value.said;
// Of each kind and year the part that was built in; nothing stated is a value too.
const built = fc.array(fc.constantFrom(...PARTS, ...PARTS, undefined), {
  minLength: CELLS.length,
  maxLength: CELLS.length,
});
const asked = fc.record({
  line: fc.constantFrom("B", "H", undefined),
  plant: fc.constantFrom("K", "D", undefined),
  from: fc.constantFrom(...YEARS),
  to: fc.constantFrom(...YEARS),
});

test("changed for all, for some, for none, or on record in one year only: as kind by kind", () => {
  const seen = { all: 0, some: 0, none: 0, oneSided: 0, swap: 0 };
  fc.assert(
    // To read a folder takes far longer than to answer: each is asked several questions.
    fc.property(built, fc.array(asked, { minLength: 5, maxLength: 5 }), (parts, questions) => {
      const statements = CELLS.flatMap((cell, i) =>
        parts[i] === undefined
          ? []
          : [`  - { place: pump, part: ${parts[i]}, scope: line=${cell.line}; my=${cell.year}; plant=${cell.plant} }`],
      );
      const knowledge = knowledgeOf(
        `built:\n  - { place: lift arms, part: none, scope: all }\n${statements.join("\n")}`,
      );
      for (const { line, plant, from, to } of questions) {
        const car = readCar(knowledge, {
          facts: { my: to, ...(line ? { line } : {}), ...(plant ? { plant } : {}) },
        });
        const years = yearsOfCar(knowledge, car, from, to);
        const matter = mattersOf(knowledge.catalog).find(({ name }) => name === "pump");
        const found = matter && netChange(knowledge, matter, years);

        const partOf = ([line, plant]: Kind, year: number): string | undefined =>
          parts[CELLS.findIndex((cell) => cell.line === line && cell.plant === plant && cell.year === year)];
        const possible = (year: number) =>
          kindsOf(year).filter((kind) => (!line || kind[0] === line) && (!plant || kind[1] === plant));
        if (possible(from).length === 0 || possible(to).length === 0) continue;
        const differing = possible(to).flatMap((after) => {
          const others = comparedWith(after, possible(from), possible(to)).map((before) => partOf(before, from));
          const stated = [...new Set(others.filter((part) => part !== undefined))];
          const own = partOf(after, to);
          return others.includes(own) ? [] : [{ own, stated }];
        });
        const changes = differing.filter(({ own, stated }) => own !== undefined && stated.length > 0);
        const values = (all: readonly (string | undefined)[]): string => [...new Set(all)].sort().join();
        // Where kinds changed places, each is a change of its own, and of some cars only.
        const isSwap = values(changes.flatMap((it) => it.stated)) === values(changes.map((it) => it.own));
        const isWhole = changes.length === possible(to).length && !isSwap;
        const expected = changes.length === 0 ? "none" : isWhole ? "all" : "some";
        const [change] = found?.changes ?? [];
        expect(change === undefined ? "none" : change.certain ? "all" : "some").toBe(expected);
        const sides = (all: readonly Sides[] = []): string[] =>
          all.map((it) => [it.from, it.to].map((side) => side.map(({ said }) => said).sort()).join(" > ")).sort();
        const sidesOf = (all: typeof differing): string[] =>
          [...new Set(all.map(({ own, stated }) => [stated.sort(), own ?? ""].join(" > ")))].sort();
        expect(sides(found?.changes.flatMap((it) => it.pieces))).toEqual(sidesOf(changes));
        expect(sides(found?.oneSided)).toEqual(sidesOf(differing.filter((it) => !changes.includes(it))));
        for (const one of found?.changes ?? []) expect(one.from.map(said)).not.toEqual(one.to.map(said));
        seen[expected]++;
        if (isSwap && changes.length > 0) seen.swap++;
        if (differing.length > changes.length) seen.oneSided++;
      }
    }),
    { seed: SEED, numRuns: 300 },
  );
  expect(Object.entries(seen).filter(([, count]) => count < 3)).toEqual([]);
}, 60_000);

describe("over several years", () => {
  const PUMP = `built:
  - { place: pump, part: HT-101, scope: line=B; my=1957 }
  - { place: pump, part: HT-102, scope: line=B; my=1958 }
  - { place: pump, part: HT-101, scope: line=B; my=1959 }
  - { place: pump, part: HT-201, scope: line=B; my=1960 }`;
  const knowledge = knowledgeOf(PUMP);
  const change = (from: number, to: number) => {
    const car = readCar(knowledge, { facts: { line: "B", my: to } });
    const [matter] = mattersOf(knowledge.catalog);
    const found = matter && netChange(knowledge, matter, yearsOfCar(knowledge, car, from, to)).changes[0];
    const said = (values: readonly { said: string }[]): string => values.map((it) => it.said).join(" or ");
    return (
      found &&
      `${said(found.from)} > ${said(found.to)}: ${found.steps.map((step) => `${step.year} ${said(step.values)}`).join(", ")}`
    );
  };

  // from, to, the net change with its steps
  test.each([
    [1957, 1958, "HT-101 > HT-102: 1958 HT-102"],
    [1957, 1959, undefined], // changed and changed back: no change
    [1957, 1960, "HT-101 > HT-201: 1958 HT-102, 1959 HT-101, 1960 HT-201"], // one change, from the first to the last
    [1960, 1958, "HT-201 > HT-102: 1959 HT-101, 1958 HT-102"], // backwards
    [1958, 1958, undefined],
  ])("from %i to %i: %s", (from, to, expected) => {
    expect(change(from, to)).toBe(expected);
  });
});

test("in its own year the car is looked at with its number; in another year with what it has in common", () => {
  const knowledge = tinyKnowledge();
  const { space } = knowledge.catalog;
  const car = readCar(knowledge, { plate: "B9K0500", facts: { PT: true } });
  const years = yearsOfCar(knowledge, car, 1958, 1959);
  const numbers = years.map(({ cars }) => space.sets.valuesOf(cars, space.find("number") as number));
  expect(numbers).toEqual([[[0, 9999]], [[500, 500]]]);
  expect(twinFacts(space, car.facts, 1958).map(({ text }) => text)).toEqual([
    "line=B",
    "plant=K",
    "PT=true",
    "my=1958",
  ]);
  const [matter] = mattersOf(knowledge.catalog);
  // The running change of 1959 has been passed by number 0500.
  expect(years.map((year) => matter && valuesIn(knowledge, matter, year).map((it) => it.said))).toEqual([
    ["HT-101"],
    ["HT-102"],
  ]);
});

test("two figures with different conditions are two settings only if one car has both", () => {
  const settings = (second: string) =>
    mattersOf(
      knowledgeOf(`settings:
  - { name: oil pressure, window: 120..135, unit: bar, conditions: hot, scope: my=1957-1958 }
  - { name: oil pressure, window: 90..100, unit: bar, conditions: cold, scope: ${second} }`).catalog,
    ).map(({ name }) => name);
  expect(settings("my>=1959")).toEqual(["oil pressure"]);
  expect(settings("my>=1958")).toEqual(["oil pressure (hot)", "oil pressure (cold)"]);
});

describe("a record by itself", () => {
  const knowledge = tinyKnowledge();
  const record = (id: string) => knowledge.catalog.records.get(id) as ChangeRecord;
  // record, facts, year, whether it holds
  test.each([
    ["FR58-01", { line: "H" }, 1959, "yes"],
    ["FR58-01", { line: "B" }, 1957, "no"], // not begun
    ["FR58-01", { line: "B" }, 1958, "yes"],
    ["FR58-01", { line: "B" }, 1959, "no"], // cancelled in 1959 for this line
    ["FR58-01", {}, 1959, "some"],
    ["HY59-01", { line: "B" }, 1959, "some"], // from a number on
  ])("%s, %j, %i: %s", (id, facts, year, expected) => {
    const car = readCar(knowledge, { facts: { ...facts, my: year } as never });
    const values = holdsIn(knowledge, record(id), { year, cars: car.cars }).map(({ said }) => said);
    expect(values.length > 1 ? "some" : values[0] === "holds" ? "yes" : "no").toBe(expected);
  });

  test("counts if it tells people what to do, or states nothing that has a value", () => {
    expect([isMatterItself(record("HY59-01")), isMatterItself(record("FR58-01"))]).toEqual([true, true]);
    const only = knowledgeOf("built: [{ place: pump, part: HT-101, scope: all }]").catalog.records.get("HY59-01");
    expect(isMatterItself(only as ChangeRecord)).toBe(false);
  });
});

test("cars of one kind are alike in all but the year and what runs; the years are those of the data", () => {
  const { catalog } = tinyKnowledge();
  const { space } = catalog;
  const kind = kindOfCar(space, catalog.buildable);
  expect([...space.sets.traitsOf(kind)].map((trait) => space.trait(trait).id)).not.toContain("my");
  expect(yearSpan(catalog)).toEqual([1957, 1961]);
});

test("equipment that a matter does not depend on does not make cars unlike", () => {
  // Some cars of both years have power take-off; what else they have says nothing about the pump.
  const knowledge = knowledgeOf(`built:
  - { place: pump, part: HT-101, scope: eq=PT }
  - { place: pump, part: HT-102, scope: no=PT }`);
  const car = readCar(knowledge, { facts: { line: "B", my: 1959 } });
  const [matter] = mattersOf(knowledge.catalog);
  // With and without power take-off in both years: each kind has what it had.
  expect(matter && netChange(knowledge, matter, yearsOfCar(knowledge, car, 1958, 1959)).changes).toEqual([]);
});
