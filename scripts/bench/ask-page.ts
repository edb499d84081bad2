/**
 * From a question to its first result on the page "ask", with many records, in Chromium slowed down like a phone; and what was
 * loaded until then.
 *
 * The whole question comes at once, as if pasted: whoever types gives the page more time to load ahead. The first question is the
 * first thing that happens on the page, with nothing kept from before; the further ones are asked one after the other. A result is
 * shown when it stands on the page and the frame with it is drawn.
 */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { type Browser, chromium, type Page, type Request } from "playwright-core";
import { articlesOf } from "../../src/build/articles-of.ts";
import { buildSite } from "../../src/build/build-site.ts";
import { indexSearch } from "../../src/build/index-search.ts";
import { openSite } from "../../src/build/open-site.ts";
import { progressOn } from "../../src/build/progress.ts";
import { serve } from "../../src/build/serve.ts";
import { writeAsk } from "../../src/build/write-ask.ts";
import { writeData } from "../../src/build/write-data.ts";
import type { Catalog } from "../../src/engine/records/catalog.ts";
import { makeFolder } from "./make-folder.ts";
import { random } from "./random.ts";
import { writeFolder } from "./write-folder.ts";

export interface AskPageSizes {
  readonly records: number;
  /** So many questions are each the first on a page with nothing loaded. */
  readonly firsts: number;
  /** Further questions on the same page. */
  readonly further: number;
  readonly slowdown: number;
}
export const ASK_PAGE_SIZES: AskPageSizes = { records: 10_000, firsts: 3, further: 12, slowdown: 4 };

export interface Loaded {
  readonly path: string;
  readonly bytes: number;
  readonly gzip: number;
  /** It was there before the first result was shown. What was not is for the engine's answer, which comes after. */
  readonly before: boolean;
}

export interface Timed {
  readonly question: string;
  /** From the question to the frame with its first result. */
  readonly milliseconds: number;
}

export interface AskPageResult {
  readonly sizes: AskPageSizes;
  readonly firsts: readonly Timed[];
  readonly further: readonly Timed[];
  /** The page and all that it fetched for a first question, the one that loaded most. */
  readonly loaded: readonly Loaded[];
}

export async function benchAskPage(
  sizes: AskPageSizes,
  browserPath: string,
  say: (line: string) => void,
): Promise<AskPageResult> {
  const home = await mkdtemp(join(tmpdir(), "yearmark-ask-page-"));
  const browser = await chromium.launch({ executablePath: browserPath, args: ["--no-sandbox"] });
  try {
    say("building the data folder");
    const site = join(home, "_site");
    await buildSite({ data: "data", site, report: progressOn(process.stderr) });
    say(`making ${sizes.records} records`);
    const catalog = await putInPlace(await manyRecords(join(home, "many"), sizes.records), site);
    const served = await serve({ folder: site, port: 0 });
    const questions = questionsOf(catalog, sizes.firsts + sizes.further);
    const others = questions.splice(sizes.firsts);
    say("asking");
    const runs: Asked[] = [];
    for (const [run, first] of questions.entries())
      runs.push(await askOnPage(browser, served.url, first, run === 0 ? others : [], sizes.slowdown));
    await served.close();
    return {
      sizes,
      firsts: runs.map(({ first }) => first),
      further: runs.flatMap(({ further }) => further),
      loaded: runs.map(({ loaded }) => loaded).reduce((most, one) => (bytesOf(one) > bytesOf(most) ? one : most)),
    };
  } finally {
    await browser.close();
    await rm(home, { recursive: true, force: true });
  }
}

async function manyRecords(folder: string, records: number): Promise<string> {
  await writeFolder(makeFolder(records), folder);
  return folder;
}

/** The page and its scripts are the same whatever the data: only what it searches and loads is put in its place. */
async function putInPlace(folder: string, place: string): Promise<Catalog> {
  const site = await openSite(folder);
  const { catalog } = site.knowledge;
  await rm(join(place, "pagefind"), { recursive: true });
  await writeAsk(catalog, place, await indexSearch(place, articlesOf(catalog), catalog.maker.language));
  await writeData(site, place);
  return catalog;
}

/** Questions of many shapes about what is on record; a slip of the pen in some. */
export function questionsOf({ components, parts, lines, years }: Catalog, count: number): string[] {
  const { pick, whole } = random(1);
  const component = (): string => {
    const { name, aliases } = pick([...components.values()]);
    return pick([name, ...aliases]);
  };
  const line = (): string => pick(lines).name;
  const year = (): string => String(pick(years)).slice(2);
  const slip = (text: string): string => {
    const at = whole(1, text.length - 2);
    return text.slice(0, at) + text.slice(at + 1);
  };
  const shapes: (() => string)[] = [
    () => `${component()} loose on rough roads since '${year()}`,
    () => `what changed on the ${component()}`,
    () => `${year()} ${line().toLowerCase()} ${component()}`,
    () => `${pick([...parts.keys()])} fit a ${year()} ${line()}?`,
    () => `${slip(component())} worn out`,
    () => `which ${component()} is it, noise when cold`,
  ];
  return Array.from({ length: count }, (_, i) => (shapes[i % shapes.length] as () => string)());
}

interface Asked {
  readonly first: Timed;
  readonly further: readonly Timed[];
  readonly loaded: readonly Loaded[];
}

/** Of what was there before the first result, compressed. */
export function bytesOf(loaded: readonly Loaded[]): number {
  return loaded.filter(({ before }) => before).reduce((sum, { gzip }) => sum + gzip, 0);
}

async function askOnPage(
  browser: Browser,
  url: string,
  question: string,
  others: readonly string[],
  slowdown: number,
): Promise<Asked> {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, serviceWorkers: "block" });
  try {
    const page = await context.newPage();
    const loadsUntilNow = listenForLoads(page);
    const session = await context.newCDPSession(page);
    await session.send("Emulation.setCPUThrottlingRate", { rate: slowdown });
    await page.goto(new URL("ask/", url).href, { waitUntil: "load" });
    await page.evaluate(watchFirstResults);
    const { shownAt, ...timedFirst } = await timed(page, question);
    await page.waitForLoadState("networkidle");
    const loaded = (await loadsUntilNow()).map(({ endedAt, ...load }) => ({ ...load, before: endedAt <= shownAt }));
    const further: Timed[] = [];
    for (const other of others) {
      const { shownAt: _, ...one } = await timed(page, other);
      further.push(one);
    }
    return { first: timedFirst, further, loaded };
  } finally {
    await context.close();
  }
}

type Load = Omit<Loaded, "before"> & { readonly endedAt: number };

/** Gives all that was loaded up to the call, the files of the page's worker included, and stops listening. */
function listenForLoads(page: Page): () => Promise<Load[]> {
  const loads: Promise<Load>[] = [];
  const listen = (request: Request): void => {
    loads.push(readLoad(request));
  };
  page.on("requestfinished", listen);
  return () => {
    page.off("requestfinished", listen);
    return Promise.all(loads);
  };
}

async function readLoad(request: Request): Promise<Load> {
  const answer = await request.response();
  // A redirect has no body.
  const body = (await answer?.body().catch(() => undefined)) ?? Buffer.alloc(0);
  const { startTime, responseEnd } = request.timing();
  return {
    path: new URL(request.url()).pathname,
    bytes: body.length,
    gzip: gzipSync(body).length,
    endedAt: startTime + responseEnd,
  };
}

declare global {
  interface Window {
    /** When the question came and when its first result was shown, in milliseconds; nothing while none is shown. */
    firstResult?: { readonly asked: number; readonly shown: number } | undefined;
  }
}

async function timed(page: Page, question: string): Promise<Timed & { readonly shownAt: number }> {
  const box = page.locator("#ask");
  await box.fill("");
  await page.waitForFunction(() => document.querySelector("#asked .records li") === null);
  await box.fill(question);
  const shown = await page
    .waitForFunction(() => window.firstResult, undefined, { timeout: 120_000 })
    .catch(() => {
      throw new Error(`The page shows no result for "${question}"`);
    });
  const result = await shown.jsonValue();
  if (!result) throw new Error("The first result was gone before it could be read.");
  return { question, milliseconds: result.shown - result.asked, shownAt: result.shown };
}

/** Runs in the page. */
function watchFirstResults(): void {
  const now = (): number => performance.timeOrigin + performance.now();
  let asked: number | undefined;
  document.addEventListener(
    "input",
    ({ target }) => {
      window.firstResult = undefined;
      asked = (target as HTMLInputElement).value === "" ? undefined : now();
    },
    { capture: true },
  );
  new MutationObserver(() => {
    const start = asked;
    const isShown = [...document.querySelectorAll("#asked .records li")].some((item) => item.checkVisibility());
    if (start === undefined || !isShown) return;
    asked = undefined;
    // A message sent while a frame is being prepared comes once it is drawn.
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      window.firstResult = { asked: start, shown: now() };
    };
    requestAnimationFrame(() => port2.postMessage(undefined));
  }).observe(document.body, { subtree: true, childList: true, attributes: true });
}
