import { z } from "zod";
import { accept, aliases, id, words } from "./common.ts";

const component = z.strictObject({
  id,
  name: words.describe("Singular, as on a parts list: 'rear wheel cylinder'."),
  aliases,
  under: id.optional().describe("The component this one is part of. Default: it stands directly under its system."),
  places: z
    .array(words)
    .default([])
    .describe(
      "The places on a car that take such a part, each with its own name: 'shoe adjuster, left'. Default: none.",
    ),
  "goes-by": id
    .optional()
    .describe(
      "The trait by which its parts go, and what is under it: a serial of the unit it sits in, such as the engine number. Records then use that number, never the car's. Default: the car's own.",
    ),
});
export const system = z
  .strictObject({
    id,
    name: words,
    order: z.int().min(1).describe("Where pages list it: 1 first."),
    aliases,
    components: z.array(component).default([]).describe("In the order in which pages list them."),
    accept,
  })
  .describe("components/<system>.yaml: a system of the car and the components under it.");
export type SystemFile = z.infer<typeof system>;
export const cautions = z
  .strictObject({
    cautions: z.array(
      z.strictObject({
        id,
        title: words.describe("A few words that name the danger."),
        text: z.string().trim().min(1).max(2000).describe("What to do and what never to do."),
        systems: z.array(id).default([]).describe("Shown with every record of these systems."),
        components: z.array(id).default([]).describe("Shown with every record of these components."),
        source: words.describe("Where the caution comes from, or 'common practice, no source'."),
      }),
    ),
  })
  .describe("cautions.yaml: the usual cautions, tied to systems and components so that none is forgotten.");
export type CautionsFile = z.infer<typeof cautions>;
