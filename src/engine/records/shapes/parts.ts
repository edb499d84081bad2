import { z } from "zod";
import { aliases, effort, id, partNumber, words } from "./common.ts";

const feature = z.strictObject({
  id,
  name: words.describe("What to look at or measure: 'raised bars cast beside the bleeder screw'."),
  made: z
    .enum(["cast", "machined", "stamped", "shaped", "counted", "measured", "painted", "printed", "coloured"])
    .describe(
      "How the mark is made. Painted and printed ones wear off, so their absence proves nothing; 'coloured' is the material itself.",
    ),
  where: z.enum(["in the hand", "on the car", "on the bench"]).describe("Where it can be seen."),
  effort,
  unit: words.optional().describe("For measured ones: the unit of the values."),
  tolerance: z
    .number()
    .positive()
    .optional()
    .describe("For measured ones: two values nearer than this are the same to a workshop's tool."),
  note: words.optional().describe("How to look, in one line."),
  record: id.describe("The change record that says so."),
});

const part = z.strictObject({
  number: partNumber,
  name: words,
  aliases,
  hand: z.enum(["left", "right"]).optional().describe("Seen from the driver's seat facing forward."),
  castings: z
    .array(z.string().min(1))
    .default([])
    .describe("Numbers cast into it, which are not part numbers. Default: none."),
  marks: z
    .record(id, z.union([z.string().trim().min(1).max(400), z.number()]))
    .default({})
    .describe("Feature by feature, what this part shows; 'none' where it shows nothing. Default: none known."),
});

export const parts = z
  .strictObject({
    component: id.describe("The component these parts belong to."),
    features: z.array(feature).default([]).describe("The marks by which these parts are told apart, easiest first."),
    parts: z.array(part).min(1),
  })
  .describe("parts/<component>.yaml: the parts of one component and their marks.");
export type PartsFile = z.infer<typeof parts>;
