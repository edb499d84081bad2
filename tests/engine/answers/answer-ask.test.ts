/**
 * What every answer to a question in words must keep, whatever was typed:
 *   it has its shape and is plain data, and the same question has the same answer;
 *   it names records that exist, or says that nothing is on record;
 *   what it says of a part is what "may it go on" says, asked of the same car;
 *   a car of which less is known is never allowed more.
 */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { answerAsk } from "../../../src/engine/answers/answer-ask.ts";
import { answerMayFit, type MayFitQuestion } from "../../../src/engine/answers/answer-may-fit.ts";
import { askIndexOf } from "../../../src/engine/answers/ask-index.ts";
import type { Knowledge } from "../../../src/engine/answers/knowledge.ts";
import { type AskAnswer, askAnswer } from "../../../src/engine/answers/shapes/ask.ts";
import type { CarInput } from "../../../src/engine/answers/shapes/car.ts";
import type { MayFitAnswer } from "../../../src/engine/answers/shapes/may-fit.ts";
import type { RetrofitsAnswer } from "../../../src/engine/answers/shapes/retrofits.ts";
import { ASKED_WORDS } from "../../../src/engine/ask/asked.ts";
import * as littleWords from "../../../src/engine/ask/little-words.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { fixtureRows } from "../../helpers/fixture-rows.ts";
import { SEED } from "../../helpers/seed.ts";
import { ASKED, askedKnowledge } from "../../helpers/tiny-asked.ts";
import type { Spoil } from "../../helpers/tiny-folder.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

type Answer = AskAnswer["answers"][number];
type Row = [question: string, verdict: string, asks: string, of: string, facts: string, says: string];

const MAY = ["as built", "yes", "yes, on conditions"];
/** How an answer without a record says that there is none. */
const NOTHING = /not on record|no record|\bno such\b|^no .* on record|not understood|nothing was compared/i;

const demo = await demoKnowledge();
const tractors = askedKnowledge();

function ask(knowledge: Knowledge, text: string, car: CarInput = {}, without: readonly string[] = []): AskAnswer {
  return answerAsk(knowledge, { text, car, picks: { without, meant: {} } });
}

/** Says that a part may go on, or was fitted by the plant, or that a reading passes. */
function permits({ asked, verdict, answer }: Answer): boolean {
  if (asked.question === "reading") return verdict === "within";
  if (asked.question === "retrofits") return (answer as RetrofitsAnswer).paths.some((it) => it.certain);
  if (asked.question !== "may-fit") return false;
  return MAY.includes(verdict) || (answer as MayFitAnswer).places.some((it) => MAY.includes(it.verdict));
}

describe("questions read by hand from the records", () => {
  test.each(fixtureRows<Row>("asked"))("%s", (question, verdict, asks, of, facts, says) => {
    const answer = ask(demo, question);
    expectLawful(demo, question, answer);
    if (says === "no permission") {
      expect(answer.answers.filter(permits)).toEqual([]);
      return;
    }
    if (says === "no reading") {
      expect(answer.answers.map((it) => it.asked.question)).not.toContain("reading");
      return;
    }
    const said = (field: string, all: readonly string[]): string => {
      if (field === "*") return field;
      return new Set(all).size > 1 ? all.join(" + ") : (all[0] ?? "-");
    };
    const all = answer.answers;
    expect({
      verdict: answer.verdict,
      asks: said(
        asks,
        all.map((it) => it.asked.question),
      ),
      of: of === "*" ? of : all.map(matterOf).join(" + ") || "-",
      facts: said(
        facts,
        all.map((it) => factsOf(it.asked.car as CarInput)),
      ),
      says: said(
        says,
        all.map((it) => it.verdict),
      ),
    }).toEqual({ verdict, asks, of, facts, says });
  });
});

/** The part, place, setting, record or years that an answer is about, as the fixture writes it. */
function matterOf({ asked }: Answer): string {
  const { part, parts, component, setting, record, from, to, place, value, about } = asked as Record<string, unknown>;
  const years = from === undefined ? "" : `${from} to ${to}`;
  return [
    part ?? (parts as string[] | undefined)?.join(", ") ?? component ?? setting ?? record ?? years,
    place ? `@ ${place}` : "",
    value ? `= ${value}` : "",
    (about as string[] | undefined)?.length ? `about ${(about as string[]).join(", ")}` : "",
  ]
    .filter(Boolean)
    .join(" ");
}

function factsOf({ facts = {} }: CarInput): string {
  const written = Object.entries(facts).map(([trait, value]) => `${trait}=${[value].flat().join(",")}`);
  return written.sort().join(";") || "-";
}

function expectLawful(knowledge: Knowledge, question: string, answer: AskAnswer): void {
  const { catalog } = knowledge;
  expect(askAnswer.parse(answer)).toEqual(JSON.parse(JSON.stringify(answer)));
  for (const { record } of [answer, ...answer.answers].flatMap(({ because }) => because))
    expect([question, record, catalog.records.has(record) || catalog.bulletins.has(record)]).toEqual([
      question,
      record,
      true,
    ]);
  if (answer.answers.length > 0)
    expect(answer.answers.flatMap(({ because }) => because)).toEqual(expect.arrayContaining([...answer.because]));
  if (answer.verdict === "answered") expect([question, answer.answers.length > 0]).toEqual([question, true]);
  for (const it of answer.answers) {
    const isCarried = it.because.length > 0 || NOTHING.test(`${it.says} ${it.verdict}`);
    expect([question, it.says, isCarried]).toEqual([question, it.says, true]);
    // Where a part is not to go along, the answer is no more than that to the question without these words.
    if (it.asked.question !== "may-fit" || it.asked.leftOut !== undefined) continue;
    const { verdict, because } = answerMayFit(knowledge, it.asked as unknown as MayFitQuestion);
    expect([question, it.verdict, it.because]).toEqual([question, verdict, because]);
  }
}

describe("any question made of words that are known", () => {
  const words = (knowledge: Knowledge): fc.Arbitrary<string> => {
    const { vocabulary } = askIndexOf(knowledge.catalog);
    const from = (all: readonly string[]) => fc.constantFrom(...all);
    return fc
      .array(
        fc.oneof(
          from(vocabulary.names.flatMap(({ say }) => say)),
          from(ASKED_WORDS),
          from([...knowledge.catalog.parts.keys(), ...knowledge.catalog.records.keys()]),
          from(vocabulary.mean.map(([say]) => say)),
          from([
            "on",
            "off",
            "from",
            "without",
            "with",
            "not",
            "and",
            "left",
            "right",
            "to",
            "before",
            "0.5",
            "12 mm",
            ",",
          ]),
        ),
        { minLength: 1, maxLength: 7 },
      )
      .map((some) => some.join(" "));
  };

  test("has a lawful answer", () => {
    fc.assert(
      fc.property(words(tractors), (question) => expectLawful(tractors, question, ask(tractors, question))),
      { seed: SEED, numRuns: 250 },
    );
    fc.assert(
      fc.property(words(demo), (question) => expectLawful(demo, question, ask(demo, question))),
      { seed: SEED, numRuns: 80 },
    );
  });

  test("has one answer, however often it is asked", () => {
    fc.assert(
      fc.property(words(tractors), (question) => {
        expect(ask(tractors, question)).toEqual(ask(tractors, question));
        expect(ask(askedKnowledge(), question)).toEqual(ask(tractors, question));
      }),
      { seed: SEED, numRuns: 40 },
    );
  });

  const isAbout = ({ asked }: Answer): string => JSON.stringify({ ...asked, car: undefined });
  const isLess = (less: CarInput, more: CarInput): boolean => {
    const known = Object.entries(more.facts ?? {}).map((fact) => JSON.stringify(fact));
    return Object.entries(less.facts ?? {}).every((fact) => known.includes(JSON.stringify(fact)));
  };

  /** Each chip of the car that alone speaks of its trait is taken away in turn. */
  function expectNeverMore(knowledge: Knowledge, question: string): void {
    const before = ask(knowledge, question);
    for (const { kind, said } of before.reading.chips) {
      if (!["line", "year", "trait"].includes(kind)) continue;
      for (const after of ask(knowledge, question, {}, [said]).answers) {
        const same = before.answers.find((it) => isAbout(it) === isAbout(after));
        if (same?.verdict !== "look first" || !isLess(after.asked.car as CarInput, same.asked.car as CarInput))
          continue;
        expect([question, said, after.verdict, permits(after)]).toEqual([question, said, after.verdict, false]);
      }
    }
  }

  test("is never allowed more when a fact of its car is taken away", () => {
    const open = fixtureRows<Row>("asked").filter(([, , , , , says]) => says === "look first");
    expect(open.length).toBeGreaterThan(5);
    for (const [question] of open) expectNeverMore(demo, question);
    fc.assert(
      fc.property(words(tractors), (question) => expectNeverMore(tractors, question)),
      { seed: SEED, numRuns: 100 },
    );
  });
});

describe("the answer comes first, and its records", () => {
  const first = (question: string, car: CarInput = {}): Answer | undefined => ask(tractors, question, car).answers[0];

  test("a newer part on an older car is not an older one on a newer car", () => {
    expect(first("60 Badger step fit a 59")).toMatchObject({ asked: { part: "FR-2L" }, verdict: "yes" });
    expect(first("59 Badger step fit a 60")).toMatchObject({
      asked: { part: "FR-1L" },
      verdict: "goes on but must not be used",
    });
  });

  test("what is known of the car beforehand counts, and the question may say more", () => {
    expect(first("FR-2L", { facts: { line: "B", my: "1959" } })).toMatchObject({ verdict: "yes" });
    expect(first("FR-2L", { facts: { line: "H", my: "1959" } })).toMatchObject({ verdict: "not on record" });
    expect(first("FR-2L on a Badger", { facts: { my: "1959" } })).toMatchObject({ verdict: "yes" });
  });

  test("a chip that was taken away does not count, and of two meanings the one that was chosen does", () => {
    const [line] = ask(tractors, "FR-2L on a 59 Badger").reading.chips.filter(({ kind }) => kind === "line");
    expect(ask(tractors, "FR-2L on a 59 Badger", {}, [line?.said ?? ""]).answers[0]?.verdict).toBe("look first");
  });

  test("the records that carry it stand first", () => {
    const answer = ask(tractors, "FR-2L on a 59 Badger");
    expect(answer.records[0]).toMatchObject({ id: "FR60-01", carries: true });
    expect(answer.because.map(({ record }) => record)).toContain("FR60-01");
  });

  test("a list of changes or of ways is no argument, and marks no record as carrying the answer", () => {
    const carrying = (question: string): string[] =>
      ask(tractors, question).records.flatMap(({ id, carries }) => (carries ? [id] : []));
    expect(carrying("FR-2L on a 59 Badger")).toEqual(["FR60-01"]);
    expect(carrying("retrofit step 59 Badger")).toEqual([]);
    expect(carrying("changed 60 Badger")).toEqual([]);
  });
});

describe("a maker of few records and without a list of words", () => {
  const few = tinyKnowledge({ ...ASKED, "words.yaml": undefined });
  const { HARMLESS: _, ...little } = littleWords;
  const sets = Object.values(little).filter((it): it is ReadonlySet<string> => it instanceof Set);
  const words = [...new Set([...sets.flatMap((set) => [...set]), "does", "can", "I", "on", "this", "car", "go", "up"])];

  test("no little word keeps a question from its records, whether one happens to use it or not", () => {
    expect(words.length).toBeGreaterThan(200);
    for (const word of words) {
      const { reading, verdict } = ask(few, `${word} the hydraulics`);
      expect([word, reading.unknown, verdict === "nothing on record"]).toEqual([word, [], false]);
    }
    expect(ask(few, "what changed on the hydraulics, and does a zeppelin go with it").reading.unknown).toEqual([
      "zeppelin",
    ]);
  });

  test("no record is found by the grammar of the question", () => {
    const answer = ask(few, "what did they do about the hydraulics, and can I have it on this one");
    expect(answer.reading.rest).toBe("");
    const byWords = answer.records.filter(({ why }) => !/^named with/.test(why[0] ?? ""));
    expect(byWords.map(({ id, why }) => [id, why])).toEqual([["HY59-01", ["Hydraulics"]]]);
  });
});

describe("short part numbers", () => {
  const renamed = Object.entries(ASKED).map(([path, text]): [string, Spoil[string]] => [
    path,
    typeof text === "string"
      ? text
          .replaceAll("FR-1L", "44-1")
          .replaceAll("FR-2L", "A4")
          .replaceAll("FR-2R", '"007"')
          .replaceAll("FR-1R", '"61"')
      : text,
  ]);
  const short = tinyKnowledge(Object.fromEntries(renamed));
  // the question, the part that it asks about, and whether it may go on
  const SHORT: [question: string, part: string, verdict: string][] = [
    ["A4 fit a 59 Badger", "A4", "yes"],
    ["007 on a 59 Badger", "007", "yes"],
    ["44-1 fit a 60 Badger", "44-1", "goes on but must not be used"],
    ["44-1 in a 59 Badger", "44-1", "as built"],
  ];
  test.each(SHORT)("%s", (question, part, verdict) => {
    const answer = ask(short, question);
    expectLawful(short, question, answer);
    expect(answer.reading.rest).toBe("");
    expect(answer.answers.map((it) => [it.asked.part, it.verdict])).toEqual([[part, verdict]]);
  });

  test("permit nothing where the word may speak of a car, a count or a year", () => {
    const doubtful = [
      "007 on an A4",
      "007 fit A4",
      "007 with A4 on a Badger",
      "step for a 61",
      "will 61 fit a 59 Badger",
    ];
    for (const question of doubtful) {
      const { reading, answers } = ask(short, question);
      expect([question, reading.chips.some(({ ids }) => ids.includes("A4") || ids.includes("61"))]).toEqual([
        question,
        false,
      ]);
      expect([question, answers.filter(permits)]).toEqual([question, []]);
    }
  });
});
