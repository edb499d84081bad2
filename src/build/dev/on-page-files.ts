/** The script and the style sheet that the editor's server adds to its pages, ready for a browser. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { transform } from "esbuild";

export async function onPageFiles(): Promise<{ script: string; style: string }> {
  const [script, style] = await Promise.all(
    ["on-page.ts", "on-page.css"].map((name) => readFile(join(import.meta.dirname, name), "utf8")),
  );
  return {
    script: (await transform(script as string, { loader: "ts", target: "es2022" })).code,
    style: style as string,
  };
}
