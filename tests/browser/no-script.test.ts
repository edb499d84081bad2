/** Every page is useful without JavaScript. */
import { expect, inject, test } from "vitest";
import { pageTypes } from "../helpers/page-types.ts";
import { openBrowser, siteAddress } from "./open-browser.ts";

const { open } = await openBrowser();
const WITHOUT = { javaScriptEnabled: false };
const TYPES = pageTypes(inject("siteFolder"));
const addressOf = (name: string): string => TYPES.find((type) => type.name === name)?.address ?? "";

test("a record reads the same without a script, and nothing on it waits for one", async () => {
  const plain = await open(addressOf("record"), WITHOUT);
  const full = await open(addressOf("record"));
  const headings = await plain.page.locator("main h1, main h2, main h3").allTextContents();
  expect(headings).toEqual(await full.page.locator("main h1, main h2, main h3").allTextContents());
  expect(headings.length).toBeGreaterThan(5);
  for (const heading of await plain.page.locator("main h2").all()) expect(await heading.isVisible()).toBe(true);
  expect(await plain.page.locator("main button").count()).toBe(0);
});

test("without a script the link of a record is there to be selected", async () => {
  const { page } = await open(addressOf("record"), WITHOUT);
  await page.locator(".copy summary").click();
  const forms = page.locator(".copy code");
  expect(await forms.count()).toBe(3);
  for (const form of await forms.all()) expect(await form.isVisible()).toBe(true);
});

test("a question asked on the home page leads to the ask page, which says what to do", async () => {
  const { page } = await open("/", WITHOUT);
  await page.getByRole("searchbox").fill("what changed on the brakes");
  await page.keyboard.press("Enter");
  await page.waitForURL(siteAddress("/ask/?q=what+changed+on+the+brakes"));
  const advice = page.locator("noscript p");
  expect(await advice.isVisible()).toBe(true);
  expect(await advice.textContent()).toContain("Searching needs JavaScript.");
  const [first] = await page.locator("#lists a").all();
  await first?.click();
  expect(new URL(page.url()).pathname).toMatch(/^\/systems\/[^/]+\/$/);
  expect(await page.getByRole("heading", { level: 1 }).isVisible()).toBe(true);
});

test("without a script the map is a list of everything on it", async () => {
  const { page } = await open("/map/", WITHOUT);
  expect(await page.locator("#map").isVisible()).toBe(false);
  expect(await page.locator("#map-plain a").count()).toBeGreaterThan(20);
});
