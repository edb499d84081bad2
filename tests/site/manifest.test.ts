/** The manifest of the built site tells the truth: its addresses are the pages that were written, its hashes are those of the files. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { readFolder } from "../../src/build/data/read-folder.ts";
import { addressesOf } from "../../src/build/publish/addresses-of.ts";
import { lostAddresses } from "../../src/build/publish/against.ts";
import { readManifest } from "../../src/build/publish/read-manifest.ts";
import { verifySite } from "../../src/build/publish/verify-site.ts";
import type { Catalog } from "../../src/engine/records/catalog.ts";
import { judgedBy } from "../helpers/judged-by-ajv.ts";
import { siteLinks } from "../helpers/site-links.ts";

const FOLDER = inject("siteFolder");
const manifest = readManifest(FOLDER);
const { catalog } = (await readFolder("data")) as { catalog: Catalog };
const { pages: PAGES, links } = siteLinks(FOLDER);
const IDS = new Map(PAGES.map(({ address, ids }) => [address, ids]));

test("it holds for the schema that is published beside it", () => {
  const read = (name: string): object => JSON.parse(readFileSync(join(FOLDER, "data", name), "utf8"));
  expect(judgedBy(read("schemas/manifest.json"))(read("manifest.json"))).toEqual([]);
});

test("it lists just the pages that were written, and they are known without a build", () => {
  const written = PAGES.map(({ address }) => address).filter((address) => address !== "/404.html");
  expect(manifest.pages.map(({ address }) => address)).toEqual(written.toSorted());
  expect(manifest.pages).toEqual(addressesOf(catalog));
});

test("every place that it promises is on its page, and every statement that a page links to is promised", () => {
  const promised = manifest.pages.flatMap(({ address, anchors }) =>
    (anchors ?? []).map((anchor) => `${address}#${anchor}`),
  );
  expect(promised.length).toBeGreaterThan(100);
  expect(promised.filter((it) => !IDS.get(it.split("#")[0] as string)?.has(it.split("#")[1] as string))).toEqual([]);
  const linked = links.filter(({ to, anchor }) => /^\/records\/./.test(to) && /-\d+$/.test(anchor ?? ""));
  expect(linked.length).toBeGreaterThan(0);
  const known = new Set(promised);
  expect([...new Set(linked.map(({ to, anchor }) => `${to}#${anchor}`))].filter((it) => !known.has(it))).toEqual([]);
});

test("every file has its hash, and the data that it was built from lose nothing of it", () => {
  expect(verifySite(FOLDER)).toEqual({ files: manifest.files.length, missing: [], changed: [], foreign: [] });
  expect(lostAddresses(catalog, manifest)).toEqual({ lost: [], lostAnchors: [], moved: [], fresh: [] });
});

test("the search boxes that nothing loads are left out, and what loads the index is there", () => {
  const files = manifest.files.map(({ path }) => path).filter((path) => /^pagefind\/[^/]+\.(js|css)$/.test(path));
  expect(files).toEqual(["pagefind/pagefind-worker.js", "pagefind/pagefind.js"]);
  expect(existsSync(join(FOLDER, "pagefind/pagefind-entry.json"))).toBe(true);
});
