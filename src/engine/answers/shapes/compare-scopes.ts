import { z } from "zod";
import { COMPARED } from "../../scope/compare.ts";
import { answerBase, scopeWords } from "../answer.ts";

const shown = z.record(z.string(), z.string()).optional();

export const compareScopesAnswer = z
  .strictObject({
    ...answerBase,
    question: z.literal("compare-scopes"),
    verdict: z.enum(COMPARED).describe("'covers': the first holds for every car of the second, and more."),
    a: scopeWords,
    b: scopeWords,
    scopes: z
      .strictObject({ both: z.string().optional(), onlyA: z.string().optional(), onlyB: z.string().optional() })
      .describe(
        "What they share and what each has alone, as scopes that can be written in a record; long ones are left out.",
      ),
    both: shown.describe("A car in both, where there is one: traits that matter, with their values."),
    onlyA: shown.describe("A car only in the first."),
    onlyB: shown.describe("A car only in the second."),
  })
  .describe("answer compare-scopes A B");
export type CompareScopesAnswer = z.infer<typeof compareScopesAnswer>;
