import { z } from "zod";
import { carAnswerBase } from "./applies.ts";

export const builtAnswer = z
  .strictObject({
    ...carAnswerBase,
    question: z.literal("built"),
    verdict: z.enum(["known", "nothing fitted", "look first", "mixed stretch", "not on record", "no such car"]),
    place: z.string(),
    parts: z
      .array(z.string())
      .describe("The part; all that are still possible where it is open. 'none' where the plant fitted nothing."),
    perhapsNotOnRecord: z.boolean().describe("For some of the cars that this can be, no record says what was fitted."),
  })
  .describe("answer built PLACE, and a car");
export type BuiltAnswer = z.infer<typeof builtAnswer>;
