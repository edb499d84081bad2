import { z } from "zod";
import { id, words as line } from "./common.ts";

export const words = z
  .strictObject({
    ignore: z
      .array(line)
      .default([])
      .describe(
        "Further words of a question that name nothing, beside the grammar of English, which is known. Default: none.",
      ),
    plain: z
      .array(line)
      .default([])
      .describe(
        "Words that people use and the records do not, and that are no slip of a word of the trade: radio, sunroof. They are never corrected, only searched as text. Default: none.",
      ),
    mean: z
      .array(z.strictObject({ say: z.array(line).min(1), mean: line }))
      .default([])
      .describe("What people say or misspell, and the word the records use for it. Default: none."),
  })
  .describe("words.yaml: the trade's synonyms, slang and common misspellings for the ask box.");
export type WordsFile = z.infer<typeof words>;

export const moved = z
  .strictObject({
    moved: z
      .array(
        z.strictObject({
          kind: z.enum(["record", "part", "component", "system", "bulletin"]),
          from: id.describe("The id that pages and bulletins out there still name."),
          to: id.optional().describe("Where it leads now. Without it: withdrawn, and the page says why."),
          why: line,
        }),
      )
      .default([]),
  })
  .describe("moved.yaml: ids that were renamed or withdrawn, and where they lead now.");
export type MovedFile = z.infer<typeof moved>;
