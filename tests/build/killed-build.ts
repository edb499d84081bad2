/**
 * A build that stops at a chosen point and waits there to be killed. Run as a program: killed-build.ts LINK POINT
 *
 * It says "here" when it has reached the point. Points in the middle of publishing are reached by putting something
 * that waits in the place of a function of node:fs.
 */
import fs from "node:fs/promises";
import { syncBuiltinESMExports } from "node:module";
import { join } from "node:path";

const [, , link = "", point = ""] = process.argv;

async function waitToBeKilled(): Promise<never> {
  process.stdout.write("here\n");
  setInterval(() => {}, 1000);
  return new Promise(() => {});
}

const { rename, rm } = fs;
if (point === "before the new link is put in place") fs.rename = waitToBeKilled;
if (point === "after the new link is put in place")
  fs.rename = async (from, to) => {
    await rename(from, to);
    await waitToBeKilled();
  };
if (point === "while the old build is removed")
  fs.rm = async (path, options) => {
    if (options?.recursive) await rm(join(String(path), "index.html"));
    if (options?.recursive) await waitToBeKilled();
    await rm(path, options);
  };
syncBuiltinESMExports();

const { publishAtomically } = await import("../../src/build/swap.ts");
await publishAtomically(link, async (folder) => {
  if (point === "before the first file") await waitToBeKilled();
  await fs.writeFile(join(folder, "index.html"), "the killed build");
  if (point === "between two files") await waitToBeKilled();
  await fs.writeFile(join(folder, "second.html"), "the killed build");
  if (point === "after the last file") await waitToBeKilled();
});
