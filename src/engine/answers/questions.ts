/** Every question that can be asked, by name: what it takes, and who answers it. The command line and the batch read this table. */

import { z } from "zod";
import { type AppliesQuestion, answerApplies } from "./answer-applies.ts";
import { answerAsk } from "./answer-ask.ts";
import { answerBuilt } from "./answer-built.ts";
import { answerCar } from "./answer-car.ts";
import { answerCarsForPart } from "./answer-cars-for-part.ts";
import { answerCompareScopes } from "./answer-compare-scopes.ts";
import { answerComponent, componentAnswer } from "./answer-component.ts";
import { answerConvert } from "./answer-convert.ts";
import { answerCurrent } from "./answer-current.ts";
import { answerMayFit } from "./answer-may-fit.ts";
import { answerNeighbours, neighboursAnswer } from "./answer-neighbours.ts";
import { answerNetChange } from "./answer-net-change.ts";
import { answerNextQuestion } from "./answer-next-question.ts";
import { answerPart, partAnswer } from "./answer-part.ts";
import { answerPlate } from "./answer-plate.ts";
import { answerReading } from "./answer-reading.ts";
import { answerRecord, recordAnswer } from "./answer-record.ts";
import { answerRetrofits } from "./answer-retrofits.ts";
import { answerSchedule } from "./answer-schedule.ts";
import { answerSearch, searchAnswer } from "./answer-search.ts";
import { answerSetting } from "./answer-setting.ts";
import { answerSum } from "./answer-sum.ts";
import { answerTellApart } from "./answer-tell-apart.ts";
import type { Knowledge } from "./knowledge.ts";
import { QuestionError } from "./question-error.ts";
import { appliesAnswer } from "./shapes/applies.ts";
import { askAnswer } from "./shapes/ask.ts";
import { builtAnswer } from "./shapes/built.ts";
import { carShape } from "./shapes/car.ts";
import { carAnswer } from "./shapes/car-answer.ts";
import { carsForPartAnswer } from "./shapes/cars-for-part.ts";
import { compareScopesAnswer } from "./shapes/compare-scopes.ts";
import { convertAnswer } from "./shapes/convert.ts";
import { currentAnswer } from "./shapes/current.ts";
import { mayFitAnswer } from "./shapes/may-fit.ts";
import { netChangeAnswer } from "./shapes/net-change.ts";
import { nextQuestionAnswer } from "./shapes/next-question.ts";
import { plateAnswer } from "./shapes/plate.ts";
import { retrofitsAnswer } from "./shapes/retrofits.ts";
import { readingAnswer, scheduleAnswer, settingAnswer } from "./shapes/setting.ts";
import { sumAnswer } from "./shapes/sum.ts";
import { tellApartAnswer } from "./shapes/tell-apart.ts";

export interface Question {
  readonly about: string;
  /** What it takes, field by field; fields in `words` are given in this order on the command line. */
  readonly takes: z.ZodType;
  readonly words: readonly string[];
  /** Fields that are options on the command line. */
  readonly options: readonly string[];
  readonly car: boolean;
  readonly answer: z.ZodType;
  run(knowledge: Knowledge, asked: unknown): unknown;
}

const text = z.string("a text").trim().min(1, "a text");
const year = z.coerce.number("a year").int("a year");
const car = carShape.default({});

function question<S extends z.ZodType>(
  about: string,
  takes: S,
  parts: { words?: readonly string[]; options?: readonly string[]; car?: boolean },
  answer: z.ZodType,
  run: (knowledge: Knowledge, asked: z.output<S>) => unknown,
): Question {
  return {
    about,
    takes,
    words: parts.words ?? [],
    options: parts.options ?? [],
    car: parts.car ?? false,
    answer,
    run: (knowledge, asked) => run(knowledge, asked as z.output<S>),
  };
}

export const QUESTIONS: Readonly<Record<string, Question>> = {
  record: question(
    "a change record, whole",
    z.strictObject({ record: text }),
    { words: ["record"] },
    recordAnswer,
    (knowledge, { record }) => answerRecord(knowledge, record),
  ),
  part: question(
    "a part by number, in any spelling",
    z.strictObject({ part: text }),
    { words: ["part"] },
    partAnswer,
    (knowledge, { part }) => answerPart(knowledge, part),
  ),
  component: question(
    "a component by id, name or alias",
    z.strictObject({ component: text }),
    { words: ["component"] },
    componentAnswer,
    (knowledge, { component }) => answerComponent(knowledge, component),
  ),
  neighbours: question(
    "what stands around anything in the graph",
    z.strictObject({ node: text }),
    { words: ["node"] },
    neighboursAnswer,
    (knowledge, { node }) => answerNeighbours(knowledge, node),
  ),
  ask: question(
    "anything in the trade's own words: how it is read, what the engine answers, and the records, the best first",
    z.strictObject({ text, car }),
    { words: ["text"], car: true },
    askAnswer,
    answerAsk,
  ),
  search: question(
    "records, parts, components and bulletins for a question in words",
    z.strictObject({ text }),
    { words: ["text"] },
    searchAnswer,
    (knowledge, { text: words }) => answerSearch(knowledge, words),
  ),
  applies: question(
    "whether a record, or a scope, applies to the car",
    z
      .strictObject({ record: text.optional(), scope: text.optional(), car })
      .refine((it) => (it.record === undefined) !== (it.scope === undefined), "It takes either a record or a scope"),
    { words: ["record"], options: ["scope"], car: true },
    appliesAnswer,
    (knowledge, asked: AppliesQuestion) => answerApplies(knowledge, asked),
  ),
  car: question(
    "every record for the car: yes, no, or look first",
    z.strictObject({ car }),
    { car: true },
    carAnswer,
    answerCar,
  ),
  "next-question": question(
    "what to look at next on the car",
    z.strictObject({ car, record: text.optional() }),
    { options: ["record"], car: true },
    nextQuestionAnswer,
    answerNextQuestion,
  ),
  "net-change": question(
    "what changed on the car, all in all, against a model year",
    z.strictObject({ car, from: year, to: year.optional() }),
    { options: ["from", "to"], car: true },
    netChangeAnswer,
    answerNetChange,
  ),
  plate: question(
    "what the number on a plate says",
    z.strictObject({ plate: text }),
    { words: ["plate"] },
    plateAnswer,
    (knowledge, { plate }) => answerPlate(knowledge, plate),
  ),
  built: question(
    "which part the car was built with, in a place",
    z.strictObject({ place: text, car }),
    { words: ["place"], car: true },
    builtAnswer,
    answerBuilt,
  ),
  "may-fit": question(
    "whether a part may go on the car",
    z.strictObject({ part: text, place: text.optional(), car }),
    { words: ["part"], options: ["place"], car: true },
    mayFitAnswer,
    answerMayFit,
  ),
  current: question(
    "which number is current for the car, from a number or from what it was built with",
    z
      .strictObject({ part: text.optional(), place: text.optional(), car })
      .refine((it) => (it.part === undefined) !== (it.place === undefined), "It takes either a part or a place"),
    { words: ["part"], options: ["place"], car: true },
    currentAnswer,
    answerCurrent,
  ),
  "cars-for-part": question(
    "on which cars a part may go, and for which parts it may stand in",
    z.strictObject({ part: text }),
    { words: ["part"] },
    carsForPartAnswer,
    answerCarsForPart,
  ),
  retrofits: question(
    "what a car may be improved with, and what is closed to it",
    z.strictObject({ component: text.optional(), car }),
    { options: ["component"], car: true },
    retrofitsAnswer,
    answerRetrofits,
  ),
  setting: question(
    "which figure is in force on the car, with its history; without a name, all of them",
    z.strictObject({ setting: text.optional(), car }),
    { words: ["setting"], car: true },
    settingAnswer,
    answerSetting,
  ),
  reading: question(
    "whether a reading passes",
    z.strictObject({ setting: text, value: text, error: text.optional(), conditions: text.optional(), car }),
    { words: ["setting", "value"], options: ["error", "conditions"], car: true },
    readingAnswer,
    answerReading,
  ),
  schedule: question(
    "what is due on the car and how often, beside the year before or another one",
    z.strictObject({ from: year.optional(), car }),
    { options: ["from"], car: true },
    scheduleAnswer,
    answerSchedule,
  ),
  "tell-apart": question(
    "which of several look-alike parts this is, from what is seen on it",
    z.strictObject({
      component: text.optional(),
      parts: z.union([z.array(text), text.transform((it) => it.split(/[,;]\s*/))]).optional(),
      place: text.optional(),
      seen: z
        .union([z.record(z.string(), z.union([z.string(), z.number()])), z.string(), z.array(z.string())])
        .optional(),
      car,
    }),
    { words: ["component"], options: ["parts", "place", "seen"], car: true },
    tellApartAnswer,
    answerTellApart,
  ),
  convert: question(
    "a quantity in another unit, with the drills of a length",
    z.strictObject({ value: text, to: text.optional() }),
    { words: ["value"], options: ["to"] },
    convertAnswer,
    answerConvert,
  ),
  sum: question(
    "a shop sum: without inputs how it goes and what the records fill in; without a name all of them",
    z.strictObject({
      sum: text.optional(),
      inputs: z.union([z.record(z.string(), z.coerce.string()), z.string()]).optional(),
      job: z.coerce.string().optional(),
      car,
    }),
    { words: ["sum"], options: ["inputs", "job"], car: true },
    sumAnswer,
    (knowledge, asked) => answerSum(knowledge, asked, knowledge.catalog.sums),
  ),
  "compare-scopes": question(
    "how two scopes lie to each other",
    z.strictObject({ a: text, b: text }),
    { words: ["a", "b"] },
    compareScopesAnswer,
    answerCompareScopes,
  ),
};

/** One line of a batch: {"id": "…", "question": "part", "part": "12-3456"}. */
export const batchQuestion = z
  .looseObject({ id: z.string().describe("Comes back with the answer."), question: z.string() })
  .describe("One line of a batch file.");

/**
 * Answers one question given as an object, as a line of a batch is. The one argument of a question may also stand under the
 * question's own name, and the fields of a car beside it. Throws a QuestionError that says what was expected.
 */
export function answerQuestion(knowledge: Knowledge, asked: { question: string } & Record<string, unknown>): unknown {
  const { id: _, question: name, ...given } = asked;
  const found = Object.hasOwn(QUESTIONS, name) ? QUESTIONS[name] : undefined;
  if (!found)
    throw new QuestionError(`There is no question '${name}'. Questions are ${Object.keys(QUESTIONS).join(", ")}.`);
  const fields = gathered(name, found, given);
  const read = found.takes.safeParse(fields);
  if (read.success) return found.run(knowledge, read.data);
  throw new QuestionError(
    `Question '${name}' takes ${inQuotes(fieldsOf(found))}. ${read.error.issues.map((issue) => sayIssue(issue, fields)).join(" ")}`,
  );
}

function sayIssue(issue: z.core.$ZodIssue, given: unknown): string {
  if (issue.code === "unrecognized_keys") {
    const within = issue.path.length === 0 ? "" : ` in ${inQuotes([issue.path.join(".")])}`;
    return `${inQuotes(issue.keys)} is not understood${within}${issue.path.length === 0 ? "" : `, which takes ${inQuotes(Object.keys(carShape.shape))}`}.`;
  }
  if (issue.path.length === 0) return `${issue.message}.`;
  const value = issue.path.reduce<unknown>((at, key) => (at as Record<PropertyKey, unknown> | undefined)?.[key], given);
  return `${inQuotes([issue.path.join(".")])}: ${issue.message}. It was given ${JSON.stringify(value)}.`;
}

function inQuotes(names: readonly string[]): string {
  return names.map((name) => `"${name}"`).join(", ");
}

/** The names of everything that a question takes. */
function fieldsOf(question: Question): string[] {
  return [...question.words, ...question.options, ...(question.car ? ["car"] : [])];
}

function gathered(name: string, question: Question, given: Record<string, unknown>): Record<string, unknown> {
  const fields = { ...given };
  const [word] = question.words;
  if (word !== undefined && word !== name && !(word in fields) && name in fields) {
    fields[word] = fields[name];
    delete fields[name];
  }
  if (question.car && !("car" in fields)) {
    const loose = Object.keys(carShape.shape).filter((key) => key in fields);
    if (loose.length > 0) fields.car = Object.fromEntries(loose.map((key) => [key, fields[key]]));
    for (const key of loose) delete fields[key];
  }
  return fields;
}

/** What a question takes, for a usage line. */
export function usage(question: Question): string {
  const parts = [
    ...question.words.map((word) => word.toUpperCase()),
    ...question.options.map((option) => `--${option} ${option.toUpperCase()}`),
  ];
  return [...parts, ...(question.car ? ["a car"] : [])].join(", ") || "nothing";
}
