import { describe, expect, test } from "vitest";
import { nothingFound, withCompanions } from "../../../src/engine/interchange/companions.ts";
import { openPartIndex } from "../../../src/engine/interchange/part-index.ts";
import { seeParts } from "../../../src/engine/interchange/see-parts.ts";
import { openSets } from "../../helpers/sets-folder.ts";

const BUILT = [
  "place: pump, part: A-1, scope: line=B",
  "place: pump gasket, part: B-1, scope: line=B",
  "place: lift arms, part: C-1, scope: line=B; my<=1958",
  "place: lift arms, part: C-2, scope: line=B; my>=1959",
];
const SET = "part: A-2, for: A-1, verdict: on-conditions, with: [B-2, C-2]";

/** What the set needs on all Badgers, or those of some years, with what else is said of its parts. */
function needs(
  more: readonly string[],
  { years, fitted = [], rest = "" }: { years?: [number, number]; fitted?: string[]; rest?: string } = {},
) {
  const { catalog, badgers } = openSets(BUILT, [SET, ...more], rest, fitted);
  const { space } = catalog;
  const index = openPartIndex(catalog);
  const cars = years ? space.sets.and(badgers, space.where(space.role("year") as number, [years])) : badgers;
  const ways = (index.standInsOf.get("A-2") ?? []).filter((it) => it.for === "A-1").map((it) => [it]);
  const found = withCompanions(index, "A-2", ways, nothingFound(cars), seeParts(index, cars, fitted));
  const year = space.role("year") as number;
  return found
    .map((piece) => ({
      years: space.sets.valuesOf(piece.cars, year).flat().join("-"),
      ways: piece.ways.map((way) => way.companions.map((it) => (it.onTheCar ? `(${it.part})` : it.part)).join(" ")),
      closedBy: piece.closedBy.map((it) => it.why ?? it.part),
    }))
    .sort((a, b) => a.years.localeCompare(b.years));
}

describe("what must go along", () => {
  test("cars that need different sets are told apart, and what a car has is marked", () => {
    expect(needs([])).toEqual([
      { years: "1957-1958", ways: ["B-2 C-2"], closedBy: [] },
      { years: "1959-1960", ways: ["B-2 (C-2)"], closedBy: [] },
    ]);
  });

  test("companions of companions, each once", () => {
    const found = needs(["part: B-2, for: B-1, verdict: on-conditions, with: [A-2, D-1], do: Scrape it."], {
      years: [1959, 1960],
    });
    expect(found.map((it) => it.ways)).toEqual([["B-2 (C-2) D-1"]]);
  });

  test("of two ways the one with fewer parts comes first; a plain one before all", () => {
    const years = { years: [1957, 1958] as [number, number] };
    const short = "part: A-2, for: A-1, verdict: on-conditions, with: [D-1]";
    expect(needs([short], years).map((it) => it.ways)).toEqual([["D-1", "B-2 C-2"]]);
    const plain = 'part: A-2, for: A-1, verdict: "yes", with: [B-2, C-2, D-1]';
    expect(needs([short, plain], years).map((it) => it.ways)).toEqual([["B-2 C-2 D-1", "D-1", "B-2 C-2"]]);
  });

  test("a companion with two ways takes the smaller one", () => {
    const found = needs(
      [
        "part: B-2, for: B-1, verdict: on-conditions, with: [D-1, E-1]",
        "part: B-2, for: B-1, verdict: on-conditions, with: [C-2]",
      ],
      { years: [1957, 1958] },
    );
    expect(found.map((it) => it.ways)).toEqual([["B-2 C-2"]]);
  });
});

describe("a kit", () => {
  const REFUSED = "part: D-1, for: none, verdict: must-not-be-used, why: It swells, scope: line=B; my=1957";
  const inIt = (kit: string, ...parts: string[]): string =>
    `  - { kit: ${kit}, contents: [${parts.map((part) => `{ part: ${part} }`)}] }`;

  test("goes on where all in it can, and nothing of it has to be bought besides", () => {
    const rest = `kits:\n${inIt("A-2", "D-1")}`;
    expect(needs([], { rest })).toEqual(needs([]));
    expect(needs([REFUSED], { rest })).toEqual([
      { years: "1957-1957", ways: [], closedBy: ["It swells"] },
      { years: "1958-1958", ways: ["B-2 C-2"], closedBy: [] },
      { years: "1959-1960", ways: ["B-2 (C-2)"], closedBy: [] },
    ]);
  });

  test("in a kit that goes along closes the way too", () => {
    const rest = `kits:\n${inIt("B-2", "B-3")}\n${inIt("B-3", "D-1")}`;
    expect(needs([REFUSED], { rest, years: [1957, 1957] })).toEqual([
      { years: "1957-1957", ways: [], closedBy: ["It swells"] },
    ]);
    expect(needs([REFUSED], { rest, years: [1958, 1958] }).map((it) => it.ways)).toEqual([["B-2 C-2"]]);
  });

  test("that cannot go on is gone around where there is another way", () => {
    const rest = `kits:\n${inIt("B-2", "D-1")}`;
    const other = "part: A-2, for: A-1, verdict: on-conditions, with: [C-2]";
    expect(needs([REFUSED, other], { rest, years: [1957, 1957] }).map((it) => it.ways)).toEqual([["C-2"]]);
  });
});

describe("what closes a way", () => {
  test("that a companion is refused by itself is no objection", () => {
    const found = needs(["part: B-2, for: B-1, verdict: must-not-be-used, why: It leaks by itself."]);
    expect(found.flatMap((it) => it.ways)).toEqual(["B-2 C-2", "B-2 (C-2)"]);
  });

  test("that it is refused for certain cars closes the way for these, unless it is on the car", () => {
    const refused = ["part: B-2, for: B-1, verdict: does-not-go-on, why: No room., scope: line=B; my=1958"];
    expect(needs(refused).filter((it) => it.ways.length === 0)).toEqual([
      { years: "1958-1958", ways: [], closedBy: ["No room."] },
    ]);
    expect(needs(refused, { fitted: ["B-2"] }).filter((it) => it.ways.length === 0)).toEqual([]);
  });

  test("a refusal in place of a part that does not belong there closes nothing", () => {
    const found = needs(["part: C-2, for: C-1, verdict: does-not-go-on, why: Too wide., scope: line=B; my>=1959"]);
    expect(found.every((it) => it.ways.length > 0)).toBe(true);
  });

  test("a companion in whose place another part was seen needs a permission", () => {
    const years = { years: [1957, 1958] as [number, number], fitted: ["B-3"] };
    const seen = (verdict: string) => [
      'part: B-3, for: B-1, verdict: "yes"',
      'part: B-2, for: B-1, verdict: "yes"',
      `part: B-2, for: B-3, verdict: ${verdict}`,
    ];
    const silent = seen('"yes"').slice(0, 2);
    expect(needs(silent, years)).toEqual([{ years: "1957-1958", ways: [], closedBy: ["A-2"] }]);
    expect(needs(seen('"yes"'), years).map((it) => it.ways)).toEqual([["B-2 C-2"]]);
    expect(needs(seen("must-not-be-used, why: Both leak."), years)).toEqual([
      { years: "1957-1958", ways: [], closedBy: ["Both leak."] },
    ]);
  });

  test("a part that may only be there without another", () => {
    const found = needs(["part: B-2, for: B-1, verdict: on-conditions, with: [C-2], scope: fitted!=C-2"], {
      years: [1957, 1958],
    });
    expect(found).toEqual([{ years: "1957-1958", ways: [], closedBy: ["A-2"] }]);
  });
});
