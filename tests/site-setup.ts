/**
 * Builds the site of the data folder once, into a temporary folder, and serves it for all tests of the project "site":
 *
 *     import { inject } from "vitest";
 *     await page.goto(`${inject("siteUrl")}search/`);
 */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { TestProject } from "vitest/node";
import { findBrowser } from "../scripts/browser.ts";
import { serve } from "../src/build/serve.ts";
import { buildByCommand } from "./helpers/build-by-command.ts";

declare module "vitest" {
  export interface ProvidedContext {
    /** The address of the home page, with a slash at the end. */
    siteUrl: string;
    siteFolder: string;
    /** The path of a Chromium: the one npm test found or installed, or one that is there. */
    browser: string;
  }
}

export default async function setUp(project: TestProject): Promise<() => Promise<void>> {
  const home = await mkdtemp(join(tmpdir(), "yearmark-site-"));
  const site = join(home, "_site");
  buildByCommand({ data: "data", site });
  const served = await serve({ folder: site, port: 0 });
  project.provide("siteUrl", served.url);
  project.provide("siteFolder", site);
  project.provide("browser", process.env.YEARMARK_BROWSER ?? findBrowser() ?? "");
  return async () => {
    await served.close();
    await rm(home, { recursive: true });
  };
}
