/**
 * The same data give the same site, byte for byte: on a machine with another clock, in another place and language, called from elsewhere,
 * and from a copy of the data whose files were written in another order and are of another age.
 */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { copyFileSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, utimesSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, relative, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { expect, inject, onTestFinished, test } from "vitest";
import { buildByCommand } from "../helpers/build-by-command.ts";

/** The clock of tests/helpers/another-clock.ts is ahead by more. */
const THREE_YEARS = 3 * 365 * 86_400_000;

/** Turkish writes numbers and sorts letters otherwise than English; Auckland often has tomorrow's date. */
const ELSEWHERE = {
  ...process.env,
  TZ: "Pacific/Auckland",
  LANG: "tr_TR.UTF-8",
  LC_ALL: "tr_TR.UTF-8",
  // Also of the programs that the build starts, if they are Node's. Esbuild and Pagefind keep the clock of this machine.
  NODE_OPTIONS: `--import=${pathToFileURL(resolve("tests/helpers/another-clock.ts")).href}`,
};

test("a build at another time and place, in another language, of another copy gives the same files and bytes", () => {
  const home = mkdtempSync(join(tmpdir(), "yearmark-again-"));
  onTestFinished(() => rmSync(home, { recursive: true }));
  const settings = { cwd: home, env: ELSEWHERE };
  const asked =
    "const { locale, timeZone } = Intl.DateTimeFormat().resolvedOptions(); [locale, timeZone, Date.now()].join(' ')";
  const where = spawnSync(process.execPath, ["-p", asked], { ...settings, encoding: "utf8" });
  const [locale, timeZone, hour] = where.stdout.trim().split(" ");
  expect([locale, timeZone]).toEqual(["tr-TR", "Pacific/Auckland"]);
  expect(Number(hour)).toBeGreaterThan(Date.now() + THREE_YEARS);
  copyBackwards("data", join(home, "copy"));
  buildByCommand({ data: join(home, "copy"), site: join(home, "_site") }, settings);
  const [first, again] = [inject("siteFolder"), join(home, "_site")].map(digests) as [Digests, Digests];
  expect(first.size).toBeGreaterThan(100);
  expect([...again.keys()].toSorted()).toEqual([...first.keys()].toSorted());
  expect([...first].filter(([file, digest]) => again.get(file) !== digest).map(([file]) => file)).toEqual([]);
  expect(first.has(join("data", "manifest.json"))).toBe(true);
});

/** The last file first, so that a file system that lists them as they came lists them the other way round; each a day older. */
function copyBackwards(from: string, to: string): void {
  const files = readdirSync(from, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  const paths = files.map((entry) => relative(from, join(entry.parentPath, entry.name))).sort();
  for (const [age, path] of paths.reverse().entries()) {
    const copy = join(to, path);
    mkdirSync(dirname(copy), { recursive: true });
    copyFileSync(join(from, path), copy);
    utimesSync(copy, 1e9 - age * 86_400, 1e9 - age * 86_400);
  }
}

type Digests = ReadonlyMap<string, string>;

function digests(folder: string): Digests {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  return new Map(
    files.map((entry) => {
      const file = join(entry.parentPath, entry.name);
      return [relative(folder, file), createHash("sha256").update(readFileSync(file)).digest("hex")];
    }),
  );
}
