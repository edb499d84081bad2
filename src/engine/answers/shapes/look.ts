import { z } from "zod";
import { APPLIES } from "../../scope/applies.ts";

export const lookShape = z.strictObject({
  what: z.string().describe("The question, in plain words."),
  trait: z.string().describe("Id of the trait to look at."),
  label: z.string(),
  find: z.string().describe("How a person finds it on the car."),
  effort: z
    .int()
    .describe("1 a glance; 2 open a door or the hood; 3 crawl under; 4 take something off; 5 take it apart."),
  options: z.array(z.string()).describe("The answers that are still possible."),
  outcomes: z
    .array(
      z.strictObject({
        values: z.array(z.string()),
        words: z.string(),
        verdict: z.enum(APPLIES),
        means: z.string().describe("The outcome in words."),
      }),
    )
    .describe("What each answer would mean. A range is written from..to."),
  deciding: z.array(z.string()).describe("The smallest set of traits that settles the matter, this one among them."),
});
export type Look = z.infer<typeof lookShape>;

export const factShape = z.strictObject({
  trait: z.string(),
  values: z.array(z.string()),
  source: z.enum(["as found", "plate", "said"]),
  text: z.string().describe("The fact as it was given."),
});
export type FactView = z.infer<typeof factShape>;
