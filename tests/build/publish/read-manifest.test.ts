import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { NoManifest, readManifest } from "../../../src/build/publish/read-manifest.ts";
import { writeManifest } from "../../../src/build/publish/write-manifest.ts";
import { onDisk } from "../../helpers/tiny-folder.ts";

test("is read from the folder of a site, and from a file of any name", async () => {
  const folder = await onDisk({ "index.html": "home" });
  mkdirSync(join(folder, "data"));
  writeManifest(folder, "https://hollin.example/", [{ address: "/", kind: "list", id: "home" }]);
  const read = readManifest(folder);
  expect(read.files.map(({ path }) => path)).toEqual(["index.html"]);
  expect(readManifest(join(folder, "data/manifest.json"))).toEqual(read);
});

// what is there, what is named, what is said
test.each([
  [{ a: "" }, "b", /b is not there: name the folder of a published site, or its data\/manifest\.json$/],
  [{ "index.html": "home" }, "", /has no data\/manifest\.json.*Build it anew/],
  [{ "m.json": "<!doctype html>" }, "m.json", /m\.json is no manifest of a published site/],
  [{ "m.json": '{"format":"other/1"}' }, "m.json", /m\.json is no manifest of a published site \(format: /],
  [
    { "m.json": '{"format":"yearmark-manifest/1","site":"","pages":[{"address":"/a/","kind":"list"}],"files":[]}' },
    "m.json",
    /is no manifest of a published site \(pages\.0\.id: /,
  ],
])("%j, %s: %s", async (files, name, said) => {
  const folder = await onDisk(files as Record<string, string>);
  expect(() => readManifest(join(folder, name))).toThrow(NoManifest);
  expect(() => readManifest(join(folder, name))).toThrow(said);
});
