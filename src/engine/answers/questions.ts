/** Every question that can be asked, by name: what it takes, and who answers it. The command line and the batch read this table. */
import { z } from "zod";
import { answerComponent, componentAnswer } from "./answer-component.ts";
import { answerNeighbours, neighboursAnswer } from "./answer-neighbours.ts";
import { answerPart, partAnswer } from "./answer-part.ts";
import { answerRecord, recordAnswer } from "./answer-record.ts";
import { answerSearch, searchAnswer } from "./answer-search.ts";
import type { Knowledge } from "./knowledge.ts";

export interface Question {
  /** The field of a batch question that holds the argument, and its name in the usage line. */
  readonly field: string;
  readonly about: string;
  readonly answer: z.ZodType;
  run(knowledge: Knowledge, argument: string): unknown;
}

export const QUESTIONS: Readonly<Record<string, Question>> = {
  record: { field: "record", about: "a change record, whole", answer: recordAnswer, run: answerRecord },
  part: { field: "part", about: "a part by number, in any spelling", answer: partAnswer, run: answerPart },
  component: {
    field: "component",
    about: "a component by id, name or alias",
    answer: componentAnswer,
    run: answerComponent,
  },
  neighbours: {
    field: "node",
    about: "what stands around a record, part, component, system, line, year or bulletin in the graph",
    answer: neighboursAnswer,
    run: answerNeighbours,
  },
  search: {
    field: "text",
    about: "records, parts, components and bulletins for a question in words",
    answer: searchAnswer,
    run: answerSearch,
  },
};

/** A car, wherever a question takes one. */
export const carShape = z
  .strictObject({
    plate: z.string().optional().describe("The number on the serial plate."),
    facts: z
      .record(
        z.string(),
        z.union([
          z.string(),
          z.number(),
          z.boolean(),
          z.array(z.union([z.string(), z.number(), z.boolean()])),
          z.strictObject({
            from: z.union([z.string(), z.number()]).optional(),
            to: z.union([z.string(), z.number()]).optional(),
          }),
        ]),
      )
      .optional()
      .describe("Trait to its value, to the values that are still possible, or to a range."),
    fitted: z.array(z.string()).optional().describe("Part numbers known to be on the car today."),
  })
  .describe("What is known of a car.");

/** One line of a batch: {"id": "…", "question": "part", "part": "12-3456"}. */
export const batchQuestion = z
  .looseObject({ id: z.string().describe("Comes back with the answer."), question: z.string() })
  .describe("One line of a batch file.");

export class QuestionError extends Error {}

/** Answers one question given as an object, as a line of a batch is. Throws a QuestionError that says what was expected. */
export function answerQuestion(knowledge: Knowledge, asked: { question: string } & Record<string, unknown>): unknown {
  const question = Object.hasOwn(QUESTIONS, asked.question) ? QUESTIONS[asked.question] : undefined;
  if (!question)
    throw new QuestionError(
      `There is no question '${asked.question}'. Questions are ${Object.keys(QUESTIONS).join(", ")}.`,
    );
  const argument = asked[question.field];
  if (typeof argument !== "string" || argument.trim() === "")
    throw new QuestionError(
      `Question '${asked.question}' takes "${question.field}": a text. It was given ${JSON.stringify(argument)}.`,
    );
  return question.run(knowledge, argument);
}
