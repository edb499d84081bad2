/** Every page type as those meet it who do not see or point as most do: axe-core's findings, small screens, large text. */
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import type { RunOptions } from "axe-core";
import { expect, test } from "vitest";
import { DESK, openBrowser, PHONE, siteAddress } from "./open-browser.ts";
import { pageStates, type State, untilReady } from "./ready.ts";

const AXE = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const { open, newPage } = await openBrowser();
const { page } = await newPage({ ...DESK, bypassCSP: true });
// A page that leads on is held, so that it can be looked at.
await page.route("**/*", async (route) => {
  if (route.request().resourceType() !== "document") return route.continue();
  const answer = await route.fetch();
  return route.fulfill({ response: answer, body: (await answer.text()).replace('http-equiv="refresh"', "") });
});

/** All that the standard asks for, and what axe-core holds to be good practice beside it. */
const ALL: RunOptions = {
  runOnly: {
    type: "tag",
    values: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa", "best-practice"],
  },
};
test.each(pageStates())("axe-core finds nothing, and nobody has to scroll sideways: $name", async (state) => {
  await show(state);
  await page.evaluate(AXE);
  expect.soft(await findings("html"), "at a desk, in light").toEqual([]);
  // Colours do not depend on the width, nor the layout on the colours: the other of each is looked at together. Of a page that
  // answers, only what the answer changed: the rest is that of the page before it was asked.
  await page.emulateMedia({ colorScheme: "dark" });
  await page.setViewportSize(PHONE.viewport);
  expect.soft(await findings(state.changes ?? "html"), "on a phone, in the dark").toEqual([]);
  await page.emulateMedia({ colorScheme: "light" });
  expect.soft(await tooWide(), "on a phone").toEqual([]);
  await page.addStyleTag({ content: SPACED });
  expect.soft(await tooWide(), "with text spaced wider").toEqual([]);
  expect.soft(await cutOff(), "with text spaced wider").toEqual([]);
  await page.evaluate(() => document.head.lastElementChild?.remove());
  await page.setViewportSize(AT_400_PERCENT);
  expect.soft(await tooWide(), "at 400 %").toEqual([]);
});

/** WCAG 1.4.12: people may space text so. */
const SPACED = `
* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
p { margin-bottom: 2em !important; }`;
/** WCAG 1.4.10: a screen of 1280 by 1024 pixels, at 400 %. */
const AT_400_PERCENT = { width: 320, height: 256 };

/** With everything unfolded. */
async function show(state: State): Promise<void> {
  await page.setViewportSize(DESK.viewport);
  await page.goto(siteAddress(state.address));
  await untilReady(page, state);
  await page.evaluate(() => {
    for (const details of document.querySelectorAll("details")) details.open = true;
  });
}

async function findings(within: string): Promise<string[]> {
  // Nothing is found where nothing is looked at.
  expect(await page.locator(within).count()).toBe(1);
  const { violations } = await page.evaluate(
    ([where, given]) =>
      (window as unknown as { axe: typeof import("axe-core") }).axe.run(where, {
        ...given,
        resultTypes: ["violations"],
      }),
    [within, ALL] as const,
  );
  return violations.flatMap(({ id, nodes }) =>
    nodes.map((it) => `${id}: ${it.target.join(" ")}: ${it.failureSummary}`),
  );
}

/** By what the page itself is wider than the screen; tables may scroll in a frame of their own. */
function tooWide(): Promise<string[]> {
  return page.evaluate(() => {
    const width = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth <= width) return [];
    return [...document.body.querySelectorAll("*")]
      .filter((element) => element.getBoundingClientRect().right > width + 1 && !element.closest(".scroll"))
      .map((element) => `${element.localName}.${element.className} reaches ${element.getBoundingClientRect().right}`);
  });
}

/** Texts that their own box cuts off. */
function cutOff(): Promise<string[]> {
  return page.evaluate(() =>
    [...document.body.querySelectorAll<HTMLElement>("*:not(.hidden, input)")]
      .filter((element) => /hidden|clip/.test(getComputedStyle(element).overflow) && element.textContent?.trim())
      .filter(
        (element) => element.scrollWidth > element.clientWidth + 1 || element.scrollHeight > element.clientHeight + 1,
      )
      .map((element) => `${element.localName}.${element.className}`),
  );
}

test("Tab leads first to the content, and then through it in its order", async () => {
  const { page: list } = await open("/records/");
  await list.keyboard.press("Tab");
  expect(await list.evaluate(() => document.activeElement?.textContent)).toBe("Skip to the content");
  await list.keyboard.press("Enter");
  expect(await list.evaluate(() => document.activeElement?.id)).toBe("content");
  for (const nth of [0, 1, 2]) {
    await list.keyboard.press("Tab");
    expect(
      await list.evaluate(() =>
        [...document.querySelectorAll("#content a")].indexOf(document.activeElement as Element),
      ),
    ).toBe(nth);
  }
});
