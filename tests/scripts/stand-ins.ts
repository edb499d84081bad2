/**
 * Loaded before a build (node --import), it stands in for Eleventy and esbuild, which take most of the time of a small build: in place of
 * rendering and bundling it writes, one by one, the files that these two wrote for the finished build in the folder FINISHED.
 */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { registerHooks } from "node:module";
import { dirname, join, relative, sep } from "node:path";

registerHooks({
  resolve: (name, context, next) =>
    name === "@11ty/eleventy" || name === "esbuild"
      ? { url: import.meta.url, shortCircuit: true }
      : next(name, context),
});

const finished = process.env.FINISHED as string;
const files = readdirSync(finished, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => relative(finished, join(entry.parentPath, entry.name)).split(sep).join("/"))
  .sort();

function write(folder: string, path: string): { outputPath: string } {
  const outputPath = join(folder, path);
  mkdirSync(dirname(outputPath), { recursive: true });
  writeFileSync(outputPath, readFileSync(join(finished, path)));
  return { outputPath };
}

export default class Eleventy {
  readonly #folder: string;

  constructor(_input: string, folder: string) {
    this.#folder = folder;
  }

  disableLogger(): void {}

  async write(): Promise<unknown> {
    const pages = files.filter((path) =>
      /(^|\/)index\.html$|^(404\.html|robots\.txt|sitemap\.xml|feeds\/.*|apart\/.*)$/.test(path),
    );
    return [undefined, pages.map((path) => write(this.#folder, path))];
  }
}

export async function build({ outdir }: { outdir: string }): Promise<void> {
  for (const path of files.filter((it) => /^assets\/.*\.(js|css)$/.test(it))) write(dirname(outdir), path);
}
