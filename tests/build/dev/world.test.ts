import { rm, utimes, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { World } from "../../../src/build/dev/world.ts";
import { onDisk, TINY } from "../../helpers/tiny-folder.ts";

test("what changed is told, and the site is that of the last state without an error", async () => {
  const folder = await onDisk(TINY);
  const world = new World(folder);
  expect(await world.refresh()).toEqual({ files: Object.keys(TINY).sort(), isGood: true });
  const first = world.site;
  expect(await world.refresh()).toBeUndefined();
  await utimes(join(folder, "maker.yaml"), 0, 0);
  expect(await world.refresh()).toBeUndefined();

  await writeFile(join(folder, "maker.yaml"), "name: [");
  expect(await world.refresh()).toEqual({ files: ["maker.yaml"], isGood: false });
  expect(world.site).toBe(first);
  expect(world.read?.catalog).toBeUndefined();

  await writeFile(join(folder, "maker.yaml"), (TINY["maker.yaml"] as string).replace("Tractor Works", "Works"));
  await rm(join(folder, "cautions.yaml"));
  await writeFile(join(folder, "NOTES.md"), "for ourselves");
  expect(await world.refresh()).toEqual({ files: ["cautions.yaml", "maker.yaml"], isGood: true });
  expect(world.site?.catalog.maker.name).toBe("Hollin Works");

  // Not a file of the data, and yet something to complain about; bytes that are no text, and other such bytes.
  await rm(join(folder, "NOTES.md"));
  expect(await world.refresh()).toEqual({ files: [], isGood: true });
  await writeFile(join(folder, "words.yaml"), new Uint8Array([0xff]));
  expect(await world.refresh()).toEqual({ files: ["words.yaml"], isGood: false });
});
