/** What the ask page loads: the words of questions, and by system and by the beginning of a number what a question may be about. */
import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { askIndexOf } from "../engine/answers/ask-index.ts";
import { cardAddress } from "../engine/ask/card.ts";
import { cardFiles } from "../engine/ask/card-files.ts";
import type { Card } from "../engine/ask/card-shape.ts";
import { type Numbered, shelfOf } from "../engine/ask/numbers.ts";
import { shelfFile } from "../engine/ask/shelf-file.ts";
import type { Catalog } from "../engine/records/catalog.ts";

/** By its name in data/: a document, made when it is asked for. `names` says what the text search calls each page. */
export function askDocuments(catalog: Catalog, names: ReadonlyMap<string, string>): Map<string, () => string> {
  const { vocabulary, cards, numbers } = askIndexOf(catalog);
  const named = cards.map((card): Card => {
    const page = names.get(cardAddress(card));
    return page === undefined ? card : { ...card, page };
  });
  const shelves = new Map<string, [string, readonly Numbered[]][]>();
  for (const [number, found] of numbers)
    shelves.set(shelfOf(number), [...(shelves.get(shelfOf(number)) ?? []), [number, found]]);
  const json = (value: unknown): string => `${JSON.stringify(value)}\n`;
  return new Map([
    ["vocabulary.json", () => json(vocabulary)],
    // A record under no system may be about anything, so it is among those of each.
    ...cardFiles(catalog.systems.map(({ id }) => id)).map(
      (id) =>
        [
          `ask/systems/${id}.json`,
          () => json(named.filter(({ systems }) => systems.length === 0 || systems.includes(id))),
        ] as const,
    ),
    ...[...shelves].map(
      ([shelf, found]) =>
        [
          `ask/numbers/${shelfFile(shelf)}`,
          () => json(Object.fromEntries(found.sort(([a], [b]) => (a < b ? -1 : 1)))),
        ] as const,
    ),
  ]);
}

/** Returns how many files were written. */
export async function writeAsk(catalog: Catalog, folder: string, names: ReadonlyMap<string, string>): Promise<number> {
  for (const inner of ["systems", "numbers"]) await mkdir(join(folder, "data", "ask", inner), { recursive: true });
  const documents = askDocuments(catalog, names);
  for (const [name, text] of documents) await writeFile(join(folder, "data", name), text());
  return documents.size;
}
