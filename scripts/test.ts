/**
 * npm test [-- FILTER ...]: types, style, then every test. All of them run even when one fails; the last line counts.
 * Words after -- are handed to vitest and choose among the tests.
 */
import { spawn, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { availableParallelism, constants, setPriority, tmpdir } from "node:os";
import { join } from "node:path";
import { ensureBrowser, HOW_TO_GET_A_BROWSER } from "./browser.ts";
import { countTests, type TestCount } from "./count-tests.ts";
import { ensureWebServer, HOW_TO_GET_A_WEB_SERVER } from "./web-server.ts";

const TSC = join("node_modules", "typescript", "bin", "tsc");
const BIOME = join("node_modules", "@biomejs", "biome", "bin", "biome");
const VITEST = join("node_modules", "vitest", "vitest.mjs");

const failed: string[] = [];

// Many tests start a command: what Node makes of its sources is kept for the next one.
process.env.NODE_COMPILE_CACHE ??= join(tmpdir(), "yearmark-compiled");

check("Types of the whole tree", () => runs([TSC, "-p", "tsconfig.json"]));
check("Types of the engine, which knows neither Node nor a page", () =>
  runs([TSC, "-p", join("src", "engine", "tsconfig.json")]),
);
check("Style and format", () => runs([BIOME, "check", "."]));
const browser = check("A browser", () => {
  const path = ensureBrowser();
  console.log(path ?? HOW_TO_GET_A_BROWSER);
  if (path) process.env.YEARMARK_BROWSER = path;
  return path !== undefined;
});
heading("A web server");
const webServer = ensureWebServer();
console.log(webServer ?? HOW_TO_GET_A_WEB_SERVER);
if (webServer) process.env.YEARMARK_NGINX = webServer;
const tests = await runTests();

heading("In short");
for (const name of failed) console.log(`failed: ${name}`);
if (tests.failed > 0) console.log("failed: Tests");
// Not everybody who changes a record has an nginx, or may install one: that alone is no failure, but it is said.
if (!webServer) console.log("The configuration for nginx was not tested: there is no nginx.");
if (tests.skipped > 0) console.log(`${tests.skipped} tests skipped`);
// Types, style and the browser count as one each when they failed: only "0 failed" means that all is well.
const allFailed = failed.length + tests.failed;
console.log(`${tests.passed} passed, ${allFailed} failed`);
process.exitCode = allFailed > 0 ? 1 : 0;

function check(name: string, passes: () => boolean): boolean {
  heading(name);
  const passed = passes();
  if (!passed) failed.push(name);
  return passed;
}

/**
 * The tests of the built site mostly wait for their browser, so the others run beside them. What the site's tests say is kept
 * back until both are done, so that the two reports do not mix.
 */
async function runTests(): Promise<TestCount> {
  heading(browser ? "Tests" : "Tests, without those of the built site, which need a browser");
  const folder = mkdtempSync(join(tmpdir(), "yearmark-test-"));
  const others = availableParallelism();
  const site = browser ? vitest("site", folder, []) : undefined;
  const unit = await vitest("unit", folder, site ? [`--maxWorkers=${others}`] : [], "inherit");
  const both = [unit, ...(site ? [await site] : [])];
  process.stdout.write(both.map((it) => it.said).join(""));
  rmSync(folder, { recursive: true });
  const counted = both.reduce((sum, { count }) => add(sum, count), { passed: 0, failed: 0, skipped: 0 });
  // Vitest can fail without a failed test: by an error outside of them. And a filter may match no test at all.
  const isWell = both.every((it) => it.ended) && counted.passed + counted.failed + counted.skipped > 0;
  return isWell || counted.failed > 0 ? counted : { ...counted, failed: 1 };
}

interface Run {
  readonly ended: boolean;
  readonly count: TestCount;
  /** What it said, where that was kept back. */
  readonly said: string;
}

async function vitest(
  project: string,
  folder: string,
  more: string[],
  stdout: "pipe" | "inherit" = "pipe",
): Promise<Run> {
  const file = join(folder, `${project}.json`);
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${file}`];
  const args = [
    VITEST,
    "run",
    `--project=${project}`,
    "--passWithNoTests",
    ...reporters,
    ...more,
    ...process.argv.slice(2),
  ];
  const child = spawn(process.execPath, args, { stdio: ["inherit", stdout, stdout] });
  // The browser's tests take longest, and wait no longer than they must: the others make way for them.
  if (project === "unit" && child.pid !== undefined) setPriority(child.pid, constants.priority.PRIORITY_BELOW_NORMAL);
  let said = "";
  for (const stream of [child.stdout, child.stderr])
    stream?.on("data", (piece) => {
      said += piece;
    });
  const ended = await new Promise<boolean>((resolve) => {
    child.once("error", () => resolve(false));
    child.once("close", (code) => resolve(code === 0));
  });
  return { ended, said, count: countTests(readIfThere(file)) };
}

function add(a: TestCount, b: TestCount): TestCount {
  return { passed: a.passed + b.passed, failed: a.failed + b.failed, skipped: a.skipped + b.skipped };
}

function heading(name: string): void {
  console.log(`\n── ${name} ${"─".repeat(Math.max(0, 76 - name.length))}`);
}

function runs(args: string[]): boolean {
  return spawnSync(process.execPath, args, { stdio: "inherit" }).status === 0;
}

function readIfThere(file: string): string {
  try {
    return readFileSync(file, "utf8");
  } catch {
    return "";
  }
}
