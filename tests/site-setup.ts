/**
 * Builds the site of the data folder once, into a temporary folder, and serves it for all tests of the project "site":
 *
 *     import { inject } from "vitest";
 *     await page.goto(`${inject("siteUrl")}search/`);
 */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";
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
    /** One that runs: to start one takes longer than most tests. */
    browserAddress: string;
  }
}

/** Drawing without a graphics card, as a test machine does. */
const SOFTWARE_GL = [
  ...["--use-gl=angle", "--use-angle=swiftshader", "--enable-unsafe-swiftshader"],
  // Only the map asks for such drawing; pages are put together without it, which takes far less.
  ...["--disable-gpu-compositing", "--disable-gpu-rasterization"],
];

export default async function setUp(project: TestProject): Promise<() => Promise<void>> {
  const home = await mkdtemp(join(tmpdir(), "yearmark-site-"));
  const site = join(home, "_site");
  buildByCommand({ data: "data", site });
  const served = await serve({ folder: site, port: 0 });
  project.provide("siteUrl", served.url);
  project.provide("siteFolder", site);
  const path = process.env.YEARMARK_BROWSER ?? findBrowser() ?? "";
  const browser = await chromium.launchServer({
    executablePath: path,
    args: ["--no-sandbox", "--disable-background-networking", ...SOFTWARE_GL],
  });
  project.provide("browser", path);
  project.provide("browserAddress", browser.wsEndpoint());
  return async () => {
    await browser.close();
    await served.close();
    await rm(home, { recursive: true });
  };
}
