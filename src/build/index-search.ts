import { readdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { gunzipSync } from "node:zlib";
import { close, createIndex } from "pagefind";

/** A page that people search: where it stands, and its words. */
export interface Article {
  readonly address: string;
  readonly title: string;
  readonly text: string;
}

const SENT_AHEAD = 100;

/** Pagefind writes ready-made search boxes beside its index. The site has its own, and nothing loads these 430 kB. */
const BOXES = /^pagefind-(ui|modular-ui|component-ui|highlight)\./;

/**
 * Indexes articles with Pagefind, into pagefind/. Returns by address what the index calls each of them: a page is told by the results
 * of a search only that name, and loads nothing more to know which record it is.
 *
 * One after the other in their order: Pagefind numbers them as they come, so the same articles make the same files.
 */
export async function indexSearch(
  folder: string,
  articles: readonly Article[],
  language: string,
): Promise<Map<string, string>> {
  const { index, errors } = await createIndex({ forceLanguage: language });
  if (!index) throw new Error(`The search index could not be begun: ${errors.join("; ")}`);
  try {
    // Some are sent ahead, so that Pagefind never waits for the next one; it takes them in the order in which they are sent.
    for (let at = 0; at < articles.length; at += SENT_AHEAD)
      await Promise.all(
        articles.slice(at, at + SENT_AHEAD).map(async ({ address, title, text }) => {
          const added = await index.addCustomRecord({ url: address, content: text, language, meta: { title } });
          if (added.errors.length > 0) throw new Error(`${address} could not be indexed: ${added.errors.join("; ")}`);
        }),
      );
    const out = join(folder, "pagefind");
    const written = await index.writeFiles({ outputPath: out });
    if (written.errors.length > 0)
      throw new Error(`The search index could not be written: ${written.errors.join("; ")}`);
    for (const file of readdirSync(out).filter((name) => BOXES.test(name))) rmSync(join(out, file));
    return articles.length === 0 ? new Map() : namesIn(join(out, "fragment"));
  } finally {
    await close();
  }
}

/** Each article lies in a file of its own, which has the name that a result gives it: a mark, then JSON with the address. */
function namesIn(folder: string): Map<string, string> {
  return new Map(
    readdirSync(folder)
      .sort()
      .map((file): [string, string] => {
        const text = gunzipSync(readFileSync(join(folder, file))).toString("utf8");
        const { url } = JSON.parse(text.slice(text.indexOf("{"))) as { url: string };
        return [url, file.replace(/\.pf_fragment$/, "")];
      }),
  );
}
