import { mkdtemp, readdir, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, onTestFinished, test } from "vitest";
import { writeAsk } from "../../src/build/write-ask.ts";
import { askIndexOf } from "../../src/engine/answers/ask-index.ts";
import { cardAddress } from "../../src/engine/ask/card.ts";
import { cardFiles } from "../../src/engine/ask/card-files.ts";
import { type Card, cardShape } from "../../src/engine/ask/card-shape.ts";
import { systemsFor } from "../../src/engine/ask/find-records.ts";
import { findNumber, type Numbered, plainNumber, shelfOf } from "../../src/engine/ask/numbers.ts";
import { readQuestion } from "../../src/engine/ask/read-question.ts";
import { shelfFile } from "../../src/engine/ask/shelf-file.ts";
import { vocabularyShape } from "../../src/engine/ask/vocabulary-shape.ts";
import type { Catalog } from "../../src/engine/records/catalog.ts";
import { ASKED } from "../helpers/tiny-asked.ts";
import { catalogOf, type Folder, spoiled, TINY } from "../helpers/tiny-folder.ts";

/** A record under two systems, one under none; a casting number that may be misread from its first letter on, and a foreign one. */
const tractors = (): Catalog =>
  catalogOf(
    spoiled({
      ...ASKED,
      "changes/1959/HY59-01.md": ["components: [pump, gasket]", "components: [pump, gasket, step]"],
      "parts/pump.yaml": ['castings: ["4411"]', 'castings: ["4411", OL-7, Ж-55]'],
    }),
  );

interface Written {
  readonly count: number;
  readonly files: ReadonlyMap<string, string>;
}

async function written(catalog: Catalog, names: ReadonlyMap<string, string> = new Map()): Promise<Written> {
  const folder = await mkdtemp(join(tmpdir(), "yearmark-ask-"));
  onTestFinished(() => rm(folder, { recursive: true }));
  const count = await writeAsk(catalog, folder, names);
  const paths = (await readdir(folder, { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
  const texts = await Promise.all(
    paths.map(
      async (path) => [path.slice(folder.length + 1).replaceAll("\\", "/"), await readFile(path, "utf8")] as const,
    ),
  );
  return { count, files: new Map(texts) };
}
const read = ({ files }: Written, path: string): unknown => JSON.parse(files.get(path) ?? "null");
const cardsIn = (all: Written, system: string): Card[] => read(all, `data/ask/systems/${system}.json`) as Card[];
const shelfIn = (all: Written, shelf: string): Record<string, Numbered[]> =>
  read(all, `data/ask/numbers/${shelfFile(shelf)}`) as Record<string, Numbered[]>;

test("the words, a file for each system and one for each beginning of a number are written, and counted", async () => {
  const { count, files } = await written(tractors());
  expect([...files.keys()].sort()).toEqual(
    [
      "data/vocabulary.json",
      ...["frame", "hydraulics"].map((id) => `data/ask/systems/${id}.json`),
      ...["01", "44", "FR", "HT", "HY", "TB", "u4165"].map((shelf) => `data/ask/numbers/${shelf}.json`),
    ].sort(),
  );
  expect(count).toBe(files.size);
});

test("the words are those that a question is read with", async () => {
  const catalog = tractors();
  const vocabulary = read(await written(catalog), "data/vocabulary.json");
  expect(vocabularyShape.parse(vocabulary)).toEqual(askIndexOf(catalog).vocabulary);
});

describe("the cards of a system", () => {
  test("are those of its records and bulletins, and of what is under no system", async () => {
    const all = await written(tractors());
    const ids = (system: string): string[] => cardsIn(all, system).map(({ id }) => id);
    expect(ids("hydraulics").sort()).toEqual(["FR58-01", "HY59-01", "TB-1"]); // FR58-01 is under none
    expect(ids("frame").sort()).toEqual(["FR58-01", "FR60-01", "HY59-01", "TB-1"]); // the bulletin cites one of both
  });

  test("hold each card whole, in each of its systems, and no other", async () => {
    const catalog = tractors();
    const all = await written(catalog);
    for (const { id: system } of catalog.systems) {
      const cards = cardsIn(all, system);
      for (const card of cards) expect(cardShape.parse(card)).toEqual(card);
      const own = askIndexOf(catalog).cards.filter(
        ({ systems }) => systems.length === 0 || systems.some((one) => one === system),
      );
      expect(cards).toEqual(JSON.parse(JSON.stringify(own)));
    }
  });

  test("say what the text search calls their pages, wherever it has one, in every system", async () => {
    const catalog = tractors();
    const names = new Map([
      [cardAddress({ kind: "record", id: "HY59-01" }), "en_1"],
      [cardAddress({ kind: "bulletin", id: "TB-1" }), "en_2"],
      ["/elsewhere/", "en_3"],
    ]);
    const before = JSON.stringify(askIndexOf(catalog).cards);
    const all = await written(catalog, names);
    for (const { id: system } of catalog.systems)
      for (const card of cardsIn(all, system)) {
        const name = { "HY59-01": "en_1", "TB-1": "en_2" }[card.id];
        expect([card.id, card.page, "page" in card]).toEqual([card.id, name, name !== undefined]);
      }
    // What other answers are drawn from stays as it is.
    expect(JSON.stringify(askIndexOf(catalog).cards)).toBe(before);
  });
});

describe("every number of the catalog", () => {
  /** As the records write it, and what it names. */
  const numbersIn = (catalog: Catalog): [written: string, kind: Numbered["kind"], id: string][] => [
    ...[...catalog.records.keys()].map((id): [string, "record", string] => [id, "record", id]),
    ...[...catalog.bulletins.keys()].map((id): [string, "bulletin", string] => [id, "bulletin", id]),
    ...[...catalog.parts.values()].flatMap(({ number, castings }) =>
      [number, ...castings].map((one): [string, "part", string] => [one, "part", number]),
    ),
    ...catalog.moved.flatMap(({ kind, from, to }): [string, "record", string][] =>
      kind === "record" && to !== undefined ? [[from, kind, to]] : [],
    ),
  ];

  test("is found on the shelf that its plain number begins with", async () => {
    const catalog = tractors();
    const all = await written(catalog);
    const numbers = numbersIn(catalog);
    expect(numbers.map(([number]) => number)).toEqual(
      expect.arrayContaining(["HY59-01", "HY-1", "TB-1", "HT-101", "FR-2R", "4411", "OL-7", "Ж-55"]),
    );
    for (const [number, kind, id] of numbers) {
      const plain = plainNumber(number);
      const found = shelfIn(all, shelfOf(plain))[plain] ?? [];
      expect([number, found.map((one) => `${one.kind} ${one.id}`)]).toEqual([number, [`${kind} ${id}`]]);
    }
  });

  test("is on no other shelf, and every shelf is told of in the words", async () => {
    const catalog = tractors();
    const all = await written(catalog);
    const { shelves } = vocabularyShape.parse(read(all, "data/vocabulary.json"));
    const onShelves = shelves.flatMap((shelf) => {
      const plain = Object.keys(shelfIn(all, shelf));
      expect([shelf, plain.map(shelfOf)]).toEqual([shelf, plain.map(() => shelf)]);
      return plain;
    });
    expect(onShelves.sort()).toEqual(
      numbersIn(catalog)
        .map(([number]) => plainNumber(number))
        .sort(),
    );
    expect(all.files.size).toBe(1 + catalog.systems.length + shelves.length);
  });

  // what is typed, the part that it names, on one shelf alone
  const TYPED: [typed: string, part: string][] = [
    ["ht 101", "HT-101"],
    ["HT-1O1", "HT-101"], // O for 0
    ["0L7", "HT-102"],
    ["017", "HT-102"], // all of it misread
    ["ж55", "HT-102"],
  ];
  test.each(TYPED)("is found there as it is typed: %s", async (typed, part) => {
    const plain = plainNumber(typed);
    const shelf = shelfIn(await written(tractors()), shelfOf(plain));
    expect(findNumber(new Map(Object.entries(shelf)), plain).map(({ id }) => id)).toEqual([part]);
  });
});

test("the same records give the same bytes, in whatever order the pages came", async () => {
  const names = askIndexOf(tractors()).cards.map((card, i): [string, string] => [cardAddress(card), `en_${i}`]);
  const first = await written(tractors(), new Map(names));
  expect(await written(tractors(), new Map(names))).toEqual(first);
  expect(await written(tractors(), new Map(names.toReversed()))).toEqual(first);
});

test("a system that no record is about has the cards under no system alone", async () => {
  const catalog = catalogOf();
  expect(cardsIn(await written(catalog), "frame").map(({ id }) => id)).toEqual(["FR58-01"]);
});

describe("in a folder without systems", () => {
  const NONE: Folder = {
    ...Object.fromEntries(Object.entries(TINY).filter(([path]) => path.startsWith("vehicles/"))),
    "changes/1961/EL61-01.md": `---
id: EL61-01
title: Twelve volts
issued: 1960-09-01
kinds: [part]
starts: start of 1961
scope: my>=1961
---

The battery has twelve volts in place of six.
`,
  };

  test("every record has its card, with what the text search calls it, in the file that a page loads then", async () => {
    const catalog = catalogOf(NONE);
    const { cards, vocabulary, numbers } = askIndexOf(catalog);
    const all = await written(catalog, new Map([["/records/EL61-01/", "en_1"]]));
    const reading = readQuestion(vocabulary, "battery", numbers);
    const [file, ...others] = cardFiles(systemsFor(reading, vocabulary, []));
    expect(others).toEqual([]);
    const [card] = cards as [Card];
    expect(cards.length).toBe(1);
    expect(cardsIn(all, file ?? "")).toEqual([{ ...JSON.parse(JSON.stringify(card)), page: "en_1" }]);
    expect(all.count).toBe(all.files.size);
  });
});

test("what a page loads for a question holds every record under no system, though others have one", async () => {
  const catalog = tractors();
  const all = await written(catalog);
  const { vocabulary, numbers, cards } = askIndexOf(catalog);
  const loose = cards.filter(({ systems }) => systems.length === 0).map(({ id }) => id);
  expect(loose).toEqual(["FR58-01"]);
  for (const question of ["step", "pump", "step pump", "anything else"]) {
    const files = cardFiles(systemsFor(readQuestion(vocabulary, question, numbers), vocabulary, []));
    const loaded = files.flatMap((file) => cardsIn(all, file).map(({ id }) => id));
    expect([question, loaded]).toEqual([question, expect.arrayContaining(loose)]);
  }
});
