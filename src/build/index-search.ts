import { globSync, readFileSync } from "node:fs";
import { join, sep } from "node:path";
import { close, createIndex } from "pagefind";

/** Only these kinds of page are asked for; leaving the lists out keeps the index small and its answers sharp. */
export const SEARCHED = "{records,parts,components,bulletins}/*/index.html";

const SENT_AHEAD = 100;

/**
 * Indexes the pages that people search with Pagefind, into pagefind/. Returns how many pages that were.
 *
 * Page after page in the order of their names: Pagefind numbers the pages as they come, and the order in which it would
 * find them itself is that of the disk, so that two machines would make different files of the same site.
 */
export async function indexSearch(folder: string): Promise<number> {
  const { index, errors } = await createIndex();
  if (!index) throw new Error(`The search index could not be begun: ${errors.join("; ")}`);
  try {
    const pages = globSync(SEARCHED, { cwd: folder })
      .map((page) => page.split(sep).join("/"))
      .sort();
    // Some are sent ahead, so that Pagefind never waits for the next one; it takes them in the order in which they are sent.
    for (let at = 0; at < pages.length; at += SENT_AHEAD)
      await Promise.all(
        pages.slice(at, at + SENT_AHEAD).map(async (page) => {
          const added = await index.addHTMLFile({
            sourcePath: page,
            content: readFileSync(join(folder, page), "utf8"),
          });
          if (added.errors.length > 0) throw new Error(`${page} could not be indexed: ${added.errors.join("; ")}`);
        }),
      );
    const written = await index.writeFiles({ outputPath: join(folder, "pagefind") });
    if (written.errors.length > 0)
      throw new Error(`The search index could not be written: ${written.errors.join("; ")}`);
    return pages.length;
  } finally {
    await close();
  }
}
