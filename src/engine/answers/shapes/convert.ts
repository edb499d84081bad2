import { z } from "zod";
import { answerBase } from "../answer.ts";

const inUnit = z.strictObject({
  value: z.string().describe("The value, or the lower limit of a window."),
  high: z.string().optional().describe("The upper limit of a window; it is no part of it where `below` says so."),
  below: z.literal(true).optional(),
  unit: z.string(),
  exact: z.boolean().describe("Nothing was rounded."),
  shown: z.string().describe("The same as a text."),
});
export type InUnit = z.infer<typeof inUnit>;

const drill = z.strictObject({ name: z.string(), shown: z.string().describe("Its size.") });

export const convertAnswer = z
  .strictObject({
    ...answerBase,
    question: z.literal("convert"),
    verdict: z.enum(["converted", "choose", "refused"]),
    given: z.string().describe("What was typed."),
    read: inUnit.optional().describe("What was typed, as it was understood."),
    result: inUnit.optional().describe("In the unit asked for, else in the one that usually stands beside it."),
    others: z.array(inUnit).describe("In further units, where the number has a handy size."),
    drills: z
      .strictObject({ exact: z.array(drill), below: drill.optional(), above: drill.optional() })
      .optional()
      .describe("For a length: the drills of this size, and the next smaller and larger ones."),
    factor: z.string().optional().describe("The conversion in words."),
    source: z.string().optional().describe("Where the factor is defined."),
    choices: z
      .array(z.strictObject({ words: z.string(), typed: z.string().describe("Reads back without a question.") }))
      .describe("What may be meant, where that has to be asked."),
    words: z.string().describe("The answer as a sentence."),
  })
  .describe("answer convert VALUE, --to UNIT");
export type ConvertAnswer = z.infer<typeof convertAnswer>;
