/** What the page loads: the index of lines at once, the records of a line when the car is known to be of it. */

import { type CarKnowledge, openCarKnowledge } from "../../engine/answers/car-knowledge.ts";
import { CarList } from "../../engine/answers/car-list.ts";
import { type Lines, type LinesIndex, openLinesIndex } from "../../engine/records/lines-index.ts";
import { openSlice, type Slice } from "../../engine/records/slice.ts";
import { fetchJson } from "./fetch-json.ts";
import { readingOrder } from "./order.ts";

/** A line's records, ready to be asked. */
export interface OpenLine {
  readonly knowledge: CarKnowledge;
  readonly list: CarList;
  /** Places in the list, in reading order. */
  readonly order: readonly number[];
}

export class Data {
  readonly lines: Lines;
  readonly #root: URL;
  readonly #open = new Map<string, OpenLine>();
  readonly #coming = new Map<string, Promise<OpenLine>>();

  private constructor(root: URL, lines: Lines) {
    this.#root = root;
    this.lines = lines;
  }

  static async load(root: URL): Promise<Data> {
    return new Data(root, openLinesIndex(await fetchJson<LinesIndex>(new URL("data/lines.json", root))));
  }

  /** The records of a line, if they are there already. */
  line(id: string): OpenLine | undefined {
    return this.#open.get(id);
  }

  loadLine(id: string): Promise<OpenLine> {
    const known = this.#coming.get(id);
    if (known) return known;
    const coming = fetchJson<Slice>(new URL(`data/lines/${encodeURIComponent(id)}.json`, this.#root)).then((slice) => {
      const knowledge = openCarKnowledge(openSlice(this.lines, slice));
      const list = new CarList(knowledge);
      const placed = list.listed.map(({ record, trap }) => ({ trap, systems: record.systems }));
      const line = { knowledge, list, order: readingOrder(placed, knowledge.catalog.systems) };
      this.#open.set(id, line);
      return line;
    });
    this.#coming.set(id, coming);
    coming.catch(() => this.#coming.delete(id)); // On a bad network the next step tries again.
    return coming;
  }
}
