/**
 * From a built site: the same pages for a bare build, each with the same words in the same markup and the same number of
 * bytes. Their bodies are finished and lie in files; what tells the index of filters, order and more is taken out.
 */
import { globSync } from "node:fs";
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { join, sep } from "node:path";
import { plainPage } from "./plain-page.ts";

/** The pages that the bare build indexes: those that people ask for by name. Ours indexes the texts of records and bulletins. */
export const SEARCHED = "{records,parts,components,bulletins}/*/index.html";

export interface BareTwin {
  /** The file that lists the pages. */
  readonly list: string;
  readonly pages: number;
  readonly indexed: number;
  readonly bytes: number;
}

export async function makeBareTwin(site: string, folder: string): Promise<BareTwin> {
  await mkdir(folder, { recursive: true });
  const paths = globSync("**/*.html", { cwd: site }).map((path) => path.split(sep).join("/"));
  const pages = [];
  let bytes = 0;
  for (const [number, path] of paths.sort().entries()) {
    const text = await readFile(join(site, path), "utf8");
    const title = /<title>(.*?)<\/title>/s.exec(text)?.[1] ?? "";
    const body = join(folder, `${number}.html`);
    await writeFile(body, padded(title, bodyOf(text), Buffer.byteLength(text)));
    pages.push({ path, title, body });
    bytes += Buffer.byteLength(text);
  }
  const list = join(folder, "pages.json");
  await writeFile(list, JSON.stringify(pages));
  return { list, pages: pages.length, indexed: globSync(SEARCHED, { cwd: site }).length, bytes };
}

function bodyOf(text: string): string {
  const body = /<main[^>]*>(.*)<\/main>/s.exec(text)?.[1] ?? "";
  return body
    .replaceAll(/<div hidden data-pagefind-ignore="index">.*?<\/div>/gs, "")
    .replaceAll(/ data-pagefind-[a-z]+(="[^"]*")?/g, "");
}

/** The frame of our pages is longer than the plain one: the difference becomes a comment. */
function padded(title: string, body: string, bytes: number): string {
  const rest = bytes - Buffer.byteLength(plainPage({ it: { title }, content: body }));
  return rest < "<!---->".length ? body : `${body}<!--${" ".repeat(rest - "<!---->".length)}-->`;
}
