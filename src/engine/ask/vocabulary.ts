/** The names that a question may use, gathered from the data. Published for the browser, so that both read alike. */
import type { Catalog, Kind } from "../records/catalog.ts";
import { KIND_WORDS } from "../records/kinds.ts";
import { cardsOf, wordsOf } from "./card.ts";
import type { Card } from "./card-shape.ts";
import { numbersOf, shelfOf } from "./numbers.ts";
import { serialsOf } from "./serials.ts";
import { traitNames } from "./trait-names.ts";
import type { Vocabulary } from "./vocabulary-shape.ts";

/** A word by which records of more systems are called says nothing of where to look. */
const FEW_SYSTEMS = 3;

/** `words` are those of the texts, folded, with the number of records in which each stands. */
export function vocabularyOf(
  catalog: Catalog,
  { words, units }: { readonly words: Readonly<Record<string, number>>; readonly units: readonly string[] },
  cards: readonly Card[] = cardsOf(catalog),
): Vocabulary {
  const line = catalog.space.role("line");
  const trait = line === undefined ? undefined : catalog.space.trait(line);
  const lines = trait?.kind === "list" ? trait.values : [];
  return {
    names: [
      ...catalog.systems.map(({ id, name: label, aliases }) => ({
        kind: "system" as const,
        id,
        label,
        say: [label, ...aliases],
      })),
      ...[...catalog.components.values()].map(({ id, name: label, aliases }) => ({
        kind: "component" as const,
        id,
        label,
        say: [label, ...aliases],
      })),
      ...lines.map(({ id, label, aliases }) => ({ kind: "line" as const, id, label, say: [label, ...aliases] })),
      ...catalog.years.map((year) => ({
        kind: "year" as const,
        id: String(year),
        label: String(year),
        say: [String(year)],
      })),
      ...traitNames(catalog.space),
      ...(Object.keys(KIND_WORDS) as Kind[]).map((id) => ({
        kind: "kind" as const,
        id,
        label: KIND_WORDS[id].label,
        say: [KIND_WORDS[id].label, ...KIND_WORDS[id].aliases],
      })),
    ],
    ignore: catalog.words.ignore,
    plain: catalog.words.plain,
    mean: catalog.words.mean.flatMap(({ say, mean }) => say.map((word): [string, string] => [word, mean])),
    serials: serialsOf(catalog.space),
    units: [...units],
    shelves: [...new Set([...numbersOf(catalog).keys()].map(shelfOf))].sort(),
    records: catalog.records.size,
    components: Object.fromEntries(
      [...catalog.components.values()].map(({ id, system, under }) => [
        id,
        {
          system,
          ...(under === undefined ? {} : { under }),
          records: cards.filter(({ components }) => components.includes(id)).length,
        },
      ]),
    ),
    called: calledBy(catalog, cards),
    words: { ...words },
  };
}

function calledBy({ components }: Catalog, cards: readonly Card[]): Record<string, string[]> {
  const systems = new Map<string, Set<string>>();
  for (const card of cards)
    for (const word of [...card.keys, ...card.near, ...wordsOf(namesOf(components, card))])
      for (const system of card.systems) systems.set(word, (systems.get(word) ?? new Set()).add(system));
  return Object.fromEntries(
    [...systems]
      .filter(([, own]) => own.size <= FEW_SYSTEMS)
      .map(([word, own]): [string, string[]] => [word, [...own].sort()])
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  );
}

function namesOf(components: Catalog["components"], card: Card): string[] {
  return card.components.flatMap((id) => {
    const component = components.get(id);
    return component ? [component.name, ...component.aliases] : [];
  });
}
