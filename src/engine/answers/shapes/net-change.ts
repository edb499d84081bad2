import { z } from "zod";
import { carAnswerBase } from "./applies.ts";
import { lookShape } from "./look.ts";

export const valueShape = z.strictObject({ value: z.string(), records: z.array(z.string()) });

export type ValueView = z.infer<typeof valueShape>;
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
  from: z.array(valueShape).describe("Its value in the year known; several where it depends."),
  to: z.array(valueShape),
  steps: z
    .array(z.strictObject({ year: z.int(), values: z.array(valueShape) }))
    .describe("The years in which it changed, and to what."),
  records: z.array(z.string()),
  ask: lookShape.optional(),
});

export type ChangeView = z.infer<typeof changeShape>;
export const netChangeAnswer = z
  .strictObject({
    ...carAnswerBase,
    question: z.literal("net-change"),
    verdict: z.enum(["changed", "no change on record", "look first", "no such car", "no such car in that year"]),
    from: z.int(),
    to: z.int(),
    changes: z.array(changeShape),
    leftAlone: z
      .array(z.strictObject({ record: z.string(), what: z.string() }))
      .describe("What was left alone on purpose, as the records between say."),
  })
  .describe("answer net-change --from YEAR, and a car");
export type NetChangeAnswer = z.infer<typeof netChangeAnswer>;
