/**
 * From a saved file to its page in the browser, under `npm run dev` with many records; beside it what the same change costs with a
 * whole build, run on the same folder at the same time. Also how long the first page takes after the start.
 *
 * The clock starts before the file is written and stops when the browser reports the first paint and the end of loading of the
 * page that holds the new text, whichever is later. The edits while the text search is still being indexed stand apart.
 */
import { type ChildProcess, spawn } from "node:child_process";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { chromium, type Page } from "playwright-core";
import { makeFolder } from "./make-folder.ts";
import { measure } from "./measure.ts";
import { writeFolder } from "./write-folder.ts";

export interface DevSizes {
  readonly records: number;
  /** Edits while the text search is indexed for the first time. */
  readonly early: number;
  /** Edits after that. */
  readonly edits: number;
}
export const DEV_SIZES: DevSizes = { records: 5000, early: 3, edits: 10 };

export interface DevResult {
  readonly sizes: DevSizes;
  /** From the start of the command until it names its address, and until a record's page is in the browser. Milliseconds. */
  readonly named: number;
  readonly firstPage: number;
  readonly early: readonly number[];
  readonly edits: readonly number[];
  /** Of each of them, what the server itself took until it told the page; the rest is the browser's. */
  readonly served: readonly number[];
  /** From a mistake saved to the complaint over the page. */
  readonly complaint: number;
  /** A whole build of the same folder. */
  readonly build: number;
}

/** As long as somebody takes to look at the page before the next change. */
const LOOK = 2000;

export async function benchDev(sizes: DevSizes, browserPath: string, say: (line: string) => void): Promise<DevResult> {
  const home = await mkdtemp(join(tmpdir(), "yearmark-bench-dev-"));
  const browser = await chromium.launch({ executablePath: browserPath, args: ["--no-sandbox"] });
  let server: Started | undefined;
  try {
    say(`making ${sizes.records} records`);
    const folder = join(home, "data");
    await writeFolder(makeFolder(sizes.records), folder);
    const record = [...makeFolder(sizes.records).keys()].filter(
      (path) => path.endsWith(".md") && path.startsWith("changes/"),
    );
    const file = join(folder, record[Math.floor(record.length / 2)] as string);
    say("building all of it");
    const build = await measure(["scripts/build.ts", "--data", folder, "--site", join(home, "_site")]);
    say("starting the editor's server");
    const began = Date.now();
    server = start(folder);
    const url = await server.says(/(http:\S+)\n/);
    const named = Date.now() - began;
    const page = await browser.newPage();
    await page.goto(`${url}records/${/([^/]+)\.md$/.exec(file)?.[1]}/`);
    const firstPage = (await shownAt(page)) - began;
    say("editing while the text search is indexed");
    const early = await edit(page, file, sizes.early, "early");
    await server.says(/(text search: indexed)/);
    say("editing");
    const edits = await edit(page, file, sizes.edits, "later");
    const served = server
      .all(/shown after (\S+) s/g)
      .slice(-sizes.edits)
      .map((seconds) => Number(seconds) * 1000);
    const complaint = await mistake(page, file);
    return { sizes, named, firstPage, early, edits, served, complaint, build: build.seconds * 1000 };
  } finally {
    await server?.end();
    await browser.close();
    await rm(home, { recursive: true, force: true });
  }
}

interface Started {
  /** What the first group of the pattern caught, as soon as it is said. */
  says(pattern: RegExp): Promise<string>;
  /** The same of all that was said so far. */
  all(pattern: RegExp): string[];
  end(): Promise<void>;
}

function start(folder: string): Started {
  const child: ChildProcess = spawn(process.execPath, ["scripts/dev.ts", "--data", folder, "--port", "0"], {
    stdio: ["ignore", "pipe", "inherit"],
  });
  const ended = new Promise<void>((resolve) => child.once("exit", () => resolve()));
  let said = "";
  child.stdout?.on("data", (piece) => {
    said += piece;
  });
  return {
    says: async (pattern) => {
      for (;;) {
        const [, caught] = pattern.exec(said) ?? [];
        if (caught !== undefined) return caught;
        if (child.exitCode !== null) throw new Error(`the server ended:\n${said}`);
        await pause(10);
      }
    },
    all: (pattern) => [...said.matchAll(pattern)].map(([, caught]) => caught as string),
    end: () => {
      child.kill("SIGINT");
      return ended;
    },
  };
}

/** Milliseconds of each edit of the story of a record. */
async function edit(page: Page, file: string, times: number, word: string): Promise<number[]> {
  const text = await readFile(file, "utf8");
  const all: number[] = [];
  for (let i = 1; i <= times; i++) {
    await pause(LOOK);
    const mark = `This is ${word} edit ${i}.`;
    const began = Date.now();
    await writeFile(
      file,
      text.replace(/\n---\n\n/, () => `\n---\n\n${mark} `),
    );
    await page.getByText(mark).waitFor({ timeout: 120_000 });
    all.push((await shownAt(page)) - began);
  }
  return all;
}

async function mistake(page: Page, file: string): Promise<number> {
  const text = await readFile(file, "utf8");
  await pause(LOOK);
  const began = Date.now();
  await writeFile(file, text.replace(/^scope: .*$/m, "scope: nothing=known"));
  await page.getByText("no trait is called 'nothing'").waitFor({ timeout: 120_000 });
  return Date.now() - began;
}

/** When the page was there, by the clock of the machine. */
function shownAt(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const look = (): void => {
          const [loading] = performance.getEntriesByType("navigation") as PerformanceNavigationTiming[];
          const [paint] = performance.getEntriesByName("first-contentful-paint");
          if (loading && loading.loadEventEnd > 0 && paint)
            resolve(performance.timeOrigin + Math.max(loading.loadEventEnd, paint.startTime));
          else requestAnimationFrame(look);
        };
        look();
      }),
  );
}
