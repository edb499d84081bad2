/** The page "settings": it says what the engine answers, for a car and for a reading. */
import { expect, test } from "vitest";
import { answerReading } from "../../src/engine/answers/answer-reading.ts";
import { answerSetting } from "../../src/engine/answers/answer-setting.ts";
import { settingsOf } from "../../src/engine/answers/find-settings.ts";
import type { ReadingAnswer } from "../../src/engine/answers/shapes/setting.ts";
import { linesAndYears } from "../helpers/cars-of-site.ts";
import { demoKnowledge } from "../helpers/demo-data.ts";
import { DESK, openBrowser, PHONE } from "./open-browser.ts";

const { open } = await openBrowser();
const knowledge = await demoKnowledge();
const CARS = linesAndYears(knowledge.catalog);
const CAR = CARS.at(-1) as (typeof CARS)[number];

/** A reading that passes only by the figure of another year, and one by a look-alike, if the data has them. */
function readingWith(wanted: (answer: ReadingAnswer) => boolean) {
  for (const car of CARS)
    for (const matter of settingsOf(knowledge.catalog))
      for (const { low, high, unit } of matter.statements) {
        const value = `${low ?? high} ${unit}`;
        const asked = { setting: matter.name, value };
        const answer = answerReading(knowledge, { ...asked, car: { facts: car.facts } });
        if (wanted(answer)) return { ...asked, answer, query: car.query };
      }
  return undefined;
}

/** A page loads the records of a line first. */
const SLOW = { timeout: 20_000 };

const ask = (query: string, asked: Record<string, string>): string =>
  `/settings/?${query}&${Object.entries(asked)
    .map(([name, value]) => `${name}=${encodeURIComponent(value)}`)
    .join("&")}`;

test("every setting on record for a car is listed, and a word narrows the list", async () => {
  const { page, complaints } = await open(`/settings/?${CAR.query}`, PHONE);
  const { settings } = answerSetting(knowledge, { car: { facts: CAR.facts } });
  await expect.poll(() => page.locator(".answer .settings h4").count(), SLOW).toBe(settings.length);
  const shown = await page.locator(".answer .settings h4").allTextContents();
  expect(shown.sort()).toEqual(settings.map((it) => it.name).sort());
  await page.locator("#narrow").fill(settings[0]?.name ?? "");
  await expect.poll(() => page.locator(".answer .settings h4").count(), SLOW).toBeLessThan(settings.length);
  expect(complaints).toEqual([]);
});

test("a reading that passes only by another year's figure is said loudly", async () => {
  const found = readingWith((answer) => answer.passesUnder.some((it) => it.sameCar));
  expect(found).toBeDefined();
  const { setting = "", value = "", query = "", answer } = found ?? {};
  const { page, complaints } = await open(ask(query, { setting, value }), PHONE);
  await expect.poll(() => page.locator(".judged .big").textContent(), SLOW).toContain(answer?.words);
  expect(await page.locator(".judged .trap p").allTextContents()).toEqual(answer?.warnings);
  expect(await page.locator("#settings-status").textContent()).toBe(answer?.words);
  expect(complaints).toEqual([]);
});

test("by keyboard: a setting is opened, a reading typed and judged, and taken back", async () => {
  const found = readingWith((answer) => answer.verdict === "within" && answer.provided.length > 0);
  const { setting = "", value = "", query = "", answer } = found ?? {};
  const { page } = await open(ask(query, { setting }), DESK);
  await page.locator("#value").focus();
  await page.keyboard.type(value);
  await page.keyboard.press("Enter");
  await expect.poll(() => page.locator(".judged .big").textContent(), SLOW).toContain(answer?.words);
  await page.locator("#conditions").selectOption("unknown");
  await page.getByRole("button", { name: "Judge it" }).click();
  await expect.poll(() => page.locator(".judged .big").textContent(), SLOW).toContain("cannot be judged");
  await page.goBack();
  await page.goBack();
  await expect.poll(() => page.locator(".judged").count()).toBe(0);
});

test("where it depends, the look decides it", async () => {
  const undecided = CARS.flatMap((car) =>
    answerSetting(knowledge, { car: { facts: car.facts } })
      .settings.filter((it) => it.verdict === "look first")
      .map((it) => ({ ...it, query: car.query })),
  );
  const [first] = undecided;
  const { page } = await open(ask(first?.query ?? "", { setting: first?.name ?? "" }), PHONE);
  await page.locator(".look .choice").first().waitFor();
  const before = await page.locator(".big").textContent();
  await page.locator(".look .choice").first().click();
  await expect.poll(() => page.locator(".big").textContent(), SLOW).not.toBe(before);
});

test("without a script every figure on record stands there with its record", async () => {
  const { page } = await open("/settings/", { ...DESK, javaScriptEnabled: false });
  const names = await page.locator("#by-setting ~ * dt, section:has(#by-setting) dt").allTextContents();
  for (const { name } of settingsOf(knowledge.catalog)) expect(names).toContain(name);
});
