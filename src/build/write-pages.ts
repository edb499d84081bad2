import { join } from "node:path";
import Eleventy from "@11ty/eleventy";
import type { Site } from "../site/site.ts";

const ROOT = join(import.meta.dirname, "../..");

/** Writes every page of the site with Eleventy. Returns how many files that were. */
export async function writePages(site: Site, folder: string): Promise<number> {
  const eleventy = new Eleventy(join(ROOT, "src/site/pages"), folder, {
    configPath: join(ROOT, ".eleventy.js"),
    quietMode: true,
    config: (config) => config.addGlobalData("site", site),
  });
  eleventy.disableLogger();
  const [, pages] = await eleventy.write();
  return pages.filter(Boolean).length;
}
