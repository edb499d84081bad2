import { z } from "zod";
import { FITS } from "../../interchange/fits.ts";
import { reason } from "../answer.ts";
import { marksView } from "../answer-record.ts";
import { carAnswerBase } from "./applies.ts";
import { lookShape } from "./look.ts";

const companion = z.strictObject({
  part: z.string(),
  name: z.string(),
  onTheCar: z.boolean().describe("Every car that this can be was built with it."),
  contents: z
    .array(z.strictObject({ part: z.string().optional(), name: z.string().optional(), count: z.int() }))
    .describe("For a kit: what is in it."),
  because: reason,
});

const way = z.strictObject({
  steps: z.array(reason).describe("Statement by statement, from the part asked down to what belongs in the place."),
  chain: z.array(z.string()).describe("The parts of these steps, the part asked first; what belongs there last."),
  companions: z.array(companion).describe("What must go along."),
  do: z.array(z.string()).describe("Work that belongs to it."),
  reset: z.array(z.string()).describe("Settings that hold from then on."),
});

const fit = z.strictObject({
  verdict: z.enum(FITS),
  belongs: z.string().describe("What belongs in the place: a part, 'nothing', or 'not on record'."),
  because: z.array(reason).describe("Who says what belongs there."),
  ways: z.array(way).describe("Ways to fit it, of which one is enough."),
  refusals: z.array(reason).describe("The statements that refuse it."),
});

const atPlace = z.strictObject({
  place: z.string().optional().describe("Left out where no record names one."),
  verdict: z.enum([...FITS, "look first"]),
  fits: z.array(fit).describe("All that is possible for the car at hand; one where it is decided."),
  ask: lookShape.optional().describe("What to look at on the car."),
  lookAtPart: z
    .array(z.string())
    .describe("Where only the part on the car tells: what it may be. Empty where that is not so."),
});

export const mayFitAnswer = z
  .strictObject({
    ...carAnswerBase,
    question: z.literal("may-fit"),
    verdict: z
      .enum([...FITS, "look first", "by place", "no such car"])
      .describe("'by place': the places of the part have different verdicts."),
    part: z.strictObject({ number: z.string(), name: z.string() }),
    places: z.array(atPlace),
    order: z
      .array(z.string())
      .describe("The part and what must be ordered with it, where it is decided that it may be fitted."),
    misfits: z
      .array(z.strictObject({ part: z.string(), name: z.string(), because: z.array(reason) }))
      .describe("Parts reported on the car that no record permits there, with what refuses them."),
    words: z.string().describe("The verdict in a sentence."),
    marks: z
      .array(marksView)
      .describe("How to tell the part from those that belong in its places, easiest mark first."),
    otherwise: z.array(z.strictObject({ record: z.string(), text: z.string() })).describe("What happens otherwise."),
    cautions: z.array(z.strictObject({ title: z.string(), text: z.string(), source: z.string() })),
  })
  .describe("answer may-fit PART, perhaps --place PLACE, and a car");
export type MayFitAnswer = z.infer<typeof mayFitAnswer>;
