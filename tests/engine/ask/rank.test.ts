import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { askIndexOf, recordsWith } from "../../../src/engine/answers/ask-index.ts";
import type { Asked } from "../../../src/engine/ask/asked.ts";
import { cardAddress, piecesOf } from "../../../src/engine/ask/card.ts";
import type { Card } from "../../../src/engine/ask/card-shape.ts";
import { carsSaid } from "../../../src/engine/ask/cars-said.ts";
import { keyOf } from "../../../src/engine/ask/names.ts";
import { plainNumber } from "../../../src/engine/ask/numbers.ts";
import { componentWords, isCommon, POINTS, type Query, rankRecords, rarity } from "../../../src/engine/ask/rank.ts";
import { type Chip, type Reading, readQuestion } from "../../../src/engine/ask/read-question.ts";
import { fold, split } from "../../../src/engine/ask/split.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { SEED } from "../../helpers/seed.ts";
import { TRACTOR_NUMBERS, TRACTOR_WORDS } from "../../helpers/tractor-words.ts";

const card = (id: string, more: Partial<Card> = {}): Card => ({
  kind: "record",
  id,
  title: id,
  starts: "1959",
  issued: "1959-01-01",
  systems: ["hydraulics"],
  components: [],
  on: { B: [1959, 1960] },
  told: { B: [1958, 1959, 1960] },
  begins: { B: 1959 },
  only: {},
  kinds: ["part"],
  says: [],
  trap: false,
  parts: [],
  settings: [],
  links: [],
  keys: [],
  near: [],
  ...more,
});

/** The words that the texts hold, by card; a query of the words of a question. */
function queryOf(question: string, texts: Readonly<Record<string, string>> = {}): Query {
  const held = Object.entries(texts).map(([id, text]) => [cardAddress({ kind: "record", id }), ` ${text} `] as const);
  return {
    reading: readQuestion(TRACTOR_WORDS, question, TRACTOR_NUMBERS),
    vocabulary: TRACTOR_WORDS,
    holders: (words) => new Set(held.filter(([, text]) => text.includes(` ${words} `)).map(([at]) => at)),
  };
}
const order = (cards: readonly Card[], question: string, texts?: Readonly<Record<string, string>>): string[] =>
  rankRecords(cards, queryOf(question, texts)).map((it) => it.card.id);

// why, question, cards that stand in this order (they are handed over the other way round), texts of cards by id
const BEFORE: [why: string, question: string, cards: Card[], texts?: Record<string, string>][] = [
  ["the record itself, then one that it names", "HY59-01", [card("HY59-01"), card("X", { links: ["HY59-01"] })]],
  [
    "a part",
    "HT-101 pump",
    [card("part", { parts: ["HT-101"], components: ["pump"] }), card("pump", { components: ["pump"] })],
  ],
  [
    "the main component, any component, one above or below it, its system",
    "pump hydraulics",
    [
      card("main", { components: ["pump", "glass"] }),
      card("second", { components: ["glass", "pump"] }),
      card("below", { components: ["pump-seal"] }),
      card("system"),
    ],
  ],
  [
    "the component below, for one below the one named",
    "pump seal",
    [card("itself", { components: ["pump-seal"] }), card("above", { components: ["pump"] })],
  ],
  [
    "the main system",
    "brakes",
    [card("main", { systems: ["brakes", "hydraulics"] }), card("second", { systems: ["hydraulics", "brakes"] })],
  ],
  [
    "a component of few records",
    "caliper, brakes",
    [card("few", { systems: ["brakes"], components: ["caliper"] }), card("none", { systems: ["brakes"] })],
  ],
  [
    "a word that it is called by, of its parts, of its text",
    "spring",
    [card("called", { keys: ["spring"] }), card("near", { near: ["spring"] }), card("text")],
    { text: "a spring" },
  ],
  [
    "a word of its components, as of its parts",
    "link",
    [card("component", { components: ["three-point-arm"] }), card("text")],
    { text: "a link" },
  ],
  ["a rare word", "grease spring", [card("rare", { keys: ["grease"] }), card("common", { keys: ["spring"] })]],
  ["both words", "chatter noise", [card("both", { keys: ["chatter", "noise"] }), card("one", { keys: ["chatter"] })]],
  [
    "two words side by side",
    "chatter noise",
    [card("side by side"), card("apart")],
    { "side by side": "a chatter noise here", apart: "chatter is a noise" },
  ],
  [
    "a setting of this name",
    "spring tension",
    [card("setting", { settings: ["spring tension"], keys: ["spring"] }), card("none", { keys: ["spring"] })],
  ],
  [
    "called by the very words",
    "oil seal",
    [
      card("called", { components: ["hub-seal"], keys: ["oil", "seal"] }),
      card("concerned", { components: ["hub-seal"] }),
    ],
  ],
  [
    "called by the words of what the tractor has",
    "pump with winch",
    [card("called", { components: ["pump"], keys: ["winch"] }), card("not", { components: ["pump"] })],
  ],
  [
    "called by what the tractor has not",
    "pump without winch",
    [card("called", { components: ["pump"], keys: ["winch"] }), card("not", { components: ["pump"] })],
  ],
  [
    "a setting of just these words",
    "spring run-out",
    [
      card("setting", { settings: ["run-out"], keys: ["spring"] }),
      card("in two words", { settings: ["run out"], keys: ["spring"] }),
    ],
  ],
  [
    "what is asked: a figure",
    "how much spring",
    [card("figure", { keys: ["spring"], says: ["setting"] }), card("none", { keys: ["spring"] })],
  ],
  [
    "what is asked: what may stand in",
    "does the pump fit",
    [card("fits", { components: ["pump"], says: ["stands-in"] }), card("none", { components: ["pump"] })],
  ],
  [
    "what is asked: what replaces",
    "pump superseded by",
    [card("replaces", { components: ["pump"], says: ["supersedes"] }), card("none", { components: ["pump"] })],
  ],
  [
    "what is asked: marks",
    "which pump",
    [card("marks", { components: ["pump"], says: ["tell-apart"] }), card("none", { components: ["pump"] })],
  ],
  [
    "what is asked: how it is done",
    "how to bleed the pump",
    [card("steps", { components: ["pump"], says: ["procedure"] }), card("none", { components: ["pump"] })],
  ],
  [
    "what is asked: how often",
    "how often pump",
    [card("often", { components: ["pump"], says: ["interval"] }), card("none", { components: ["pump"] })],
  ],
  [
    "what is asked: a retrofit, of the kind and with a part that may stand in",
    "retrofit a pump",
    [
      card("both", { components: ["pump"], kinds: ["retrofit"], says: ["stands-in"] }),
      card("kind", { components: ["pump"], kinds: ["retrofit"] }),
      card("part", { components: ["pump"], says: ["stands-in"] }),
      card("none", { components: ["pump"] }),
    ],
  ],
  [
    "a kind",
    "caution pump",
    [card("caution", { components: ["pump"], kinds: ["caution"] }), card("none", { components: ["pump"] })],
  ],
  [
    "new in that year, about it, said of it, not of it",
    "pump 1959",
    [
      card("new", { components: ["pump"] }),
      card("about", { components: ["pump"], begins: { B: 1958 } }),
      card("said", { components: ["pump"], on: { B: [1960] }, begins: { B: 1960 } }),
      card("not", { components: ["pump"], told: { B: [1960] }, on: { B: [1960] }, begins: { B: 1960 } }),
    ],
  ],
  [
    "such a line, though another was new that year",
    "Heron pump 1959",
    [
      card("line", { components: ["pump"], on: { H: [1959] }, told: { H: [1959] }, begins: { H: 1957 } }),
      card("other line", { components: ["pump"] }),
    ],
  ],
  [
    "of any year of a run",
    "pump 1961-62",
    [
      card("one of them", { components: ["pump"], on: { B: [1962] }, told: { B: [1962] } }),
      card("none", { components: ["pump"] }),
    ],
  ],
  [
    "such a tractor, any tractor, another",
    "pump with winch",
    [
      card("such", { components: ["pump"], only: { WN: ["yes"] } }),
      card("any", { components: ["pump"] }),
      card("another", { components: ["pump"], only: { WN: ["no"] } }),
    ],
  ],
  [
    "a tractor without, any tractor, one with",
    "pump without winch",
    [
      card("without", { components: ["pump"], only: { WN: ["no"] } }),
      card("any", { components: ["pump"] }),
      card("with", { components: ["pump"], only: { WN: ["yes"] } }),
    ],
  ],
  [
    "one of two values",
    "oil burner pump",
    [
      card("one", { components: ["pump"], only: { fuel: ["tvo"] } }),
      card("none", { components: ["pump"], only: { fuel: ["petrol"] } }),
    ],
  ],
  [
    "two things of the question, though each counts as little",
    "brakes hydraulics",
    [card("both", { systems: ["hydraulics", "brakes"] }), card("one")],
  ],
  [
    "two things of the question, before one that counts for more than either",
    "hydraulics grease",
    [card("both"), card("one", { systems: ["brakes"], keys: ["grease"] })],
    { both: "some grease" },
  ],
  [
    "a part by its number, though no number is read so, as if it were called by it",
    "9-77 spring",
    [card("part", { parts: ["9 77"] }), card("near", { near: ["977"] }), card("text")],
    { text: "a spring" },
  ],
  ["a trap", "pump", [card("trap", { components: ["pump"], trap: true }), card("none", { components: ["pump"] })]],
  [
    "in force",
    "pump",
    [card("in force", { components: ["pump"] }), card("ended", { components: ["pump"], ended: true })],
  ],
  [
    "not withdrawn, however little",
    "HY59-01 glass",
    [card("little", { components: ["glass"] }), card("HY59-01", { components: ["glass"], withdrawn: true })],
  ],
  [
    "the newer of equal ones",
    "pump",
    [card("new", { components: ["pump"], issued: "1960-01-01" }), card("old", { components: ["pump"] })],
  ],
  ["by their ids, of the same day", "pump", [card("A", { components: ["pump"] }), card("B", { components: ["pump"] })]],
  [
    "a step away, behind all that is about it",
    "pump",
    [card("A", { components: ["glass", "pump"], links: ["Z"] }), card("Z", { issued: "1962-01-01" })],
  ],
];

describe("comes first", () => {
  test.each(BEFORE)("%s: '%s'", (_, question, cards, texts) => {
    expect(order([...cards].reverse(), question, texts)).toEqual(cards.map(({ id }) => id));
  });
});

describe("is not listed", () => {
  test("what nothing named and no word speaks for, whatever the tractor, the trap and what is asked", () => {
    const all = [card("A", { trap: true, says: ["setting"] }), card("B", { components: ["clutch"] })];
    expect(order(all, "how much pump 1959 Badger")).toEqual([]);
    expect(order(all, "plough")).toEqual([]);
    expect(order(all, "")).toEqual([]);
    expect(order([], "pump")).toEqual([]);
  });

  test("but with a tractor alone, every record that is about it", () => {
    const all = [
      card("A"),
      card("B", { told: { H: [1959] }, on: { H: [1959] }, begins: {} }),
      card("C", { begins: { B: 1958 } }),
    ];
    expect(order(all, "59 Badger")).toEqual(["A", "C"]);
    expect(order(all, "Badger")).toEqual(["A", "C"]);
    expect(order(all, "1962")).toEqual([]);
    expect(order(all, "59 Badger plough")).toEqual([]);
  });

  test("what only its text holds, where a large part of the records has the word", () => {
    const all = [card("text"), card("called", { keys: ["model"] }), card("near", { near: ["model"] })];
    expect(order(all, "model", { text: "a model" })).toEqual(["called", "near"]);
    expect(order(all, "spring", { text: "a spring" })).toEqual(["text"]);
  });

  test("a bulletin that has no such word, though it is of no line and no year", () => {
    const bulletin = card("TB", { kind: "bulletin", on: {}, told: {}, begins: {}, kinds: [], keys: ["spring"] });
    const [first] = rankRecords([bulletin], queryOf("spring 1962 Heron"));
    expect(first).toMatchObject({ card: bulletin, misses: [] });
    expect(order([bulletin], "noise 1962 Heron")).toEqual([]);
  });
});

describe("each says", () => {
  test("why it stands there: what is named, and words of its own", () => {
    const [first] = rankRecords(
      [card("A", { components: ["pump"], keys: ["spring"] })],
      queryOf("spring of a pump noise"),
    );
    expect(first?.why).toEqual(["hydraulic pump", "spring"]);
  });

  test("what of the tractor it is not about", () => {
    const of = (question: string) =>
      rankRecords([card("A", { keys: ["spring"], only: { WN: ["no"] } })], queryOf(question))[0];
    expect(of("spring 59 Badger")?.misses).toEqual([]);
    expect(of("spring Heron")?.misses).toEqual(["line"]);
    expect(of("spring 1962")?.misses).toEqual(["year"]);
    expect(of("spring 1962 Heron with winch")?.misses).toEqual(["line", "year", "WN"]);
  });

  test("nothing of a tractor without what it is not about", () => {
    const [first] = rankRecords(
      [card("A", { keys: ["spring"], only: { WN: ["no"] } })],
      queryOf("spring without winch"),
    );
    expect(first?.misses).toEqual([]);
  });

  test("of which it is a step away", () => {
    const ranked = rankRecords([card("A", { components: ["pump"], links: ["B"] }), card("B")], queryOf("pump"));
    expect(ranked.map(({ step, points, why }) => [step, points > 0, why])).toEqual([
      [false, true, ["hydraulic pump"]],
      [true, false, ["named with A"]],
    ]);
  });

  test("and of the five best only", () => {
    const all = Array.from({ length: 6 }, (_, i) => card(`P${i}`, { components: ["pump"], links: [`far${i}`] }));
    const far = Array.from({ length: 6 }, (_, i) => card(`far${i}`));
    expect(order([...all, ...far], "pump").slice(6)).toEqual(["far0", "far1", "far2", "far3", "far4"]);
  });

  test("but one is a step only from what is about the tractor asked for", () => {
    const all = [card("A", { components: ["pump"], links: ["B"] }), card("B")];
    expect(order(all, "pump Badger")).toEqual(["A", "B"]);
    expect(order(all, "pump Heron")).toEqual(["A"]);
  });
});

describe("breadth", () => {
  const points = (one: Card, query: Query): number => rankRecords([one], query)[0]?.points ?? 0;
  const one = card("A", { components: ["pump"], keys: ["chatter", "noise"] });

  // question, of which the card covers every piece
  const BROAD: string[][] = [
    ["pump"],
    ["chatter"],
    ["chatter", "noise"],
    ["pump", "noise"],
    ["pump", "chatter", "noise"],
  ];
  test.each(BROAD.map((pieces) => ({ pieces, question: pieces.join(" ") })))("$question", ({ pieces, question }) => {
    const each = sum(pieces.map((piece) => points(one, queryOf(piece))));
    // What is named counts whole; a word as much as it is worth where the record is called so.
    const weights = pieces
      .map((piece) => (piece === "pump" ? 1 : points(one, queryOf(piece)) / POINTS.key))
      .sort((a, b) => b - a);
    const further = sum(weights.slice(1)) * POINTS.further;
    expect(points(one, queryOf(question))).toBeCloseTo(each + further, 8);
    // What it does not cover adds nothing.
    expect(points(one, queryOf(`${question} plough`))).toBeCloseTo(each + further, 8);
  });

  test("is of different things: what is called alike counts once", () => {
    const asked = queryOf("pump chatter");
    const chips = asked.reading.chips.map((chip) => ({ ...chip, label: "chatter" }));
    const alike = points(one, { ...asked, reading: { ...asked.reading, chips } });
    const weight = points(one, queryOf("chatter")) / POINTS.key;
    expect(points(one, asked) - alike).toBeCloseTo(weight * POINTS.further, 8);
  });
});

describe("what an answer rests on", () => {
  const all = ["A", "B", "C"].map((id) => card(id, { components: ["pump"] }));
  const carried = (question: string, by: string[]): string[] =>
    rankRecords([...all, card("far", { components: ["glass"] })], queryOf(question), by).map((it) => it.card.id);

  test("comes first, in the order of the argument", () => {
    expect(carried("pump", [])).toEqual(["A", "B", "C"]);
    expect(carried("pump", ["C", "B"])).toEqual(["C", "B", "A"]);
  });

  test("where the words speak for it, and where it is there", () => {
    expect(carried("pump", ["far", "gone", "C"])).toEqual(["C", "A", "B"]);
  });
});

// records that hold it, of how many, how much it counts
const RARE: [holders: number, records: number, counts: number][] = [
  [1, 100, 1],
  [10, 100, 0.5],
  [100, 100, 0.05],
  [200, 100, 0.05],
  [0, 100, 1],
  [1, 1, 1],
  [0, 0, 1],
];
test.each(RARE)("a word of %i records of %i counts %d", (holders, records, counts) => {
  expect(rarity(holders, records)).toBeCloseTo(counts, 10);
});

test("a component is called by the words of its names, and one that there is not by none", () => {
  expect([...componentWords(TRACTOR_WORDS, "three-point-arm")].sort()).toEqual(
    ["arm", "lift", "link", "of", "point", "the", "three", "threepoint"].sort(),
  );
  expect(componentWords(TRACTOR_WORDS, "constructor").size).toBe(0);
});

// word, a word of so many of the 40 records that it tells nothing
const COMMON: [word: string, common: boolean][] = [
  ["model", true], // 30
  ["Models", true],
  ["bolt", true], // 13
  ["pin", false], // 12, three tenths
  ["spring", false], // 11
  ["grease", false],
  ["plough", false],
];
test.each(COMMON)("%s is common: %s", (word, common) => {
  const vocabulary = { ...TRACTOR_WORDS, words: { ...TRACTOR_WORDS.words, bolt: 13, pin: 12 } };
  expect(isCommon(word, vocabulary)).toBe(common);
  expect(isCommon(word, { ...vocabulary, records: 20 })).toBe(false); // of a few records no word is
});

const WORDS = ["spring", "noise", "grease", "chatter", "leak", "run-out", "arm", "seal", "oil", "tension", "model"];
const someOf = <T>(values: readonly T[], maxLength = 3): fc.Arbitrary<T[]> =>
  fc.uniqueArray(fc.constantFrom(...values), { maxLength });
const years = fc.dictionary(fc.constantFrom("B", "H"), someOf([1957, 1958, 1959, 1960]), { maxKeys: 2 });
const anyCard = (id: string): fc.Arbitrary<Card> =>
  fc
    .record({
      kind: fc.constantFrom("record" as const, "record" as const, "bulletin" as const),
      issued: fc.constantFrom("1959-01-01", "1960-01-01"),
      systems: someOf(["hydraulics", "brakes", "torque-drive"]),
      components: someOf(Object.keys(TRACTOR_WORDS.components)),
      on: years,
      told: years,
      begins: fc.dictionary(fc.constantFrom("B", "H"), fc.constantFrom(1958, 1959, 1960), { maxKeys: 2 }),
      only: fc.dictionary(fc.constantFrom("WN", "PT"), someOf(["yes", "no"], 1), { maxKeys: 2 }),
      kinds: someOf(["part", "retrofit", "caution"]),
      says: someOf(["setting", "stands-in", "supersedes", "tell-apart", "built", "procedure", "interval"]),
      trap: fc.boolean(),
      parts: someOf(["HT-101", "HT-10O", "HT-102", "9 77"]),
      settings: someOf(["spring tension", "oil leak", "run-out", "out", "spring"], 1),
      links: someOf(["c0", "c1", "c2", "c3", "HY59-01"]),
      keys: someOf([...WORDS.flatMap(piecesOf), "winch", "pto", "torque"], 4),
      near: someOf(WORDS.flatMap(piecesOf), 4),
      withdrawn: fc.constantFrom(undefined, undefined, undefined, true as const),
      ended: fc.constantFrom(undefined, undefined, true as const),
    })
    .map(({ withdrawn, ended, ...rest }) =>
      card(id, { ...rest, ...(withdrawn ? { withdrawn } : {}), ...(ended ? { ended } : {}) }),
    );
const cards = fc.tuple(...["c0", "c1", "c2", "c3", "HY59-01"].map(anyCard)).map((all) => all as Card[]);
const texts = fc.dictionary(
  fc.constantFrom("c0", "c1", "c2", "HY59-01"),
  fc.array(fc.constantFrom(...WORDS, "of"), { maxLength: 6 }).map((words) => words.join(" ")),
);
const SAID = [
  ..."pump seal,oil seal,hub seal,brakes,hydraulics,clutch,winch,Badger,Heron,59,57-58,1960,with,without,pto,retrofit".split(
    ",",
  ),
  ..."does it fit,what changed,how much,which,caution,HT-101,HY59-01,HT-10O,superseded by,how often,torque drive".split(
    ",",
  ),
];
// "9-77" is read as no number, though a part has it.
const question = fc.array(fc.constantFrom(...SAID, ...WORDS, "9-77"), { maxLength: 7 }).map((words) => words.join(" "));
const query = fc.tuple(question, texts).map(([said, held]) => queryOf(said, held));

describe("compared with the rule, card by card", () => {
  test("points are the sum of what is named, its words, what is asked, the tractor and the trap", () => {
    let listed = 0;
    fc.assert(
      fc.property(cards, query, (all, asked) => {
        const slow = new Map(all.map((one) => [one.id, slowPoints(one, asked)]));
        const ranked = rankRecords(all, asked);
        for (const { card: one, points, misses } of ranked.filter(({ step }) => !step)) {
          listed++;
          expect([one.id, points]).toEqual([one.id, expect.closeTo(slow.get(one.id)?.points ?? -1, 8)]);
          expect([one.id, ...misses]).toEqual([one.id, ...(slow.get(one.id)?.misses ?? [])]);
        }
        const speaking = all.filter(({ id }) => slow.get(id)?.speaks).map(({ id }) => id);
        expect(ranked.flatMap(({ card: one, step }) => (step ? [] : [one.id])).sort()).toEqual(speaking.sort());
      }),
      { seed: SEED, numRuns: 900 },
    );
    expect(listed).toBeGreaterThan(900);
  });
});

/** The table of the head comment of rank.ts, one row after the other. */
function slowPoints(
  one: Card,
  { reading, vocabulary, holders }: Query,
): { points: number; misses: string[]; speaks: boolean } {
  const rare = (count: number): number => rarity(count, vocabulary.records);
  const of = (kind: Chip["kind"]): Chip[] => reading.chips.filter((chip) => chip.kind === kind);
  /** What of the question the record covers. */
  const covered = new Set<string>();
  const best = (chip: Chip, worth: (id: string) => number): number => {
    const points = Math.max(0, ...chip.ids.map(worth));
    if (points > 0) covered.add(chip.label);
    return points;
  };

  // What is named.
  const nearness = (id: string): number => {
    const few = 0.6 + 0.4 * rare(vocabulary.components[id]?.records ?? 1);
    const at = one.components.indexOf(id);
    if (at === 0) return POINTS.mainComponent * few;
    if (at > 0) return POINTS.component * few;
    const above = vocabulary.components[id]?.under;
    const isNear = one.components.some((own) => own === above || vocabulary.components[own]?.under === id);
    return isNear ? POINTS.family : 0;
  };
  const ofSystem = (id: string): number =>
    [POINTS.system + 1, POINTS.system, POINTS.system][one.systems.indexOf(id)] ?? 0;
  const veryWords = (chip: Chip): number => {
    const words = new Set(split(chip.said).flatMap(piecesOf));
    return sum(
      [...words].map((word) => (one.keys.includes(word) ? POINTS.chipKey * rare(vocabulary.words[word] ?? 1) : 0)),
    );
  };
  const called = (chip: Chip, points: number): number => (points > 0 ? points + veryWords(chip) : 0);
  const named = sum([
    ...of("record").map((chip) =>
      best(chip, (id) => (id === one.id ? POINTS.record : one.links.includes(id) ? POINTS.step : 0)),
    ),
    ...of("part").map((chip) => best(chip, (id) => (one.parts.includes(id) ? POINTS.part : 0))),
    ...of("component").map((chip) => called(chip, best(chip, nearness))),
    ...of("system").map((chip) => called(chip, best(chip, ofSystem))),
    // A trait names no record, but a record may be called by its words.
    ...of("trait").map(veryWords),
  ]);

  // Its words.
  const own = new Set(one.components.flatMap((id) => [...componentWords(vocabulary, id)]));
  const rest = [...new Set(reading.rest.split(" ").filter((word) => word !== ""))];
  const rarities = new Map<string, number>();
  const wordWorth = (word: string): number => {
    const pieces = piecesOf(word);
    // A word of so many records tells nothing where only the text holds it.
    const isOfMany = vocabulary.records > 20 && (vocabulary.words[fold(word)] ?? 1) / vocabulary.records > 0.3;
    const holding = isOfMany ? new Set<string>() : holders(word);
    const isPart = /\d/.test(word) && one.parts.some((part) => plainNumber(part) === plainNumber(word));
    const worth =
      isPart || pieces.some((piece) => one.keys.includes(piece))
        ? POINTS.key
        : pieces.some((piece) => one.near.includes(piece) || own.has(piece))
          ? POINTS.near
          : holding.has(cardAddress(one))
            ? POINTS.text
            : 0;
    if (worth > 0) covered.add(word);
    const rarityOf = rare(Math.max(vocabulary.words[fold(word)] ?? 1, holding.size));
    rarities.set(word, rarityOf);
    return worth * rarityOf;
  };
  const sideBySide = reading.phrases.map((phrase) =>
    holders(phrase).has(cardAddress(one)) ? POINTS.phrase * rare(holders(phrase).size) : 0,
  );
  // Every word of the setting's name is a word that is left, and not only a piece of one: "out" is none of "run-out".
  const isLeft = (word: string): boolean => rest.some((left) => keyOf([fold(left)]) === keyOf([fold(word)]));
  const isSetting = one.settings.some((name) => split(name).every(isLeft));
  const words = sum([...rest.map(wordWorth), ...sideBySide, isSetting ? POINTS.setting : 0]);

  // What is asked.
  const answers: Partial<Record<Asked, string[]>> = {
    "tell-apart": ["tell-apart"],
    retrofit: ["stands-in"],
    replaces: ["supersedes", "stands-in"],
    fits: ["stands-in"],
    current: ["supersedes", "built"],
    interval: ["interval"],
    setting: ["setting"],
    how: ["procedure"],
  };
  const ways = reading.asked.map(({ asked }) => asked);
  const says = ways.filter((way) => answers[way]?.some((type) => one.says.includes(type))).length * POINTS.asked;
  const isRetrofit = ways.includes("retrofit") && one.kinds.includes("retrofit");
  const kind = of("kind").filter(({ ids }) => ids.some((id) => one.kinds.includes(id))).length * POINTS.kind;

  // The car. A bulletin is of no line and year.
  const misses: string[] = [];
  let car = 0;
  const lines = of("line").flatMap(({ ids }) => ids);
  if (one.kind === "record" && lines.length > 0) {
    const isOf = lines.some((line) => line in one.told);
    car += isOf ? POINTS.line : POINTS.notThatLine;
    if (!isOf) misses.push("line");
  }
  const wanted = of("year").flatMap(({ ids }) => ids.map(Number));
  if (one.kind === "record" && wanted.length > 0) {
    const isOfLine = (line: string): boolean => lines.length === 0 || lines.includes(line);
    // Without a line asked for, only lines count of which something is told.
    const counted = Object.keys({ ...one.told, ...one.on, ...one.begins }).filter(
      (line) => isOfLine(line) && (lines.length > 0 || line in one.told),
    );
    const has = (all: Readonly<Record<string, readonly number[]>>): boolean =>
      counted.some((line) => (all[line] ?? []).some((year) => wanted.includes(year)));
    if (!has(one.told)) {
      car += POINTS.notThatYear;
      misses.push("year");
    } else {
      if (has(one.on)) car += POINTS.year;
      const isNew = counted.some((line) => wanted.includes(one.begins[line] ?? 0));
      if (isNew) car += ways.includes("changed") ? POINTS.newThatYearAsked : POINTS.newThatYear;
    }
  }
  // What is said for certain, denied or not; what is only named counts as said. No list holds what a tractor is not.
  const { car: sure, donor } = carsSaid(reading);
  const certain = [...sure, ...donor].filter((fact) => fact.kind === "trait");
  const spoken = of("trait").filter(({ ids }) => !certain.some((fact) => fact.ids.join() === ids.join()));
  for (const { ids, denied } of [...certain, ...spoken.map(({ ids: own }) => ({ ids: own, denied: false }))]) {
    const isFlag = ids.every((id) => id.endsWith("=yes"));
    if (denied && !isFlag) continue;
    const trait = ids[0]?.split("=")[0] ?? "";
    const only = one.only[trait];
    if (!only) continue;
    const isSuch = denied ? only.includes("no") : ids.some((id) => only.includes(id.slice(trait.length + 1)));
    car += isSuch ? POINTS.trait : POINTS.notThatTrait;
    if (!isSuch) misses.push(trait);
  }

  const isOnlyOfCar = rest.length === 0 && reading.chips.every((chip) => ["line", "year", "trait"].includes(chip.kind));
  const speaks = named + words + kind > 0 || (isOnlyOfCar && car > 0 && misses.length === 0);
  // Breadth, and the trap.
  // Whatever is named counts whole, a word by its rarity; the weightiest thing is not a further one.
  const byWeight = [...covered].map((it) => rarities.get(it) ?? 1).sort((a, b) => b - a);
  const breadth = sum(byWeight.slice(1)) * POINTS.further;
  const trap = (one.trap ? POINTS.trap : 0) + (one.ended ? POINTS.ended : 0);
  const points = one.withdrawn
    ? Math.min(1, named + words)
    : named + words + kind + says + (isRetrofit ? POINTS.kind : 0) + car + trap + breadth;
  return { points: Math.max(points, 0.01), misses, speaks };
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((all, one) => all + one, 0);
}

describe("of any question", () => {
  const options = { seed: SEED, numRuns: 300 };

  test("the order of the records does not hang on the order in which they came", () => {
    const turned = cards.chain((all) =>
      fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length, maxLength: all.length })),
    );
    fc.assert(
      fc.property(turned, query, ([all, other], asked) => {
        expect(rankRecords(other, asked)).toEqual(rankRecords(all, asked));
      }),
      options,
    );
  });

  test("each record stands there once, more points before fewer, steps last; and no card changes", () => {
    fc.assert(
      fc.property(cards, query, someOf(["c1", "c2", "gone"]), (all, asked, by) => {
        const before = JSON.stringify(all);
        const ranked = rankRecords(all, asked, by);
        expect(new Set(ranked.map(({ card: one }) => one)).size).toBe(ranked.length);
        const listed = ranked.filter(({ step }) => !step);
        expect(ranked.slice(listed.length).every(({ step, points }) => step && points === 0)).toBe(true);
        const points = listed.map((it) => it.points);
        expect(points).toEqual([...points].sort((a, b) => b - a));
        for (const it of listed) expect(it.points).toBeGreaterThan(0);
        expect(JSON.stringify(all)).toBe(before);
      }),
      options,
    );
  });

  test("a line less in the question is a miss less or none: taking its chip away never adds one", () => {
    const without = (reading: Reading): Reading => ({
      ...reading,
      chips: reading.chips.filter(({ kind }) => kind !== "line"),
    });
    fc.assert(
      fc.property(cards, query, (all, asked) => {
        const misses = new Map(rankRecords(all, asked).map((it) => [it.card.id, it.misses]));
        for (const it of rankRecords(all, { ...asked, reading: without(asked.reading) }))
          if (misses.has(it.card.id))
            for (const miss of it.misses)
              expect([it.card.id, misses.get(it.card.id)?.includes(miss)]).toEqual([it.card.id, true]);
      }),
      options,
    );
  });
});

describe("the records of the data folder", async () => {
  const index = askIndexOf((await demoKnowledge()).catalog);
  const rank = (said: string) =>
    rankRecords(index.cards, {
      reading: readQuestion(index.vocabulary, said, index.numbers),
      vocabulary: index.vocabulary,
      holders: (words) => recordsWith(index, words),
    });

  const records = index.cards.filter((one) => one.kind === "record" && !one.withdrawn);

  test("each come first by their own id", () => {
    expect(records.filter(({ id }) => rank(id)[0]?.card.id !== id).map(({ id }) => id)).toEqual([]);
  });

  test("each stand among the first five by their own title, though it may name nothing but a car", () => {
    const isFirst = ({ id, title }: Card): boolean =>
      rank(title)
        .slice(0, 5)
        .some((it) => it.card.id === id);
    expect(records.filter((one) => !isFirst(one)).map(({ title }) => title)).toEqual([]);
  });

  test("are found by every part that they name", () => {
    const lost = [...new Set(index.cards.flatMap(({ parts }) => parts))].filter((part) => {
      const [first] = rank(part);
      return !first?.card.parts.includes(part);
    });
    expect(lost).toEqual([]);
  });
});
