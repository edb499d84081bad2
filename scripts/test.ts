/**
 * npm test [-- FILTER ...]: types, style, then every test. All of them run even when one fails; the last line counts.
 * Words after -- are handed to vitest and choose among the tests.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { ensureBrowser, HOW_TO_GET_A_BROWSER } from "./browser.ts";
import { countTests, type TestCount } from "./count-tests.ts";

const TSC = join("node_modules", "typescript", "bin", "tsc");
const BIOME = join("node_modules", "@biomejs", "biome", "bin", "biome");
const VITEST = join("node_modules", "vitest", "vitest.mjs");

const failed: string[] = [];

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
const tests = runTests();

heading("In short");
for (const name of failed) console.log(`failed: ${name}`);
if (tests.failed > 0) console.log("failed: Tests");
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

function runTests(): TestCount {
  heading(browser ? "Tests" : "Tests, without those of the built site, which need a browser");
  const folder = mkdtempSync(join(tmpdir(), "yearmark-test-"));
  const file = join(folder, "result.json");
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${file}`];
  const some = browser ? [] : ["--project=unit"];
  const ended = runs([VITEST, "run", ...reporters, ...some, ...process.argv.slice(2)]);
  const counted = countTests(readIfThere(file));
  rmSync(folder, { recursive: true });
  // Vitest can fail without a failed test: by an error outside of them, or because a filter matches none.
  return ended || counted.failed > 0 ? counted : { ...counted, failed: 1 };
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
