import { z } from "zod";
import { APPLIES } from "../../scope/applies.ts";
import { answerBase, scopeWords } from "../answer.ts";
import { factShape, lookShape } from "./look.ts";

export const carAnswerBase = {
  ...answerBase,
  ask: lookShape.optional().describe("What to look at next."),
  facts: z.array(factShape).describe("The facts that carry the verdict."),
  notNeeded: z.array(factShape).describe("Facts that were given and change nothing."),
  conflict: z.array(factShape).optional().describe("A smallest set of facts that no car was built with."),
};

export const cancelledShape = z
  .array(z.strictObject({ record: z.string(), verdict: z.enum(["yes", "look first"]) }))
  .describe("The records that end this one's instructions for the car, or perhaps do. Left out where none does.");

export const appliesAnswer = z
  .strictObject({
    ...carAnswerBase,
    question: z.literal("applies"),
    verdict: z.enum(APPLIES),
    scope: scopeWords,
    cancelled: cancelledShape.optional(),
    words: z.string().describe("The verdict in a sentence."),
  })
  .describe("answer applies RECORD, or --scope SCOPE, and a car");
export type AppliesAnswer = z.infer<typeof appliesAnswer>;
