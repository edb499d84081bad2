import { z } from "zod";
import { KINDS, NOTHING, VERDICTS } from "../terms.ts";
import { accept, count, day, id, partNumber, scopeText, sentences, words } from "./common.ts";
import { WINDOW } from "./slips.ts";

const partOrNone = z
  .union([z.literal(NOTHING), partNumber])
  .describe("A part number, or 'none' where the place holds nothing.");
const companions = z.array(partNumber).default([]).describe("Parts that must go along. Default: none.");

const built = z.strictObject({
  place: words.describe("A place named in components/."),
  part: partOrNone,
  scope: scopeText,
});
const mixed = z.strictObject({
  place: words,
  parts: z.array(partNumber).min(2).describe("The plant used any of these; only looking helps."),
  scope: scopeText,
});
const supersedes = z.strictObject({
  old: partNumber.describe("Who orders this …"),
  new: partNumber.describe("… gets this. A delivery rule, no promise that it fits."),
  scope: scopeText.optional().describe("Default: whatever the car."),
  with: companions,
});
const standsIn = z
  .strictObject({
    part: partNumber.describe("May this part be fitted …"),
    for: partOrNone.describe("… where this one belongs ('none': where the car has nothing)? One direction only."),
    verdict: z
      .enum(VERDICTS)
      .describe("yes; on-conditions (scope, with, do); does-not-go-on; must-not-be-used (it goes on, but must not)."),
    scope: scopeText.optional().describe("Beyond it nothing is stated. Default: wherever the other one belongs."),
    place: words
      .optional()
      .describe("Only in this place, such as the left one. Default: in every place of the other part."),
    with: companions,
    do: words.optional().describe("Work that goes along, and what is reset."),
    why: words.optional().describe("For a refusal: what happens otherwise."),
  })
  .refine((it) => it.verdict === "yes" || it.verdict === "on-conditions" || it.why !== undefined, {
    path: ["why"],
    message: "a refusal must say why",
  });
const kit = z.strictObject({
  kit: partNumber,
  contents: z
    .array(
      z
        .strictObject({ part: partNumber.optional(), name: words.optional(), count })
        .refine((it) => (it.part === undefined) !== (it.name === undefined), "either a part number or a name"),
    )
    .min(1),
});
const window = z
  .string()
  .trim()
  .regex(WINDOW, "low..high, ..high, or low..")
  .refine((text) => /\d/.test(text), "at least one limit");
const setting = z.strictObject({
  name: words.describe("The same words for the same quantity in every record."),
  window: window.describe(
    "low..high, both inside; '..high' only an upper limit, 'low..' only a lower, '8..8' exactly.",
  ),
  nominal: z.number().optional().describe("The value to aim for. Default: none stated."),
  stated: words.optional().describe("The value to aim for as people say it: '15/32'. Default: the nominal."),
  unit: words,
  conditions: words
    .optional()
    .describe("Hot or cold, in gear, hose off … Other conditions are another setting. Default: none stated."),
  component: id.optional().describe("Default: the record's first component."),
  scope: scopeText,
});
const interval = z
  .strictObject({
    name: words.describe("What is done: 'engine oil change'."),
    months: z.int().positive().optional(),
    miles: z.int().positive().optional(),
    once: z.boolean().default(false).describe("Once, not again and again. Default: no."),
    none: z.boolean().default(false).describe("There is no interval: for life, or withdrawn. Default: no."),
    note: words.optional(),
    scope: scopeText,
  })
  .refine(
    (it) => it.none !== (it.months !== undefined || it.miles !== undefined),
    "months, miles or both; or none: true",
  );

export const change = z
  .strictObject({
    id,
    title: words.describe("What changed, in a few words."),
    issued: day.describe("When this record was first released."),
    revised: day.optional().describe("When it was last revised. Default: never."),
    revision: z.int().min(1).default(1).describe("Default: 1."),
    withdrawn: words
      .optional()
      .describe("Why the record no longer counts; its page stays and says so. Default: it counts."),
    instead: z
      .array(id)
      .default([])
      .describe("Of a withdrawn record: the records that say what holds instead. Default: nothing follows it."),
    kinds: z.array(z.enum(KINDS)).min(1).describe("What sort of change it is."),
    components: z
      .array(id)
      .default([])
      .describe(
        "Component ids from components/, the main one first. Default: none, and the record stands under no system.",
      ),
    words: z.array(words).default([]).describe("Further words people use for it in a search. Default: none."),
    starts: words.describe("From when, in words: 'start of 1973, vans only'."),
    "in-force-from": z
      .int()
      .optional()
      .describe(
        "For what also holds for cars built earlier: the model year from whose start it holds. Default: a car is concerned from the day it was built.",
      ),
    scope: scopeText.describe("The cars the change is about."),
    built: z.array(built).default([]).describe("What the plant fitted, place by place. Default: nothing stated."),
    mixed: z.array(mixed).default([]).describe("Stretches in which the plant used either part. Default: none."),
    supersedes: z.array(supersedes).default([]).describe("Delivery rules. Default: none."),
    "stands-in": z
      .array(standsIn)
      .default([])
      .describe("What may, or may not, be fitted for what. Default: nothing stated, which is never yes."),
    kits: z.array(kit).default([]).describe("What is in a kit. Default: none."),
    "service-only": z
      .array(partNumber)
      .default([])
      .describe("Parts for repair only; no car left a plant with them. Default: none."),
    settings: z.array(setting).default([]).describe("Figures in force. Default: none."),
    procedures: z
      .array(
        z.strictObject({
          when: words.optional().describe("On which cars or with which part fitted."),
          steps: sentences,
        }),
      )
      .default([])
      .describe("How it is done. Default: nothing stated."),
    intervals: z.array(interval).default([]).describe("How often something is due. Default: nothing stated."),
    tools: z
      .array(z.strictObject({ tool: id, use: words, scope: scopeText.optional() }))
      .default([])
      .describe("Tools it takes. Default: none."),
    "left-alone": z
      .array(sentences)
      .default([])
      .describe("What was looked at and left alone on purpose, a sentence each. Default: nothing stated."),
    "tell-apart": sentences
      .optional()
      .describe("How to know which one it is, beyond the marks of the parts. Default: the marks say it."),
    otherwise: sentences.optional().describe("What goes wrong if it is ignored."),
    caution: sentences.optional().describe("Where someone can be hurt or something ruined."),
    customer: sentences.optional().describe("One plain sentence for the customer."),
    links: z.array(id).default([]).describe("Records to read along. Default: none."),
    cancels: z
      .array(z.strictObject({ record: id, scope: scopeText.optional().describe("Default: the whole instruction.") }))
      .default([])
      .describe("Records whose instruction no longer holds. Default: none."),
    accept,
    story: z
      .string()
      .trim()
      .min(1)
      .max(20_000)
      .describe("What changed and why, in Markdown: the text below the second '---'."),
  })
  .refine((it) => it.instead.length === 0 || it.withdrawn !== undefined, {
    path: ["instead"],
    message: "only a withdrawn record has something in its place",
  })
  .describe("changes/<year>/<id>.md: one change. Facts stand between the '---' lines, the story below them.");
export type ChangeFile = z.infer<typeof change>;
