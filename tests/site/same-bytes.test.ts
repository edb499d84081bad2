/** The same data give the same site, byte for byte: at another hour and place, in another language, called from elsewhere. */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { expect, inject, onTestFinished, test } from "vitest";
import { buildByCommand } from "../helpers/build-by-command.ts";

/** Turkish writes numbers and sorts letters otherwise than English; Auckland often has tomorrow's date. */
const ELSEWHERE = {
  ...process.env,
  TZ: "Pacific/Auckland",
  LANG: "tr_TR.UTF-8",
  LC_ALL: "tr_TR.UTF-8",
};

test("a build in another language, time zone and folder gives the same files and bytes", () => {
  const home = mkdtempSync(join(tmpdir(), "yearmark-again-"));
  onTestFinished(() => rmSync(home, { recursive: true }));
  const settings = { cwd: home, env: ELSEWHERE };
  const asked = "const { locale, timeZone } = Intl.DateTimeFormat().resolvedOptions(); locale + ' ' + timeZone";
  const where = spawnSync(process.execPath, ["-p", asked], { ...settings, encoding: "utf8" });
  expect(where.stdout.trim()).toBe("tr-TR Pacific/Auckland");
  buildByCommand({ data: "data", site: join(home, "_site") }, settings);
  const [first, again] = [inject("siteFolder"), join(home, "_site")].map(digests) as [Digests, Digests];
  expect(first.size).toBeGreaterThan(100);
  expect([...again.keys()].toSorted()).toEqual([...first.keys()].toSorted());
  expect([...first].filter(([file, digest]) => again.get(file) !== digest).map(([file]) => file)).toEqual([]);
});

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
