/**
 * The index of the text search takes longest of all: it is made in the background, and made again when nothing was saved for a
 * while. Until then the search finds what was there before.
 */
import { rm } from "node:fs/promises";
import { join } from "node:path";

export interface Index {
  /** Where it lies: a folder with a folder pagefind/ in it. */
  readonly folder: string;
  /** What it calls each page, by the address of the page. */
  readonly names: ReadonlyMap<string, string>;
}

/** Makes an index in a folder that is not there yet. */
export type MakeIndex = (folder: string) => Promise<ReadonlyMap<string, string>>;

/** Milliseconds without a change, at least; with many records as long again as the last index took. */
const IDLE = 5000;

export class SearchIndex {
  readonly #home: string;
  readonly #make: MakeIndex;
  readonly #say: (line: string) => void;
  #index: Index | undefined;
  #making: Promise<void> | undefined;
  #isStale = false;
  #number = 0;
  #took = 0;
  #timer: NodeJS.Timeout | undefined;
  #isClosed = false;

  constructor(home: string, make: MakeIndex, say: (line: string) => void) {
    this.#home = home;
    this.#make = make;
    this.#say = say;
  }

  /** What the index calls each page; of none while there is no index. */
  get names(): ReadonlyMap<string, string> {
    return this.#index?.names ?? new Map();
  }

  /** The index that is there. Only the first one is waited for. */
  async ready(): Promise<Index | undefined> {
    if (!this.#index) await this.make();
    return this.#index;
  }

  /** The data changed: what is there is stale. */
  changed(): void {
    this.#isStale = true;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.make(), Math.max(IDLE, this.#took)).unref();
  }

  /** One at a time. */
  make(): Promise<void> {
    this.#making ??= this.#makeNow().finally(() => {
      this.#making = undefined;
      if (this.#isStale && !this.#isClosed) this.changed();
    });
    return this.#making;
  }

  /** An index that is being made is given up, and nothing is said of it. */
  close(): void {
    this.#isClosed = true;
    clearTimeout(this.#timer);
  }

  async #makeNow(): Promise<void> {
    this.#isStale = false;
    const folder = join(this.#home, `search-${++this.#number}`);
    const began = performance.now();
    try {
      const names = await this.#make(folder);
      this.#took = performance.now() - began;
      const old = this.#index;
      this.#index = { folder, names };
      this.#say(`text search: indexed in ${(this.#took / 1000).toFixed(1)} s`);
      if (old) await rm(old.folder, { recursive: true, force: true });
    } catch (error) {
      if (!this.#isClosed) this.#say(`text search: not indexed, ${(error as Error).message}`);
    }
  }
}
