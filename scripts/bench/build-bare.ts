/** build-bare LIST FOLDER: the least that a site of these pages costs, by Eleventy and Pagefind as they come. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import Eleventy from "@11ty/eleventy";
import { close, createIndex } from "pagefind";
import { progressOn } from "../../src/build/progress.ts";
import { SEARCHED } from "./make-bare-twin.ts";

const [list, folder] = process.argv.slice(2) as [string, string];
const input = join(import.meta.dirname, "bare");
const pages: object[] = JSON.parse(await readFile(list, "utf8"));
const eleventy = new Eleventy(input, folder, {
  configPath: join(input, "eleventy.config.js"),
  quietMode: true,
  config: (config) => config.addGlobalData("pages", pages),
});
eleventy.disableLogger();
const report = progressOn(process.stdout);
await report.stage("pages", "written", async () => {
  const [, written] = await eleventy.write();
  if (written.filter(Boolean).length !== pages.length) throw new Error("Not every page was written.");
});
await report.stage("search", "indexed", async () => {
  const { index } = await createIndex();
  if (!index) throw new Error("The index could not be begun.");
  await index.addDirectory({ path: folder, glob: SEARCHED });
  await index.writeFiles({ outputPath: join(folder, "pagefind") });
  await close();
});
