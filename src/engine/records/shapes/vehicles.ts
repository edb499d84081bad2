import { z } from "zod";
import { id, scopeText, words } from "./common.ts";

const rule = z.strictObject({
  if: scopeText.describe("For these cars …"),
  must: scopeText.describe("… this holds as well."),
  because: words.optional().describe("Where the rule comes from."),
});

const equipment = z.strictObject({
  standard: scopeText.optional().describe("Every one of these cars left the plant with it."),
  optional: scopeText
    .optional()
    .describe("These cars could be ordered with it. Cars in neither were never built with it."),
});

export const vehicles = z
  .strictObject({
    line: id.optional().describe("The model line this file is about. Without it, the rules hold for every car."),
    class: words.optional().describe("'compact', 'van' …, for people."),
    about: words.optional().describe("One sentence for the page of the line."),
    built: z
      .array(scopeText)
      .default([])
      .describe("A car of this line was built if it is in one of these rows. Default: no row."),
    rules: z.array(rule).default([]).describe("What also holds of cars that were built. Default: none."),
    equipment: z
      .record(id, equipment)
      .default({})
      .describe("Which cars had an item of equipment. An item not listed was never made on this line."),
  })
  .describe("vehicles/<line>.yaml: which combinations were really built.");
export type VehiclesFile = z.infer<typeof vehicles>;

const position = z.strictObject({
  trait: id.optional().describe("The trait that stands at this place. Default: none; the characters are passed over."),
  length: z.int().min(1).max(12).describe("How many characters."),
  codes: z
    .record(z.string(), z.union([z.string(), z.int()]))
    .optional()
    .describe("What each code means. Without it the characters are the value itself."),
});

export const plates = z
  .strictObject({
    plates: z.array(
      z.strictObject({
        name: words,
        where: words.describe("Where on the car it is."),
        example: words,
        positions: z.array(position).min(1).describe("From left to right, spaces left out."),
        "check-digit": z
          .enum(["none", "49-CFR-565"])
          .default("none")
          .describe(
            "Whether the ninth of 17 characters is the check digit of 49 CFR 565 (ISO 3779 leaves it to the maker). Default: none.",
          ),
        notes: z.array(words).default([]),
      }),
    ),
  })
  .describe("vehicles/plates.yaml: how the number on a plate is read.");
export type PlatesFile = z.infer<typeof plates>;
