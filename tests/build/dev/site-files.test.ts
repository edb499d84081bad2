import { expect, test } from "vitest";
import { OWN } from "../../../src/build/dev/dress-page.ts";
import { type Origins, SiteFiles } from "../../../src/build/dev/site-files.ts";
import { Templates } from "../../../src/build/dev/templates.ts";
import { Site } from "../../../src/site/site.ts";
import { onDisk } from "../../helpers/tiny-folder.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const templates = await Templates.open();
let site: Site | undefined = new Site(tinyKnowledge());
let layouts = 0;
const origins: Origins = {
  templates,
  site: () => site,
  own: { script: "own script", style: "own style" },
  bundled: { home: "", done: Promise.resolve() },
  search: { ready: () => Promise.resolve(undefined), names: new Map() },
  layOut: () => Promise.resolve(new Map([["graph.json", `layout ${++layouts}`]])),
  dress: (page) => `dressed ${page}`,
};
const files = new SiteFiles(origins);

test("pages come from the templates, and are dressed; other texts are not", async () => {
  expect(await files.text("/records/FR58-01/index.html")).toMatch(/^dressed <!DOCTYPE html>[\s\S]*Frame drilled/);
  expect(await files.text("/robots.txt")).toMatch(/^User-agent/);
  expect(await files.text("/records/none/index.html")).toBeUndefined();
  expect([files.has("/records/FR58-01/index.html"), files.has("/records/none/index.html")]).toEqual([true, false]);
  expect(files.notFound()).toMatch(/^dressed <!DOCTYPE html>[\s\S]*There is no page at this address/);
});

test("documents are made from the data, and the map is laid out once for each state of them", async () => {
  expect(JSON.parse((await files.text("/data/records/FR58-01.json")) as string).record.id).toBe("FR58-01");
  expect(await files.text("/data/graph.json")).toBe("layout 1");
  expect(await files.text("/data/graph.json")).toBe("layout 1");
  const before = site;
  site = new Site(tinyKnowledge());
  expect(await files.text("/data/graph.json")).toBe("layout 2");
  site = before;
});

test("scripts, styles and the text search lie on the disk; the server's own files do not", async () => {
  const home = await onDisk({ "assets/site.css": "p {}", "1/pagefind/pagefind.js": "index" });
  const built = new SiteFiles({
    ...origins,
    bundled: { home, done: Promise.resolve() },
    search: { ready: () => Promise.resolve({ folder: `${home}/1`, names: new Map() }), names: new Map() },
  });
  const bytes = async (file: string): Promise<string | undefined> => {
    expect(await built.text(file)).toBeUndefined();
    const found = await built.bytes(file);
    return found && Buffer.from(found).toString();
  };
  expect(await bytes("/assets/site.css")).toBe("p {}");
  expect(await bytes("/assets/none.css")).toBeUndefined();
  expect(await bytes("/assets")).toBeUndefined();
  expect(await bytes("/pagefind/pagefind.js")).toBe("index");
  expect(await bytes("/elsewhere.bin")).toBeUndefined();
  expect(await files.bytes("/pagefind/pagefind.js"), "before there is an index").toBeUndefined();
  expect([await files.text(OWN.script), await files.text(OWN.style)]).toEqual(["own script", "own style"]);
});

test("before there is a site, every page says so", async () => {
  const none = new SiteFiles({ ...origins, site: () => undefined });
  for (const page of [await none.text("/index.html"), await none.text("/x/index.html"), none.notFound()])
    expect(page).toMatch(/^dressed [\s\S]*There is no site yet/);
  expect(await none.text("/data/lines.json")).toBeUndefined();
  expect(none.has("/index.html")).toBe(false);
});
