import { describe, expect, test } from "vitest";
import { vocabularyFor } from "../../../src/engine/answers/ask-index.ts";
import { findNumber, numbersOf, plainNumber, shelfOf } from "../../../src/engine/ask/numbers.ts";
import { vocabularyOf } from "../../../src/engine/ask/vocabulary.ts";
import { CHIP_KINDS, vocabularyShape } from "../../../src/engine/ask/vocabulary-shape.ts";
import { KINDS } from "../../../src/engine/records/terms.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { catalogOf, spoiled, TINY } from "../../helpers/tiny-folder.ts";

const NO_TEXTS = { words: {}, units: [] };

describe("the names that a question may use", () => {
  const vocabulary = vocabularyOf(catalogOf(), NO_TEXTS);
  const of = (kind: string): [string, string[]][] =>
    vocabulary.names.filter((name) => name.kind === kind).map(({ id, say }) => [id, say]);

  test("are those of systems, components, lines, years, traits and kinds of change", () => {
    expect(of("system")).toEqual([
      ["hydraulics", ["Hydraulics"]],
      ["frame", ["Frame"]],
    ]);
    expect(of("component")).toEqual([
      ["lift", ["lift"]],
      ["pump", ["hydraulic pump"]],
      ["gasket", ["pump gasket"]],
    ]);
    expect(of("line")).toEqual([
      ["B", ["Badger"]],
      ["H", ["Heron"]],
    ]);
    expect(of("year").map(([year]) => year)).toEqual(["1957", "1958", "1959", "1960", "1961"]);
    expect(of("trait").map(([fact]) => fact)).toEqual(["plant=K", "plant=D", "PT=yes", "WN=yes"]);
    expect(of("kind").map(([kind]) => kind)).toEqual([...KINDS]);
    expect(new Set(vocabulary.names.map(({ kind }) => kind))).toEqual(
      new Set(CHIP_KINDS.filter((kind) => !["record", "part", "bulletin"].includes(kind))),
    );
  });

  test("come with every alias", () => {
    const { names } = vocabularyOf(
      catalogOf(
        spoiled({
          "components/frame.yaml": ["name: Frame", "name: Frame\naliases: [chassis, frmae]"],
          "components/hydraulics.yaml": ["name: hydraulic pump", "name: hydraulic pump, aliases: [pmup]"],
          "vehicles/traits.yaml": ["label: Badger", "label: Badger, aliases: [brock]"],
        }),
      ),
      NO_TEXTS,
    );
    const said = (id: string): string[] | undefined => names.find((name) => name.id === id)?.say;
    expect([said("frame"), said("pump"), said("B")]).toEqual([
      ["Frame", "chassis", "frmae"],
      ["hydraulic pump", "pmup"],
      ["Badger", "brock"],
    ]);
  });

  test("stand beside what people say instead, pair by pair, and the words that name nothing", () => {
    expect(vocabulary.mean).toEqual([
      ["lift", "hydraulics"],
      ["hitch", "hydraulics"],
    ]);
    expect(vocabulary.ignore).toEqual(["what", "changed"]);
    const { "words.yaml": _, ...wordless } = TINY;
    expect(vocabularyOf(catalogOf(wordless), NO_TEXTS)).toMatchObject({ mean: [], ignore: [], plain: [] });
    const plain = spoiled({ "words.yaml": "plain: [radio]\n" });
    expect(vocabularyOf(catalogOf(plain), NO_TEXTS).plain).toEqual(["radio"]);
  });

  test("keep their published shape", () => {
    expect(vocabularyShape.parse(JSON.parse(JSON.stringify(vocabulary)))).toEqual(vocabulary);
  });
});

describe("what ranking has to know", () => {
  const vocabulary = vocabularyOf(catalogOf(), { words: { pump: 1, spring: 2 }, units: ["psi"] });

  test("is how many records there are, and how many concern each component, where it lies and under what", () => {
    expect(vocabulary.records).toBe(2);
    expect(vocabulary.components).toEqual({
      lift: { system: "hydraulics", records: 0 },
      pump: { system: "hydraulics", under: "lift", records: 1 },
      gasket: { system: "hydraulics", under: "pump", records: 1 },
    });
  });

  test("is the words of the texts and the units, as they are handed over", () => {
    expect(vocabulary.words).toEqual({ pump: 1, spring: 2 });
    expect(vocabulary.units).toEqual(["psi"]);
  });

  test("is how numbers that tell which tractor it is look, and how numbers of papers and parts begin", () => {
    expect(vocabulary.serials.map(({ trait }) => trait)).toEqual(["number"]);
    expect(vocabulary.shelves).toEqual(["44", "FR", "HT", "HY", "TB"]);
  });

  test("is in which systems records are called by a word: by titles, settings, tools, parts, places, components", () => {
    const { called } = vocabulary;
    for (const word of ["longer", "pressure", "change", "t7", "round", "gasket", "arm", "hydraulic"])
      expect([word, called[word]]).toEqual([word, ["hydraulics"]]);
    const aliased = spoiled({
      "components/hydraulics.yaml": ["name: hydraulic pump", "name: hydraulic pump, aliases: [squirter]"],
    });
    expect(vocabularyOf(catalogOf(aliased), NO_TEXTS).called.squirter).toEqual(["hydraulics"]);
    expect(called.drilled).toBeUndefined(); // a record without a component is in no system
    expect(Object.keys(called)).toEqual(Object.keys(called).toSorted());
  });

  test("but of a word that records of many systems are called by nothing", () => {
    const systems = ["a", "b", "c", "d"];
    const words = (count: number) => {
      const folder = spoiled(
        Object.fromEntries(
          systems.slice(0, count).flatMap((id, i) => [
            [
              `components/${id}.yaml`,
              `id: ${id}\nname: ${id}\norder: ${i + 3}\ncomponents:\n  - { id: ${id}1, name: ${id}1 }\n`,
            ],
            [
              `changes/1958/X58-${i}.md`,
              `---\nid: X58-${i}\ntitle: Stronger spring\nissued: 1958-03-01\nkinds: [equipment]\ncomponents: [${id}1]\nstarts: start of 1958\nscope: my>=1958\n---\n\nSo.\n`,
            ],
          ]),
        ),
      );
      return vocabularyOf(catalogOf(folder), NO_TEXTS).called.spring;
    };
    expect(words(3)).toEqual(["a", "b", "c"]);
    expect(words(4)).toBeUndefined();
  });
});

describe("the vocabulary of the data folder", async () => {
  const { catalog } = await demoKnowledge();
  const vocabulary = vocabularyFor(catalog);

  test("keeps its published shape, and names each thing by something that is said", () => {
    expect(vocabularyShape.parse(JSON.parse(JSON.stringify(vocabulary)))).toEqual(vocabulary);
    for (const { label, say } of vocabulary.names) {
      expect(label).not.toBe("");
      for (const said of say) expect(said.trim()).not.toBe("");
    }
  });

  test("tells of every number on which shelf it stands", () => {
    const numbers = numbersOf(catalog);
    for (const number of numbers.keys()) expect(vocabulary.shelves).toContain(shelfOf(number));
    for (const number of catalog.parts.keys()) expect(findNumber(numbers, plainNumber(number))).not.toEqual([]);
  });

  test("knows systems and components that there are", () => {
    const systems = new Set(catalog.systems.map(({ id }) => id));
    for (const { system, under, records } of Object.values(vocabulary.components)) {
      expect(systems.has(system)).toBe(true);
      if (under !== undefined) expect(vocabulary.components[under]).toBeDefined();
      expect(records).toBeLessThanOrEqual(vocabulary.records);
    }
    for (const own of Object.values(vocabulary.called)) for (const id of own) expect(systems.has(id)).toBe(true);
    for (const count of Object.values(vocabulary.words)) {
      expect(count).toBeGreaterThan(0);
      expect(count).toBeLessThanOrEqual(vocabulary.records);
    }
  });
});
