/**
 * What every answer must keep, whatever was asked:
 *   it has the shape that the code declares, and the one that is published as a JSON Schema;
 *   it is plain data, and the same question has the same answer;
 *   it cites only what exists: records, their statements, pages, lines of the graph;
 *   a verdict that rests on records names them, and one that could not be given says what to ask next.
 */
import { expect } from "vitest";
import { answerSchemas } from "../../src/build/schemas.ts";
import type { Ask, Reason } from "../../src/engine/answers/answer.ts";
import type { Knowledge } from "../../src/engine/answers/knowledge.ts";
import { answerQuestion, QUESTIONS } from "../../src/engine/answers/questions.ts";
import { type Judge, judgedBy } from "./judged-by-ajv.ts";

export interface AnyAnswer {
  readonly question: string;
  readonly verdict: string;
  readonly because: readonly Reason[];
  readonly ask?: Ask;
}

/** Verdicts that rest on nothing, so that something is left to ask. */
const OPEN = ["not on record", "nothing found", "casting number", "several"];

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
  const isOpen = OPEN.includes(answer.verdict);
  expect(answer.ask !== undefined).toBe(isOpen);
  if (isOpen) expect(answer.because).toEqual([]);
  return answer;
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
      left.push(inner);
      if (field === "address") expect(pages.has(String(inner).replace(/#.*$/, ""))).toBe(true);
      if (field === "record" && typeof inner === "string")
        expect(catalog.records.has(inner) || catalog.bulletins.has(inner)).toBe(true);
      if (["part", "kit", "old", "new"].includes(field) && typeof inner === "string")
        expect(catalog.parts.has(inner)).toBe(true);
    }
  }
}
