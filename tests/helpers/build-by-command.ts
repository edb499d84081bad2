/**
 * Builds a site the way npm run build does, in a process of its own. Inside Vitest the templates, which Eleventy loads by
 * itself, would get modules of their own beside those of the test, and a set of cars of the one is no set of the other.
 */
import { spawnSync } from "node:child_process";
import { resolve } from "node:path";

export function buildByCommand(
  folders: { data: string; site: string },
  elsewhere: { cwd?: string; env?: NodeJS.ProcessEnv } = {},
): string {
  const args = [resolve("scripts/build.ts"), "--data", resolve(folders.data), "--site", resolve(folders.site)];
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { ...elsewhere, encoding: "utf8" });
  if (status !== 0) throw new Error(`The site of ${folders.data} could not be built:\n${stdout}${stderr}`);
  return stdout;
}
