import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fold, type Reading, readQuestion, split, wanted } from "../../../src/engine/ask/read-question.ts";
import { vocabularyOf } from "../../../src/engine/ask/vocabulary.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { SEED } from "../../helpers/seed.ts";
import { QUESTIONS, TRACTOR_WORDS } from "./read-question.cases.ts";

const inShort = ({ chips }: Reading): string[] => chips.map(({ kind, ids }) => `${kind} ${ids.join()}`);

describe("a question is read", () => {
  test.each(QUESTIONS)("%s", (question, chips, rest) => {
    const reading = readQuestion(TRACTOR_WORDS, question);
    expect([inShort(reading), reading.rest]).toEqual([chips, rest]);
  });

  test("a chip keeps the words it was read from, and the label of the first that they name", () => {
    expect(readQuestion(TRACTOR_WORDS, "Oil Seals of 57-59 brocks").chips).toEqual([
      { kind: "component", ids: ["pump-seal", "hub-seal"], label: "pump seal", said: "Oil Seals" },
      { kind: "year", ids: ["1957", "1958", "1959"], label: "1957 to 1959", said: "57-59" },
      { kind: "line", ids: ["B"], label: "Badger", said: "brocks" },
    ]);
  });

  test("where two centuries end alike, two digits name no year", () => {
    const years = ["1859", "1959"].map((id) => ({ kind: "year" as const, id, label: id, say: [id] }));
    const words = { names: years, ignore: [], mean: [] };
    expect(inShort(readQuestion(words, "59 1859 59-1959"))).toEqual(["year 1859"]);
  });

  test("with a single year in the data, only that year is one", () => {
    const words = {
      names: [{ kind: "year" as const, id: "1959", label: "1959", say: ["1959"] }],
      ignore: [],
      mean: [],
    };
    const reading = readQuestion(words, "pump - 1958 59");
    expect([inShort(reading), reading.rest]).toEqual([["year 1959"], "pump 1958"]);
  });

  test("without a vocabulary every word is left", () => {
    expect(readQuestion({ names: [], ignore: [], mean: [] }, "Pumps of '59")).toEqual({
      chips: [],
      rest: "Pumps of '59",
    });
  });
});

describe("any text at all", () => {
  const text = fc.oneof(
    fc.string({ unit: "grapheme", maxLength: 80 }),
    fc
      .array(fc.constantFrom(...QUESTIONS.flatMap(([question]) => question.split(" "))), { maxLength: 12 })
      .map((words) => words.join(" ")),
  );

  test("is read, and every word ends in a chip, in the rest, or is one that names nothing", () => {
    fc.assert(
      fc.property(text, (question) => {
        const { chips, rest } = readQuestion(TRACTOR_WORDS, question);
        const names = new Map(TRACTOR_WORDS.names.map((name) => [`${name.kind} ${name.id}`, name]));
        for (const { kind, ids, said } of chips) {
          expect(ids.length).toBeGreaterThan(0);
          for (const id of ids) expect(names.has(`${kind} ${id}`)).toBe(true);
          expect(said).not.toBe("");
        }
        expect(split(rest)).toEqual(rest === "" ? [] : rest.split(" "));
        expect(new Set(chips.map(({ kind, ids }) => `${kind} ${ids}`)).size).toBe(chips.length);
      }),
      { seed: SEED, numRuns: 2000 },
    );
  });

  test("of 200,000 words, or of one word as long, is read to its end", () => {
    const question = "what changed on the oil seal of HY59-01 slick ".repeat(20_000);
    const reading = readQuestion(TRACTOR_WORDS, question);
    expect(inShort(reading)).toEqual(["component pump-seal,hub-seal"]);
    expect(reading.rest).toBe("HY59-01 slick ".repeat(20_000).trim());
    expect(readQuestion(TRACTOR_WORDS, "s".repeat(1_000_000)).rest).toHaveLength(1_000_000);
    expect(readQuestion(TRACTOR_WORDS, "-'".repeat(500_000))).toEqual({ chips: [], rest: "" });
    expect(readQuestion(TRACTOR_WORDS, "e\u0301".repeat(300_000)).rest).toHaveLength(300_000);
  });
});

// word, as it is compared
const FOLDED: [string, string][] = [
  ["Brakes", "brake"],
  ["BRAKE'S", "brake"],
  ["switches", "switch"],
  ["bushes", "bush"],
  ["boxes", "box"],
  ["gases", "gase"],
  ["glass", "glass"],
  ["gas", "gas"], // too short for a plural
  ["radius", "radius"],
  ["59s", "59s"],
  ["V8s", "v8s"],
];
test.each(FOLDED)("%s is compared as %s", (word, folded) => {
  expect(fold(word)).toBe(folded);
});

test("what is wanted is gathered kind by kind, each id once", () => {
  const { chips } = readQuestion(TRACTOR_WORDS, "oil seal, hub seal, Badger 57-58 58-59");
  expect([...wanted(chips)]).toEqual([
    ["component", ["pump-seal", "hub-seal"]],
    ["line", ["B"]],
    ["year", ["1957", "1958", "1959"]],
  ]);
  expect([...wanted([])]).toEqual([]);
});

describe("the words of the data folder", async () => {
  const vocabulary = vocabularyOf((await demoKnowledge()).catalog);
  const key = (text: string): string => split(text).map(fold).join(" ");
  const sayings = new Map(vocabulary.mean.map(([say, mean]) => [key(say), mean]));

  test("whatever a thing is called finds it, unless the editor gave these very words another meaning", () => {
    const lost = vocabulary.names.flatMap((name) =>
      name.say
        .filter((said) => !sayings.has(key(said)))
        .filter((said) => {
          const named = vocabulary.names.filter((other) => other.say.some((words) => key(words) === key(said)));
          const chip = readQuestion(vocabulary, said).chips.find(({ ids }) => ids.includes(name.id));
          // The same words may name a thing of another kind; the first of them is meant.
          return !chip && named[0]?.kind === name.kind;
        })
        .map((said) => `${name.kind} ${name.id}: ${said}`),
    );
    expect(lost).toEqual([]);
  });

  test("whatever people say is read as the word that the records use for it", () => {
    const differ = [...sayings]
      .map(([say, mean]) => [readQuestion(vocabulary, say), readQuestion(vocabulary, mean), say] as const)
      .filter(([said, meant]) => inShort(said).join() !== inShort(meant).join() || said.rest !== meant.rest)
      .map(([, , say]) => say);
    expect(differ).toEqual([]);
  });
});
