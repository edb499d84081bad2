import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import type { PublishedPage } from "../../../src/build/publish/manifest-shape.ts";
import { filesOf, writeManifest } from "../../../src/build/publish/write-manifest.ts";
import { answerSchemas } from "../../../src/build/schemas.ts";
import { judgedBy } from "../../helpers/judged-by-ajv.ts";
import { onDisk } from "../../helpers/tiny-folder.ts";

const PAGES: PublishedPage[] = [
  { address: "/", kind: "list", id: "home" },
  { address: "/records/A-1/", kind: "record", id: "A-1", anchors: ["built-1"] },
  { address: "/records/A-2/", kind: "record", id: "A-2", moved: { to: "A-1" } },
];
const SITE = "https://hollin.example/";
const textOf = (folder: string): string => readFileSync(join(folder, "data/manifest.json"), "utf8");

test("lists the pages and every file with size and hash, and holds for the schema that is published beside it", async () => {
  const folder = await onDisk({ "index.html": "home", "data/x.json": "{}", "b/ö.txt": "ü" });
  expect(writeManifest(folder, SITE, PAGES)).toBe(3);
  const manifest = JSON.parse(textOf(folder));
  const sha256 = (text: string): string => createHash("sha256").update(text).digest("hex");
  expect(manifest).toEqual({
    format: "yearmark-manifest/1",
    site: SITE,
    pages: PAGES,
    files: [
      { path: "b/ö.txt", size: 2, sha256: sha256("ü") },
      { path: "data/x.json", size: 2, sha256: sha256("{}") },
      { path: "index.html", size: 4, sha256: sha256("home") },
    ],
  });
  expect(judgedBy(answerSchemas().get("manifest.json") as object)(manifest)).toEqual([]);
});

test("written again it is the same, and does not list itself", async () => {
  const folder = await onDisk({ "index.html": "home", "data/x.json": "{}" });
  writeManifest(folder, SITE, PAGES);
  const first = textOf(folder);
  writeManifest(folder, SITE, PAGES);
  expect(textOf(folder)).toBe(first);
});

test("hidden files are not the site, but .well-known is", async () => {
  const folder = await onDisk({ ".mark": "", "a/.swp": "", ".well-known/security.txt": "contact", "a/b": "" });
  mkdirSync(join(folder, "empty"));
  expect(filesOf(folder).map(({ path }) => path)).toEqual([".well-known/security.txt", "a/b"]);
});

test.skipIf(process.platform !== "linux")(
  "a host without Node can verify an upload: sed makes a list for sha256sum of it",
  async () => {
    const folder = await onDisk({ "index.html": "home", "data/x.json": "{}", "b/y.txt": "y" });
    writeManifest(folder, SITE, PAGES);
    const verify = `sed -n 's/^{"path":"\\(.*\\)","size":[0-9]*,"sha256":"\\(.*\\)"},*$/\\2  \\1/p' data/manifest.json | sha256sum -c --quiet`;
    const run = (): string => spawnSync("sh", ["-c", `${verify} 2>&1`], { cwd: folder, encoding: "utf8" }).stdout;
    expect(run()).toBe("");
    writeFileSync(join(folder, "b/y.txt"), "z");
    rmSync(join(folder, "data/x.json"));
    expect(run()).toMatch(/b\/y\.txt: FAILED\n(?:.*\n)*data\/x\.json: FAILED open or read\n/);
  },
);

test("an empty site has a manifest that can be read", async () => {
  const folder = await onDisk({ "data/x": "" });
  writeManifest(folder, SITE, []);
  expect(JSON.parse(textOf(folder)).pages).toEqual([]);
});
