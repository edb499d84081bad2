import { z } from "zod";
import { carAnswerBase } from "./applies.ts";
import { lookShape } from "./look.ts";

export const nextQuestionAnswer = z
  .strictObject({
    ...carAnswerBase,
    ask: lookShape
      .partial({ outcomes: true, deciding: true })
      .extend({ opens: z.array(z.string()).describe("The open records that ask for it.") })
      .optional()
      .describe("What to look at next. What each answer would mean is said where one record was asked for."),
    question: z.literal("next-question"),
    verdict: z.enum(["look first", "nothing to ask", "no such car"]),
    open: z.array(z.string()).describe("Records that are still open."),
  })
  .describe("answer next-question, and a car");
export type NextQuestionAnswer = z.infer<typeof nextQuestionAnswer>;
