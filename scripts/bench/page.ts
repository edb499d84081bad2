/**
 * One step on the page "this car", with many records, in Chromium slowed down four times: from the press to the new verdicts on
 * the screen, as the browser itself reports it, and until everything is worked out. And how many bytes the page loads for one car of the data folder.
 */
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { type Browser, chromium, type Page } from "playwright-core";
import { buildSite } from "../../src/build/build-site.ts";
import { readFolder } from "../../src/build/data/read-folder.ts";
import { openSite } from "../../src/build/open-site.ts";
import { progressOn } from "../../src/build/progress.ts";
import { serve } from "../../src/build/serve.ts";
import { writeData } from "../../src/build/write-data.ts";
import type { Catalog } from "../../src/engine/records/catalog.ts";
import type { Slice } from "../../src/engine/records/slice.ts";
import { span, type Trait, writtenValue } from "../../src/engine/scope/trait.ts";
import { makeFolder } from "./make-folder.ts";
import { random } from "./random.ts";
import { writeFolder } from "./write-folder.ts";

export interface PageSizes {
  readonly records: number;
  readonly steps: number;
  readonly slowdown: number;
}
export const PAGE_SIZES: PageSizes = { records: 10_000, steps: 8, slowdown: 4 };

export interface Step {
  /** Records of the line; of these open before the step. */
  readonly records: number;
  readonly open: number;
  /** Milliseconds from the press to the verdicts on the screen. */
  readonly shown: number;
  /** Milliseconds until the next questions and all looks are there too. */
  readonly settled: number;
}

export interface PageResult {
  readonly sizes: PageSizes;
  readonly steps: readonly Step[];
  /** For one car of the data folder: what was loaded, whole and compressed. */
  readonly loaded: readonly { readonly path: string; readonly bytes: number; readonly gzip: number }[];
}

export async function benchPage(
  sizes: PageSizes,
  browserPath: string,
  say: (line: string) => void,
): Promise<PageResult> {
  const home = await mkdtemp(join(tmpdir(), "yearmark-page-"));
  const browser = await chromium.launch({ executablePath: browserPath, args: ["--no-sandbox"] });
  try {
    say("building the data folder");
    const place = join(home, "_site");
    await buildSite({ data: "data", site: place, report: progressOn(process.stderr) });
    const served = await serve({ folder: place, port: 0 });
    const own = await catalogIn("data");
    const loaded = await bytesOfOneCar(browser, served.url, own);
    await served.close();
    say(`making ${sizes.records} records`);
    const folder = join(home, "many");
    await writeFolder(makeFolder(sizes.records), folder);
    const many = await catalogIn(folder);
    // The page and its scripts are the same whatever the data: only the documents of the lines are put in their place.
    await writeData(await openSite(folder), place);
    await varyScopes(join(place, "data/lines", `${many.lines[0]?.id}.json`), many);
    const again = await serve({ folder: place, port: 0 });
    const steps = await walk(browser, again.url, many, sizes);
    await again.close();
    return { sizes, steps, loaded };
  } finally {
    await browser.close();
    await rm(home, { recursive: true, force: true });
  }
}

/** The made-up records ask for line and year only; here each also asks for one or two of all other traits. */
async function varyScopes(file: string, { space }: Catalog): Promise<void> {
  const slice = JSON.parse(await readFile(file, "utf8")) as Slice;
  const { whole, percent, pick } = random(1);
  const traits = space.declared.filter((trait) => trait.role === undefined || trait.role === "plant");
  const clause = (trait: Trait): string => {
    if (trait.kind === "flag") return `${percent(50) ? "eq" : "no"}=${trait.id}`;
    return trait.kind === "list"
      ? `${trait.id}=${pick(trait.values).id}`
      : `${trait.id}>=${writtenValue(trait, span(trait)[0])}`;
  };
  const records = slice.records.map((record) => ({
    ...record,
    scope: `${record.scope}; ${Array.from({ length: whole(1, 2) }, () => clause(pick(traits))).join("; ")}`,
  }));
  await writeFile(file, JSON.stringify({ ...slice, records }));
}

async function catalogIn(folder: string): Promise<Catalog> {
  const { catalog } = await readFolder(folder);
  if (!catalog) throw new Error(`${folder} has errors`);
  return catalog;
}

function carAddress(url: string, { space, lines }: Catalog): string {
  const trait = space.trait(space.role("line") as number).id;
  return new URL(`car/?fact=${trait}:${lines[0]?.id}`, url).href;
}

async function bytesOfOneCar(browser: Browser, url: string, catalog: Catalog): Promise<PageResult["loaded"]> {
  const page = await browser.newPage();
  const loaded: { path: string; bytes: number; gzip: number }[] = [];
  const bodies: Promise<void>[] = [];
  page.on("response", (answer) => {
    const read = answer.body().then((body) => {
      loaded.push({ path: new URL(answer.url()).pathname, bytes: body.length, gzip: gzipSync(body).length });
    });
    bodies.push(read.catch(() => {}));
  });
  await page.goto(carAddress(url, catalog), { waitUntil: "networkidle" });
  await settled(page);
  await Promise.all(bodies);
  await page.close();
  return loaded;
}

/** Answers the questions of the page one after the other, always with the last answer offered or the last number possible. */
async function walk(browser: Browser, url: string, catalog: Catalog, sizes: PageSizes): Promise<Step[]> {
  const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
  const session = await page.context().newCDPSession(page);
  await page.goto(carAddress(url, catalog));
  await settled(page);
  await page.evaluate(recordInteractions);
  await session.send("Emulation.setCPUThrottlingRate", { rate: sizes.slowdown });
  const question = page.locator("section:has(> #question)");
  const steps: Step[] = [];
  while (steps.length < sizes.steps) {
    const before = await page.locator(".tally b").allTextContents();
    const [yes = 0, open = 0, no = 0] = before.map(Number);
    const seen = await page.evaluate(() => window.interactions?.length ?? 0);
    await page.evaluate(() => {
      const status = document.getElementById("car-status");
      if (status) status.textContent = "";
    });
    const button = question.locator(".choice:not(.unsure):visible").last();
    const box = question.locator("#value:visible");
    if ((await button.count()) > 0) await button.click();
    else if ((await box.count()) > 0) {
      const hint = (await question.locator("#value-hint").textContent()) ?? "";
      await box.fill(/to (\S+)\.$/.exec(hint)?.[1] ?? "");
      await box.press("Enter");
    } else break;
    await settled(page);
    const ended = await page.evaluate(() => performance.now());
    await page.waitForFunction((count) => (window.interactions?.length ?? 0) > count, seen);
    const added = (await page.evaluate(() => window.interactions ?? [])).slice(seen);
    const start = Math.min(...added.map((one) => one.start));
    steps.push({
      ...{ records: yes + open + no, open },
      shown: Math.max(...added.map((one) => one.duration)),
      settled: ended - start,
    });
  }
  await page.close();
  return steps;
}

/** An input event as the browser reports it: when it came, and how long until the next frame with its effects was on the screen. */
interface Interaction {
  readonly start: number;
  readonly duration: number;
}
declare global {
  interface Window {
    interactions?: Interaction[];
  }
}

/** Runs in the page. Source of the measure: W3C, "Event Timing API"; its figures are rounded to 8 ms. */
function recordInteractions(): void {
  const interactions: Interaction[] = [];
  window.interactions = interactions;
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as PerformanceEventTiming[])
      if (entry.interactionId > 0) interactions.push({ start: entry.startTime, duration: entry.duration });
  }).observe({ type: "event", durationThreshold: 16 } as PerformanceObserverInit);
}

/** The status line is written when the next question is known; looks stop appearing when the last piece is done. */
async function settled(page: Page): Promise<void> {
  await page.waitForFunction(
    () => {
      const status = document.getElementById("car-status")?.textContent ?? "";
      const open = document.querySelectorAll(".open-list .judged > li").length;
      return (
        /do not apply/.test(status) && open === document.querySelectorAll(".open-list .judged > li > .look").length
      );
    },
    undefined,
    { timeout: 300_000, polling: 50 },
  );
}
