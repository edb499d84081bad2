/** In the way that this system watches. */
import { mkdir, rename, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { setImmediate as nextTurn } from "node:timers/promises";
import { expect, onTestFinished, test } from "vitest";
import { FolderWatch } from "../../../src/build/dev/folder-watch.ts";
import { onDisk } from "../../helpers/tiny-folder.ts";

const FOLDER = { "parts/pump.yaml": "a", "changes/1959/A.md": "a" };

function watched(folder: string): { watch: FolderWatch; told: () => Promise<void> } {
  let next = Promise.withResolvers<void>();
  const watch = new FolderWatch(folder, () => next.resolve());
  onTestFinished(() => watch.close());
  watch.renew();
  return {
    watch,
    told: async () => {
      await next.promise;
      // One change is told several times. All of it has been, when Node has looked round once more.
      await nextTurn();
      await nextTurn();
      next = Promise.withResolvers<void>();
      watch.renew();
    },
  };
}

test("writing, renaming and deleting is told, in new folders too", async () => {
  const folder = await onDisk(FOLDER);
  const at = (path: string): string => join(folder, path);
  const { told } = watched(folder);
  await writeFile(at("parts/pump.yaml"), "b");
  await told();
  await writeFile(at("changes/1959/new"), "b");
  await told();
  await rename(at("changes/1959/new"), at("changes/1959/A.md"));
  await told();
  await mkdir(at("changes/1960/deep"), { recursive: true });
  await told();
  await writeFile(at("changes/1960/deep/B.md"), "b");
  await told();
  await rm(at("changes/1960"), { recursive: true });
  await told();
  await rename(at("changes/1959"), at("changes/1960"));
  await told();
  await writeFile(at("changes/1960/A.md"), "c");
  await told();
});

test("a folder that is not there any more cannot be watched, until it is there again", async () => {
  const folder = await onDisk(FOLDER);
  const { watch, told } = watched(folder);
  await rm(folder, { recursive: true });
  await expect(told()).rejects.toThrow("ENOENT");
  expect(() => watch.renew()).toThrow("ENOENT");
  await mkdir(folder);
  watch.renew();
  await writeFile(join(folder, "maker.yaml"), "a");
  await told();
});
