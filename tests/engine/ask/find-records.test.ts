import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { askIndexOf, recordsWith } from "../../../src/engine/answers/ask-index.ts";
import { cardAddress } from "../../../src/engine/ask/card.ts";
import type { Card } from "../../../src/engine/ask/card-shape.ts";
import { type Chosen, FACETS, findRecords, systemsFor, topRecords } from "../../../src/engine/ask/find-records.ts";
import type { Query } from "../../../src/engine/ask/rank.ts";
import { readQuestion } from "../../../src/engine/ask/read-question.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { SEED } from "../../helpers/seed.ts";
import { TRACTOR_NUMBERS, TRACTOR_WORDS } from "../../helpers/tractor-words.ts";

const read = (question: string) => readQuestion(TRACTOR_WORDS, question, TRACTOR_NUMBERS);
const ALL = ["hydraulics", "brakes", "torque-drive"];

// question, the systems in which it is looked
const SYSTEMS: [question: string, systems: string[], ofNumbers?: string[]][] = [
  ["brakes", ["brakes"]],
  ["brakes hydraulics", ["hydraulics", "brakes"]], // in the order of the systems
  ["pump", ["hydraulics"]],
  ["pump seal of the brakes", ["hydraulics", "brakes"]],
  ["oil seal", ["hydraulics", "brakes"]], // either may be meant
  ["adjuster", ["brakes"]], // records are called so
  ["spring", ["hydraulics", "brakes"]],
  ["slack-adjuster", ["brakes"]], // by its piece
  ["clutch adjuster", ["brakes", "torque-drive"]],
  ["pump noise", ["hydraulics"]], // a word of no system says nothing
  ["noise", ALL], // nowhere
  ["constructor", ALL], // nor a word that every object has
  ["constructor adjuster", ["brakes"]],
  ["59 Badger", ALL],
  ["retrofit", ALL],
  ["", ALL],
  ["HT-101", ["hydraulics"], ["hydraulics"]], // of what the number names
  ["HT-101 adjuster", ["hydraulics", "brakes"], ["hydraulics"]],
];
describe("where it is looked", () => {
  test.each(SYSTEMS)("'%s': %j", (question, systems, ofNumbers = []) => {
    expect(systemsFor(read(question), TRACTOR_WORDS, ofNumbers)).toEqual(systems);
  });
});

const card = (id: string, more: Partial<Card> = {}): Card => ({
  kind: "record",
  id,
  title: id,
  starts: "1959",
  issued: "1959-01-01",
  systems: ["hydraulics"],
  components: ["pump"],
  on: { B: [1959, 1960] },
  told: { B: [1959, 1960] },
  begins: { B: 1959 },
  only: {},
  kinds: ["setting"],
  says: [],
  trap: false,
  parts: [],
  settings: [],
  links: [],
  keys: [],
  near: [],
  ...more,
});
const CARDS: Card[] = [
  card("A", { kinds: ["setting", "retrofit"], keys: ["spring"] }),
  card("B", {
    systems: ["hydraulics", "brakes"],
    on: { B: [1957], H: [1959] },
    told: { B: [1957], H: [1959] },
    begins: {},
  }),
  card("C", { systems: ["brakes"], components: ["brake"], kinds: ["caution"] }),
  card("TB", { kind: "bulletin", on: {}, told: {}, begins: {}, kinds: [], components: [], keys: ["spring"] }),
];
function queryOf(question: string, texts: Readonly<Record<string, string>> = {}): Query {
  const held = Object.entries(texts).map(([id, text]) => [cardAddress({ kind: "record", id }), ` ${text} `] as const);
  return {
    reading: read(question),
    vocabulary: TRACTOR_WORDS,
    holders: (words) => new Set(held.filter(([, text]) => text.includes(` ${words} `)).map(([at]) => at)),
  };
}
const found = (question: string, chosen: Chosen = {}, texts: Record<string, string> = {}) =>
  findRecords(CARDS, queryOf(question, texts), { chosen });
const ids = (question: string, chosen?: Chosen): string[] => found(question, chosen).records.map((it) => it.card.id);
const counts = (question: string, chosen?: Chosen): Record<string, string[]> => {
  const { facets } = found(question, chosen);
  return Object.fromEntries(FACETS.map((facet) => [facet, facets[facet].map(({ id, count }) => `${id} ${count}`)]));
};

describe("records", () => {
  test("are listed, and counted by what they may be narrowed down by, in the order of the vocabulary", () => {
    expect(ids("pump")).toEqual(["A", "B"]);
    expect(counts("pump")).toEqual({
      system: ["hydraulics 2", "brakes 1"],
      line: ["B 2", "H 1"],
      year: ["1957 1", "1959 2", "1960 1"],
      kind: ["retrofit 1", "setting 2"],
    });
    expect(found("pump").facets.line[1]).toEqual({ id: "H", label: "Heron", count: 1 });
  });

  // what is chosen, records left
  const CHOSEN: [chosen: Chosen, left: string[]][] = [
    [{}, ["A", "B"]],
    [{ system: ["brakes"] }, ["B"]],
    [{ system: ["brakes", "hydraulics"] }, ["A", "B"]], // either
    [{ system: [] }, ["A", "B"]],
    [{ line: ["H"] }, ["B"]],
    [{ year: ["1960"] }, ["A"]],
    [{ kind: ["retrofit"] }, ["A"]],
    [{ kind: ["retrofit"], line: ["H"] }, []], // both
    [{ kind: ["tool"] }, []],
    [{ line: ["constructor"] }, []],
  ];
  test.each(CHOSEN)("with %j", (chosen, left) => {
    expect(ids("pump", chosen)).toEqual(left);
  });

  test("are counted beside what is chosen, as if it were not; and what is chosen stays in sight with none", () => {
    expect(counts("pump", { line: ["H"] })).toEqual({
      system: ["hydraulics 1", "brakes 1"],
      line: ["B 2", "H 1"],
      year: ["1957 1", "1959 1"],
      kind: ["setting 1"],
    });
    expect(counts("pump", { line: ["H"], kind: ["caution"] }).kind).toEqual(["caution 0", "setting 1"]);
  });

  test("that are not about such a tractor are not counted, where others are", () => {
    expect(ids("pump Heron")).toEqual(["B", "A"]);
    expect(counts("pump Heron").line).toEqual(["B 1", "H 1"]);
    expect(counts("pump 1962").line).toEqual(["B 2", "H 1"]);
  });

  test("that an answer rests on come first", () => {
    const { records } = findRecords(CARDS, queryOf("pump"), { carriedBy: ["B"] });
    expect(records.map((it) => it.card.id)).toEqual(["B", "A"]);
  });

  test("stand beside bulletins, which nothing narrows down, and which are not counted", () => {
    expect(ids("spring")).toEqual(expect.arrayContaining(["A", "TB"]));
    expect(ids("spring", { line: ["H"] })).toEqual(["TB"]);
    expect(counts("spring").system).toEqual(["hydraulics 1"]);
  });

  test("are none where there are no cards", () => {
    expect(findRecords([], queryOf("pump spring"))).toEqual({
      records: [],
      facets: { system: [], line: [], year: [], kind: [] },
      onRecord: false,
      unknown: [],
    });
  });

  test("that are the best are five at most, and no bulletins", () => {
    expect(topRecords(found("spring"))).not.toContain("TB");
    const many = Array.from({ length: 9 }, (_, i) => card(`R${i}`));
    expect(topRecords(findRecords(many, queryOf("pump")))).toEqual(["R0", "R1", "R2", "R3", "R4"]);
    expect(topRecords(findRecords([], queryOf("pump")))).toEqual([]);
  });
});

// question, it is on record, words that stand nowhere, texts
const ON_RECORD: [question: string, onRecord: boolean, unknown: string[], texts?: Record<string, string>][] = [
  ["pump", true, []],
  ["pump Heron", true, []],
  ["pump 1962", false, []], // none is about such a tractor
  ["clutch", false, []], // none is about it
  ["", false, []],
  ["plough", false, ["plough"]],
  ["pump plough", true, ["plough"]], // the component is on record, whatever else is said
  ["spring plough", false, ["plough"]], // half of the words
  ["spring tension plough", true, ["plough"], { A: "tension" }], // most of them
  ["spring tension plough", false, ["tension", "plough"]],
  ["spring chatter", true, [], { B: "chatter" }], // each word stands in some record
  ["brakes plough", false, ["plough"]], // a system says less than a component
  ["leak", false, []], // a word of the texts, though of none of these records
  ["arm", false, ["arm"]],
  ["seal-arm", false, ["seal-arm"]],
  ["constructor", false, ["constructor"]], // a word that every object has
  ["spring constructor", false, ["constructor"]],
];
describe("on record", () => {
  test.each(ON_RECORD)("'%s': %s, and nowhere stands %j", (question, onRecord, unknown, texts = {}) => {
    const { onRecord: is, unknown: words } = found(question, {}, texts);
    expect([is, words]).toEqual([onRecord, unknown]);
  });
});

describe("of any question of the data folder", async () => {
  const { catalog } = await demoKnowledge();
  const index = askIndexOf(catalog);
  const said = index.vocabulary.names.flatMap(({ say }) => say);
  const words = Object.keys(index.vocabulary.words);
  const question = fc
    .array(
      fc.oneof(fc.constantFrom(...said), fc.constantFrom(...words), fc.constantFrom(...index.numbers.keys(), "plough")),
      {
        maxLength: 5,
      },
    )
    .map((some) => some.join(" "));
  const queryFor = (text: string): Query => ({
    reading: readQuestion(index.vocabulary, text, index.numbers),
    vocabulary: index.vocabulary,
    holders: (some) => recordsWith(index, some),
  });
  const options = { seed: SEED, numRuns: 150 };

  test("what is named is looked for in its own systems, in the order of the systems, and never nowhere", () => {
    const systems = catalog.systems.map(({ id }) => id);
    fc.assert(
      fc.property(question, (text) => {
        const { reading } = queryFor(text);
        const looked = systemsFor(reading, index.vocabulary, []);
        expect(looked.length).toBeGreaterThan(0);
        expect(looked).toEqual(systems.filter((id) => looked.includes(id)));
        for (const { kind, ids: own } of reading.chips)
          for (const id of own) {
            if (kind === "system") expect(looked).toContain(id);
            if (kind === "component") expect(looked).toContain(catalog.components.get(id)?.system);
          }
      }),
      options,
    );
  });

  test("to choose a value leaves just as many records as were counted for it, of those that are about such a car", () => {
    fc.assert(
      fc.property(question, (text) => {
        const query = queryFor(text);
        const { facets, records } = findRecords(index.cards, query);
        const fits = ({ card: one, misses }: (typeof records)[number]): boolean =>
          one.kind === "record" && misses.length === 0;
        const counted = records.some(fits) ? fits : ({ card: one }: (typeof records)[number]) => one.kind === "record";
        for (const facet of FACETS)
          for (const { id, count } of facets[facet].slice(0, 3)) {
            expect(count).toBeGreaterThan(0);
            const left = findRecords(index.cards, query, { chosen: { [facet]: [id] } }).records.filter(counted);
            expect([facet, id, left.length]).toEqual([facet, id, count]);
          }
      }),
      { ...options, numRuns: 60 },
    );
  });

  test("what is chosen takes records away and puts none in another place", () => {
    const chosen = fc.record({
      line: fc.subarray(catalog.lines.map(({ id }) => id)),
      kind: fc.subarray(["part", "setting", "retrofit"]),
    });
    fc.assert(
      fc.property(question, chosen, (text, choice) => {
        const query = queryFor(text);
        const all = findRecords(index.cards, query).records;
        const left = new Set(findRecords(index.cards, query, { chosen: choice }).records.map(({ card: one }) => one));
        expect(all.filter(({ card: one }) => left.has(one)).map(({ card: one }) => one)).toEqual([...left]);
      }),
      { ...options, numRuns: 60 },
    );
  });
});
