/** Texts that try to be markup stay texts where scripts draw them: in results of a search, and on the map. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { serve } from "../../src/build/serve.ts";
import { buildByCommand } from "../helpers/build-by-command.ts";
import { DESK, openBrowser } from "./open-browser.ts";

const home = await mkdtemp(join(tmpdir(), "yearmark-hostile-"));
buildByCommand({ data: "tests/fixtures/another-maker", site: join(home, "_site") });
const served = await serve({ folder: join(home, "_site"), port: 0 });
afterAll(async () => {
  await served.close();
  await rm(home, { recursive: true });
});
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
