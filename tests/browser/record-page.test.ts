/** What a record's page does beside being read: its link is copied, it is printed. */
import { expect, inject, test } from "vitest";
import { pageTypes } from "../helpers/page-types.ts";
import { openBrowser } from "./open-browser.ts";

const { open } = await openBrowser();
const ADDRESS = pageTypes(inject("siteFolder")).find(({ name }) => name === "record")?.address ?? "";

test("the link of a record is copied as plain text, Markdown and HTML", async () => {
  const { page, complaints } = await open(ADDRESS, { permissions: ["clipboard-read", "clipboard-write"] });
  await page.getByText("Link to this page").click();
  const published = await page.locator("link[rel=canonical]").getAttribute("href");
  for (const name of ["Plain text", "Markdown", "HTML"]) {
    const row = page.locator(".copy dl > div", { hasText: name });
    await row.getByRole("button", { name: `Copy as ${name}` }).click();
    await row.getByText("Copied.").waitFor();
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(copied).toBe(await row.locator("code").textContent());
    expect(copied).toContain(published);
  }
  expect(complaints).toEqual([]);
});

test("where the clipboard is closed the text is selected instead", async () => {
  const { page, complaints } = await open(ADDRESS);
  await page.evaluate(() => {
    Object.defineProperty(navigator, "clipboard", { value: undefined });
  });
  await page.getByText("Link to this page").click();
  const row = page.locator(".copy dl > div", { hasText: "Plain text" });
  await row.getByRole("button").click();
  await row.getByText("Selected; copy it with your keyboard.").waitFor();
  expect(await page.evaluate(() => String(getSelection()))).toBe(await row.locator("code").textContent());
  expect(complaints).toEqual([]);
});

test("on paper a record says which revision it is and carries a code with its address, and nothing to press", async () => {
  const { page } = await open(ADDRESS);
  const foot = page.locator(".printfoot");
  expect(await foot.isVisible()).toBe(false);
  await page.emulateMedia({ media: "print" });
  expect(await foot.isVisible()).toBe(true);
  const words = await foot
    .locator("p")
    .evaluate((lines) => [...lines.childNodes].flatMap((it) => it.textContent || []));
  expect(words[0]).toMatch(/^\S+, revision \d+ of \d{4}-\d\d-\d\d\. Check before use\.$/);
  expect(words[1]).toBe(await page.locator("link[rel=canonical]").getAttribute("href"));
  const code = await foot.locator("svg").boundingBox();
  expect(code?.width).toBeGreaterThan(80);
  for (const hidden of [".head", ".crumbs", ".copy", ".button", ".skip"])
    for (const element of await page.locator(hidden).all()) expect(await element.isVisible(), hidden).toBe(false);
  // A4 at 96 dots to the inch, less margins.
  await page.setViewportSize({ width: 700, height: 1000 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(700);
  expect((await page.pdf({ format: "A4" })).subarray(0, 5).toString()).toBe("%PDF-");
});

test("what is folded on the screen is read on paper", async () => {
  const { page } = await open(ADDRESS);
  const folded = page.locator("details:not(.copy) > p").first();
  await page.emulateMedia({ media: "print" });
  expect(await folded.evaluate((text) => text.checkVisibility({ contentVisibilityAuto: true }))).toBe(true);
  expect((await folded.boundingBox())?.height).toBeGreaterThan(10);
});
