/** The files of the site as it is now, each made or fetched when it is asked for. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Site } from "../../site/site.ts";
import type { Files } from "./answer-request.ts";
import { Documents, LAID_OUT } from "./documents.ts";
import { alone, OWN } from "./dress-page.ts";
import type { SearchIndex } from "./search-index.ts";
import type { Templates } from "./templates.ts";

/** Where each kind of file comes from. */
export interface Origins {
  /** The site of the last data without errors. */
  site(): Site | undefined;
  readonly templates: Templates;
  /** The server's own, which no published site has. */
  readonly own: { readonly script: string; readonly style: string };
  /** Where scripts and styles are bundled to, and when that is done. */
  readonly bundled: { readonly home: string; readonly done: Promise<unknown> };
  readonly search: Pick<SearchIndex, "ready" | "names">;
  /** The documents of the map, which take long. */
  layOut(): Promise<ReadonlyMap<string, string>>;
  /** Puts into a page what the published one has not. */
  dress(page: string): string;
}

export class SiteFiles implements Files {
  readonly #from: Origins;
  #documents: { readonly site: Site; readonly all: Documents } | undefined;
  #graph: { readonly site: Site; readonly documents: Promise<ReadonlyMap<string, string>> } | undefined;

  constructor(from: Origins) {
    this.#from = from;
  }

  has(file: string): boolean {
    const site = this.#from.site();
    return site !== undefined && this.#from.templates.has(site, file);
  }

  async text(file: string): Promise<string | undefined> {
    const { own, templates, dress } = this.#from;
    if (file === OWN.script) return own.script;
    if (file === OWN.style) return own.style;
    // No template is asked for these: to know that it has no such page, each would make its lists.
    if (/^\/(assets|pagefind)\//.test(file)) return undefined;
    const site = this.#from.site();
    if (!site) return file.endsWith(".html") ? dress(NO_SITE) : undefined;
    if (file.startsWith("/data/") && !file.endsWith(".html")) return this.#document(site, file.slice("/data/".length));
    const text = templates.render(site, file);
    return text !== undefined && file.endsWith(".html") ? dress(text) : text;
  }

  async bytes(file: string): Promise<Uint8Array | undefined> {
    const { bundled, search } = this.#from;
    if (file.startsWith("/assets/")) {
      await bundled.done;
      return readFile(join(bundled.home, file)).catch(ignoreMissing);
    }
    if (!file.startsWith("/pagefind/")) return undefined;
    const index = await search.ready();
    return index && readFile(join(index.folder, file)).catch(ignoreMissing);
  }

  notFound(): string {
    const { templates, dress } = this.#from;
    const site = this.#from.site();
    return dress((site && templates.render(site, "/404.html")) ?? NO_SITE);
  }

  async #document(site: Site, name: string): Promise<string | undefined> {
    const { search, layOut } = this.#from;
    if (LAID_OUT.includes(name)) {
      if (this.#graph?.site !== site) this.#graph = { site, documents: layOut() };
      return (await this.#graph.documents).get(name);
    }
    if (this.#documents?.site !== site) this.#documents = { site, all: new Documents(site) };
    // What the text search calls each card is known when there is an index; questions wait for the first one.
    if (name.startsWith("ask/systems/")) await search.ready();
    return this.#documents.all.find(name, search.names);
  }
}

const NO_SITE = alone("There is no site yet", "The data has errors. When they are mended, the page comes by itself.");

function ignoreMissing(error: NodeJS.ErrnoException): undefined {
  if (error.code !== "ENOENT" && error.code !== "EISDIR") throw error;
  return undefined;
}
