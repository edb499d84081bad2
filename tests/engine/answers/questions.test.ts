import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { answerAsk } from "../../../src/engine/answers/answer-ask.ts";
import { QuestionError } from "../../../src/engine/answers/question-error.ts";
import { answerQuestion, batchQuestion, QUESTIONS, usage } from "../../../src/engine/answers/questions.ts";
import { carShape } from "../../../src/engine/answers/shapes/car.ts";
import { type AnyAnswer, lawfulAnswer } from "../../helpers/answer-laws.ts";
import { demoKnowledge } from "../../helpers/demo-data.ts";
import { randomCar } from "../../helpers/random-cars.ts";
import { SEED } from "../../helpers/seed.ts";

const knowledge = await demoKnowledge();
const { catalog, graph } = knowledge;

describe("every answer of the data folder keeps the laws", () => {
  const ask = (question: string, argument: string): AnyAnswer =>
    lawfulAnswer(knowledge, { question, [question]: argument });

  test("about every record", () => {
    for (const id of catalog.records.keys()) {
      const answer = ask("record", id);
      expect(answer.verdict).not.toBe("not on record");
      expect(answer.because[0]).toMatchObject({ record: id, statement: "record" });
    }
  });

  test("about every part: what names it carries the answer", () => {
    const texts = [...catalog.records.values()].map(({ id, statements }) => ({
      id,
      text: JSON.stringify(statements, (key, value) => (key === "scope" ? undefined : value)),
    }));
    for (const number of catalog.parts.keys()) {
      const answer = ask("part", number);
      expect(answer.verdict).toBe("on record");
      const naming = texts.filter(({ text }) => text.includes(`"${number}"`));
      expect([...new Set(answer.because.map((reason) => reason.record))].sort()).toEqual(naming.map(({ id }) => id));
    }
  });

  test("about every component: every change to it carries the answer", () => {
    for (const id of catalog.components.keys()) {
      const answer = ask("component", id);
      expect(answer.verdict).toBe("on record");
      const changes = [...catalog.records.values()].filter(({ facts }) => facts.components.includes(id));
      expect(answer.because.map((reason) => reason.record)).toEqual(changes.map((record) => record.id));
    }
  });

  test("about every node of the graph: every relation keeps its record", () => {
    for (const key of graph.nodes()) {
      const answer = ask("neighbours", key);
      const records = graph.mapEdges(key, (_, facts) => facts.from).filter((from) => from !== undefined);
      expect(answer.because.map((reason) => reason.record).sort()).toEqual([...new Set(records)].sort());
    }
  });

  test("about every title, asked as a question: its record is among what is found, nearly always among the first", () => {
    const places = [...catalog.records.values()].map(({ id, facts }) => {
      const { records } = answerAsk(knowledge, { text: facts.title, car: {} });
      return [id, records.findIndex((record) => record.id === id)] as const;
    });
    expect(places.filter(([, place]) => place < 0)).toEqual([]);
    expect(places.filter(([, place]) => place < 3).length).toBeGreaterThan(0.95 * places.length);
    expect(places.filter(([, place]) => place === 0).length).toBeGreaterThan(0.85 * places.length);
  });

  test("about ids that nothing has", () => {
    for (const question of ["record", "part", "component", "neighbours"])
      for (const odd of [
        "no such thing",
        "🚜",
        "constructor",
        "__proto__",
        "x".repeat(10_000),
        "0",
        "-",
        "..",
        "/",
        "ſ",
      ])
        expect(ask(question, odd).verdict).toBe("not on record");
  });

  test("about ids that moved: why, and where they lead", () => {
    for (const { kind, from, to, why } of catalog.moved.filter((move) => move.kind in QUESTIONS))
      expect(ask(kind, from).ask).toEqual({
        what: `'${from}' is no longer used: ${why}`,
        options: to === undefined ? [] : [to],
      });
  });
});

describe("every answer about a car, known in part, keeps the laws", () => {
  const record = fc.constantFrom(...catalog.records.keys());
  const place = fc.constantFrom(...catalog.places.keys());
  const year = fc.constantFrom(...catalog.years);
  const car = randomCar(catalog, { conflicts: true });

  // question, what is asked beside the car, how many cars, verdicts that must have come up
  const ASKED: [string, fc.Arbitrary<Record<string, unknown>>, number, string[]][] = [
    ["applies", fc.record({ record }), 40, ["yes", "no", "look first", "no such car"]],
    ["car", fc.constant({}), 2, ["look first"]],
    ["next-question", fc.oneof(fc.constant({}), fc.record({ record })), 40, ["look first", "nothing to ask"]],
    ["net-change", fc.record({ from: year, to: year }), 4, ["look first"]],
    ["built", fc.record({ place }), 150, ["known", "look first", "not on record", "no such car"]],
  ];
  test.each(ASKED)("%s", (question, beside, numRuns, verdicts) => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(car, beside, (known, more) => {
        seen.add(lawfulAnswer(knowledge, { question, ...more, car: known }).verdict);
      }),
      // Shrinking asks for hundreds of cars more; the one that fails is small enough.
      { seed: SEED, numRuns, endOnFailure: true },
    );
    expect([...seen]).toEqual(expect.arrayContaining(verdicts));
  });

  test("plate, of every example and of examples misread", () => {
    const examples = catalog.plates.map((plate) => plate.example);
    const at = fc.tuple(
      fc.constantFrom(...examples),
      fc.nat(20),
      fc.constantFrom(..."0123456789ABCDEFGHJKLMNPRSTUVWXYZ"),
    );
    for (const plate of examples) expect(lawfulAnswer(knowledge, { question: "plate", plate }).verdict).toBe("read");
    const seen = new Set<string>();
    fc.assert(
      fc.property(at, ([example, place, character]) => {
        const plate = `${example.slice(0, place)}${character}${example.slice(place + 1)}`;
        seen.add(lawfulAnswer(knowledge, { question: "plate", plate }).verdict);
      }),
      { seed: SEED, numRuns: 200, endOnFailure: true },
    );
    expect([...seen]).toEqual(expect.arrayContaining(["read", "misread", "not built"]));
  });

  test("compare-scopes, of every two records that follow each other", () => {
    const scopes = [...catalog.records.values()].map(({ facts }) => facts.scope);
    const verdicts = scopes.slice(1).map((b, i) => {
      const { verdict } = lawfulAnswer(knowledge, { question: "compare-scopes", a: scopes[i], b });
      return verdict;
    });
    expect(new Set(verdicts).size).toBeGreaterThan(3);
  });
});

describe("a question as an object", () => {
  // what is asked, what is said of it
  const WRONG: [Record<string, unknown>, RegExp][] = [
    [{ question: "recrod" }, /^There is no question 'recrod'\. Questions are record, part, component, /],
    [{ question: "constructor" }, /^There is no question 'constructor'/],
    [{ question: "" }, /^There is no question ''/],
    [{ question: "part" }, /^Question 'part' takes "part"\. "part": a text\. It was given undefined\.$/],
    [{ question: "part", part: 7 }, /It was given 7\.$/],
    [{ question: "part", part: null }, /It was given null\.$/],
    [{ question: "part", part: "  " }, /It was given " {2}"\.$/],
    [{ question: "part", record: "x" }, /takes "part"/],
    [{ question: "part", part: "x", record: "y" }, /^Question 'part' takes "part"\. "record" is not understood\.$/],
    [{ question: "neighbours", nodes: "x" }, /^Question 'neighbours' takes "node"/],
    [{ question: "applies" }, /takes "record", "scope", "car"\. It takes either a record or a scope\.$/],
    [{ question: "applies", record: "x", scope: "all" }, /It takes either a record or a scope\.$/],
    [
      { question: "applies", record: "x", car: { line: "Y" } },
      /"line" is not understood in "car", which takes "plate", "facts"/,
    ],
    [{ question: "car", car: "Y" }, /"car": .*\. It was given "Y"\.$/],
    [{ question: "car", facts: { line: null } }, /"car\.facts\.line": .*It was given null\.$/],
    [{ question: "net-change" }, /"from": a year\. It was given undefined\.$/],
    [{ question: "net-change", from: "soon" }, /"from": a year\. It was given "soon"\.$/],
    [{ question: "compare-scopes", a: "all" }, /"b": a text\. It was given undefined\.$/],
    [{ question: "search", text: ["x"] }, /^Question 'search' takes "text"/],
  ];
  test.each(WRONG)("%j is refused, and what is expected is said", (asked, message) => {
    const ask = (): unknown => answerQuestion(knowledge, asked as { question: string });
    expect(ask).toThrow(QuestionError);
    expect(ask).toThrow(message);
  });

  test("every question of the table says what it is about and what it takes", () => {
    for (const [name, question] of Object.entries(QUESTIONS)) {
      expect(question.about).not.toBe("");
      expect([name, usage(question)]).not.toEqual([name, "nothing"]);
    }
  });
});

// a line of a batch, whether its shape holds
const LINES: [unknown, boolean][] = [
  [{ id: "1", question: "part", part: "x" }, true],
  [{ id: "1", question: "part" }, true], // what a question takes is looked at when it is asked
  [{ id: 1, question: "part" }, false],
  [{ question: "part" }, false],
  [{ id: "1" }, false],
  [null, false],
  [[], false],
  ["part", false],
];
test.each(LINES)("%j is a line of a batch: %s", (line, holds) => {
  expect(batchQuestion.safeParse(line).success).toBe(holds);
});

// what is said of a car, whether its shape holds
const CARS: [unknown, boolean][] = [
  [{}, true],
  [{ plate: "B9 K 0412" }, true],
  [{ facts: { line: "B", my: 1959, PT: true, fuel: ["diesel", "tvo"], number: { from: 1, to: "0412" } } }, true],
  [{ facts: { number: { from: 1, upto: 2 } } }, false],
  [{ facts: { line: null } }, false],
  [{ fitted: ["HT-101"] }, true],
  [{ fitted: "HT-101" }, false],
  [{ licence: "x" }, false],
];
test.each(CARS)("%j describes a car: %s", (car, holds) => {
  expect(carShape.safeParse(car).success).toBe(holds);
});
