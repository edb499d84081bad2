import { z } from "zod";
import { FITS } from "../../interchange/fits.ts";
import { reason } from "../answer.ts";
import { carAnswerBase } from "./applies.ts";

const along = z.strictObject({
  part: z.string(),
  name: z.string(),
  onTheCar: z.boolean().describe("Every car that this can be was built with it, so it need not be ordered."),
  because: reason,
});

const current = z.strictObject({
  part: z.string(),
  name: z.string(),
  steps: z.array(reason).describe("Delivery rule by delivery rule from the number asked."),
  along: z.array(along).describe("What must be ordered along."),
  circle: z.boolean().describe("The rules lead back to where they came from: an error in the records."),
  fits: z
    .enum([...FITS, "look first", "by place", "no such car"])
    .describe("Delivery is not permission: whether the part may be fitted to the car."),
});

export const currentAnswer = z
  .strictObject({
    ...carAnswerBase,
    question: z.literal("current"),
    verdict: z
      .enum(["current", "superseded", "look first", "circle", "no such car"])
      .describe("'current': the number asked is still the one to order."),
    asked: z.array(z.string()).describe("The number asked, or what the car was built with in the place."),
    currents: z.array(current).describe("All that are possible for the car at hand; one where it is decided."),
    order: z.array(z.string()).describe("What to order, where it is decided."),
    words: z.string().describe("The verdict in a sentence."),
  })
  .describe("answer current PART, or --place PLACE, and a car");
export type CurrentAnswer = z.infer<typeof currentAnswer>;
