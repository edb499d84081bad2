/**
 * The program knows no maker: records of quite another one give a sound site as well, though their texts try to be markup;
 * so do records that hardly are any.
 */
import { globSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { validateXML } from "xmllint-wasm";
import { buildByCommand } from "../helpers/build-by-command.ts";
import { PAGE_FAULTS } from "../helpers/page-faults.ts";
import { readMarkup } from "../helpers/read-markup.ts";
import { siteLinks } from "../helpers/site-links.ts";

const home = mkdtempSync(join(tmpdir(), "yearmark-another-"));
afterAll(() => rmSync(home, { recursive: true }));

describe.each(["another-maker", "nearly-empty"])("the site of %s", (name) => {
  const folder = join(home, name);
  buildByCommand({ data: join("tests/fixtures", name), site: folder });
  const { pages, dead, lost, listed } = siteLinks(folder);

  test.each(Object.entries(PAGE_FAULTS))("every page %s", (_, faults) => {
    const found = pages.flatMap(({ address, elements }) => faults(elements).map((fault) => `${address} ${fault}`));
    expect(found).toEqual([]);
  });

  test("has pages and no dead links", () => {
    expect(listed.length).toBeGreaterThan(10);
    expect(dead).toEqual([]);
    expect(lost).toEqual([]);
  });

  test("has feeds, a sitemap, a picture and a graph that an XML reader can read", async () => {
    const files = globSync("**/*.{xml,gexf,svg}", { cwd: folder });
    expect(files.length).toBeGreaterThan(3);
    const xml = files.map((file, i) => ({ fileName: `${i}.xml`, contents: readFileSync(join(folder, file), "utf8") }));
    expect((await validateXML({ xml, normalization: "format" })).errors).toEqual([]);
  });

  test("has documents that a JSON reader can read", () => {
    for (const file of globSync("data/**/*.json", { cwd: folder }))
      expect(() => JSON.parse(readFileSync(join(folder, file), "utf8")), file).not.toThrow();
  });
});

describe("texts of another maker that try to be markup", () => {
  const folder = join(home, "another-maker");
  const page = (address: string): ReturnType<typeof readMarkup> =>
    readMarkup(readFileSync(join(folder, address, "index.html"), "utf8"));
  const text = (address: string, name: string): string =>
    page(address).find((element) => element.name === name)?.text ?? "";
  const record = JSON.parse(readFileSync(join(folder, "data/records/2012.1.json"), "utf8")).record;

  test("are shown as they are written", () => {
    expect(text("/", "h1")).toBe('Quillfeather "garden tractors" & <b>sundries</b>');
    expect(text("/records/2012.1/", "h1")).toBe(`2012.1 Longer blade <script>alert(1)</script> & "quotes" ]]> 'too'`);
    expect(text("/parts/Q.10.B/", "h1")).toBe(`Q.10.B blade, "short" <script>alert('part')</script>`);
    expect(text("/systems/deck/", "title")).toContain("Cutting deck </title><script>alert('system')</script>");
    expect(text("/bulletins/No.1/", "main")).toContain("the long <b>one</b>");
    const main = text("/records/2012.1/", "main");
    for (const said of [
      "March 2012 </p><script>alert('starts')</script>",
      "it strikes the housing <img src=x onerror=alert('why')>",
      "Undo <script>alert('steps')</script> first.",
      "The <marquee>housing</marquee> stayed.",
      "It strikes. <iframe src='javascript:alert(1)'></iframe>",
      "Wear gloves. --><script>alert('caution')</script>",
      'It cuts "better" & <i>cleaner</i>.',
      '<script>alert("story")</script> <img src=x onerror=alert(1)> ]]> <b> &',
      "<div onclick=\"alert('div')\">a block of markup</div>",
      '<script>alert("code")</script>',
    ])
      expect.soft(main).toContain(said);
  });

  test("are the same in the documents for machines", () => {
    expect(record.title).toBe(`Longer blade <script>alert(1)</script> & "quotes" ]]> 'too'`);
    expect(record.caution).toBe("Wear gloves. --><script>alert('caution')</script>");
  });

  test("lead elsewhere only where a link says so, and never to a script", () => {
    const outward = [...page("/records/2012.1/"), ...page("/bulletins/No.1/")]
      .filter(({ name, attributes }) => name === "a" && /^[a-z]+:/.test(attributes.href ?? ""))
      .map(({ attributes }) => attributes.href);
    expect(outward).toEqual([
      "https://elsewhere.invalid/picture.png",
      "https://elsewhere.invalid/page?a=1&b=2",
      "https://elsewhere.invalid/auto",
      "https://elsewhere.invalid/b.png",
    ]);
  });

  test("have one main heading on the page, and their own below it", () => {
    const headings = page("/records/2012.1/").filter(({ name }) => /^h\d$/.test(name));
    expect(headings.filter(({ name }) => name === "h1").length).toBe(1);
    expect(headings.find(({ text: words }) => words === "A heading of its own")?.name).toMatch(/^h[23]$/);
  });
});

test("a running change by date, and a cancellation of a part of the cars, are told as such", () => {
  const words = (id: string): string =>
    readMarkup(readFileSync(join(home, "another-maker/records", id, "index.html"), "utf8")).find(
      ({ name }) => name === "main",
    )?.text ?? "";
  expect(words("2012.1")).toContain("2012-03-01");
  expect(words("R_2011-a")).toMatch(/Cancelled for .*2013.* by R_2013-b/);
  expect(words("R_2011-a")).toContain("revision 2");
});

test("a record without components stands in the lists of its line and year", () => {
  for (const address of ["records", "lines/A", "lines/A/1999", "years/1999"])
    expect
      .soft(readFileSync(join(home, "nearly-empty", address, "index.html"), "utf8"), address)
      .toContain("The only change");
});

const elementsOf = (name: string, address: string): ReturnType<typeof readMarkup> =>
  readMarkup(readFileSync(join(home, name, address, "index.html"), "utf8"));
const textOf = (name: string, address: string): string =>
  elementsOf(name, address).find((element) => element.name === "main")?.text ?? "";

test("nor does it stand under the heading of a system, where others do", () => {
  for (const address of ["lines/HOG", "lines/HOG/2013"]) {
    const elements = elementsOf("another-maker", address);
    const link = elements.findIndex(({ name, text }) => name === "a" && text.includes("Green paint"));
    const above = elements.slice(0, Math.max(0, link)).findLast(({ name }) => /^h\d$/.test(name));
    expect.soft(above?.text, address).toBe("Other");
  }
  expect(textOf("another-maker", "settings")).toMatch(/Other\s*coats of paint/);
});

test("a record that is in force from after the last car was built stands in the list of all", () => {
  expect(textOf("another-maker", "records")).toMatch(/2014\s*R_2012-d Green paint/);
});

describe("of a withdrawn record", () => {
  const withdrawn = (): string => textOf("another-maker", "records/R_2012-c");

  test("the usual cautions stay cautions, and its own is what it said", () => {
    const box = elementsOf("another-maker", "records/R_2012-c").find(({ name }) => name === "aside");
    expect(box?.attributes.class).toContain("caution");
    expect(box?.text).toContain("Wear thick gloves");
    expect(box?.text).not.toContain("Keep your toes away.");
    const order = ["Withdrawn.", "Wear thick gloves", "none of which counts any more", "Keep your toes away."];
    expect(order.map((words) => withdrawn().indexOf(words))).toEqual(
      order.map((words) => withdrawn().indexOf(words)).toSorted((a, b) => a - b),
    );
    expect(order.filter((words) => !withdrawn().includes(words))).toEqual([]);
  });

  test("the reason is a sentence, in the feeds as well", () => {
    expect(withdrawn()).toContain("Withdrawn. Never built.");
    const entries = readMarkup(readFileSync(join(home, "another-maker/feeds/all.xml"), "utf8"), { xml: true });
    const said = entries.find(({ name, text }) => name === "content" && text.includes("It bent."))?.text;
    expect(said).toMatch(/^<p><b>Withdrawn\.<\/b> Never built\./);
  });
});

// page of a maker who has none of it, what may not be said there
const PROMISED: readonly (readonly [address: string, words: RegExp])[] = [
  [".", /plate/],
  ["car", /plate/i],
  ["fit", /By part|page of each part/],
  ["retrofits", /records below/i],
  ["settings", /Below stands/],
  ["apart", /tables below/],
  ["records/R1", /What stands around it/],
];
test.each(PROMISED)("nothing is promised that is not there: /%s/", (address, words) => {
  expect(textOf("nearly-empty", address)).not.toBe("");
  expect(textOf("nearly-empty", address)).not.toMatch(words);
});
