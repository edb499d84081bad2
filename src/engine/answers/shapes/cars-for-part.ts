import { z } from "zod";
import { FITS } from "../../interchange/fits.ts";
import { answerBase, reason, scopeWords } from "../answer.ts";

const fit = z.strictObject({
  verdict: z.enum(FITS),
  belongs: z.string().describe("What belongs in the place: a part, 'nothing', or 'not on record'."),
  scope: scopeWords
    .optional()
    .describe("Of the cars that were built, these. Left out where they are too many kinds to name."),
  because: z.array(reason),
});

export const carsForPartAnswer = z
  .strictObject({
    ...answerBase,
    question: z.literal("cars-for-part"),
    verdict: z.enum(["on record", "not on record"]).describe("Whether some car may have the part, or is refused it."),
    part: z.strictObject({ number: z.string(), name: z.string() }),
    places: z.array(
      z.strictObject({
        place: z.string().optional().describe("Left out where no record names one."),
        fits: z.array(fit).describe("Cars of which something is on record; of all others nothing is."),
      }),
    ),
    standsInFor: z.array(z.string()).describe("Parts that it may stand in for, on some car at least."),
    replacedBy: z.array(z.string()).describe("Parts that may stand in for it, on some car at least."),
  })
  .describe("answer cars-for-part PART");
export type CarsForPartAnswer = z.infer<typeof carsForPartAnswer>;
