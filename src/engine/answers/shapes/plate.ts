import { z } from "zod";
import { answerBase } from "../answer.ts";
import { factShape } from "./look.ts";

export const plateAnswer = z
  .strictObject({
    ...answerBase,
    question: z.literal("plate"),
    verdict: z.enum(["read", "misread", "not built", "unknown"]),
    number: z.string().describe("The characters that were read, without spaces."),
    plate: z.string().optional().describe("Which plate it is."),
    facts: z.array(factShape),
    slips: z
      .array(z.strictObject({ place: z.int(), character: z.string(), holds: z.string(), couldBe: z.array(z.string()) }))
      .describe(
        "Characters that cannot be right, or with which no car was built, and what each could be; likeliest first.",
      ),
    conflict: z.array(factShape).optional(),
  })
  .describe("answer plate NUMBER");
export type PlateAnswer = z.infer<typeof plateAnswer>;
