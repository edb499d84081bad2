/** What `npm run check -- --json` prints. */
import { z } from "zod";
import { RULE_TEXTS } from "./rule-texts.ts";

const step = z.union([z.string(), z.int()]);
const position = z.strictObject({
  line: z.int().min(1),
  column: z.int().min(1).describe("In UTF-16 units, from 1."),
  length: z.int().min(0),
});
const place = {
  file: z.string().describe("Path inside the data folder. A folder's ends in '/'."),
  path: z.array(step).describe("Which field, from the top of the file."),
  key: z.boolean().optional().describe("The name of the field is meant, not its value."),
  within: z.tuple([z.int(), z.int()]).optional().describe("Which characters of the field's text."),
};
const finding = z.strictObject({
  severity: z.enum(["error", "warning"]),
  rule: z.enum(RULE_TEXTS.map(({ id }) => id) as [string, ...string[]]),
  ...place,
  position,
  shown: z.string().describe("The line of the file."),
  message: z.string(),
  hint: z.string().describe("How to mend it."),
  records: z.array(z.string()).optional().describe("The records it comes from, the first to look at first."),
  names: z.array(z.string()).optional().describe("Parts, settings and places that it is about."),
  also: z
    .array(z.strictObject({ ...place, message: z.string(), position: position.optional() }))
    .optional()
    .describe("What stands elsewhere and has to do with it."),
  car: z
    .strictObject({ facts: z.record(z.string(), z.string()), words: z.string() })
    .optional()
    .describe("A built car that shows it: facts as 'answer --fact' takes them, and in words."),
  unknown: z
    .strictObject({
      name: z.string(),
      as: z.array(z.string()).describe("What it was looked for as."),
      meant: z.string().optional().describe("The known name nearest to it, where one is near."),
    })
    .optional()
    .describe("The whole finding is that nothing has this name."),
  follow: z.int().min(1).optional().describe("How many findings that only follow from this one are not listed."),
});

export const findingsDocument = z
  .strictObject({
    files: z.int().describe("How many files were read."),
    findings: z.array(finding).describe("Errors first."),
    accepted: z
      .array(z.strictObject({ finding, why: z.string() }))
      .describe("What files accept as it stands, each with its reason."),
  })
  .describe("What npm run check -- --json prints: everything that is wrong with a data folder.");
