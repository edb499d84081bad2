import { appendFileSync, renameSync, rmSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { NoManifest } from "../../../src/build/publish/read-manifest.ts";
import { verifySite } from "../../../src/build/publish/verify-site.ts";
import { writeManifest } from "../../../src/build/publish/write-manifest.ts";
import { SITE_MARK } from "../../../src/build/swap.ts";
import { onDisk } from "../../helpers/tiny-folder.ts";

async function site(): Promise<string> {
  const folder = await onDisk({ "index.html": "home", "a/index.html": "a", "b/index.html": "b", "data/x.json": "{}" });
  writeManifest(folder, "https://hollin.example/", []);
  return folder;
}

test("a site as it was built is whole, with the mark that the build adds", async () => {
  const folder = await site();
  appendFileSync(join(folder, SITE_MARK), "built by Yearmark");
  expect(verifySite(folder)).toEqual({ files: 4, missing: [], changed: [], foreign: [] });
});

test("what is missing, changed and strange is named, each once", async () => {
  const folder = await site();
  rmSync(join(folder, "index.html"));
  appendFileSync(join(folder, "a/index.html"), "?");
  renameSync(join(folder, "b/index.html"), join(folder, "b/index.htm"));
  expect(verifySite(folder)).toEqual({
    files: 4,
    missing: ["b/index.html", "index.html"],
    changed: ["a/index.html"],
    foreign: ["b/index.htm"],
  });
});

test("without a manifest nothing can be said of it", async () => {
  const folder = await onDisk({ "index.html": "home" });
  expect(() => verifySite(folder)).toThrow(NoManifest);
});
