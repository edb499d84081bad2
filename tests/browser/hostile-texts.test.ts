/** Texts that try to be markup stay texts where scripts draw them: in results of a search, and on the map. */
import { expect, test } from "vitest";
import { DESK, openBrowser } from "./open-browser.ts";
import { serveBuilt } from "./serve-built.ts";

const served = await serveBuilt("tests/fixtures/another-maker");
const { newPage } = await openBrowser(served.url);
const { page, complaints } = await newPage(DESK);
const dialogs: string[] = [];
page.on("dialog", (dialog) => {
  dialogs.push(dialog.message());
  void dialog.dismiss();
});

/** What markup in a text would have made of it, had it been believed. */
const MADE = "main script, main iframe, main marquee, main u, main i:not([data-of]), main [onerror], main [onload]";

test.each(["alert", "blade", "strikes housing", "mower"])("in the results for '%s'", async (question) => {
  await page.goto(`${served.url}ask/?q=${encodeURIComponent(question)}`);
  await page.locator(".found .records > li").first().waitFor();
  expect(await page.locator(MADE).count()).toBe(0);
  expect(await page.locator(".found").textContent()).toContain("<");
  expect(dialogs).toEqual([]);
  expect(complaints).toEqual([]);
});

test("on the map and in its table", async () => {
  await page.goto(`${served.url}map/?focus=part:Q.10.B`);
  await page.locator("#map-card").getByText("<script>").first().waitFor();
  await page.getByRole("tab", { name: "Table" }).click();
  await page.locator("#map-table").getByText("<script>").first().waitFor();
  expect(await page.locator(MADE).count()).toBe(0);
  expect(dialogs).toEqual([]);
  expect(complaints).toEqual([]);
});
