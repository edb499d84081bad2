import { z } from "zod";
import { scopeWords } from "../answer.ts";
import { cancelledShape, carAnswerBase } from "./applies.ts";
import { lookShape } from "./look.ts";

export const valueShape = z.strictObject({
  value: z.string(),
  records: z.array(z.string()),
  asFound: z.literal(true).optional().describe("The part was seen on the car; what the plant fitted does not count."),
});
export type ValueView = z.infer<typeof valueShape>;

const cancelled = z
  .array(z.strictObject({ record: z.string(), by: cancelledShape }))
  .optional()
  .describe(
    "Of the records named, those whose instruction others end for cars like this one, and which ones do. What was built stays built.",
  );

const cars = scopeWords
  .optional()
  .describe(
    "Of the cars that this can be, those that it is so of. Left out where it is all of them, or too many kinds to name.",
  );

export const changeShape = z.strictObject({
  kind: z.enum(["part", "setting", "interval", "record"]),
  name: z.string().describe("The place, the name of the setting or interval, or the title of the record."),
  systems: z.array(z.string()),
  trap: z.boolean(),
  verdict: z
    .enum(["changed", "changed against some", "look first"])
    .describe(
      "'changed against some': only against some cars of the year known, which had different values themselves.",
    ),
  from: z
    .array(valueShape)
    .describe("Its value in the year known, on cars for which it changed; several where it depends."),
  to: z.array(valueShape).describe("Its value now, on cars for which it changed."),
  byCars: z
    .array(z.strictObject({ cars, from: z.array(z.string()), to: z.array(z.string()) }))
    .optional()
    .describe(
      "Which cars it changed for, and from what to what on each. Left out where it is one change for all of them.",
    ),
  steps: z
    .array(z.strictObject({ year: z.int(), values: z.array(valueShape), cancelled }))
    .describe("The years in which it changed, and to what."),
  records: z.array(z.string()),
  cancelled,
  inPlaceOf: z
    .array(z.string())
    .optional()
    .describe("Sentences: which values this record took the place of, with a procedure or by ending their record."),
  ask: lookShape.optional(),
});
export type ChangeView = z.infer<typeof changeShape>;

export const notOnRecordShape = z.strictObject({
  kind: z.enum(["part", "setting", "interval"]),
  name: z.string(),
  systems: z.array(z.string()),
  year: z.int().describe("The year of which nothing is on record."),
  values: z.array(valueShape).describe("Its value in the other year."),
  cars,
  records: z.array(z.string()),
  see: z
    .array(z.strictObject({ record: z.string(), words: z.string() }))
    .describe("Records that took its place; each stands among the changes by itself."),
});
export type NotOnRecordView = z.infer<typeof notOnRecordShape>;

export const netChangeAnswer = z
  .strictObject({
    ...carAnswerBase,
    question: z.literal("net-change"),
    verdict: z.enum(["changed", "no change on record", "look first", "no such car", "no such car in that year"]),
    from: z.int(),
    to: z.int(),
    changes: z.array(changeShape),
    notOnRecord: z
      .array(notOnRecordShape)
      .describe("What is on record in one of the years only: whether it changed is not known."),
    leftAlone: z
      .array(z.strictObject({ record: z.string(), what: z.string() }))
      .describe("What was left alone on purpose, as the records between say."),
  })
  .describe("answer net-change --from YEAR, and a car");
export type NetChangeAnswer = z.infer<typeof netChangeAnswer>;
