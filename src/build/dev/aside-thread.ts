/** The other end of aside.ts. */
import { constants, platform, setPriority } from "node:os";
import { parentPort, workerData } from "node:worker_threads";
import { openKnowledge } from "../../engine/answers/knowledge.ts";
import type { Catalog } from "../../engine/records/catalog.ts";
import { Site } from "../../site/site.ts";
import { articlesOf } from "../articles-of.ts";
import { checkFolder } from "../data/check-folder.ts";
import { type ReadFolder, readFolder } from "../data/read-folder.ts";
import { indexSearch } from "../index-search.ts";
import { dataDocuments } from "../write-data.ts";
import { type Answered, type Asked, type Jobs, NO_CATALOG } from "./aside.ts";
import { LAID_OUT } from "./documents.ts";

// On Linux, and only there, this is said of the thread alone: pages come first where processors are few.
if (platform() === "linux") setPriority(constants.priority.PRIORITY_LOW);

const folder = workerData as string;
let before: ReadFolder | undefined;

parentPort?.on("message", ({ number, job, asked }: Asked) => {
  const answer = (message: Answered): void => parentPort?.postMessage(message);
  WORK[job](asked as never).then(
    (done) => answer({ number, answer: done }),
    (error: Error) => answer({ number, failed: error.message }),
  );
});

const WORK: { [J in keyof Jobs]: (asked: Jobs[J]["asked"]) => Promise<Jobs[J]["answer"]> } = {
  check: async () => checkFolder(await readAgain()).findings,
  graph: async () => {
    const site = new Site(openKnowledge(await catalogNow(), { layout: true }));
    const documents = dataDocuments(site);
    return new Map(LAID_OUT.map((name) => [name, documents.get(name)?.() ?? ""]));
  },
  search: async (place) => {
    const catalog = await catalogNow();
    return indexSearch(place, articlesOf(catalog), catalog.maker.language);
  },
};

async function readAgain(): Promise<ReadFolder> {
  before = await readFolder(folder, before);
  return before;
}

async function catalogNow(): Promise<Catalog> {
  const { catalog } = await readAgain();
  if (!catalog) throw new Error(NO_CATALOG);
  return catalog;
}
