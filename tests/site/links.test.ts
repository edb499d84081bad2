/** Every link inside the site leads to a file that is there, and every anchor to a place that is there. */
import { globSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { siteLinks } from "../helpers/site-links.ts";

const FOLDER = inject("siteFolder");
const { pages: PAGES, links: LINKS, listed: LISTED, dead, lost } = siteLinks(FOLDER);
const IDS = new Map(PAGES.map(({ address, ids }) => [address, ids]));

test("every link leads to a file of the site", () => {
  expect(LINKS.length).toBeGreaterThan(PAGES.length);
  expect(dead).toEqual([]);
});

test("every anchor of a link is on the page that it leads to", () => {
  expect(LINKS.filter(({ anchor }) => anchor !== undefined).length).toBeGreaterThan(0);
  expect(lost).toEqual([]);
});

test("no page is linked by an address that only leads on", () => {
  const moved = new Set(
    PAGES.filter(({ html }) => html.includes('http-equiv="refresh"')).map(({ address }) => address),
  );
  const behind = LINKS.filter(({ from, to }) => moved.has(to) && from !== to);
  expect(behind.map(({ from, to }) => `${from} → ${to}`)).toEqual([]);
});

test("every link to a view of the map names something that is on the map", () => {
  const { nodes } = JSON.parse(readFileSync(join(FOLDER, "data/graph.json"), "utf8")) as { nodes: { key: string }[] };
  const keys = new Set(nodes.map(({ key }) => key));
  const focused = LINKS.flatMap(({ query }) => query.get("focus") ?? []);
  expect(focused.length).toBeGreaterThan(0);
  expect(focused.filter((key) => !keys.has(key))).toEqual([]);
});

test("every address in a document for machines leads to a page, and to a place on it", () => {
  const documents = globSync("data/{graph,records/*,parts/*}.json", { cwd: FOLDER }).sort();
  expect(documents.length).toBeGreaterThan(2);
  const lost: string[] = [];
  for (const document of documents)
    JSON.parse(readFileSync(join(FOLDER, document), "utf8"), (key, value: unknown) => {
      if (key !== "address") return value;
      const [address = "", anchor] = String(value).split("#");
      if (!IDS.has(address) || (anchor !== undefined && !IDS.get(address)?.has(anchor)))
        lost.push(`${document}: ${value}`);
      return value;
    });
  expect(lost).toEqual([]);
});

test("the sitemap lists every page once, but for those that only say where to go", () => {
  const leadsOn = /http-equiv="refresh"|was withdrawn<\/h1>/;
  const pages = PAGES.filter(({ address, html }) => address !== "/404.html" && !leadsOn.test(html));
  expect(LISTED.toSorted()).toEqual(pages.map(({ address }) => address).toSorted());
});
