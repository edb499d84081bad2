/** The question in the address: ?q=…&without=…&type=… */
export type Facets = Readonly<Record<string, readonly string[]>>;

export interface Asked {
  readonly question: string;
  /** Chips that were taken away, by the words that had been read so. */
  readonly without: readonly string[];
  readonly facets: Facets;
}

export const FACETS = ["type", "system", "line", "year", "kind"] as const;

export function readAddress(href: string): Asked {
  const { searchParams } = new URL(href);
  const facets = Object.fromEntries(
    FACETS.map((name) => [name, searchParams.getAll(name)]).filter(([, values]) => (values as string[]).length > 0),
  );
  return { question: searchParams.get("q")?.trim() ?? "", without: searchParams.getAll("without"), facets };
}

export function writeAddress(href: string, asked: Asked): string {
  const url = new URL(href);
  url.search = "";
  url.searchParams.set("q", asked.question);
  for (const said of asked.without) url.searchParams.append("without", said);
  for (const name of FACETS) for (const value of asked.facets[name] ?? []) url.searchParams.append(name, value);
  return url.href;
}
