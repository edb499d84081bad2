/**
 * Work that takes seconds with many records, in a thread of its own: pages and the next change never wait for it. The thread
 * holds the folder in memory for itself.
 */
import { Worker } from "node:worker_threads";
import type { Finding } from "../data/read-folder.ts";

/** What is asked of the thread, and what it answers. */
export interface Jobs {
  /** Everything that is to be said of the data, what their reading says included. */
  check: { asked: undefined; answer: readonly Finding[] };
  /** The documents of the map, laid out. */
  graph: { asked: undefined; answer: ReadonlyMap<string, string> };
  /** Makes the index of the text search in this folder; answers what it calls each page. */
  search: { asked: string; answer: ReadonlyMap<string, string> };
}
export type Job = keyof Jobs;

export interface Asked {
  readonly number: number;
  readonly job: Job;
  readonly asked: unknown;
}
export type Answered = { readonly number: number } & ({ readonly answer: unknown } | { readonly failed: string });

/** The data has errors at this moment, so there is nothing to work on. */
export const NO_CATALOG = "the data has errors";

export class Aside {
  readonly #folder: string;
  #worker: Worker | undefined;
  readonly #waiting = new Map<number, PromiseWithResolvers<unknown>>();
  #number = 0;

  /** The thread begins with the first thing that is asked of it, so that it does not hold up the first page. */
  constructor(folder: string) {
    this.#folder = folder;
  }

  ask<J extends Job>(job: J, asked: Jobs[J]["asked"]): Promise<Jobs[J]["answer"]> {
    const number = ++this.#number;
    const waiting = Promise.withResolvers<unknown>();
    this.#waiting.set(number, waiting);
    this.#worker ??= this.#start();
    this.#worker.postMessage({ number, job, asked } satisfies Asked);
    return waiting.promise as Promise<Jobs[J]["answer"]>;
  }

  async close(): Promise<void> {
    await this.#worker?.terminate();
  }

  #start(): Worker {
    const worker = new Worker(new URL("./aside-thread.ts", import.meta.url), { workerData: this.#folder });
    worker.on("message", (message: Answered) => {
      const waiting = this.#waiting.get(message.number);
      this.#waiting.delete(message.number);
      if ("failed" in message) waiting?.reject(new Error(message.failed));
      else waiting?.resolve(message.answer);
    });
    worker.on("error", (error) => this.#giveUp(error));
    worker.on("exit", () => this.#giveUp(new Error("the thread has ended")));
    worker.unref();
    return worker;
  }

  #giveUp(error: Error): void {
    for (const waiting of this.#waiting.values()) waiting.reject(error);
    this.#waiting.clear();
  }
}
