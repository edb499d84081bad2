import { z } from "zod";
import { ASKED_KINDS } from "../../ask/asked.ts";
import { CHIP_KINDS } from "../../ask/vocabulary-shape.ts";
import { answerBase, reason } from "../answer.ts";

const option = z.strictObject({ id: z.string(), label: z.string() });

export const chipShape = z.strictObject({
  kind: z.enum(CHIP_KINDS),
  ids: z.array(z.string()).describe("Several where the same words name several, and for a run of years."),
  label: z.string(),
  said: z.string().describe("The words of the question that were read so."),
  at: z.int().describe("The number of its first word in the question, from 0."),
  length: z.int().describe("How many words it takes."),
  options: z.array(option).optional().describe("What each id is called, where one may choose."),
  readAs: z.string().optional().describe("The word that a misspelt one was taken for."),
});

export const readingShape = z.strictObject({
  chips: z.array(chipShape),
  asked: z.array(
    z.strictObject({ asked: z.enum(ASKED_KINDS), label: z.string(), said: z.string(), at: z.int(), length: z.int() }),
  ),
  rest: z.string().describe("Words that were searched as text."),
  figures: z.array(z.string()).describe("Numbers with their units."),
  beyond: z.array(z.string()).describe("Years that the records do not cover."),
  corrected: z
    .array(z.strictObject({ said: z.string(), readAs: z.array(z.string()) }))
    .describe("Words that nobody knows, and what was read for each; several are equally near."),
  noNumbers: z
    .array(z.strictObject({ said: z.string(), near: z.string().optional() }))
    .describe("What looks like a number of a part or record and is none, and the nearest one that is."),
  unread: z.array(z.string()).describe("Words that were not understood; a permission has to hold whatever they mean."),
  unknown: z.array(z.string()).describe("Words that stand in no record at all."),
});

const rankedShape = z.strictObject({
  id: z.string(),
  title: z.string(),
  address: z.string(),
  trap: z.boolean(),
  starts: z.string(),
  systems: z.array(z.string()),
  why: z
    .array(z.string())
    .describe("What speaks for it: names and words of the question, or the record it is named with."),
  carries: z.boolean().describe("The answer rests on it."),
  misses: z
    .array(z.string())
    .describe("What of the car asked about it is not about: a line, a year, a trait. Empty: it may be."),
  points: z.number(),
});

const facetShape = z.array(z.strictObject({ id: z.string(), label: z.string(), count: z.int() }));

export const askAnswer = z
  .strictObject({
    ...answerBase,
    question: z.literal("ask"),
    verdict: z
      .enum(["answered", "records", "nothing on record"])
      .describe(
        "'nothing on record': no record is about it, or none for such a car; what comes nearest is listed all the same.",
      ),
    reading: readingShape,
    answers: z
      .array(
        z.strictObject({
          asked: z.looseObject({ question: z.string() }).describe("What the engine was asked."),
          says: z.string().describe("The answer in a sentence."),
          verdict: z.string(),
          because: z.array(reason),
          answer: z.looseObject({}).describe("The whole answer, as that question gives it."),
        }),
      )
      .describe("What the engine answers, where the question has the shape of one; else empty."),
    things: z
      .array(z.strictObject({ kind: z.enum(CHIP_KINDS), id: z.string(), label: z.string(), address: z.string() }))
      .describe("Pages of what the question names: parts, components, systems, bulletins."),
    records: z.array(rankedShape).describe("The records, the best first."),
    bulletins: z
      .array(z.strictObject({ id: z.string(), title: z.string(), address: z.string(), about: z.string() }))
      .describe("Bulletins whose words speak for them, or that cite the records found, the best first."),
    facets: z.strictObject({ system: facetShape, line: facetShape, year: facetShape, kind: facetShape }),
    nearest: z
      .array(z.string())
      .describe("What exists and comes nearest to what was asked, where nothing is on record."),
    words: z.string(),
  })
  .describe("answer ask TEXT, perhaps a car");
export type AskAnswer = z.infer<typeof askAnswer>;
