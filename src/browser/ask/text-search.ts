/** Full text: the site's search index, Pagefind, asked for the records that hold a word or two words one after the other. */

interface Pagefind {
  options(options: object): Promise<void>;
  init(): Promise<void>;
  search(words: string): Promise<{ readonly results: readonly PagefindResult[] }>;
}
interface PagefindResult {
  readonly id: string;
  data(): Promise<{ readonly url: string; readonly excerpt: string }>;
}

export class TextSearch {
  readonly #root: URL;
  #opening: Promise<Pagefind> | undefined;
  readonly #found = new Map<string, Promise<ReadonlySet<string>>>();

  constructor(root: URL) {
    this.#root = root;
  }

  /**
   * By word or pair of words, what the index calls the pages that hold it. Each is asked for as it stands, in quotes: so the index
   * compares stems and does not guess at longer words.
   */
  async holders(wanted: readonly string[]): Promise<Map<string, ReadonlySet<string>>> {
    const pairs = await Promise.all(wanted.map(async (words) => [words, await this.#pagesWith(words)] as const));
    return new Map(pairs);
  }

  /** Words of a page round those of the question, hits in <mark>; nothing where the index finds none. */
  async excerpt(words: string, page: string): Promise<string | undefined> {
    const { results } = await (await this.#open()).search(words);
    return (await results.find(({ id }) => id === page)?.data())?.excerpt;
  }

  #pagesWith(words: string): Promise<ReadonlySet<string>> {
    const known = this.#found.get(words);
    if (known) return known;
    const coming = this.#open()
      .then((pagefind) => pagefind.search(`"${words}"`))
      .then(({ results }) => new Set(results.map(({ id }) => id)));
    this.#found.set(words, coming);
    coming.catch(() => this.#found.delete(words));
    return coming;
  }

  #open(): Promise<Pagefind> {
    this.#opening ??= (import(new URL("pagefind/pagefind.js", this.#root).href) as Promise<Pagefind>)
      .then(async (pagefind) => {
        await pagefind.options({ baseUrl: this.#root.pathname, excerptLength: 24 });
        await pagefind.init();
        return pagefind;
      })
      .catch((error: unknown) => {
        this.#opening = undefined; // On a bad network the next question tries again.
        throw error;
      });
    return this.#opening;
  }
}
