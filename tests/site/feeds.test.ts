/** The feeds and the sitemap, read back by readers that are not ours: xmllint for the form, feedparser for the contents. */
import { globSync, readFileSync } from "node:fs";
import { join } from "node:path";
import FeedParser from "feedparser";
import { describe, expect, inject, test } from "vitest";
import { validateXML } from "xmllint-wasm";
import { type Element, readMarkup } from "../helpers/read-markup.ts";

const FOLDER = inject("siteFolder");
const read = (file: string): string => readFileSync(join(FOLDER, file), "utf8");
const FEEDS = globSync("feeds/*.xml", { cwd: FOLDER })
  .map((file) => file.replaceAll("\\", "/"))
  .sort();
const SITEMAP = readMarkup(read("sitemap.xml"), { xml: true });
const LISTED = SITEMAP.filter(({ name }) => name === "loc").map(({ text }) => text);
const PUBLISHED = LISTED.toSorted((a, b) => a.length - b.length)[0] ?? "";

/** How many entries a feed has at most: a reader keeps what it has seen. */
const MOST = 100;

interface RecordDocument {
  readonly record: {
    readonly id: string;
    readonly title: string;
    readonly address: string;
    readonly issued: string;
    readonly revised?: string;
    readonly lines: readonly string[];
    readonly systems: readonly { id: string }[];
  };
}

const RECORDS = globSync("data/records/*.json", { cwd: FOLDER }).map(
  (file) => (JSON.parse(read(file)) as RecordDocument).record,
);

async function wellFormed(files: readonly string[]): Promise<readonly unknown[]> {
  const xml = files.map((fileName) => ({ fileName: fileName.replaceAll("/", "-"), contents: read(fileName) }));
  return (await validateXML({ xml, normalization: "format", maxMemoryPages: 4096 })).errors;
}

async function entriesOf(feed: string): Promise<{ meta: FeedParser.Meta; items: FeedParser.Item[] }> {
  const parser = new FeedParser({ normalize: true, addmeta: false });
  parser.end(read(feed));
  const items: FeedParser.Item[] = [];
  for await (const item of parser) items.push(item);
  return { meta: (parser as unknown as { meta: FeedParser.Meta }).meta, items };
}

test("there is a feed of all changes, one a line and one a system", () => {
  const wanted = [
    "feeds/all.xml",
    ...new Set(RECORDS.flatMap(({ lines }) => lines).map((id) => `feeds/line-${id}.xml`)),
    ...new Set(RECORDS.flatMap(({ systems }) => systems).map(({ id }) => `feeds/system-${id}.xml`)),
  ];
  expect(FEEDS).toEqual(expect.arrayContaining(wanted));
});

test("xmllint: feeds and sitemap are well-formed", async () => {
  expect(await wellFormed([...FEEDS, "sitemap.xml"])).toEqual([]);
});

describe("feedparser: what the records say comes back", () => {
  test.each(FEEDS)("%s", async (feed) => {
    const { meta, items } = await entriesOf(feed);
    const [, kind, id] = /^feeds\/(all|line|system)-?(.*)\.xml$/.exec(feed) ?? [];
    const wanted = RECORDS.filter(
      (record) =>
        kind === "all" ||
        (kind === "line" ? record.lines.includes(id ?? "") : record.systems.some((it) => it.id === id)),
    )
      .map((record) => ({ ...record, updated: record.revised ?? record.issued }))
      .sort((a, b) => b.updated.localeCompare(a.updated, "en") || (a.id < b.id ? -1 : 1))
      .slice(0, MOST);
    expect(meta["#type"]).toBe("atom");
    expect(meta.title).not.toBe("");
    expect(meta.xmlurl).toBe(PUBLISHED + feed);
    expect(
      items.map(({ guid, title, link, date, pubdate }) => ({
        guid,
        title,
        link,
        updated: date?.toISOString(),
        issued: pubdate?.toISOString(),
      })),
    ).toEqual(
      wanted.map((record) => ({
        guid: PUBLISHED + record.address.slice(1),
        title: `${record.id} ${record.title}`,
        link: PUBLISHED + record.address.slice(1),
        updated: `${record.updated}T00:00:00.000Z`,
        issued: `${record.issued}T00:00:00.000Z`,
      })),
    );
    for (const { title, description } of items) expect.soft(description, title).not.toBe("");
  });
});

describe("RFC 4287: what a feed must", () => {
  const RFC3339 = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?(Z|[+-]\d\d:\d\d)$/;
  test.each(FEEDS)("%s", (feed) => {
    const elements = readMarkup(read(feed), { xml: true });
    const [root] = elements;
    const wrong: string[] = [];
    const inside = (parent: Element | undefined, name: string): Element[] =>
      elements.filter((element) => element.parent === parent && element.name === name);
    const once = (parent: Element | undefined, what: string): void => {
      for (const name of ["id", "title", "updated"]) // 4.1.1, 4.1.2
        if (inside(parent, name).length !== 1) wrong.push(`${what} has ${inside(parent, name).length} ${name}`);
      for (const { text } of inside(parent, "id")) if (!URL.canParse(text)) wrong.push(`${what}: id ${text}`); // 4.2.6
    };
    if (root?.name !== "feed" || root.attributes.xmlns !== "http://www.w3.org/2005/Atom") wrong.push("is no Atom feed");
    once(root, "the feed");
    const entries = inside(root, "entry");
    for (const entry of entries) {
      once(entry, "an entry");
      const alternates = inside(entry, "link").filter(
        ({ attributes }) => (attributes.rel ?? "alternate") === "alternate",
      );
      if (alternates.length !== 1) wrong.push(`an entry has ${alternates.length} alternate links`);
      if (inside(entry, "content").length !== 1) wrong.push("an entry has not one content");
      if (inside(root, "author").length === 0 && inside(entry, "author").length === 0)
        wrong.push("an entry has no author");
    }
    for (const author of inside(root, "author")) // 3.2
      if (inside(author, "name").length !== 1) wrong.push("an author has not one name");
    const selves = inside(root, "link").filter(({ attributes }) => attributes.rel === "self");
    if (selves.length !== 1 || selves[0]?.attributes.href !== PUBLISHED + feed)
      wrong.push("does not say where it lies");
    const ids = [root, ...entries].flatMap((one) => inside(one, "id").map(({ text }) => text));
    wrong.push(...ids.filter((id, i) => ids.indexOf(id) !== i).map((id) => `id twice: ${id}`)); // 4.1.1
    for (const { name, text } of elements) // 3.3
      if (/^(updated|published)$/.test(name) && (!RFC3339.test(text) || Number.isNaN(Date.parse(text))))
        wrong.push(`${name} ${text}`);
    const newest = entries.flatMap((entry) => inside(entry, "updated").map(({ text }) => text)).sort();
    if (entries.length > 0 && inside(root, "updated")[0]?.text !== newest.at(-1))
      wrong.push("is not as new as its entries");
    expect(wrong).toEqual([]);
  });

  test("the contents load nothing, run nothing, and every link in them is whole", () => {
    const wrong: string[] = [];
    for (const feed of FEEDS)
      for (const { text } of readMarkup(read(feed), { xml: true }).filter(({ name }) => name === "content"))
        for (const { name, attributes } of readMarkup(text)) {
          if (/^(script|style|img|iframe|object|embed|form|link)$/.test(name)) wrong.push(`${feed}: ${name}`);
          for (const [attribute, value] of Object.entries(attributes))
            if (/^(on|style$|src)/.test(attribute) || (attribute === "href" && !/^https?:\/\//.test(value)))
              wrong.push(`${feed}: ${name} ${attribute}=${value}`);
        }
    expect(wrong).toEqual([]);
  });
});

test("sitemaps.org: the sitemap lists whole addresses of this site, not too many, with days as they are written there", () => {
  expect(SITEMAP[0]?.name).toBe("urlset");
  expect(SITEMAP[0]?.attributes.xmlns).toBe("http://www.sitemaps.org/schemas/sitemap/0.9");
  expect(LISTED.length).toBeGreaterThan(0);
  expect(LISTED.length).toBeLessThanOrEqual(50_000);
  expect(Buffer.byteLength(read("sitemap.xml"))).toBeLessThanOrEqual(50 * 1024 * 1024);
  expect(new URL(PUBLISHED).protocol).toBe("https:");
  expect(LISTED.filter((address) => !address.startsWith(PUBLISHED) || new URL(address).href !== address)).toEqual([]);
  expect(new Set(LISTED).size).toBe(LISTED.length);
  const days = SITEMAP.filter(({ name }) => name === "lastmod").map(({ text }) => text);
  expect(days.filter((day) => !/^\d{4}-\d\d-\d\d$/.test(day) || Number.isNaN(Date.parse(day)))).toEqual([]);
});

test("robots.txt lets everybody in and names the sitemap", () => {
  expect(read("robots.txt")).toBe(`User-agent: *\nAllow: /\nSitemap: ${PUBLISHED}sitemap.xml\n`);
});
