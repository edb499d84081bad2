import { z } from "zod";
import { reason, scopeWords } from "../answer.ts";
import { carAnswerBase } from "./applies.ts";

const convertedShape = z
  .strictObject({ low: z.string().optional(), high: z.string().optional(), unit: z.string() })
  .describe("The window in the other unit system, rounded inward; it only helps the eye.");

export const figureShape = z.strictObject({
  said: z.string().describe("The window with its unit: '7 to 9 notches'."),
  low: z.string().optional().describe("The lower limit, inside; left out where there is none."),
  high: z.string().optional(),
  unit: z.string(),
  aimFor: z.string().optional().describe("The value to aim for."),
  conditions: z.array(z.string()).describe("How it is measured, clause by clause. Empty: none stated."),
  converted: convertedShape.optional(),
  cars: z
    .string()
    .optional()
    .describe("For which of the cars that this can be, where it is not for all; otherwise the cars of the figure."),
  records: z.array(z.string()),
});
export type FigureView = z.infer<typeof figureShape>;

export const SETTING_VERDICTS = ["in force", "look first", "no such setting", "contradiction", "no such car"] as const;

export const settingView = z.strictObject({
  name: z.string(),
  component: z.string().optional().describe("What it is set on."),
  verdict: z.enum(SETTING_VERDICTS),
  figures: z.array(figureShape).describe("What is in force; all that may be, where it is open."),
  perhapsNone: z.boolean().describe("For some of the cars that this can be no record gives a figure."),
  movedWith: z.string().optional().describe("The part found on the car that brought the figure along."),
  refused: z.array(z.string()).describe("What the records say against that part on this car, a sentence each."),
  unsaid: z.array(z.string()).describe("Parts found on the car to which no record ties a figure of this setting."),
});
export type SettingView = z.infer<typeof settingView>;

export const settingAnswer = z
  .strictObject({
    ...carAnswerBase,
    question: z.literal("setting"),
    verdict: z.enum([...SETTING_VERDICTS, "choose", "list"]),
    settings: z.array(settingView).describe("The setting asked for; several where the words fit several, or all."),
    history: z
      .array(
        z.strictObject({
          from: z.int(),
          to: z.int(),
          figures: z.array(figureShape),
          notOnRecord: z.boolean().describe("For some cars of these years no record gives a figure."),
        }),
      )
      .describe("The figure by model year, for cars like this one as they were built."),
    withIt: z
      .array(
        z.strictObject({
          record: z.string(),
          title: z.string(),
          procedure: z
            .enum(["changed", "not stated"])
            .describe(
              "Whether the record changed the way of doing it too; what it left alone on purpose stands below.",
            ),
          steps: z.array(z.string()).describe("The procedures of the record, with the cars or parts they are for."),
          tools: z.array(z.string()),
          leftAlone: z.array(z.string()),
          otherwise: z.string().optional(),
          caution: z.string().optional(),
        }),
      )
      .describe("What the records say beside the figure."),
    cautions: z.array(z.strictObject({ title: z.string(), text: z.string(), source: z.string() })),
    words: z.string().describe("The verdict in a sentence."),
  })
  .describe("answer setting NAME, and a car; without a name all settings of the car");
export type SettingAnswer = z.infer<typeof settingAnswer>;

export const READING_VERDICTS = [
  "within",
  "too low",
  "too high",
  "too near the limit to call",
  "cannot be judged",
  "no such setting",
  "look first",
  "choose",
  "contradiction",
  "not understood",
  "no such car",
] as const;

const otherFigure = z.strictObject({
  figure: figureShape,
  verdict: z.string().describe("What the reading would be under this figure."),
  sameCar: z.boolean().describe("It is the figure of a car like this one in another year."),
  because: reason,
});

export const readingAnswer = z
  .strictObject({
    ...carAnswerBase,
    question: z.literal("reading"),
    verdict: z.enum(READING_VERDICTS),
    setting: settingView.optional(),
    settings: z.array(z.string()).describe("The settings that may be meant, where it is not clear which."),
    reading: z
      .strictObject({
        typed: z.string(),
        inUnit: z
          .string()
          .describe("The reading in the unit of the record; rounded where it would never end. It is judged exactly."),
        error: z.string().optional().describe("The instrument's error, in the unit of the record."),
      })
      .optional(),
    choices: z
      .array(z.strictObject({ words: z.string(), typed: z.string() }))
      .describe("What the typed reading may mean; each reads back as one quantity."),
    by: z.string().optional().describe("By how much it misses the limit, or stays inside of the nearest one."),
    each: z
      .array(z.strictObject({ figure: figureShape, verdict: z.string() }))
      .describe("The verdict under each figure that may be in force."),
    provided: z.array(z.string()).describe("The verdict holds if it was measured so."),
    missing: z.array(z.string()).describe("Conditions of the figure that were not met, or not said to be."),
    passesUnder: z
      .array(otherFigure)
      .describe(
        "It does not pass here, but would under these other figures: last year's figure is the classic mistake.",
      ),
    failsUnder: z.array(otherFigure).describe("It passes here, and would not under these."),
    explainedBy: z
      .array(
        z.strictObject({
          part: z.string().describe("The part that would explain the reading …"),
          inPlaceOf: z.string().describe("… if it were on the car in place of this one."),
          why: z.string(),
          tell: z.array(z.string()).describe("The marks that tell the two apart."),
          because: z.array(reason),
        }),
      )
      .describe("Look-alikes that would explain the reading."),
    warnings: z.array(z.string()).describe("What has to be said loudly."),
    words: z.string(),
  })
  .describe("answer reading SETTING VALUE [--error E] [--conditions C], and a car");
export type ReadingAnswer = z.infer<typeof readingAnswer>;

const dueShape = z.strictObject({
  said: z.string().describe("'every 6 months or 6,000 miles, whichever comes first'"),
  months: z.int().optional(),
  miles: z.int().optional(),
  once: z.boolean(),
  none: z.boolean(),
  note: z.string().optional(),
  cars: scopeWords.optional(),
  records: z.array(z.string()),
});

export const scheduleAnswer = z
  .strictObject({
    ...carAnswerBase,
    question: z.literal("schedule"),
    verdict: z.enum(["schedule", "look first", "not on record", "no such car"]),
    against: z.int().optional().describe("The model year it is compared with."),
    items: z.array(
      z.strictObject({
        name: z.string(),
        component: z.string().optional(),
        verdict: z.enum(["in force", "look first", "not on record"]),
        due: z.array(dueShape).describe("What is in force; all that may be, where it is open."),
        before: z.array(dueShape).describe("What a car like this one of the year before had."),
        change: z.enum(["same", "changed", "new", "no longer on record", "open", "not compared"]),
        perhapsNone: z.boolean(),
        ask: carAnswerBase.ask,
        because: z.array(reason),
      }),
    ),
    words: z.string(),
  })
  .describe("answer schedule [--from YEAR], and a car");
export type ScheduleAnswer = z.infer<typeof scheduleAnswer>;
