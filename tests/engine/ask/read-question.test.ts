import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { askIndexOf } from "../../../src/engine/answers/ask-index.ts";
import { ASKED_KINDS, type Asked } from "../../../src/engine/ask/asked.ts";
import { keyOf, namesOf } from "../../../src/engine/ask/names.ts";
import { type Reading, readQuestion } from "../../../src/engine/ask/read-question.ts";
import { fold, split } from "../../../src/engine/ask/split.ts";
import type { Name, Vocabulary } from "../../../src/engine/ask/vocabulary-shape.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { SEED } from "../../helpers/seed.ts";
import { TRACTOR_NUMBERS, TRACTOR_WORDS } from "../../helpers/tractor-words.ts";
import {
  BEYOND,
  EQUIPMENT,
  FIGURES,
  JOINED,
  NOT_YET,
  PHRASES,
  PLATE_NUMBERS,
  QUESTIONS,
  SLIPS,
  WAYS,
  WRITTEN_NUMBERS,
} from "./read-question.cases.ts";

const inShort = ({ chips }: Reading): string[] => chips.map(({ kind, ids }) => `${kind} ${ids.join()}`);
const asked = (reading: Reading): Asked[] => reading.asked.map((it) => it.asked);
const corrected = (reading: Reading): string[] =>
  reading.corrected.map(({ said, readAs }) => `${said}: ${readAs.join(", or ")}`);
const read = (question: string): Reading => readQuestion(TRACTOR_WORDS, question);

const NO_WORDS: Vocabulary = {
  names: [],
  ignore: [],
  plain: [],
  mean: [],
  serials: [],
  units: [],
  shelves: [],
  records: 0,
  components: {},
  called: {},
  words: {},
};
const NOTHING: Partial<Reading> = {
  chips: [],
  asked: [],
  rest: "",
  phrases: [],
  words: [],
  figures: [],
  corrected: [],
};

describe("a question is read", () => {
  test.each(QUESTIONS)("%s", (question, chips, rest, ways = []) => {
    const reading = read(question);
    expect([inShort(reading), reading.rest, asked(reading)]).toEqual([chips, rest, ways]);
  });

  test("a chip keeps the words it was read from, where they stand, and the labels of all that they name", () => {
    expect(read("Oil Seals of 57-59 brocks").chips).toEqual([
      {
        kind: "component",
        ids: ["pump-seal", "hub-seal"],
        label: "pump seal or hub seal",
        said: "Oil Seals",
        at: 0,
        length: 2,
        options: [
          { id: "pump-seal", label: "pump seal" },
          { id: "hub-seal", label: "hub seal" },
        ],
      },
      { kind: "year", ids: ["1957", "1958", "1959"], label: "1957 to 1959", said: "57-59", at: 3, length: 1 },
      { kind: "line", ids: ["B"], label: "Badger", said: "brocks", at: 4, length: 1 },
    ]);
  });

  test("what is asked keeps its words and its place", () => {
    expect(read("Badger: What Changed").asked).toEqual([
      { asked: "changed", label: "what changed", said: "What Changed", at: 1, length: 2 },
    ]);
    expect(read("on which pump").asked).toMatchObject([{ asked: "tell-apart", said: "which", at: 1 }]);
  });

  test("a chip of a misspelt word says what it was taken for, and keeps what was typed", () => {
    expect(read("the Clucth").chips).toEqual([
      { kind: "component", ids: ["clutch"], label: "clutch", said: "Clucth", at: 1, length: 1, readAs: "clutch" },
    ]);
  });

  test("keeps the places of words before which a comma or the like stands", () => {
    expect(read("pump of the 57, Badger (with winch)").heads).toEqual([5, 6]);
    expect(read("pump of the 57 Badger").heads).toEqual([]);
  });

  // question, what its chips show, of words that were exchanged
  const TYPED: [question: string, said: string[]][] = [
    ["shaftless", ["shaftless"]], // only its later words are a name
    ["Breaks", ["Breaks"]],
    ["the slick pump", ["slick pump"]],
    ["oil pipe", ["oil pipe"]], // only its first word is a name
    ["pump, pump seal", ["pump", "pump seal"]],
    ["pump of the shaftless brock", ["pump", "shaftless", "brock"]],
  ];
  test.each(TYPED)("a chip of a saying shows what was typed, once: %s", (question, said) => {
    expect(read(question).chips.map((chip) => chip.said)).toEqual(said);
  });

  test("a word that says what years are meant is no slip of a word of the records", () => {
    const words = { ...TRACTOR_WORDS, words: { outward: 3 } };
    expect(inShort(readQuestion(words, "60 onwards"))).toEqual(["year 1960,1961,1962"]);
  });

  test("where two centuries end alike, two digits name no year", () => {
    const years = ["1859", "1959"].map((id) => ({ kind: "year" as const, id, label: id, say: [id] }));
    expect(inShort(readQuestion({ ...NO_WORDS, names: years }, "59 1859 59-1959"))).toEqual(["year 1859"]);
  });

  test("with a single year in the data, only that year is one", () => {
    const names: Name[] = [{ kind: "year", id: "1959", label: "1959", say: ["1959"] }];
    const reading = readQuestion({ ...NO_WORDS, names }, "pump - 1958 59");
    expect([inShort(reading), reading.rest, reading.beyond]).toEqual([["year 1959"], "pump", ["1958"]]);
  });

  test("without a vocabulary every word is left but the grammar", () => {
    expect(readQuestion(NO_WORDS, "Pumps of '59")).toMatchObject({
      ...NOTHING,
      rest: "Pumps '59",
      phrases: ["Pumps of", "of '59"],
      words: ["pump", "of", "'59"],
    });
  });
});

describe("what is asked", () => {
  test.each(WAYS)("%s", (question, ways) => {
    expect(asked(read(question))).toEqual(ways);
  });
});

describe("a slip", () => {
  test.each(SLIPS)("%s", (question, chips, rest, slips) => {
    const reading = read(question);
    expect([inShort(reading), reading.rest, corrected(reading)]).toEqual([chips, rest, slips]);
  });

  test("that is as near to several words is a choice", () => {
    const names = ["dipper", "dapper"].map((label): Name => ({ kind: "component", id: label, label, say: [label] }));
    const reading = readQuestion({ ...NO_WORDS, names }, "dopper");
    expect(corrected(reading)).toEqual(["dopper: dipper, or dapper"]);
    expect(inShort(reading)).toEqual(["component dipper"]);
  });
});

describe("words run together or apart", () => {
  test.each(JOINED)("%s", (question, chips, rest) => {
    const reading = read(question);
    expect([inShort(reading), reading.rest]).toEqual([chips, rest]);
  });
});

describe("a number with its unit", () => {
  test.each(FIGURES)("%s", (question, chips, rest, figures) => {
    const reading = read(question);
    expect([inShort(reading), reading.rest, reading.figures]).toEqual([chips, rest, figures]);
  });
});

describe("a number of a part or a paper", () => {
  test.each(WRITTEN_NUMBERS)("%s", (question, chips, rest) => {
    const reading = readQuestion(TRACTOR_WORDS, question, TRACTOR_NUMBERS);
    const typed = reading.chips.map(({ kind, ids, said }) => `${kind} ${ids.join()} <${said}>`);
    expect([typed, reading.rest, corrected(reading)]).toEqual([chips, rest, []]);
  });
});

describe("a number off a plate", () => {
  test.each(PLATE_NUMBERS)("%s", (question, chips, rest) => {
    const reading = read(question);
    expect([inShort(reading), reading.rest]).toEqual([chips, rest]);
  });
});

describe("equipment", () => {
  test.each(EQUIPMENT)("%s", (question, chips, rest) => {
    const reading = read(question);
    expect([inShort(reading), reading.rest]).toEqual([chips, rest]);
  });
});

describe("a year that the records do not cover", () => {
  test.each(BEYOND)("%s", (question, beyond, chips, rest) => {
    const reading = read(question);
    expect([reading.beyond, inShort(reading), reading.rest]).toEqual([beyond, chips, rest]);
  });
});

describe("phrases", () => {
  test.each(PHRASES)("%s", (question, phrases) => {
    expect(read(question).phrases).toEqual(phrases);
  });
});

describe("not read rightly yet", () => {
  test.fails.each(NOT_YET)("%s: $3", (question, chips, rest) => {
    const reading = read(question);
    expect([inShort(reading), reading.rest]).toEqual([chips, rest]);
  });

  test.fails("what is typed with a plus sign is shown so", () => {
    expect(read("60+").chips.map(({ said }) => said)).toEqual(["60+"]);
  });
});

describe("any text at all", () => {
  const tables = [QUESTIONS, WAYS, SLIPS, JOINED, FIGURES, WRITTEN_NUMBERS, PLATE_NUMBERS, EQUIPMENT, BEYOND, PHRASES];
  const said = tables.flatMap((rows) => rows.flatMap(([question]) => question.split(" ")));
  const text = fc.oneof(
    fc.string({ unit: "grapheme", maxLength: 80 }),
    fc.array(fc.constantFrom(...said), { maxLength: 12 }).map((words) => words.join(" ")),
  );
  const options = { seed: SEED, numRuns: 800 };
  const ids = new Map<string, Set<string>>();
  for (const { kind, id } of TRACTOR_WORDS.names) ids.set(kind, (ids.get(kind) ?? new Set()).add(id));
  for (const { kind, id } of [...TRACTOR_NUMBERS.values()].flat()) ids.set(kind, (ids.get(kind) ?? new Set()).add(id));
  /** Of a number off a plate the names hold no value each. */
  const isOfTractor = (id: string): boolean => /^(plant|number|axle|box)=[KDA]?\d*$/.test(id);

  test("is read into chips whose ids exist, each thing once, and ways to ask, each once", () => {
    fc.assert(
      fc.property(text, (question) => {
        const reading = readQuestion(TRACTOR_WORDS, question, TRACTOR_NUMBERS);
        for (const chip of reading.chips) {
          expect(chip.ids.length).toBeGreaterThan(0);
          for (const id of chip.ids) expect([id, ids.get(chip.kind)?.has(id) || isOfTractor(id)]).toEqual([id, true]);
          if (chip.options) expect(chip.options.map(({ id }) => id)).toEqual(chip.ids);
          expect(chip.label).not.toBe("");
        }
        const things = reading.chips.filter(({ kind }) => !["line", "year", "trait"].includes(kind));
        expect(new Set(things.map(({ kind, ids: own }) => `${kind} ${own}`)).size).toBe(things.length);
        for (const { at, length } of [...reading.chips, ...reading.asked]) {
          expect(length).toBeGreaterThan(0);
          expect(at + length).toBeLessThanOrEqual(reading.words.length);
        }
        expect(new Set(asked(reading)).size).toBe(reading.asked.length);
        for (const way of asked(reading)) expect(ASKED_KINDS).toContain(way);
      }),
      options,
    );
  });

  test("leaves words for the text search that are still words, and phrases and figures out of the question", () => {
    fc.assert(
      fc.property(text, (question) => {
        const { rest, phrases, figures, words, corrected } = read(question);
        expect(split(rest)).toEqual(rest === "" ? [] : rest.split(" "));
        const all = ` ${words.join(" ")} `;
        for (const run of [...phrases, ...figures]) expect(all).toContain(` ${run.split(" ").map(fold).join(" ")} `);
        for (const word of rest.split(" ").filter(Boolean)) expect(words).toContain(fold(word));
        for (const { said, readAs } of corrected) {
          expect(split(question.replaceAll(/(\d)\+/g, "$1 onwards"))).toContain(said);
          expect(namesOf(TRACTOR_WORDS).known.has(fold(said))).toBe(false);
          expect(readAs.length).toBeGreaterThan(0);
        }
      }),
      options,
    );
  });

  test("is read the same a second time, and in a copy of the vocabulary as the page loads it", () => {
    const copy = JSON.parse(JSON.stringify(TRACTOR_WORDS)) as Vocabulary;
    fc.assert(
      fc.property(text, (question) => {
        const reading = readQuestion(TRACTOR_WORDS, question, TRACTOR_NUMBERS);
        expect(readQuestion(TRACTOR_WORDS, question, TRACTOR_NUMBERS)).toEqual(reading);
        expect(readQuestion(copy, question, TRACTOR_NUMBERS)).toEqual(reading);
      }),
      { ...options, numRuns: 300 },
    );
  });

  test("means the same in capitals, and with commas", () => {
    const plain = fc.array(fc.constantFrom(...said.filter((word) => /^[a-z]{3,}$/.test(word))), { maxLength: 8 });
    fc.assert(
      fc.property(plain, (words) => {
        const meant = inShort(read(words.join(" ")));
        expect(inShort(read(words.join(" ").toUpperCase()))).toEqual(meant);
        expect(inShort(read(` ${words.join(", ")}?`))).toEqual(meant);
      }),
      { ...options, numRuns: 500 },
    );
  });

  test("of 40,000 words, or of one word of a million letters, is read to its end", () => {
    const times = 4_500;
    const question = "what changed on the oil seal of HY59-01 slick ".repeat(times);
    const reading = read(question);
    expect(inShort(reading)).toEqual(["component pump-seal,hub-seal"]);
    expect(asked(reading)).toEqual(["changed"]);
    expect(reading.rest).toBe("HY59-01 slick ".repeat(times).trim());
    expect(read("s".repeat(1_000_000)).rest).toHaveLength(1_000_000);
    expect(read("-'".repeat(500_000))).toMatchObject(NOTHING);
    expect(read("e\u0301".repeat(300_000)).rest).toHaveLength(300_000);
  });
});

describe("the words of the data folder", async () => {
  const { vocabulary, numbers } = askIndexOf((await demoKnowledge()).catalog);
  const key = (text: string): string => keyOf(split(text).map(fold));
  const sayings = new Map(vocabulary.mean.map(([say, mean]) => [key(say), mean]));
  const called = new Map<string, Name[]>();
  for (const name of vocabulary.names)
    for (const said of name.say) called.set(key(said), [...(called.get(key(said)) ?? []), name]);

  /** Of names with the same words: which tractor it is before what it has; else a thing, of its first kind; else what it has. */
  const kindMeant = (named: readonly Name[]): string | undefined => {
    const isFlag = named.some(({ id, kind }) => kind === "trait" && /=yes$/.test(id));
    const [thing] = named.filter(({ kind }) => kind !== "trait");
    return named.some(({ kind }) => kind === "trait") && (!thing || !isFlag) ? "trait" : thing?.kind;
  };

  test("whatever a thing is called finds it, unless the editor gave these very words another meaning", () => {
    const lost = vocabulary.names.flatMap((name) =>
      name.say
        .filter((said) => !sayings.has(key(said)))
        .filter((said) => kindMeant(called.get(key(said)) ?? []) === name.kind)
        .filter((said) => {
          const reading = readQuestion(vocabulary, said);
          // A kind of change may be what is asked, by the same words.
          return !reading.chips.some(({ ids }) => ids.includes(name.id)) && !(name.kind === "kind" && reading.asked[0]);
        })
        .map((said) => `${name.kind} ${name.id}: ${said}`),
    );
    expect(lost).toEqual([]);
  });

  test("whatever people say is read as the word that the records use for it", () => {
    const differ = vocabulary.mean
      .map(([say, mean]) => [readQuestion(vocabulary, say), readQuestion(vocabulary, mean), say] as const)
      .filter(([said, meant]) => inShort(said).join() !== inShort(meant).join() || said.rest !== meant.rest)
      .map(([, , say]) => say);
    expect(differ).toEqual([]);
  });

  test("no name, saying or word of the texts is taken for a slip", () => {
    const said = [
      ...vocabulary.names.flatMap(({ say }) => say),
      ...vocabulary.mean.flat(),
      ...vocabulary.ignore,
      ...vocabulary.plain,
      ...Object.keys(vocabulary.words),
    ];
    expect(readQuestion(vocabulary, said.join(" ")).corrected).toEqual([]);
  });

  test.each([
    "since",
    "before",
    "up to",
    "earlier",
    "later",
    "after",
    "until",
    "through",
    "prior",
    "older",
    "newer",
    "onwards",
    "till",
    "thru",
  ])("'%s', which says what years are meant, is taken for no slip", (word) => {
    expect(readQuestion(vocabulary, `${word} brakes`).corrected).toEqual([]);
  });

  /** How people write a number: as the records do, run together, in pieces, with dots, in small letters, with O for 0. */
  const WRITINGS: Record<string, (number: string) => string> = {
    "as it is": (number) => number,
    "run together": (number) => number.replaceAll(/[^\p{Letter}\p{Number}]/gu, ""),
    "in pieces": (number) => number.replaceAll(/[^\p{Letter}\p{Number}]+/gu, " "),
    "with dots": (number) => number.replaceAll(/[^\p{Letter}\p{Number}]+/gu, "."),
    "with hyphens": (number) => number.replaceAll(/[^\p{Letter}\p{Number}]+/gu, "-"),
    "in small letters": (number) => number.toLowerCase(),
    "with O for 0": (number) => number.replaceAll("0", "O"),
    "in small letters, with o for 0": (number) => number.toLowerCase().replaceAll("0", "o"),
  };
  test.each(Object.entries(WRITINGS))("every number of a part or record, %s, is read as itself", (_, write) => {
    const wrong = [...numbers.values()]
      .flat()
      .filter(({ as }) => as === undefined)
      .filter(({ kind, id }) => {
        const [chip, ...others] = readQuestion(vocabulary, write(id), numbers).chips;
        return others.length > 0 || chip?.kind !== kind || chip.ids.join() !== id;
      });
    expect(wrong.map(({ id }) => write(id))).toEqual([]);
  });
});
