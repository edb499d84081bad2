/** An editor at work: the page beside the editor's window follows what is saved, and says what is wrong with it. */
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { startDev } from "../../src/build/dev/dev-server.ts";
import { onDisk, TINY } from "../helpers/tiny-folder.ts";
import { DESK, openBrowser } from "./open-browser.ts";

const { newPage } = await openBrowser("http://127.0.0.1:");
const RECORD = "changes/1959/HY59-01.md";
const TEXT = TINY[RECORD] as string;

test("the page loads itself again where it was; complaints lie over it, are reached by Tab, fold away, and go when mended", async () => {
  const folder = await onDisk(TINY);
  const { url, close } = await startDev({ data: folder, port: 0, say: () => {} });
  onTestFinished(close);
  const { page, complaints } = await newPage(DESK);
  onTestFinished(() => page.context().close());
  await page.goto(`${url}records/HY59-01/`);
  await page.evaluate(() => scrollTo(0, 400));

  await writeFile(join(folder, RECORD), TEXT.replace("grew **longer**", "shrank"));
  await page.getByText("The pump shrank.").waitFor();
  await expect.poll(() => page.evaluate(() => scrollY)).toBe(400);

  await writeFile(join(folder, RECORD), TEXT.replace("place: pump, part: HT-101", "place: pump, part: HT-11"));
  const box = page.locator("#yearmark-dev details");
  await expect.poll(() => box.textContent()).toContain("no part is called 'HT-11'");
  expect(await page.getByText("The pump shrank.").count()).toBe(1);
  expect(await page.locator("#yearmark-dev-status").textContent()).toBe("1 error");
  await page.keyboard.press("Tab");
  expect(await page.evaluate(() => document.activeElement?.localName)).toBe("summary");
  await page.keyboard.press("Enter");
  expect(await box.getAttribute("open")).toBeNull();
  // The same error on another page stays folded.
  await page.goto(`${url}records/FR58-01/`);
  await expect.poll(() => box.getAttribute("open")).toBeNull();

  await writeFile(join(folder, RECORD), TEXT);
  await box.waitFor({ state: "detached" });
  expect(complaints).toEqual([]);
});
