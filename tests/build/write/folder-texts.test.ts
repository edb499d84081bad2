import { rmSync, writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import { readFolder } from "../../../src/build/data/read-folder.ts";
import { folderTexts } from "../../../src/build/write/folder-texts.ts";
import { onDisk, TINY } from "../../helpers/tiny-folder.ts";

test("every file as it lies on the disk, and nothing that is not of the folder", async () => {
  const files = { ...TINY, "maker.yaml": `\uFEFF${TINY["maker.yaml"]?.replaceAll("\n", "\r\n")}` };
  const folder = await onDisk({ ...files, "NOTES.txt": "for ourselves" });
  expect(Object.fromEntries(folderTexts(folder, await readFolder(folder)))).toEqual(files);
});

test("what was read, though somebody saved since, or the file went", async () => {
  const folder = await onDisk(TINY);
  const read = await readFolder(folder);
  writeFileSync(`${folder}/maker.yaml`, "name: other\n");
  rmSync(`${folder}/moved.yaml`);
  expect(Object.fromEntries(folderTexts(folder, read))).toEqual(TINY);
});
