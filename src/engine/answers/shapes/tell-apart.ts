import { z } from "zod";
import { answerBase } from "../answer.ts";
import { factShape } from "./look.ts";

const observed = z.strictObject({
  feature: z.string().describe("Id of the mark."),
  name: z.string(),
  seen: z.string().describe("What was seen, as it was understood."),
});

const outcome = z.strictObject({
  value: z.string().describe("What to answer with; it reads back as this outcome."),
  words: z.string(),
  leaves: z.array(z.string()).describe("The parts that would still be possible."),
  provesNothing: z.boolean().describe("It leaves all of them possible."),
});

const look = z.strictObject({
  feature: z.string().describe("Id of the mark."),
  name: z.string(),
  made: z.string(),
  where: z.string(),
  effort: z
    .int()
    .describe("1 a glance; 2 open a door or the hood; 3 crawl under; 4 take something off; 5 take it apart."),
  unit: z.string().optional(),
  how: z.string().optional().describe("How to look, in one line."),
  wearsOff: z.boolean().describe("That it is missing proves nothing."),
  gain: z.number().describe("What is to be expected of the look, in bits."),
  options: z.array(outcome),
});

const possible = z.strictObject({
  number: z.string(),
  name: z.string(),
  builtHere: z
    .enum(["yes", "no", "perhaps", "unknown"])
    .optional()
    .describe(
      "Only where a car is given: whether the plant built it into this car. Unknown: no record says that the plant built it into any car.",
    ),
  mayStandIn: z
    .boolean()
    .describe("A record permits it in place of what the plant built into this car. Never so where no car is given."),
  refused: z
    .array(z.strictObject({ for: z.string(), says: z.string(), why: z.string().optional(), record: z.string() }))
    .describe("Records that refuse it in place of what the plant built into this car."),
  elsewhere: z.array(z.string()).describe("Other places in which this car has it, where a place is asked for."),
});

export const tellApartAnswer = z
  .strictObject({
    ...answerBase,
    question: z.literal("tell-apart"),
    verdict: z.enum([
      "one part",
      "still open",
      "cannot be told apart",
      "contradiction",
      "nothing on record",
      "no such car",
    ]),
    component: z.strictObject({ id: z.string(), name: z.string() }),
    parts: z.array(possible).describe("The parts that are still possible."),
    ruledOut: z.array(
      z.strictObject({
        number: z.string(),
        name: z.string(),
        by: z.array(z.string()).describe("Ids of the marks that rule it out."),
        why: z.string(),
      }),
    ),
    leftOut: z
      .array(z.strictObject({ number: z.string(), name: z.string(), why: z.string() }))
      .describe("Parts of the component that were not compared."),
    observed: z.array(observed),
    next: look.optional().describe("The mark to look at next."),
    further: z.array(look).describe("Further marks that may tell something now, in their order."),
    same: z
      .array(z.strictObject({ feature: z.string(), name: z.string(), value: z.string() }))
      .describe("Marks that are the same on all that are still possible."),
    alike: z
      .array(z.strictObject({ parts: z.array(z.string()), words: z.string() }))
      .describe("Of those still possible, the groups that no mark on record tells apart."),
    secondTest: look
      .optional()
      .describe("Where the part rests on paint or print alone: the durable mark that confirms it."),
    provesNothing: z.array(observed.extend({ why: z.string() })).describe("What was seen and rules out no part."),
    conflict: z
      .strictObject({
        smallest: z.array(observed).describe("The smallest set of observations that no part fits."),
        without: z
          .array(observed.extend({ leaves: z.array(z.string()) }))
          .describe("What would be possible without it."),
      })
      .optional(),
    carConflict: z.array(factShape).optional().describe("A smallest set of facts that no car was built with."),
    cautions: z.array(z.strictObject({ title: z.string(), text: z.string(), source: z.string() })),
    words: z.string().describe("The verdict in a few sentences."),
  })
  .describe("answer tell-apart COMPONENT, or --parts NUMBERS, what was seen, perhaps a place and a car");
export type TellApartAnswer = z.infer<typeof tellApartAnswer>;
