import { expect, test } from "vitest";
import { nextId } from "../../../src/build/write/next-id.ts";
import { plainFiles } from "../../helpers/demo-data.ts";

// neighbours with their years, other ids in use, year, next id
const IDS: [neighbours: [string, number][], others: string[], year: number, next: string | undefined][] = [
  [
    [
      ["HY59-01", 1959],
      ["HY60-02", 1960],
    ],
    [],
    1960,
    "HY60-03",
  ],
  [[["HY59-01", 1959]], [], 1961, "HY61-01"],
  [[["HY59-01", 1959]], ["HY59-07"], 1959, "HY59-08"],
  [
    [
      ["HY59-09", 1959],
      ["HY59-99", 1959],
    ],
    [],
    1959,
    "HY59-100",
  ],
  [
    [
      ["R-0007", 1959],
      ["R-0009", 1960],
    ],
    [],
    1961,
    "R-0010",
  ],
  [[["1959/3", 1959]], [], 1960, "1960/1"],
  [
    [
      ["A1", 1959],
      ["HY58-1", 1958],
      ["HY59-1", 1959],
    ],
    [],
    1960,
    "HY60-1",
  ],
  [
    [
      ["OLD-1", 1958],
      ["NEW-1", 1959],
    ],
    [],
    1960,
    "NEW-2",
  ],
  // Digits that stand beside others are no year.
  [[["X1591-1", 1959]], [], 1960, "X1591-2"],
  [[["HY00-01", 2000]], [], 2001, "HY01-01"],
  [[["winch", 1959]], [], 1960, undefined],
  [[], ["HY59-01"], 1960, undefined],
];

test.each(IDS)("%j, %j, in %i: %s", (neighbours, others, year, next) => {
  const known = neighbours.map(([id, year]) => ({ id, year }));
  expect(nextId(known, [...known.map(({ id }) => id), ...others], year)).toBe(next);
});

test("in the demonstration the next of each system and year is one that its last record would have had", () => {
  const systems = new Map(
    plainFiles("components/").flatMap(({ facts }) => facts.components.map(({ id }: { id: string }) => [id, facts.id])),
  );
  const records = plainFiles("changes/").map(({ path, facts }) => {
    return { id: facts.id as string, year: Number(path.split("/")[1]), system: systems.get(facts.components?.[0]) };
  });
  const ids = records.map(({ id }) => id);
  for (const last of records) {
    const rest = records.filter((other) => other !== last && other.system === last.system);
    if (rest.length === 0 || records.some(({ id }) => id.slice(0, -2) === last.id.slice(0, -2) && id > last.id))
      continue;
    expect(
      nextId(
        rest,
        ids.filter((id) => id !== last.id),
        last.year,
      ),
    ).toBe(last.id);
  }
});
