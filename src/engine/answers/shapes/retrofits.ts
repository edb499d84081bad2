import { z } from "zod";
import { FITS } from "../../interchange/fits.ts";
import { reason } from "../answer.ts";
import { carAnswerBase } from "./applies.ts";

const path = z.strictObject({
  part: z.string(),
  name: z.string(),
  place: z.string().optional().describe("Left out where no record names one."),
  instead: z.string().describe("What belongs there now: a part, 'nothing', or 'not on record'."),
  verdict: z.enum(FITS),
  certain: z.boolean().describe("It holds for every car that this can be; otherwise ask may-fit what to look at."),
});

export const retrofitsAnswer = z
  .strictObject({
    ...carAnswerBase,
    question: z.literal("retrofits"),
    verdict: z.enum(["on record", "not on record", "no such car"]),
    component: z.string().optional(),
    paths: z.array(
      path.extend({
        set: z
          .array(z.strictObject({ part: z.string(), name: z.string() }))
          .describe("All that goes on, smallest set."),
        do: z.array(z.string()),
        reset: z.array(z.string()).describe("Settings that hold from then on."),
        because: z.array(reason),
      }),
    ),
    blocked: z
      .array(path.extend({ because: z.array(reason) }))
      .describe("Ways that are closed, with what closes them."),
  })
  .describe("answer retrofits, perhaps --component COMPONENT, and a car");
export type RetrofitsAnswer = z.infer<typeof retrofitsAnswer>;
