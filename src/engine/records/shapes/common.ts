/** Field shapes that several kinds of file share. The words at a field are what editors see while typing. */
import { z } from "zod";
import { dayNumber } from "../../scope/trait.ts";
import { DAY, ID, ID_RULE } from "./slips.ts";

/** An id ends up in an address and a file name, so it may hold nothing that a path could trip over. */
export const id = z.string().regex(ID, ID_RULE).max(64);

export const words = z
  .string()
  .trim()
  .min(1)
  .max(400)
  // A control character in a name shows nowhere and makes two names of one.
  .regex(/^\P{Cc}*$/u, "no line breaks and no control characters")
  .describe("Plain words, one line.");
export const sentences = z.string().trim().min(1).max(4000).describe("Whole sentences. Markdown is not read here.");
export const aliases = z
  .array(words)
  .default([])
  .describe("What people also call it: slang, abbreviations, common misspellings. Default: none.");

export const scopeText = z
  .string()
  .trim()
  .min(1)
  .max(2000)
  .describe(
    "Which cars: clauses joined by ';' must all hold, '||' separates alternatives, 'all' is every car. Example: line=Y,T; my>=1974.",
  );

export const day = z
  .string()
  .regex(DAY, { error: "a day is written year-month-day", abort: true })
  .refine((text) => dayNumber(text) !== undefined, "there is no such day")
  .describe("A calendar day, year-month-day.");

export const partNumber = id.describe(
  "A part number, as printed on the box. Put quotes round one that is only digits.",
);
export const count = z.int().min(1).max(999).default(1).describe("How many. Default: 1.");
export const effort = z
  .int()
  .min(1)
  .max(5)
  .describe(
    "How hard it is to see: 1 a glance, 2 open a door or the hood, 3 crawl under, 4 take something off, 5 take it apart.",
  );

export const accept = z
  .array(
    z.strictObject({
      check: id.describe("The id of the check that finds something in this file: 'other-direction-unsaid'."),
      about: z
        .array(words)
        .default([])
        .describe(
          "Only findings that name all of these records, parts or settings. Default: all of that check in this file.",
        ),
      why: words.describe("Why it stands as it is."),
    }),
  )
  .default([])
  .describe("Findings of the check that are accepted as they stand, each with a reason. Default: none.");
