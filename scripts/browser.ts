/** A Chromium for the browser tests: one that is there, or else one that is installed now. */
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { onPath } from "./on-path.ts";

const NAMES = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome"];

const WELL_KNOWN = [
  "/usr/bin/chromium",
  "/usr/lib/chromium/chromium",
  "/snap/bin/chromium",
  "/opt/google/chrome/chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  ...["PROGRAMFILES", "PROGRAMFILES(X86)", "LOCALAPPDATA"].flatMap((name) => {
    const folder = process.env[name];
    return folder ? [join(folder, "Google", "Chrome", "Application", "chrome.exe")] : [];
  }),
];

/** The first Chromium that runs: $CHROMIUM, one on PATH, one at a usual place, one that Playwright downloaded. */
export function findBrowser(env: NodeJS.ProcessEnv = process.env): string | undefined {
  return [env.CHROMIUM ?? "", ...onPath(NAMES, env), ...WELL_KNOWN, chromium.executablePath()].find(runs);
}

/**
 * If there is one, take it. Else, as root on Debian, install Debian's package: it brings the libraries along. Else,
 * or when that fails, let Playwright download its own. Else undefined.
 */
export function ensureBrowser(): string | undefined {
  const found = findBrowser();
  if (found) return found;
  if (isDebian() && process.getuid?.() === 0) {
    console.log("No Chromium is here: installing Debian's package.");
    run("apt-get", ["update", "-qq"]);
    run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "chromium"]);
    const installed = findBrowser();
    if (installed) return installed;
  }
  console.log("No Chromium is here: letting Playwright download its own.");
  run(process.execPath, [join("node_modules", "playwright-core", "cli.js"), "install", "chromium"]);
  return findBrowser();
}

export const HOW_TO_GET_A_BROWSER =
  "No Chromium could be found or installed: install Chromium or Google Chrome, or set CHROMIUM to the path of one, and run this again.";

function runs(file: string): boolean {
  if (!file || !existsSync(file)) return false;
  // On Windows this question opens a window instead of giving an answer.
  if (process.platform === "win32") return true;
  // Ubuntu puts a script at a usual place that only says where to get one: to be there is not enough.
  const { status, stdout } = spawnSync(file, ["--version"], { encoding: "utf8", timeout: 30_000 });
  return status === 0 && /\d+\.\d+/.test(stdout);
}

/** Debian itself: Ubuntu's package of that name is a pointer to another kind of package. */
export function isDebian(): boolean {
  return existsSync("/etc/os-release") && /^ID="?debian"?$/m.test(readFileSync("/etc/os-release", "utf8"));
}

export function run(file: string, args: string[]): void {
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  const { status, error } = spawnSync(file, args, { stdio: "inherit", env });
  if (status !== 0) console.log(`${file} ${args.join(" ")}: ${error ? error.message : `ended with ${status}`}`);
}
