/** The documents in data/, made when they are asked for. */
import type { Site } from "../../site/site.ts";
import { answerDocuments } from "../write-answers.ts";
import { askDocuments } from "../write-ask.ts";
import { dataDocuments } from "../write-data.ts";

/** Those that need the map's layout, which takes long with many records. */
export const LAID_OUT: readonly string[] = ["graph.json", "graph.gexf"];

/** What a question needs of all records is read only when such a document is asked for. */
const OF_QUESTIONS = /^(vocabulary\.json|ask\/)/;

export class Documents {
  readonly #site: Site;
  #plain: ReadonlyMap<string, () => string> | undefined;

  constructor(site: Site) {
    this.#site = site;
  }

  /** The document with this name in data/; `names` says what the text search calls each page. */
  find(name: string, names: ReadonlyMap<string, string>): string | undefined {
    if (OF_QUESTIONS.test(name)) return askDocuments(this.#site.catalog, names).get(name)?.();
    this.#plain ??= new Map([...dataDocuments(this.#site), ...answerDocuments(this.#site.knowledge)]);
    return this.#plain.get(name)?.();
  }
}
