/** The scripts and style sheets of the pages, bundled by esbuild into assets/. */
import { cp, readdir } from "node:fs/promises";
import { join } from "node:path";
import { build } from "esbuild";

const SRC = join(import.meta.dirname, "..");

/** Every folder of src/browser with a main.ts becomes a script of its name, every file of src/site/styles a style sheet. */
export async function bundle(folder: string): Promise<number> {
  const scripts = await readdir(join(SRC, "browser"), { recursive: true });
  const entries = scripts.filter((file) => /^[^/\\]+[/\\]main\.ts$/.test(file)).sort();
  const styles = (await readdir(join(SRC, "site/styles"))).filter((file) => file.endsWith(".css")).sort();
  await build({
    entryPoints: [
      ...entries.map((file) => ({ in: join(SRC, "browser", file), out: file.split(/[/\\]/)[0] as string })),
      ...styles.map((file) => ({ in: join(SRC, "site/styles", file), out: file.replace(/\.css$/, "") })),
    ],
    outdir: join(folder, "assets"),
    // The names of chunks come from their contents and from paths; these must not depend on where the build was called.
    absWorkingDir: join(SRC, ".."),
    bundle: true,
    splitting: true,
    format: "esm",
    target: ["es2022"],
    minify: true,
    chunkNames: "chunk-[hash]",
    legalComments: "none",
    logLevel: "warning",
    external: ["*/pagefind/pagefind.js"],
  });
  await cp(join(SRC, "site/static"), join(folder, "assets"), { recursive: true });
  return entries.length + styles.length;
}
