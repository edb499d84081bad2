/** npm run screenshots: the pictures of the README, taken anew of the demonstration. */
import { mkdir, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { buildSite } from "../src/build/build-site.ts";
import { openSite } from "../src/build/open-site.ts";
import { progressOn } from "../src/build/progress.ts";
import { serve } from "../src/build/serve.ts";
import { ensureBrowser } from "./browser.ts";

const FOLDER = join(import.meta.dirname, "screenshots");
const PHONE = { width: 390, height: 844 };
const DESK = { width: 1280, height: 800 };

const browserPath = ensureBrowser();
if (!browserPath) process.exit(1);
const home = await mkdtemp(join(tmpdir(), "yearmark-pictures-"));
const place = join(home, "_site");
await buildSite({ data: "data", site: place, report: progressOn(process.stdout) });
const served = await serve({ folder: place, port: 0 });
// The record with the most to say shows the most of a page.
const site = await openSite("data");
const [richest] = [...site.records].sort((a, b) => b.statements.length - a.statements.length);
// A car of the line and year with most to look at, compared with the year before.
const [busiest] = [...site.lineYears].sort((a, b) => b.fresh.length - a.fresh.length);
const { space } = site.catalog;
const [line, year] = (["line", "year"] as const).map((role) => space.trait(space.role(role) as number).id);
const car = `/car/?fact=${line}:${busiest?.line.id}&fact=${year}:${busiest?.year}&known=${(busiest?.year ?? 0) - 1}`;
const shots = [
  { name: "home", address: "/", size: DESK },
  { name: "ask", address: "/ask/?q=what+changed+on+the+brakes", size: DESK, ready: ".found .records li" },
  { name: "map", address: "/map/", size: DESK, ready: "canvas" },
  { name: "car", address: car, size: DESK, ready: ".look" },
  { name: "record-phone", address: `/records/${richest?.id}/`, size: PHONE },
];
const browser = await chromium.launch({
  executablePath: browserPath,
  args: [
    "--no-sandbox",
    "--disable-background-networking",
    "--use-gl=angle",
    "--use-angle=swiftshader",
    "--enable-unsafe-swiftshader",
  ],
});
await mkdir(FOLDER, { recursive: true });
for (const { name, address, size, ready } of shots) {
  const page = await browser.newPage({ viewport: size, colorScheme: "light" });
  await page.goto(new URL(address.slice(1), served.url).href, { waitUntil: "networkidle" });
  if (ready) await page.locator(ready).first().waitFor();
  await page.screenshot({ path: join(FOLDER, `${name}.png`) });
  await page.close();
  console.log(`${name}.png  ${address}`);
}
await browser.close();
await served.close();
await rm(home, { recursive: true });
