/** No page does what its policy forbids, complains in the console, or asks anybody else for anything. */
import { expect, test } from "vitest";
import { DESK, openBrowser, siteAddress } from "./open-browser.ts";
import { pageStates, untilReady } from "./ready.ts";

const { open, newPage } = await openBrowser();
const { page, complaints } = await newPage(DESK);

test.each(pageStates())("nothing is forbidden, wrong or asked of others: $name", async (state) => {
  complaints.length = 0;
  await page.goto(siteAddress(state.address));
  await untilReady(page, state);
  if (state.leadsOn) await page.waitForURL((url) => url.href !== siteAddress(state.address));
  expect(complaints).toEqual([]);
});

test("the policy is alive: a script, a style and a picture that somebody smuggled in are stopped", async () => {
  const { page: home, complaints: heard } = await open("/");
  await home.evaluate(() => {
    const put = (name: string, attributes: Record<string, string>, text = ""): void => {
      const element = document.createElement(name);
      for (const [attribute, value] of Object.entries(attributes)) element.setAttribute(attribute, value);
      element.textContent = text;
      document.body.append(element);
    };
    put("script", {}, "document.title = 'smuggled'");
    put("style", {}, "body { display: none }");
    put("img", { src: "https://elsewhere.invalid/picture.png" });
    put("iframe", { src: "https://elsewhere.invalid/" });
    put("p", { style: "color: red", id: "styled" });
  });
  for (const stopped of ["script-src-elem", "style-src-elem", "style-src-attr", "img-src", "frame-src"])
    await expect.poll(() => heard.join("\n")).toContain(`policy: ${stopped}`);
  expect(await home.title()).not.toBe("smuggled");
});
