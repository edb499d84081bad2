/** The map page of the built site, in Chromium: drawn without a graphics card, so pictures are small and waits are long. */
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, expect, inject, test } from "vitest";
import type { GraphDocument } from "../../src/engine/graph/document.ts";
import { demoKnowledge } from "../helpers/demo-data.ts";

const SOFTWARE_GL = [
  "--use-gl=angle",
  "--use-angle=swiftshader",
  "--enable-unsafe-swiftshader",
  "--disable-gpu-rasterization",
];
/** As wide as it takes to have the filters beside the map, and no larger: what is drawn takes time by its pixels. */
const DESK = { viewport: { width: 1000, height: 560 } };
const PHONE = { viewport: { width: 360, height: 740 }, hasTouch: true };

type Media = NonNullable<Parameters<Page["emulateMedia"]>[0]>;

let browser: Browser;
let graph: GraphDocument;
let axe: string;
let complaints: string[] = [];

beforeAll(async () => {
  browser = await chromium.launch({
    executablePath: inject("browser"),
    args: ["--no-sandbox", "--disable-background-networking", ...SOFTWARE_GL],
  });
  graph = (await (await fetch(`${inject("siteUrl")}data/graph.json`)).json()) as GraphDocument;
  axe = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
});

afterAll(() => browser.close());

afterEach(async () => {
  for (const context of browser.contexts()) if (!kept.has(context)) await context.close();
  const heard = complaints;
  complaints = [];
  expect(heard).toEqual([]);
});

/** Drawing by software takes seconds to start: one page on each kind of screen is drawn once, and kept for all tests. */
const desk = keptPage(DESK);
const phone = keptPage(PHONE);
const kept = new Set<BrowserContext>();

function keptPage(options: BrowserContextOptions): () => Promise<Page> {
  let page: Promise<Page> | undefined;
  return () => {
    page ??= openWith(options).then((opened) => {
      kept.add(opened.context());
      return opened;
    });
    return page;
  };
}

/** Calm and by day, where nothing else is named. */
async function pageFor(screen: () => Promise<Page>, media: Media = {}): Promise<Page> {
  const page = await screen();
  await page.emulateMedia({ colorScheme: "light", reducedMotion: "reduce", ...media });
  return page;
}

/** Opens the address anew. */
async function load(query: string, screen = desk): Promise<Page> {
  const page = await pageFor(screen);
  await page.goto(`${inject("siteUrl")}map/${query}`);
  if (!query.includes("view=table")) await untilDrawn(page, query);
  return page;
}

/** The view of such an address: without opening the page again where it is open, as the browser's way back leads to a view. */
async function show(query: string, screen = desk, media: Media = {}): Promise<Page> {
  const page = await pageFor(screen, media);
  if (new URL(page.url()).pathname !== "/map/") return load(query, screen);
  await page.evaluate((wanted) => {
    history.pushState(null, "", location.pathname + wanted);
    dispatchEvent(new PopStateEvent("popstate"));
    const filters = document.querySelector<HTMLDetailsElement>("#map-filters");
    if (filters) filters.open = matchMedia("(min-width: 60em)").matches;
  }, query);
  if (!query.includes("view=table")) await untilDrawn(page, query);
  return page;
}

async function open(query: string, options: BrowserContextOptions = DESK, prepare?: () => void): Promise<Page> {
  const page = await openWith(options);
  if (prepare) await page.addInitScript(prepare);
  await page.goto(`${inject("siteUrl")}map/${query}`);
  return page;
}

async function openWith(options: BrowserContextOptions): Promise<Page> {
  const context = await browser.newContext({ reducedMotion: "reduce", ...options });
  const page = await context.newPage();
  page.on("pageerror", (error) => complaints.push(String(error)));
  page.on("console", (message) => {
    // The browser's own remark on drawing by software.
    if (message.type() === "error" && !/GPU stall|WebGL-/.test(message.text())) complaints.push(message.text());
  });
  page.on("request", (request) => {
    if (!request.url().startsWith(inject("siteUrl")) && !/^(data|blob):/.test(request.url()))
      complaints.push(`leaves the site: ${request.url()}`);
  });
  return page;
}

async function untilDrawn(page: Page, query: string): Promise<void> {
  await page.locator("#map-canvas canvas").first().waitFor({ state: "attached" });
  await untilCard(page, new URLSearchParams(query).get("focus"));
  // What is drawn can be hit after the next picture.
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
}

/** Until the card shows a node; without one, until it shows none. */
async function untilCard(page: Page, key: string | null): Promise<void> {
  const label = graph.nodes.find((node) => node.key === key)?.label;
  if (label === undefined) await page.locator(".map-card-empty").waitFor();
  else await page.locator("#map-card-title", { hasText: label }).waitFor();
}

const search = (page: Page): string => new URL(page.url()).search;

/** A part that supersedes another, and its relation. */
function superseding() {
  const found = graph.edges.find(({ relation }) => relation === "supersedes");
  if (!found) throw new Error("The demo has no supersession.");
  return found;
}

function labelOf(key: string): string {
  return graph.nodes.find((node) => node.key === key)?.label ?? "";
}

const { catalog } = await demoKnowledge();

/** The argument of a stand-in, as a page that answers links to it: the part asked, the part it is asked for, the record. */
function standIn() {
  for (const { id, statements } of catalog.records.values())
    for (const it of statements)
      if (it.type === "stands-in" && it.for !== undefined) {
        const proof = [`part:${it.part}`, `part:${it.for}`, `record:${id}`];
        const [asked = "", belongs = "", record = ""] = proof;
        return { asked, belongs, record, query: `?focus=${asked}&proof=${proof.join(",")}` };
      }
  throw new Error("The demo has no stand-in.");
}

/** Where the camera has to look so that a node is in the middle: the larger side of the graph is 1 wide. */
function lookAt(key: string, ratio: number): string {
  const node = graph.nodes.find((each) => each.key === key);
  if (!node) throw new Error(`no node ${key}`);
  const side = (axis: "x" | "y") => {
    const values = graph.nodes.map((each) => each[axis]);
    return { from: Math.min(...values), to: Math.max(...values) };
  };
  const [x, y] = [side("x"), side("y")];
  const scale = Math.max(x.to - x.from, y.to - y.from);
  const place = (axis: "x" | "y", { from, to }: { from: number; to: number }) =>
    0.5 + (node[axis] - (from + to) / 2) / scale;
  return `at=${place("x", x).toFixed(4)},${place("y", y).toFixed(4)},${ratio}`;
}

/** A part with a place to itself, so that a click in the middle can mean no other. */
function lonelyPart(): string {
  const free = graph.nodes
    .filter(({ kind }) => kind === "part")
    .map((node) => ({
      key: node.key,
      room: Math.min(
        ...graph.nodes.filter((other) => other !== node).map((o) => Math.hypot(o.x - node.x, o.y - node.y)),
      ),
    }))
    .sort((a, b) => b.room - a.room)[0];
  if (!free) throw new Error("The demo has no parts.");
  return free.key;
}

test("a link from a page opens the map on its node, with its neighbours in the right direction", async () => {
  const { source, target, from } = superseding();
  const page = await load(`?focus=${target}`);
  const group = page.locator("#map-card h3", { hasText: "superseded by" }).locator("xpath=following-sibling::ul[1]");
  expect(await group.textContent()).toContain(labelOf(source));
  expect(await group.getByRole("link", { name: from ?? "" }).count()).toBeGreaterThan(0);
  await page.getByRole("link", { name: "Open its page" }).click();
  await page.waitForURL(`**/parts/${target.replace("part:", "")}/`);
});

test("a number typed without its dashes finds the node, by keyboard alone", async () => {
  const page = await show("");
  const { source } = superseding();
  await page.getByRole("combobox", { name: "Find a node" }).fill(source.replace(/^part:|[^0-9A-Za-z]/g, ""));
  await page.getByRole("option").first().waitFor();
  await page.keyboard.press("Enter");
  await untilCard(page, source);
  expect(search(page)).toContain(`focus=${source}`);
  await page
    .getByRole("status")
    .filter({ hasText: labelOf(source) })
    .waitFor();
  await page.goBack();
  await untilCard(page, null);
  await page.goForward();
  await untilCard(page, source);
});

test("a click on a drawn node shows its card", async () => {
  const key = lonelyPart();
  const page = await show(`?${lookAt(key, 0.06)}`);
  const box = await page.locator("#map-stage").boundingBox();
  if (!box) throw new Error("no stage");
  await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
  await untilCard(page, key);
  expect(search(page)).toContain(`focus=${key}&rest=yes`);
});

test("Enter on the stage selects the node under the cross, and Escape lets it go", async () => {
  const key = lonelyPart();
  const page = await show(`?${lookAt(key, 0.06)}`);
  await page.locator("#map-stage").focus();
  await page.keyboard.press("Enter");
  await untilCard(page, key);
  expect(await page.evaluate(() => document.activeElement?.id)).toBe("map-card-title");
  await page.keyboard.press("Escape");
  await untilCard(page, null);
  expect(await page.evaluate(() => document.activeElement?.id)).toBe("map-stage");
});

test("a neighbour in the card leads on to its own card", async () => {
  const { source, target } = superseding();
  const page = await show(`?focus=${target}`);
  await page
    .locator("#map-card .map-pick", { hasText: labelOf(source) })
    .first()
    .click();
  await untilCard(page, source);
});

test("moving and zooming by keys stands in the address, and the address shows the same place", async () => {
  const page = await show("");
  await page.locator("#map-stage").focus();
  await page.keyboard.press("+");
  await page.keyboard.press("ArrowRight");
  await page.waitForFunction(() => new URLSearchParams(location.search).has("at"));
  await page.keyboard.press("Enter");
  await page.locator("#map-card-title").waitFor();
  const chosen = await page.locator("#map-card-title").textContent();
  const at = new URLSearchParams(search(page)).get("at");
  const again = await load(`?at=${at}`);
  await again.locator("#map-stage").focus();
  await again.keyboard.press("Enter");
  await again.locator("#map-card-title", { hasText: chosen ?? "" }).waitFor();
});

test("filters stand in the address, and map and table show what passes them", async () => {
  const page = await show("");
  const system = graph.nodes.find(({ kind }) => kind === "system");
  await page.locator("summary", { hasText: "Systems" }).click();
  await page
    .getByRole("group", { name: /^Systems/ })
    .getByLabel(system?.label ?? "")
    .check();
  await page.locator(".map-box", { hasText: /^change records/ }).click();
  expect(search(page)).toContain(`system=${system?.id}`);
  expect(search(page)).toContain("hide=record");
  await page.getByRole("tab", { name: "Table" }).click();
  const rows = page.locator("#map-table tbody tr:not(.map-unfolded)");
  await rows.first().waitFor();
  const text = await page.locator("#map-table").textContent();
  expect(text).not.toContain("change record");
  expect(text).toContain(system?.label);
  await page.goBack();
  await page.goBack();
  await page.locator("#map-canvas canvas").first().waitFor();
  expect(
    await page
      .locator(".map-box", { hasText: /^change records/ })
      .locator("input")
      .isChecked(),
  ).toBe(true);
});

test("the table tells the relations of a row and selects it, by keyboard", async () => {
  const { source, target } = superseding();
  const page = await show(`?view=table&focus=${source}`);
  await untilCard(page, source);
  const row = page.locator("#map-table tr", { hasText: labelOf(source) }).first();
  await row.locator(".map-unfold").focus();
  await page.keyboard.press("Enter");
  const unfolded = page.locator(".map-unfolded:not([hidden])");
  await unfolded.waitFor();
  expect(await unfolded.textContent()).toMatch(/supersedes/i);
  expect(await unfolded.textContent()).toContain(labelOf(target));
  await page.locator("#map-table .map-select").first().focus();
  await page.keyboard.press("Enter");
  await page.waitForFunction((key) => !location.search.includes(`focus=${key}&`), source);
});

test("at night the map is drawn anew in other colours, and the place stays", async () => {
  const page = await show(`?focus=${superseding().source}&at=0.4,0.5,0.7`);
  const before = search(page);
  await page.evaluate(() => document.querySelector("#map-canvas canvas")?.setAttribute("data-day", ""));
  await page.emulateMedia({ colorScheme: "dark" });
  await page.waitForFunction(() => document.querySelector("#map-canvas canvas:not([data-day])"));
  expect(await page.locator("canvas[data-day]").count()).toBe(0);
  await untilCard(page, superseding().source);
  expect(search(page)).toBe(before);
});

test("the argument of an answer is shown alone until it is left", async () => {
  const { asked, belongs, record, query } = standIn();
  const page = await show(query);
  const line = page.getByText(/^The argument of an answer: \d+ statements? of 1 record\.$/);
  await line.waitFor();
  await page.getByRole("status").filter({ hasText: "The argument of an answer" }).waitFor();
  const inArgument = page.getByRole("heading", { name: "In the argument", exact: true });
  expect(await inArgument.locator("xpath=following-sibling::ul[1]").textContent()).not.toBe("");

  await page.getByRole("tab", { name: "Table" }).click();
  const rows = page.locator("#map-table tbody tr:not(.map-unfolded)");
  expect(await rows.locator("th > a").allTextContents()).toEqual(
    expect.arrayContaining([asked, belongs, record].map(labelOf)),
  );
  expect(await rows.count()).toBe(3);
  await rows.filter({ hasText: labelOf(record) }).getByRole("button", { name: "select" }).click(); // biome-ignore format: one step
  await untilCard(page, record);
  expect(await line.isVisible()).toBe(true);

  await page.getByRole("button", { name: "Show everything around it" }).click();
  await line.waitFor({ state: "hidden" });
  expect(search(page)).toBe(`?focus=${record}&view=table`);
  await page.goBack();
  await line.waitFor();
  const other = graph.nodes.find(({ kind }) => kind === "system");
  await page.getByRole("combobox", { name: "Find a node" }).fill(other?.label ?? "");
  await page.keyboard.press("Enter");
  await untilCard(page, other?.key ?? null);
  expect(search(page)).not.toContain("proof");
});

test("wheel, buttons and keys in a hurry all stand in the address", async () => {
  const page = await show("", desk, { reducedMotion: "no-preference" });
  const ratio = () => page.evaluate(() => Number(new URLSearchParams(location.search).get("at")?.split(",")[2]));
  await page.locator("#map-nearer").click();
  await page.locator("#map-nearer").click();
  await expect.poll(ratio, { timeout: 60_000 }).toBeCloseTo(1 / 1.5 ** 2, 3);
  const box = await page.locator("#map-stage").boundingBox();
  await page.mouse.move((box?.x ?? 0) + 200, (box?.y ?? 0) + 200);
  await page.mouse.wheel(0, 300);
  await expect.poll(ratio, { timeout: 60_000 }).toBeGreaterThan(0.5);
});

test("two fingers come nearer", async () => {
  const page = await show(`?focus=${superseding().source}`, phone);
  await page.locator("#map-stage").scrollIntoViewIfNeeded();
  const box = await page.locator("#map-stage").boundingBox();
  const [x, y] = [(box?.x ?? 0) + 160, (box?.y ?? 0) + 100];
  const fingers = await page.context().newCDPSession(page);
  const touch = (type: "touchStart" | "touchMove" | "touchEnd", apart: number) =>
    fingers.send("Input.dispatchTouchEvent", {
      type,
      touchPoints:
        type === "touchEnd"
          ? []
          : [
              { x: x - apart, y, id: 1 },
              { x: x + apart, y, id: 2 },
            ],
    });
  await touch("touchStart", 20);
  for (const apart of [30, 40, 60]) await touch("touchMove", apart);
  await touch("touchEnd", 0);
  await page.waitForFunction(() => new URLSearchParams(location.search).has("at"));
});

test("without WebGL 2 a plain sentence and the table take its place", async () => {
  const page = await open("", DESK, () => {
    const original = HTMLCanvasElement.prototype.getContext;
    HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, ...more: unknown[]) {
      return kind.startsWith("webgl") ? null : original.apply(this, [kind, ...more] as never);
    } as typeof original;
  });
  await page.getByText("This browser cannot draw the map").waitFor();
  await page.locator("#map-table tbody tr").first().waitFor();
  expect(await page.getByRole("tab", { name: "Map" }).isDisabled()).toBe(true);
});

test("without a script the page lists what is on the map, with links", async () => {
  const page = await open("", { ...DESK, javaScriptEnabled: false });
  expect(await page.locator("#map").isVisible()).toBe(false);
  for (const { kind, label, address } of graph.nodes.filter((node) => node.kind === "system" || node.kind === "line")) {
    const link = page.locator("#map-plain").getByRole("link", { name: label, exact: true });
    expect(await link.first().getAttribute("href"), kind).toBe(`..${address}`);
  }
});

test("a node that is not there is said to be missing", async () => {
  const page = await load("?focus=part:none-such&view=table");
  await page.getByRole("status").filter({ hasText: "There is no node part:none-such." }).waitFor();
});

test("the link to the view is copied", async () => {
  const page = await show("?view=table&page=2");
  await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
  await page.getByRole("button", { name: "Copy link to this view" }).click();
  await page.getByRole("button", { name: "Copied" }).waitFor();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(page.url());
});

test("on a phone nothing sticks out and every target can be hit", async () => {
  const page = await show(`?focus=${superseding().source}`, phone);
  await page.locator("#map-filters > summary").click();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  const small = await page.locator("#map :is(button, a, summary, label:has(input)):visible").evaluateAll((targets) =>
    targets
      .map((target) => ({ text: target.textContent, ...target.getBoundingClientRect().toJSON() }))
      .filter(({ width, height }) => width < 24 || height < 24)
      .map(({ text, width, height }) => `${text} ${width}×${height}`),
  );
  expect(small).toEqual([]);
});

// what is looked at, query, screen, colours
const LOOKS: readonly (readonly [string, string, () => Promise<Page>, "light" | "dark"])[] = [
  ["a card on a phone by day", "?focus=", phone, "light"],
  ["a card on a phone by night", "?focus=", phone, "dark"],
  ["an argument by day", standIn().query, desk, "light"],
  ["an argument on a phone by night", standIn().query, phone, "dark"],
  ["the table by day", "?view=table&focus=", desk, "light"],
  ["the table on a phone by night", "?view=table&focus=", phone, "dark"],
];

test.each(LOOKS)("axe finds nothing to complain of: %s", async (_, query, screen, colorScheme) => {
  const page = await show(query.replace(/focus=$/, `focus=${superseding().source}`), screen, { colorScheme });
  await page.locator("#map:not([hidden])").waitFor();
  await page.locator("#map details").evaluateAll((all) => {
    for (const details of all) details.setAttribute("open", "");
  });
  if (query.includes("table")) await page.locator(".map-unfold").first().click();
  else await page.locator("#map-canvas canvas").first().waitFor({ state: "attached" });
  expect(await violations(page)).toEqual([]);
});

test("axe finds nothing to complain of: the plain lists", async () => {
  const page = await openWith(DESK);
  // With scripts switched off axe could not run either.
  await page.route("**/assets/map.js", (route) => route.fulfill({ contentType: "text/javascript", body: "" }));
  await page.goto(`${inject("siteUrl")}map/`);
  expect(await violations(page)).toEqual([]);
});

async function violations(page: Page): Promise<string[]> {
  if (!(await page.evaluate("'axe' in window"))) await page.evaluate(axe);
  const found = (await page.evaluate("axe.run({ resultTypes: ['violations'] })")) as AxeResults;
  return found.violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
}
