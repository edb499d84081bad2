/** The menu on a phone is one row that scrolls: it shows where the reader is, and that it goes on. */
import { expect, test } from "vitest";
import { openBrowser, PHONE } from "./open-browser.ts";

const { open } = await openBrowser();

/** From the left edge of the row to that of the link, to its right edge, to where the fade begins, and to its own end. */
const PLACES = (link: Element): { left: number; right: number; fade: number; row: number } => {
  const nav = link.parentElement as HTMLElement;
  const [own, box] = [nav.getBoundingClientRect(), link.getBoundingClientRect()];
  const wide = Number.parseFloat(getComputedStyle(nav, "::after").width);
  return { left: box.left - own.left, right: box.right - own.left, fade: own.width - wide, row: own.width };
};

test.each(["/retrofits/", "/map/"])("the page that is read is in sight: %s", async (address) => {
  const { page } = await open(address, PHONE);
  const { left, right, fade } = await page.locator(".nav [aria-current]").evaluate(PLACES);
  expect(left).toBeGreaterThanOrEqual(0);
  // Browsers scroll by whole pixels.
  expect(right).toBeLessThanOrEqual(fade + 1);
});

test("where the keyboard is on a link no fade lies over it", async () => {
  const { page } = await open("/", PHONE);
  const nav = page.locator(".nav");
  const fade = (): Promise<string> => nav.evaluate((row) => getComputedStyle(row, "::after").visibility);
  expect(await fade()).toBe("visible");
  await page.locator(".brand").focus();
  for (const link of await nav.locator("a").all()) {
    await page.keyboard.press("Tab");
    expect(await link.evaluate((it) => it === document.activeElement)).toBe(true);
    expect(await fade()).toBe("hidden");
    const { left, row } = await link.evaluate(PLACES);
    expect.soft(left, (await link.textContent()) ?? "").toBeGreaterThanOrEqual(0);
    expect.soft(left, (await link.textContent()) ?? "").toBeLessThan(row);
  }
});
