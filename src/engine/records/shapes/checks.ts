import { z } from "zod";
import { id, words } from "./common.ts";

/** How much a finding weighs. An error stops the build. */
export const GRAVITIES = ["error", "warning", "off"] as const;

export const checks = z
  .strictObject({
    rules: z
      .array(
        z.strictObject({
          check: id.describe("The id of a check: npm run check -- --rules lists them."),
          as: z.enum(GRAVITIES).describe("error stops the build, warning is only shown, off is not looked for."),
          why: words.describe("Why these records want it so."),
        }),
      )
      .superRefine((rules, { addIssue }) => {
        rules.forEach(({ check }, i) => {
          const first = rules.findIndex((other) => other.check === check);
          if (first < i)
            addIssue({
              code: "custom",
              path: [i, "check"],
              message: `'${check}' is set already, as ${rules[first]?.as}`,
              params: { hint: "keep one of the two" },
            });
        });
      })
      .default([])
      .describe("Checks that weigh otherwise here than they do by themselves. Default: none."),
    plausible: z
      .array(
        z.strictObject({
          setting: words.describe("Words that stand in the names of the settings meant: 'valve lash'."),
          unit: words.describe("The unit they are stated in; figures in another one are left alone."),
          least: z.number().describe("No figure is below this."),
          most: z.number().describe("No figure is above this."),
        }),
      )
      .default([])
      .describe("Between which limits figures of a kind make sense. Default: none are stated."),
    "never-say": z
      .array(z.strictObject({ say: words, because: words }))
      .default([])
      .describe(
        "Words that mislead in names and instructions, and why. Default: none beside the driver's and the passenger's side.",
      ),
  })
  .describe("checks.yaml: how the checks of the data are set for these records.");
export type ChecksFile = z.infer<typeof checks>;
