/** The text search of the site, Pagefind, asked with the chips of a question as filters. */
import { type Chip, wanted } from "../../engine/ask/read-question.ts";
import type { Vocabulary } from "../../engine/ask/vocabulary.ts";
import type { Facets } from "./address.ts";

export interface Found {
  readonly total: number;
  /** What had to be given up to find anything: nothing, some of the words, or all of them. */
  readonly gaveUp: "nothing" | "some words" | "all words";
  readonly results: readonly Result[];
  readonly facets: Counts;
}
export interface Result {
  readonly url: string;
  readonly title: string;
  readonly type: string;
  readonly trap: boolean;
  /** Words of the page round the hit, hits in <mark>; one line about the page where no words were searched for. */
  readonly excerpt: string;
}
export type Counts = Readonly<Record<string, Readonly<Record<string, number>>>>;

export interface Query {
  readonly chips: readonly Chip[];
  readonly words: string;
  readonly facets: Facets;
  readonly shown: number;
}
export type Search = (query: Query) => Promise<Found>;

type Filters = Record<string, { any: string[] }>;
interface Pagefind {
  options(options: object): Promise<void>;
  init(): Promise<void>;
  filters(): Promise<Counts>;
  search(words: string | null, options: object): Promise<PagefindSearch>;
}
interface PagefindSearch {
  readonly results: readonly { data(): Promise<PagefindPage> }[];
  readonly filters: Counts;
  readonly totalFilters: Counts;
}
interface PagefindPage {
  readonly url: string;
  readonly excerpt: string;
  readonly meta: Readonly<Record<string, string>>;
  readonly filters: Readonly<Record<string, readonly string[]>>;
}

export async function openSearch(root: URL, vocabulary: Vocabulary): Promise<Search> {
  const pagefind = (await import(new URL("pagefind/pagefind.js", root).href)) as Pagefind;
  await pagefind.options({ baseUrl: root.pathname, excerptLength: 24 });
  await pagefind.init();
  // Counts beside the filters come only when the filters were loaded first.
  await pagefind.filters();
  return async ({ chips, words, facets, shown }) => {
    const filters = filtersOf(vocabulary, chips, facets);
    const [found, gaveUp] = await askLoosely(pagefind, words, filters, chips.length > 0);
    const pages = await Promise.all(found.results.slice(0, shown).map((result) => result.data()));
    return {
      total: found.results.length,
      gaveUp,
      results: namedFirst(pages, words).map((page) => ({
        url: page.url,
        title: page.meta.title ?? page.url,
        type: page.filters.type?.[0] ?? "",
        trap: page.meta.trap === "yes",
        excerpt: words === "" || gaveUp === "all words" ? escapeText(page.meta.about ?? "") : page.excerpt,
      })),
      facets: found.filters,
    };
  };
}

/** All words; where that finds nothing any word; where that finds nothing what the chips say alone. */
async function askLoosely(
  pagefind: Pagefind,
  words: string,
  filters: object,
  hasChips: boolean,
): Promise<[PagefindSearch, Found["gaveUp"]]> {
  const exact = await ask(pagefind, words, filters);
  if (exact.results.length > 0 || words === "") return [exact, "nothing"];
  const some = words.includes(" ") ? await anyWord(pagefind, words, filters) : exact;
  if (some.results.length > 0 || !hasChips) return [some, "some words"];
  return [await ask(pagefind, "", filters), "all words"];
}

/** Of each kind any name will do, every kind must fit, and facets narrow further. */
function filtersOf(vocabulary: Vocabulary, chips: readonly Chip[], facets: Facets): object {
  const all: Filters[] = [
    ...[...wanted(chips)].map(([kind, ids]) => ({
      [kind]: { any: ids.map((id) => filterValue(vocabulary, kind, id)) },
    })),
    ...Object.entries(facets).map(([name, values]) => ({ [name]: { any: [...values] } })),
  ];
  return all.length > 0 ? { all } : {};
}

/** Pages carry names, which people read beside a result; only components, whose names may be the same, carry ids. */
function filterValue(vocabulary: Vocabulary, kind: Chip["kind"], id: string): string {
  if (kind === "component") return id;
  return vocabulary.names.find((name) => name.kind === kind && name.id === id)?.label ?? id;
}

/** Without words, every page with the filters, traps first and newest first. */
function ask(pagefind: Pagefind, words: string, filters: object): Promise<PagefindSearch> {
  return pagefind.search(words === "" ? null : words, words === "" ? { filters, sort: { rank: "asc" } } : { filters });
}

/** Pages with the rarest of the words that some page has. */
async function anyWord(pagefind: Pagefind, words: string, filters: object): Promise<PagefindSearch> {
  const each = await Promise.all(words.split(" ").map((word) => ask(pagefind, word, filters)));
  const [first] = each.toSorted(
    (a, b) => Number(a.results.length === 0) - Number(b.results.length === 0) || a.results.length - b.results.length,
  );
  return first as PagefindSearch;
}

/** A part or record is asked for by its number, with whatever signs between: its own page comes before those that name it. */
function namedFirst(pages: readonly PagefindPage[], words: string): PagefindPage[] {
  const plain = (text: string): string => text.toUpperCase().replaceAll(/[^\p{Letter}\p{Number}]/gu, "");
  const isNamed = ({ meta }: PagefindPage): boolean => plain(meta.title?.split(" ")[0] ?? "") === plain(words);
  return pages.toSorted((a, b) => Number(isNamed(b)) - Number(isNamed(a)));
}

function escapeText(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;");
}
