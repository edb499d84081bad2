import { z } from "zod";
import { words } from "./common.ts";
import { FOLDER_END } from "./slips.ts";

export const maker = z
  .strictObject({
    name: words.describe("The maker's name, as it stands in the page head."),
    title: words.describe("What the site is called."),
    about: z.string().trim().min(1).max(2000).describe("One paragraph for the home page: what these records are."),
    notice: words.optional().describe("A line at the foot of every page, such as a disclaimer."),
    site: z
      .url({ protocol: /^https?$/, error: "an address that begins with https:// or http://", abort: true })
      .regex(FOLDER_END, "an address that ends in '/'")
      .describe("The address the site is published at, with any folder, ending in '/'. Feeds and copied links use it."),
    language: z
      .string()
      .regex(/^[a-z]{2,3}(-[A-Za-z0-9]+)*$/, "a language tag, such as en")
      .default("en")
      .describe("Default: en."),
    units: z.enum(["us", "metric"]).default("us").describe("The unit system the records are written in. Default: us."),
  })
  .describe("maker.yaml: whose records these are and where they are published.");
export type MakerFile = z.infer<typeof maker>;
