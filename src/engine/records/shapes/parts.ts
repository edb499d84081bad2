import { z } from "zod";
import { accept, aliases, count, effort, id, partNumber, words } from "./common.ts";

/** What a mark may be drawn as. */
export const DRAWN = [
  "grooves",
  "teeth",
  "notches",
  "holes",
  "dots",
  "lines",
  "stripes",
  "bars",
  "rings",
  "terminals",
  "stamp",
  "paint",
  "length",
  "diameter",
  "thickness",
  "none",
] as const;

const feature = z.strictObject({
  id,
  name: words.describe("What to look at or measure: 'raised bars cast beside the bleeder screw'."),
  made: z
    .enum(["cast", "machined", "stamped", "shaped", "counted", "measured", "painted", "printed", "coloured"])
    .describe(
      "How the mark is made. Painted and printed ones wear off, so their absence proves nothing; 'coloured' is the material itself.",
    ),
  absent: z
    .string()
    .trim()
    .min(1)
    .max(400)
    .optional()
    .describe("The value that stands for 'nothing there': 'plain metal'. Default: none; of counted ones 0."),
  drawn: z
    .enum(DRAWN)
    .optional()
    .describe(
      "What pictures of it show: as many grooves as the value says, a stamp, a measure. Default: what goes with how it is made; of shaped ones no picture.",
    ),
  where: z.enum(["in the hand", "on the car", "on the bench"]).describe("Where it can be seen."),
  effort,
  unit: words.optional().describe("For measured ones: the unit of the values."),
  tolerance: z
    .number()
    .positive()
    .optional()
    .describe("For measured ones: two values no further apart than this are the same to a workshop's tool."),
  moves: z
    .array(
      z.strictObject({
        setting: words.describe("The name of the setting."),
        by: z
          .union([z.literal(-1), z.literal(1)])
          .describe("1: the setting grows by as much as this measure grows. -1: it shrinks by as much."),
        count: count.describe("How many of the part sit there, each of which adds its measure. Default: 1."),
      }),
    )
    .optional()
    .describe("For measured ones: the settings that a part of another measure would move."),
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
    accept,
  })
  .describe("parts/<component>.yaml: the parts of one component and their marks.");
export type PartsFile = z.infer<typeof parts>;
