/** The names that a question may use, gathered from the data. Published for the browser, so that both read alike. */
import { z } from "zod";
import type { Catalog, Kind } from "../records/catalog.ts";
import { KIND_WORDS } from "../records/kinds.ts";

export const CHIP_KINDS = ["system", "component", "line", "year", "kind"] as const;
export type ChipKind = (typeof CHIP_KINDS)[number];

export const vocabularyShape = z
  .strictObject({
    names: z.array(
      z.strictObject({
        kind: z.enum(CHIP_KINDS),
        id: z.string(),
        label: z.string(),
        say: z.array(z.string()).describe("Everything that people call it."),
      }),
    ),
    ignore: z.array(z.string()).describe("Words that name nothing."),
    mean: z.array(z.tuple([z.string(), z.string()])).describe("What people say, and the word of the records for it."),
  })
  .describe("vocabulary.json: the words that questions are read with.");
export type Vocabulary = z.infer<typeof vocabularyShape>;

export function vocabularyOf(catalog: Catalog): Vocabulary {
  const line = catalog.space.role("line");
  const trait = line === undefined ? undefined : catalog.space.trait(line);
  const lines = trait?.kind === "list" ? trait.values : [];
  return {
    names: [
      ...catalog.systems.map(({ id, name, aliases }) => ({
        kind: "system" as const,
        id,
        label: name,
        say: [name, ...aliases],
      })),
      ...[...catalog.components.values()].map(({ id, name, aliases }) => ({
        kind: "component" as const,
        id,
        label: name,
        say: [name, ...aliases],
      })),
      ...lines.map(({ id, label, aliases }) => ({ kind: "line" as const, id, label, say: [label, ...aliases] })),
      ...catalog.years.map((year) => ({
        kind: "year" as const,
        id: String(year),
        label: String(year),
        say: [String(year)],
      })),
      ...(Object.keys(KIND_WORDS) as Kind[]).map((id) => ({
        kind: "kind" as const,
        id,
        label: KIND_WORDS[id].label,
        say: [KIND_WORDS[id].label, ...KIND_WORDS[id].aliases],
      })),
    ],
    ignore: catalog.words.ignore,
    mean: catalog.words.mean.flatMap(({ say, mean }) => say.map((word): [string, string] => [word, mean])),
  };
}
