/**
 * The text of a record that full text search looks through, in the site's index and on the command line alike: everything that
 * the record says, in its own words, without what stands on its page round about.
 */
import type { Catalog, ChangeRecord } from "../records/catalog.ts";
import { partsNamed } from "../records/statement.ts";

export function recordText({ parts }: Pick<Catalog, "parts">, record: ChangeRecord): string {
  const { facts } = record;
  const named = [...new Set(record.stated.flatMap(partsNamed))];
  return [
    `${facts.title}.`,
    facts.story,
    facts["tell-apart"],
    facts.otherwise,
    facts.caution,
    facts.customer,
    ...facts["left-alone"],
    ...facts.procedures.flatMap(({ when, steps }) => [when, steps]),
    ...facts.tools.map(({ tool, use }) => `${tool}: ${use}`),
    ...facts.settings.map((it) =>
      [`${it.name}:`, it.window, it.stated, it.unit, it.conditions].filter(Boolean).join(" "),
    ),
    ...facts.intervals.map((it) => [it.name, it.note].filter(Boolean).join(" ")),
    ...facts["stands-in"].flatMap((it) => [it.do, it.why]),
    ...facts.kits.flatMap((it) => it.contents.map(({ name }) => name)),
    ...new Set(facts.built.map(({ place }) => place)),
    ...named.map((number) => [number, parts.get(number)?.name].filter(Boolean).join(" ")),
    ...record.components.map(({ name }) => name),
    ...facts.words,
    facts.id,
  ]
    .filter((text) => text !== undefined && text !== "")
    .join("\n");
}
