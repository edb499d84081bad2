/** The shape of the vocabulary (vocabulary.ts). */
import { z } from "zod";
import { serialShape } from "./serial-shape.ts";

export const CHIP_KINDS = [
  "record",
  "part",
  "bulletin",
  "system",
  "component",
  "line",
  "year",
  "trait",
  "kind",
] as const;
export type ChipKind = (typeof CHIP_KINDS)[number];

const name = z.strictObject({
  kind: z.enum(CHIP_KINDS),
  id: z
    .string()
    .describe("For a trait: what is known of the car, as on the command line, such as 'eng=R' or 'PS=yes'."),
  label: z.string(),
  say: z.array(z.string()).describe("Everything that people call it."),
});
export type Name = z.infer<typeof name>;

export const vocabularyShape = z
  .strictObject({
    names: z.array(name),
    ignore: z.array(z.string()).describe("Words that name nothing."),
    plain: z.array(z.string()).describe("Words that are no slip of another, though the records have them not."),
    mean: z.array(z.tuple([z.string(), z.string()])).describe("What people say, and the word of the records for it."),
    serials: z.array(serialShape).describe("How numbers look that tell which car it is."),
    units: z.array(z.string()).describe("Units as people write them: a number before one is no year."),
    shelves: z
      .array(z.string())
      .describe(
        "How numbers of parts, records and bulletins begin; a page loads those that begin like what was typed.",
      ),
    records: z.int().describe("How many records there are."),
    components: z
      .record(z.string(), z.strictObject({ system: z.string(), under: z.string().optional(), records: z.int() }))
      .describe("The system of each component, what it lies under, and how many records concern it."),
    called: z
      .record(z.string(), z.array(z.string()))
      .describe("Words by which records of few systems are called, folded, and these systems."),
    words: z
      .record(z.string(), z.int())
      .describe(
        "Every other word of the records, folded, and in how many of them it stands. A known word is never corrected.",
      ),
  })
  .describe("vocabulary.json: the words that questions are read with.");
export type Vocabulary = z.infer<typeof vocabularyShape>;
