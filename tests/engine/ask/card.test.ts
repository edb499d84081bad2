import { describe, expect, test } from "vitest";
import { cardAddress, cardsOf, piecesOf, wordsOf } from "../../../src/engine/ask/card.ts";
import { type Card, cardShape } from "../../../src/engine/ask/card-shape.ts";
import { NONE } from "../../../src/engine/scope/diagram.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { catalogOf, type Spoil, spoiled } from "../../helpers/tiny-folder.ts";

const cardOf = (id: string, spoil: Spoil = {}): Card | undefined =>
  cardsOf(catalogOf(spoiled(spoil))).find((card) => card.id === id);
const HY = "changes/1959/HY59-01.md";
const FR = "changes/1958/FR58-01.md";

describe("the card of a record", () => {
  test("says what it is about, for which tractors, and how it is called", () => {
    expect(cardOf("HY59-01")).toEqual({
      kind: "record",
      id: "HY59-01",
      title: "Longer hydraulic pump",
      starts: "during 1959",
      issued: "1959-02-01",
      systems: ["hydraulics"],
      components: ["pump", "gasket"],
      on: { B: [1959, 1960] },
      told: { B: [1957, 1958, 1959, 1960], H: [1959, 1960, 1961] }, // the pump before the change; no pump on the Heron
      begins: { B: 1959 },
      only: {},
      kinds: ["part", "running"],
      says: [
        "built",
        "cancels",
        "interval",
        "kit",
        "left-alone",
        "mixed",
        "procedure",
        "service-only",
        "setting",
        "stands-in",
        "supersedes",
        "tool",
      ],
      trap: true,
      parts: ["HT-101", "HT-102", "HT-201", "HT-290"],
      settings: ["oil pressure"],
      links: ["FR58-01"],
      keys: ["change", "hydraulic", "longer", "oil", "pressure", "pump", "t7"],
      near: ["arm", "gasket", "kit", "lift", "long", "pump", "round", "short"],
    });
  });

  test("that is ended by another, and linked with the one that ends it, says so", () => {
    expect(cardOf("FR58-01")).toMatchObject({ ended: true, links: ["HY59-01"], systems: [], components: [], near: [] });
    expect(cardOf("HY59-01")).not.toHaveProperty("ended");
  });

  // what is written otherwise, what the card says then
  const OTHERWISE: [why: string, id: string, spoil: Spoil, card: Partial<Card>][] = [
    ["withdrawn", "FR58-01", { [FR]: ["kinds:", "withdrawn: never built\nkinds:"] }, { withdrawn: true }],
    [
      "no trap, where nothing goes on that must not",
      "HY59-01",
      { [HY]: ["must-not-be-used", "does-not-go-on"] },
      { trap: false },
    ],
    [
      "further words",
      "FR58-01",
      { [FR]: ["kinds:", "words: [Hoist-rope]\nkinds:"] },
      {
        keys: ["a", "drilled", "for", "frame", "hoist", "hoistrope", "rope", "winch"],
      },
    ],
    [
      "marks to tell apart by",
      "FR58-01",
      { [FR]: ["kinds:", "tell-apart: Four holes.\nkinds:"] },
      { says: ["tell-apart"] },
    ],
    [
      "new with the year that it says",
      "FR58-01",
      { [FR]: ["kinds:", "in-force-from: 1960\nkinds:"] },
      { begins: { B: 1960, H: 1960 } },
    ],
    [
      "only some equipment",
      "FR58-01",
      { [FR]: ["scope: my>=1958", "scope: eq=WN"] },
      { only: { WN: ["yes"] }, on: { H: [1959, 1960, 1961] } },
    ],
    ["only without some equipment", "FR58-01", { [FR]: ["scope: my>=1958", "scope: no=WN"] }, { only: { WN: ["no"] } }],
    [
      "no line and no year is an 'only'",
      "FR58-01",
      { [FR]: ["scope: my>=1958", "scope: line=B; my=1958"] },
      {
        only: {},
        on: { B: [1958] },
        told: { B: [1958] },
      },
    ],
  ];
  test.each(OTHERWISE)("%s", (_, id, spoil, card) => {
    expect(cardOf(id, spoil)).toMatchObject(card);
  });
});

describe("the card of a bulletin", () => {
  test("is about the systems of the records that it cites, and called by its title", () => {
    expect(cardOf("TB-1")).toEqual({
      ...{ kind: "bulletin", id: "TB-1", title: "Pumps", starts: "Which pump goes where.", issued: "1959-05-01" },
      ...{
        systems: ["hydraulics"],
        components: [],
        on: {},
        told: {},
        begins: {},
        only: {},
        kinds: [],
        says: [],
        trap: false,
      },
      ...{ parts: [], settings: [], links: ["HY59-01"], keys: ["pump"], near: [] },
    });
  });

  test("that cites no record is about no system", () => {
    const card = cardOf("TB-1", { "bulletins/TB-1.md": ["[[HY59-01]], ", ""] });
    expect(card).toMatchObject({ systems: [], links: [] });
  });

  test("has another address than a record of the same name", () => {
    expect(cardAddress({ kind: "bulletin", id: "1" })).not.toBe(cardAddress({ kind: "record", id: "1" }));
  });
});

// word, what it is found by
const PIECES: [word: string, pieces: string[]][] = [
  ["Pumps", ["pump"]],
  ["run-out", ["runout", "run", "out"]],
  ["A/C", ["ac"]], // pieces of one letter say nothing
  ["T-7", ["t7"]],
  ["three-point", ["threepoint", "three", "point"]],
  ["HY59-01", ["hy5901", "hy59", "01"]],
  ["0.015", ["0015"]],
  ["badger's", ["badger"]],
  ["", [""]],
];
test.each(PIECES)("%s is found by %j", (word, pieces) => {
  expect(piecesOf(word)).toEqual(pieces);
});

test("words of several texts are each once, and in order", () => {
  expect(wordsOf(["Pump, pumps", "the run-out", "", "…"])).toEqual(["out", "pump", "run", "runout", "the"]);
  expect(wordsOf([])).toEqual([]);
  expect(wordsOf(["constructor __proto__"])).toEqual(["constructor", "proto"]);
});

describe("the cards of the data folder", async () => {
  const { catalog } = await demoKnowledge();
  const cards = cardsOf(catalog);
  const records = cards.filter(({ kind }) => kind === "record");
  const years = (all: Record<string, number[]>): string[] =>
    Object.entries(all).flatMap(([line, own]) => own.map((year) => `${line} ${year}`));

  test("keep their published shape, one for each record and bulletin", () => {
    for (const card of cards) expect(cardShape.parse(JSON.parse(JSON.stringify(card)))).toEqual(card);
    expect(cards.map(({ kind, id }) => `${kind} ${id}`)).toEqual([
      ...[...catalog.records.keys()].map((id) => `record ${id}`),
      ...[...catalog.bulletins.keys()].map((id) => `bulletin ${id}`),
    ]);
    expect(new Set(cards.map(cardAddress)).size).toBe(cards.length);
  });

  test("say something of every car that they are about, and are new in the first of these years, or when they say so", () => {
    for (const { id, on, told, begins } of records) {
      expect([id, years(on).filter((one) => !years(told).includes(one))]).toEqual([id, []]);
      expect(Object.keys(begins).sort()).toEqual(Object.keys(on).sort());
      const from = catalog.records.get(id)?.facts["in-force-from"];
      for (const [line, year] of Object.entries(begins)) expect([id, year]).toEqual([id, from ?? on[line]?.[0]]);
    }
  });

  test("name a year of a line just where some car of it, in that year, is one that the record is about: asked car by car", () => {
    const { space, lines } = catalog;
    const [yearAt] = [space.role("year") as number];
    for (const record of catalog.records.values()) {
      const card = records.find(({ id }) => id === record.id);
      for (const line of lines) {
        const slow = catalog.years.filter((year) => {
          const cars = space.sets.and(
            space.sets.and(line.cars, record.scope.cars),
            space.where(yearAt, [[year, year]]),
          );
          return cars !== NONE;
        });
        expect([record.id, line.id, card?.on[line.id] ?? []]).toEqual([record.id, line.id, slow]);
      }
    }
  });

  test("leave out a value of a trait only where no car of which something is said may have it", () => {
    const { space, buildable } = catalog;
    for (const record of catalog.records.values()) {
      const card = records.find(({ id }) => id === record.id);
      const told = space.any([
        record.scope.cars,
        ...record.stated.flatMap((it) => ("scope" in it && it.scope ? [it.scope.cars] : [])),
      ]);
      const cars = space.sets.and(buildable, told);
      space.declared.forEach((trait, at) => {
        const only = card?.only[trait.id];
        if (!only) return;
        const values = trait.kind === "list" ? trait.values.map(({ id }) => id) : ["no", "yes"];
        values.forEach((value, i) => {
          const having = space.sets.and(cars, space.where(at, [[i, i]]));
          if (!only.includes(value))
            expect([record.id, trait.id, value, having === NONE]).toEqual([record.id, trait.id, value, true]);
        });
      });
    }
  });

  test("are linked both ways", () => {
    const linked = new Set(records.flatMap(({ id, links }) => links.map((other) => `${id} ${other}`)));
    for (const { id, links } of records) {
      expect(links).not.toContain(id);
      for (const other of links) expect(linked.has(`${other} ${id}`)).toBe(true);
    }
  });

  test("have the words of their title among those that they are called by", () => {
    for (const { title, keys } of cards) for (const word of wordsOf([title])) expect(keys).toContain(word);
  });

  test("hold no word twice, and words as they are compared", () => {
    for (const { keys, near } of cards)
      for (const words of [keys, near]) expect(words).toEqual([...new Set(words)].sort());
  });
});
