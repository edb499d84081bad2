import { z } from "zod";

const value = z.union([z.string(), z.number(), z.boolean()]);

const given = z.record(
  z.string(),
  z.union([value, z.array(value), z.strictObject({ from: value.optional(), to: value.optional() })]),
);

export const carShape = z
  .strictObject({
    plate: z.string().optional().describe("The number on the serial plate."),
    facts: given
      .optional()
      .describe("Trait to its value, to the values that are still possible, or to a range. As built."),
    found: given
      .optional()
      .describe("The same for what is on the car today and may differ from what it left the plant with."),
    fitted: z.array(z.string()).optional().describe("Part numbers known to be on the car today."),
  })
  .describe("What is known of a car.");
export type CarInput = z.infer<typeof carShape>;
