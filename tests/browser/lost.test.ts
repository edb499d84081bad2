/** Addresses that lead nowhere, or somewhere else by now. */
import { expect, inject, test } from "vitest";
import { pageTypes } from "../helpers/page-types.ts";
import { openBrowser, siteAddress } from "./open-browser.ts";

const { open } = await openBrowser();
const TYPES = pageTypes(inject("siteFolder"));
const addressOf = (name: string): string => TYPES.find((type) => type.name === name)?.address ?? "";

test.each(["record", "part", "component"])(
  "a slip in the address of a %s: the page offers the right one",
  async (name) => {
    const address = addressOf(name);
    const [, list, id = ""] = address.split("/");
    const { page } = await open(`/${list}/${id.charAt(0)}${id}/`);
    const offered = page.locator("#guess a");
    await offered.waitFor();
    await offered.click();
    await page.waitForURL(siteAddress(address));
  },
);

test("an address like no other: the page offers nothing in particular, and its links lead on", async () => {
  const { page, complaints } = await open("/no/such/thing/anywhere/at/all/");
  expect(await page.getByRole("heading", { level: 1 }).textContent()).toBe("There is no page at this address");
  await page.waitForLoadState("networkidle");
  expect(await page.locator("#guess").isVisible()).toBe(false);
  await page.getByRole("link", { name: "All records" }).click();
  await page.waitForURL(siteAddress("/records/"));
  expect(complaints.filter((it) => !it.includes("404"))).toEqual([]);
});

test.each(["/records/%E4%F6/", "/records/%3Cimg%20src=x%20onerror=alert(1)%3E/"])(
  "%s is only an address",
  async (address) => {
    const { page, complaints } = await open(address);
    await page.waitForLoadState("networkidle");
    expect(await page.locator("main img").count()).toBe(0);
    expect(complaints.filter((it) => !it.includes("404"))).toEqual([]);
  },
);

test("the page of an id that was renamed leads to the new one", async () => {
  const { page, complaints } = await open(addressOf("moved"));
  await page.waitForURL((url) => url.pathname !== addressOf("moved"));
  expect(await page.getByRole("heading", { level: 1 }).isVisible()).toBe(true);
  expect(complaints).toEqual([]);
});

test("the page of an id that was renamed says so to those whose browser stays", async () => {
  const html = await (await fetch(siteAddress(addressOf("moved")))).text();
  const to = /http-equiv="refresh" content="0; url=([^"]+)"/.exec(html)?.[1] ?? "";
  expect(html).toContain(`It is now <a href="${to}">`);
});

test("the page of an id that was withdrawn stays, and says why", async () => {
  const { page } = await open(addressOf("withdrawn"));
  expect(await page.getByRole("heading", { level: 1 }).textContent()).toContain("was withdrawn");
  expect((await page.locator("main p").first().textContent())?.length).toBeGreaterThan(10);
});
