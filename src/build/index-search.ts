import { join } from "node:path";
import { close, createIndex } from "pagefind";

/** Indexes the pages that people search with Pagefind, into pagefind/. Returns how many pages that were. */
export async function indexSearch(folder: string): Promise<number> {
  const { index, errors } = await createIndex();
  if (!index) throw new Error(`The search index could not be begun: ${errors.join("; ")}`);
  try {
    // Only these kinds of page are asked for; leaving the lists out keeps the index small and its answers sharp.
    const added = await index.addDirectory({ path: folder, glob: "{records,parts,components,bulletins}/*/index.html" });
    if (added.errors.length > 0) throw new Error(`The pages could not be indexed: ${added.errors.join("; ")}`);
    const written = await index.writeFiles({ outputPath: join(folder, "pagefind") });
    if (written.errors.length > 0)
      throw new Error(`The search index could not be written: ${written.errors.join("; ")}`);
    return added.page_count;
  } finally {
    await close();
  }
}
