/** Pagefind as it comes: an index of the texts, searched with the question as typed by its own program for the browser. */
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { indexSearch } from "../../src/build/index-search.ts";
import { serve } from "../../src/build/serve.ts";
import type { SearchResult } from "./ask-score.ts";
import type { RecordText } from "./ask-texts.ts";

interface Program {
  createInstance(options: { basePath: string }): {
    search(words: string): Promise<{ results: { id: string }[] }>;
  };
}

/** All questions at once: `folder` is an empty one that the index may be written to. */
export async function askPagefind(
  texts: readonly RecordText[],
  questions: readonly string[],
  folder: string,
): Promise<SearchResult[]> {
  const names = await indexSearch(
    folder,
    texts.map(({ id, title, text }) => ({ address: id, title, text })),
    "en",
  );
  const records = new Map([...names].map(([id, name]) => [name, id]));
  // Node asks what kind of program stands in a file of this name.
  await writeFile(join(folder, "package.json"), '{ "type": "module" }');
  // The program fetches its files as in a page; without a page it only has to be told where they are.
  const served = await serve({ folder, port: 0 });
  try {
    const program = (await import(pathToFileURL(join(folder, "pagefind/pagefind.js")).href)) as Program;
    const pagefind = program.createInstance({ basePath: new URL("pagefind/", served.url).href });
    const found: SearchResult[] = [];
    for (const question of questions) {
      const { results } = await pagefind.search(question);
      found.push({ records: results.map(({ id }) => records.get(id) ?? "") });
    }
    return found;
  } finally {
    await served.close();
  }
}
