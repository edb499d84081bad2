import { z } from "zod";
import { APPLIES } from "../../scope/applies.ts";
import { cancelledShape, carAnswerBase } from "./applies.ts";
import { lookShape } from "./look.ts";

export const carAnswer = z
  .strictObject({
    ...carAnswerBase,
    question: z.literal("car"),
    verdict: z.enum(["known", "look first", "no such car"]).describe("Whether every record is decided."),
    ask: lookShape.omit({ outcomes: true, deciding: true }).optional().describe("What to look at next."),
    records: z.array(
      z.strictObject({
        record: z.string(),
        title: z.string(),
        trap: z.boolean(),
        systems: z.array(z.string()),
        verdict: z.enum(APPLIES),
        cancelled: cancelledShape.optional(),
        ask: lookShape.optional(),
      }),
    ),
  })
  .describe("answer car, and a car");
export type CarAnswer = z.infer<typeof carAnswer>;
