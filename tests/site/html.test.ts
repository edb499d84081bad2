/** The markup of the built site: valid in the eyes of two checkers, and sound on every single page. */
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { HtmlValidate, StaticConfigLoader } from "html-validate";
import { describe, expect, inject, test } from "vitest";
import { PAGE_FAULTS } from "../helpers/page-faults.ts";
import { pageTypes } from "../helpers/page-types.ts";
import { readMarkup } from "../helpers/read-markup.ts";
import { sitePages } from "../helpers/site-pages.ts";

const TYPES = pageTypes(inject("siteFolder"));
const PAGES = sitePages(inject("siteFolder")).map((page) => ({ ...page, elements: readMarkup(page.html) }));

// html-validate, html-validate.org. No rule is turned off but for one element: the map's search field is a combobox whose
// list of hits ARIA wants to be a listbox; a select cannot be filtered by typing.
describe("html-validate finds nothing", () => {
  const validator = new HtmlValidate(
    new StaticConfigLoader({
      root: true,
      extends: ["html-validate:recommended", "html-validate:a11y"],
      rules: { "prefer-native-element": ["error", { exclude: ["listbox"] }] },
    }),
  );
  test.each(TYPES)("on the page type $name", async ({ address }) => {
    const page = PAGES.find((one) => one.address === address);
    const { results } = await validator.validateString(page?.html ?? "");
    const said = results.flatMap(({ messages }) => messages.map((it) => `${it.line}: ${it.message} (${it.ruleId})`));
    expect(said).toEqual([]);
  });
});

// The Nu Html Checker, validator.github.io/validator, is a Java program.
const hasJava = spawnSync("java", ["-version"]).status === 0;

test.skipIf(!hasJava)(
  `the Nu Html Checker finds nothing on any page type${hasJava ? "" : " (skipped: there is no java on PATH)"}`,
  () => {
    const jar = join(dirname(createRequire(import.meta.url).resolve("vnu-jar/package.json")), "build/dist/vnu.jar");
    // By their addresses and not as files: 'self' in a page's policy means nothing to a file. And it must be told that
    // it may ask this machine.
    const allowed = "-Dnu.validator.servlet.allow-forbidden-hosts=true";
    const addresses = TYPES.map(({ address }) => inject("siteUrl") + address.slice(1));
    const { stderr } = spawnSync("java", [allowed, "-jar", jar, "--format", "json", ...addresses], {
      encoding: "utf8",
    });
    const { messages } = JSON.parse(stderr) as { messages: { url: string; lastLine: number; message: string }[] };
    expect(messages.map((it) => `${it.url} ${it.lastLine}: ${it.message}`)).toEqual([]);
  },
);

/** A faultless page with one thing put in that must be found, so that a check which finds nothing has looked. */
const PLANTED: readonly [fault: string, rule: string, old: string, planted: string][] = [
  ["no language", "has a language", '<html lang="en">', "<html>"],
  ["a second main heading", "has a language", "</h1>", "</h1><h1>again</h1>"],
  ["an id twice", "uses every id once", "</h1>", '</h1><p id="a">x</p>'],
  ["a label for nothing", "uses every id once", "</h1>", '</h1><label for="b">x</label>'],
  ["inline scripts allowed", "carries a strict policy", "script-src 'self'", "script-src 'self' 'unsafe-inline'"],
  ["another host allowed", "carries a strict policy", "script-src 'self'", "script-src 'self'; img-src https:"],
  [
    "a style sheet before the policy",
    "carries a strict policy",
    "<head>",
    '<head><link rel="stylesheet" href="a.css">',
  ],
  ["a script inside", "holds no script", "</h1>", "</h1><script>alert(1)</script>"],
  ["a handler", "holds no script", "<h1", '<h1 onclick="alert(1)"'],
  ["a style", "holds no script", "<h1", '<h1 style="color: red"'],
  ["a link to a script", "holds no script", "</h1>", '</h1><a href=" JavaScript:alert(1)">x</a>'],
  ["a list of nothing", "has no heading over nothing", "</h1>", '</h1><ul class="b"></ul>'],
  ["a heading over nothing", "has no heading over nothing", "</h1>", "</h1><section><h2>B</h2><div></div></section>"],
  [
    "a heading over nothing but a way elsewhere",
    "has no heading over nothing",
    "</h1>",
    '</h1><section><h2>B</h2><p><a class="button" href="./">C</a></p></section>',
  ],
  ["nothing counted as 0", "says of what there is none", "</h1>", '</h1><p>B <span class="count">0 changes</span></p>'],
  ["a picture from elsewhere", "loads nothing", "</h1>", '</h1><img src="//elsewhere.invalid/a.png" alt="">'],
  [
    "a style sheet from elsewhere",
    "loads nothing",
    "</title>",
    '</title><link rel="stylesheet" href="https://e.invalid/">',
  ],
];
const POLICY = "default-src 'none'; base-uri 'none'; script-src 'self'";
const FAULTLESS = `<!DOCTYPE html><html lang="en"><head><meta http-equiv="Content-Security-Policy" content="${POLICY}">
<title>A</title></head><body><main><h1 id="a">A</h1></main></body></html>`;

describe("the rules for every page", () => {
  test("find nothing on a faultless page", () => {
    expect(Object.values(PAGE_FAULTS).flatMap((faults) => faults(readMarkup(FAULTLESS)))).toEqual([]);
  });
  test.each(PLANTED)("find %s", (_, rule, old, planted) => {
    const spoiled = readMarkup(FAULTLESS.replace(old, () => planted));
    const broken = Object.entries(PAGE_FAULTS).filter(([, faults]) => faults(spoiled).length > 0);
    expect(broken.map(([name]) => name)).toEqual([expect.stringContaining(rule)]);
  });
});

describe("every page", () => {
  test.each(Object.entries(PAGE_FAULTS))("%s", (_, faults) => {
    expect(PAGES.length).toBeGreaterThan(100);
    const found = PAGES.flatMap(({ address, elements }) => faults(elements).map((fault) => `${address} ${fault}`));
    expect(found).toEqual([]);
  });

  test("has a title that no other page has", () => {
    const titles = PAGES.map(({ elements }) => elements.find(({ name }) => name === "title")?.text);
    const twice = PAGES.filter((_, i) => titles.indexOf(titles[i]) !== i).map(({ address }) => address);
    expect(twice).toEqual([]);
  });
});

test("only the page with the text search may run WebAssembly", () => {
  const wasm = PAGES.filter(({ html }) => html.includes("wasm-unsafe-eval")).map(({ address }) => address);
  expect(wasm).toEqual(["/ask/"]);
});

test("no style sheet loads anything from elsewhere", () => {
  const sheets = PAGES.flatMap(({ address, elements }) =>
    elements
      .filter(({ attributes }) => attributes.rel === "stylesheet")
      .map(({ attributes }) => new URL(attributes.href ?? "", `http://site${address}`).pathname),
  );
  expect(sheets.length).toBeGreaterThan(0);
  for (const sheet of new Set(sheets)) {
    const text = readFileSync(join(inject("siteFolder"), sheet), "utf8");
    expect.soft(text.match(/@import[^;]*|url\((?!["']?data:)[^)]*\)/g), sheet).toBeNull();
  }
});
