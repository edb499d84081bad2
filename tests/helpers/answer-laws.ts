/**
 * What every answer must keep, whatever was asked:
 *   it has the shape that the code declares, and the one that is published as a JSON Schema;
 *   it is plain data, and the same question has the same answer;
 *   it cites only what exists: records, their statements, pages, lines of the graph;
 *   a verdict that rests on records names them, and one that could not be given says what to ask next.
 * What an answer about a car keeps besides:
 *   the facts it needed and those it did not are the facts that were given;
 *   facts that no car was built with are named, all of them and no other ones;
 *   the order of the facts does not matter;
 *   what it says an answer to its question would mean comes true when that answer is given.
 */
import { expect } from "vitest";
import { answerSchemas } from "../../src/build/schemas.ts";
import type { Ask, Reason } from "../../src/engine/answers/answer.ts";
import { readCar } from "../../src/engine/answers/car.ts";
import type { Knowledge } from "../../src/engine/answers/knowledge.ts";
import { sayFact } from "../../src/engine/answers/look.ts";
import { twinFacts } from "../../src/engine/answers/net-change.ts";
import { answerQuestion, QUESTIONS } from "../../src/engine/answers/questions.ts";
import type { CarInput } from "../../src/engine/answers/shapes/car.ts";
import type { FactView, Look } from "../../src/engine/answers/shapes/look.ts";
import { NONE } from "../../src/engine/scope/diagram.ts";
import { carsWith } from "../../src/engine/scope/facts.ts";
import { type Judge, judgedBy } from "./judged-by-ajv.ts";

export interface AnyAnswer {
  readonly question: string;
  readonly verdict: string;
  readonly because: readonly Reason[];
  readonly ask?: Ask;
}

/** Verdicts that rest on nothing, so that something is left to ask. */
const OPEN = ["not on record", "nothing found", "casting number", "several"];

/** Verdicts of the questions about a car after which there is something to look at; a question that is not named leaves nothing. */
const OPEN_FOR_CAR: Readonly<Record<string, readonly string[]>> = {
  applies: ["look first"],
  car: ["look first"],
  "next-question": ["look first"],
  "net-change": ["look first"],
  built: ["look first"],
  plate: ["misread", "not built", "unknown"],
  "compare-scopes": [],
  setting: ["look first"],
  reading: ["look first"],
  schedule: ["look first"],
  // Which mark to look at stands among the marks.
  "tell-apart": [],
  convert: ["choose"],
  sum: [],
};

/** Verdicts about a car that some record must carry. */
const CARRIED: Readonly<Record<string, readonly string[]>> = {
  "next-question": ["look first"],
  "net-change": ["changed", "look first"],
  built: ["known", "nothing fitted", "mixed stretch", "look first"],
  setting: ["in force", "look first", "no such setting", "contradiction", "choose"],
  reading: ["within", "too low", "too high", "too near the limit to call", "look first", "no such setting", "choose"],
  schedule: ["schedule", "look first"],
};

/** Questions about a car whose answers do not say which facts carry them. */
const WITHOUT_FACTS = ["ask", "tell-apart", "sum"];

const NOT_BUILT = ["no such car", "no such car in that year", "not built"];

const published = answerSchemas();
const judges = new Map<string, Judge>();

/** Asks one question of the table, holds its answer to every law, and returns it as a program would read it. */
export function lawfulAnswer(knowledge: Knowledge, asked: { question: string } & Record<string, unknown>): AnyAnswer {
  const { question } = asked;
  const { answer: shape } = QUESTIONS[question] as (typeof QUESTIONS)[string];
  const ask = (): string => JSON.stringify(answerQuestion(knowledge, asked));
  const text = ask();
  expect(ask()).toBe(text);
  const answer: AnyAnswer = JSON.parse(text);
  expect(shape.parse(answer)).toEqual(answer);
  expect(judgeOf(question)(answer)).toEqual([]);
  expect(answer.question).toBe(question);
  for (const reason of answer.because) expectCited(knowledge, reason);
  expectKnownPages(knowledge, answer);
  const openForCar = OPEN_FOR_CAR[question];
  const isOpen = (openForCar ?? OPEN).includes(answer.verdict);
  // Where a part that was found brought a figure with it, no trait of the car may tell which one holds.
  const hasMoved = text.includes('"movedWith":');
  if (!hasMoved || !isOpen) expect([answer.verdict, answer.ask !== undefined]).toEqual([answer.verdict, isOpen]);
  if (isOpen && !openForCar) expect(answer.because).toEqual([]);
  if (CARRIED[question]?.includes(answer.verdict)) expect(answer.because).not.toEqual([]);
  const car = carOf(asked);
  if (car && QUESTIONS[question]?.car && !WITHOUT_FACTS.includes(question))
    expectLawfulCar(knowledge, { ...withoutCar(asked), car }, answer as CarAnswer);
  return answer;
}

interface CarAnswer extends AnyAnswer {
  readonly facts: readonly FactView[];
  readonly notNeeded: readonly FactView[];
  readonly conflict?: readonly FactView[];
  readonly ask?: Ask | Look;
}

/** The car of a question, whose fields may also stand beside it. */
function carOf({ car, plate, facts, found, fitted }: Record<string, unknown>): CarInput | undefined {
  const loose = Object.entries({ plate, facts, found, fitted }).filter(([, field]) => field !== undefined);
  return (car ?? Object.fromEntries(loose)) as CarInput | undefined;
}

/** What is asked, without the fields of its car. */
function withoutCar({ plate, facts, found, fitted, car, ...asked }: { question: string } & Record<string, unknown>) {
  return asked;
}

type AskedCar = { question: string; car: CarInput } & Record<string, unknown>;

function expectLawfulCar(knowledge: Knowledge, asked: AskedCar, answer: CarAnswer): void {
  const { space } = knowledge.catalog;
  const texts = (facts: readonly FactView[]): string[] => facts.map((fact) => JSON.stringify(fact)).sort();
  const given = readCar(knowledge, asked.car).facts.map((fact) => sayFact(space, fact));
  expect(texts([...answer.facts, ...answer.notNeeded])).toEqual(texts(given));
  expect([answer.verdict, answer.conflict !== undefined]).toEqual([answer.verdict, NOT_BUILT.includes(answer.verdict)]);
  if (answer.conflict) expectSmallestConflict(knowledge, asked, answer.conflict);
  expectSameInAnyOrder(knowledge, asked, answer);
  if (answer.question === "applies" && answer.ask) expectOutcomes(knowledge, asked, answer.ask as Look);
}

/** No car was built with these facts, and leaving out any of them leaves one that was. */
function expectSmallestConflict(knowledge: Knowledge, { car, from, to }: AskedCar, clash: readonly FactView[]): void {
  const { space, buildable } = knowledge.catalog;
  const { facts } = readCar(knowledge, car);
  const years = [from, to].filter((year) => year !== undefined);
  const known = [...facts, ...years.flatMap((year) => twinFacts(space, facts, Number(year)).slice(-1))];
  const clashing = clash.map(
    ({ text, source }) => known.find((fact) => fact.text === text && fact.source === source) as (typeof known)[number],
  );
  expect(clash).not.toEqual([]);
  expect(clashing).not.toContain(undefined);
  expect(carsWith(space, buildable, clashing)).toBe(NONE);
  for (const fact of clashing)
    expect(
      carsWith(
        space,
        buildable,
        clashing.filter((other) => other !== fact),
      ),
    ).not.toBe(NONE);
}

/** Which facts are named, and in which words, follows the order in which they were given; nothing else does. */
function expectSameInAnyOrder(knowledge: Knowledge, asked: AskedCar, answer: CarAnswer): void {
  const turned = <T extends object>(fields: T | undefined): T | undefined =>
    fields && (Object.fromEntries(Object.entries(fields).reverse()) as T);
  const { facts, found, fitted } = asked.car;
  const car = { ...asked.car, facts: turned(facts), found: turned(found), fitted: fitted?.toReversed() };
  const other = JSON.parse(JSON.stringify(answerQuestion(knowledge, { ...asked, car })));
  const whole = { facts: 0, notNeeded: 0, conflict: 0, words: 0 };
  expect({ ...other, ...whole }).toEqual({ ...answer, ...whole });
}

/** Each answer to the question, given as one more fact, leads where it was said to lead. */
function expectOutcomes(knowledge: Knowledge, asked: AskedCar, { trait, outcomes }: Look): void {
  for (const { values, verdict } of outcomes)
    for (const written of values.slice(0, 2)) {
      const [from, to] = written.split("..");
      const value = to === undefined ? written : { from, to };
      const { verdict: told } = answerQuestion(knowledge, {
        ...asked,
        car: tell(knowledge, asked.car, trait, value),
      }) as {
        verdict: string;
      };
      expect([trait, written, told]).toEqual([trait, written, verdict]);
    }
}

/** A trait that goes with something found on the car is told as found, too. */
function tell({ catalog: { space } }: Knowledge, car: CarInput, trait: string, value: unknown): CarInput {
  const head = (id: string): string => space.traits[space.find(id) ?? -1]?.of ?? id;
  const asFound = Object.keys(car.found ?? {}).some((id) => head(id) === head(trait));
  const field = asFound ? "found" : "facts";
  return { ...car, [field]: { ...car[field], [trait]: value } };
}

function judgeOf(question: string): Judge {
  const known = judges.get(question);
  if (known) return known;
  const judge = judgedBy(published.get(`answer-${question}.json`) as object);
  judges.set(question, judge);
  return judge;
}

/** The record or bulletin exists, has such a statement, and the address is where it stands. */
function expectCited({ catalog }: Knowledge, reason: Reason): void {
  const record = catalog.records.get(reason.record);
  expect(reason.text).not.toBe("");
  if (reason.statement === "record" || reason.statement === "bulletin") {
    const kind = reason.statement;
    expect(kind === "record" ? record : catalog.bulletins.get(reason.record)).toBeDefined();
    expect(reason.address).toBe(`/${kind}s/${reason.record}/`);
    return;
  }
  const [type, number] = reason.statement.split(" ");
  expect(record?.statements.some((it) => it.type === type && it.index + 1 === Number(number))).toBe(true);
  expect(reason.address).toBe(`/records/${reason.record}/#${type}-${number}`);
}

/** Every page, record and part that is named anywhere in an answer is one that exists. */
function expectKnownPages({ catalog, graph }: Knowledge, answer: AnyAnswer): void {
  const pages = new Set(graph.mapNodes((_, node) => node.address));
  const left: unknown[] = [answer];
  for (const value of left) {
    if (typeof value !== "object" || value === null) continue;
    for (const [field, inner] of Object.entries(value)) {
      // What was put into a sum is called as the sum calls it.
      if (field === "inputs") continue;
      left.push(inner);
      if (field === "address") expect(pages.has(String(inner).replace(/#.*$/, ""))).toBe(true);
      if (field === "record" && typeof inner === "string")
        expect(catalog.records.has(inner) || catalog.bulletins.has(inner)).toBe(true);
      if (["part", "kit", "old", "new"].includes(field) && typeof inner === "string")
        expect(catalog.parts.has(inner)).toBe(true);
    }
  }
}
