import { z } from "zod";
import { aliases, day, effort, id, words } from "./common.ts";

const base = {
  id: id.describe("The name used in scopes."),
  label: words.describe("What people call it: 'model year'."),
  aliases,
  role: z
    .enum(["line", "year", "plant", "sequence", "date"])
    .optional()
    .describe(
      "What the engine may take it for. 'line' and 'year' are needed; the others make running changes possible.",
    ),
  find: words.describe("How a person finds it on the car."),
  effort,
  phrase: words.describe(
    "Words of a sentence with {} for the values: 'with the {} engine'. For a yes/no trait the words of yes.",
  ),
  otherwise: words.describe("The same for 'not': 'without the {} engine'. For a yes/no trait the words of no."),
  of: id
    .optional()
    .describe(
      "The trait whose part of the car it goes with: the number on the block goes with the engine. Default: none.",
    ),
  today: z.boolean().default(false).describe("About the car as it stands today, not as built. Default: no."),
};
const value = z.strictObject({
  id,
  label: words,
  aliases,
  note: words.optional().describe("What else there is to know about it, for people."),
  figures: z
    .record(z.string(), z.number())
    .default({})
    .describe("Named figures of it for sums, such as bore and stroke. Default: none."),
});

const list = z.strictObject({ ...base, kind: z.literal("list"), values: z.array(value).min(1).max(500) });
const flag = z.strictObject({ ...base, kind: z.literal("flag") });
const whole = z.strictObject({ ...base, kind: z.literal("whole"), from: z.int(), to: z.int() });
const date = z.strictObject({ ...base, kind: z.literal("date"), from: day, to: day });
const serial = z.strictObject({
  ...base,
  kind: z.literal("serial"),
  prefixes: z
    .array(z.string().regex(/^[A-Z]{0,3}$/, "up to three capital letters"))
    .min(1)
    .describe(
      "The letters that may stand in front; '' for none. Letters that are a value of the trait it goes with ('of') tell that value on a car where the number was found.",
    ),
  digits: z.int().min(1).max(9),
});

export const traits = z
  .strictObject({
    traits: z
      .array(z.discriminatedUnion("kind", [list, flag, whole, date, serial]))
      .min(1)
      .max(200)
      .describe("In the order in which people ask: line and year first, equipment last."),
  })
  .describe("vehicles/traits.yaml: the properties by which cars differ, and how each is found on a car.");
export type TraitsFile = z.infer<typeof traits>;
