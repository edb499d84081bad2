/** What scripts draw for a maker of one record: nothing is offered, counted or promised that is not there. */
import { expect, test } from "vitest";
import { DESK, openBrowser } from "./open-browser.ts";
import { serveBuilt } from "./serve-built.ts";

const served = await serveBuilt("tests/fixtures/nearly-empty");
const { newPage } = await openBrowser(served.url);
const { page, complaints } = await newPage(DESK);

test.each(["fit", "retrofits", "settings"])(
  "/%s/ asks which car it is, and for no plate, which is described nowhere",
  async (name) => {
    await page.goto(`${served.url}${name}/`);
    await page.getByRole("link", { name: "Say which car it is", exact: true }).waitFor();
    expect(await page.locator("main").textContent()).not.toMatch(/plate/i);
    expect(complaints).toEqual([]);
  },
);

test("where no way is on record there is nothing to narrow", async () => {
  await page.goto(`${served.url}retrofits/?fact=kind:A&component=hose`);
  await page.getByText("Open ways: 0").waitFor();
  expect(await page.locator("#retrofits input").count()).toBe(0);
  expect(complaints).toEqual([]);
});

test("of a car that every record is about it is said that none is ruled out", async () => {
  await page.goto(`${served.url}car/?fact=kind:A&fact=year:1999`);
  await page.getByText("Does not apply: 0").waitFor();
  expect(await page.locator(".no-list").textContent()).toContain("No record is ruled out.");
  expect(await page.locator("main").textContent()).not.toMatch(/plate/i);
  expect(complaints).toEqual([]);
});
