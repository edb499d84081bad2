/** The shape of a card (card.ts). Apart from it, so that a page does not load what only checks shapes. */
import { z } from "zod";

const years = z.record(z.string(), z.array(z.int())).describe("By line.");

export const cardShape = z.strictObject({
  kind: z.enum(["record", "bulletin"]),
  id: z.string(),
  title: z.string(),
  starts: z.string().describe("From when, in words."),
  issued: z.string(),
  systems: z.array(z.string()).describe("The main one first."),
  components: z.array(z.string()).describe("The main one first."),
  on: years.describe("Model years of the cars that it is about, by line."),
  told: years.describe("Model years of cars that it says something of, by line: the figure before the change, too."),
  begins: z.record(z.string(), z.int()).describe("The model year with which it is new, by line."),
  only: z
    .record(z.string(), z.array(z.string()))
    .describe("Traits whose values matter: those that some car has of which it says something."),
  kinds: z.array(z.string()),
  says: z.array(z.string()).describe("The types of its statements."),
  trap: z.boolean(),
  withdrawn: z.literal(true).optional(),
  parts: z.array(z.string()).describe("Part numbers that it names."),
  settings: z.array(z.string()).describe("Names of its settings."),
  ended: z.literal(true).optional().describe("Another record ends its instruction, for some cars or all."),
  links: z.array(z.string()).describe("Records that it names, cancels, or that name it."),
  keys: z.array(z.string()).describe("The words by which it is called, folded: title, settings, tools, further words."),
  near: z
    .array(z.string())
    .describe("Words of its parts and places, folded. Those of its components are in the vocabulary."),
  page: z.string().optional().describe("What the site's text search calls its page."),
});
export type Card = z.infer<typeof cardShape>;
