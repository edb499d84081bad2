import { z } from "zod";
import { answerBase, reason } from "../answer.ts";

const choice = z.strictObject({ words: z.string(), typed: z.string().describe("What to type to mean it.") });

const prefilled = z
  .strictObject({
    input: z.string(),
    typed: z
      .string()
      .optional()
      .describe("The figure as a person would type it. Left out where the records do not give one for this car."),
    why: z.string().describe("Where it comes from, or why there is none."),
    because: z.array(reason).describe("The records that say so."),
  })
  .describe("One figure that the records fill in.");
export type Prefilled = z.infer<typeof prefilled>;

const job = z.strictObject({
  title: z.string(),
  sum: z.string(),
  component: z.string(),
  record: z.string(),
  inputs: z.array(prefilled),
});
export type JobShown = z.infer<typeof job>;

const sumShown = z.strictObject({
  id: z.string(),
  name: z.string(),
  about: z.string().describe("When one needs it."),
  formula: z.string(),
  inputs: z.array(
    z.strictObject({
      id: z.string(),
      label: z.string(),
      letter: z.string(),
      unit: z.string(),
      needed: z.enum(["always", "one of several", "no"]),
      usual: z.string().optional().describe("Taken where nothing is given."),
      choices: z.array(z.string()).optional(),
      help: z.string().optional(),
    }),
  ),
  results: z.array(z.strictObject({ id: z.string(), label: z.string(), unit: z.string(), rounded: z.string() })),
  notes: z.array(z.string()),
  caution: z.string().optional(),
  source: z.string(),
  example: z.strictObject({
    inputs: z.record(z.string(), z.string()),
    results: z.record(z.string(), z.string()),
    source: z.string(),
  }),
});
export type SumShown = z.infer<typeof sumShown>;

export const sumAnswer = z
  .strictObject({
    ...answerBase,
    question: z.literal("sum"),
    verdict: z
      .enum(["list", "described", "worked out", "missing", "refused", "impossible"])
      .describe(
        "refused: a figure cannot be read or lies outside its limits; impossible: the figures cannot belong together.",
      ),
    sums: z.array(z.strictObject({ id: z.string(), name: z.string(), about: z.string() })).optional(),
    sum: sumShown.optional(),
    jobs: z.array(job).describe("Sums that changes bring about, with what the records fill in."),
    inputs: z.record(z.string(), z.string()).optional().describe("What was put in, with what the job filled in."),
    results: z
      .array(
        z.strictObject({
          id: z.string(),
          label: z.string(),
          value: z.number().optional().describe("Not rounded. Left out where the result is words."),
          unit: z.string(),
          shown: z.string().describe("Rounded as the trade rounds it."),
          rounded: z.string(),
        }),
      )
      .optional(),
    steps: z.array(z.string()).optional().describe("The formula with the numbers put in, line by line."),
    missing: z.array(z.strictObject({ what: z.string(), ways: z.array(z.array(z.string())) })).optional(),
    wrong: z
      .array(
        z.strictObject({ input: z.string(), label: z.string(), why: z.string(), choices: z.array(choice).optional() }),
      )
      .optional(),
    words: z.string().describe("The answer in a sentence."),
  })
  .describe("answer sum NAME, and what goes into it");
export type SumAnswer = z.infer<typeof sumAnswer>;
