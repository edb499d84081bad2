/** The ask page: a question in the trade's words finds what the engine finds for it, by keyboard alone, and can be sent on. */
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { answerSearch } from "../../src/engine/answers/answer-search.ts";
import { demoKnowledge } from "../helpers/demo-data.ts";
import { openBrowser, PHONE, siteAddress } from "./open-browser.ts";

const QUESTION = "what changed on the brakes";

const { open } = await openBrowser();
const knowledge = await demoKnowledge();
const [system] = answerSearch(knowledge, QUESTION).reading.chips;
const year = knowledge.catalog.years.at(-1);
const parts = [...knowledge.catalog.parts.keys()];

/** The addresses of the records that the engine finds. */
function records(question: string): string[] {
  const { results } = answerSearch(knowledge, question);
  return results.flatMap((it) => (it.kind === "record" ? [it.address] : [])).sort();
}

async function openAsked(query: Record<string, string> | string): Promise<Page> {
  const asked = typeof query === "string" ? { q: query } : query;
  const { page } = await open(`/ask/?${new URLSearchParams(asked)}`);
  await untilAnswered(page);
  return page;
}

async function untilAnswered(page: Page): Promise<void> {
  await expect.poll(() => page.locator("#status").textContent(), { timeout: 20_000 }).toMatch(/\.|:$/);
  await expect.poll(() => page.locator("#status").textContent(), { timeout: 20_000 }).not.toBe("Searching …");
}

/** The addresses of all results, however many pages of them there are. */
async function results(page: Page): Promise<string[]> {
  const more = page.getByRole("button", { name: "Show more" });
  while (await more.isVisible()) {
    const before = await page.locator("#results > li").count();
    await more.click();
    await expect.poll(() => page.locator("#results > li").count()).toBeGreaterThan(before);
  }
  return page
    .locator("#results > li > a")
    .evaluateAll((links) => links.map((link) => new URL((link as HTMLAnchorElement).href).pathname).sort());
}

const onlyRecords = (addresses: readonly string[]): string[] => addresses.filter((it) => it.startsWith("/records/"));

async function tabTo(page: Page, selector: string): Promise<void> {
  for (let presses = 0; presses < 100; presses++) {
    await page.keyboard.press("Tab");
    if (await page.evaluate((wanted) => document.activeElement?.matches(wanted), selector)) return;
  }
  throw new Error(`Tab does not reach ${selector}.`);
}

describe.each([
  ["at a desk", undefined],
  ["on a phone", PHONE],
])("%s, by keyboard alone", (_, options) => {
  test("'what changed on the brakes', typed on the home page, finds every change of that system and leads to one", async () => {
    const { page, complaints } = await open("/", options);
    await tabTo(page, "input[type=search]");
    await page.keyboard.type(QUESTION);
    await page.keyboard.press("Enter");
    await page.waitForURL(siteAddress("/ask/?q=what+changed+on+the+brakes"));
    await untilAnswered(page);
    expect(await page.getByRole("button", { name: `Take away: System: ${system?.label}` }).isVisible()).toBe(true);
    await tabTo(page, "#results a");
    await page.keyboard.press("Enter");
    await page.waitForURL(/\/records\//);
    expect(records(QUESTION)).toContain(new URL(page.url()).pathname);
    await page.goBack();
    await untilAnswered(page);
    const found = onlyRecords(await results(page));
    expect(found).toEqual(records(QUESTION));
    expect(found).toEqual(
      (knowledge.recordsBySystem.get(system?.ids[0] ?? "") ?? []).map(({ id }) => `/records/${id}/`).sort(),
    );
    expect(complaints).toEqual([]);
  });
});

test("traps come first", async () => {
  const page = await openAsked(QUESTION);
  const traps = answerSearch(knowledge, QUESTION).results.filter(({ trap }) => trap);
  const marked = await page
    .locator("#results > li")
    .evaluateAll((items) => items.map((it) => it.matches(":has(.trap)")));
  expect(marked.filter(Boolean).length).toBe(Math.min(traps.length, marked.length));
  expect(marked).toEqual(marked.toSorted((a, b) => Number(b) - Number(a)));
});

test("a chip is taken away and put back, and the keyboard stays on it", async () => {
  const page = await openAsked(`${system?.label} ${year}`);
  expect(onlyRecords(await results(page))).toEqual(records(`${system?.label} ${year}`));
  const chip = page.getByRole("button", { name: `Year: ${year}` });
  await chip.focus();
  await page.keyboard.press("Enter");
  const back = page.getByRole("button", { name: `Put back: not used: ${year}` });
  await back.waitFor();
  await untilAnswered(page);
  expect(onlyRecords(await results(page))).toEqual(records(String(system?.label)));
  expect(new URL(page.url()).searchParams.getAll("without")).toEqual([String(year)]);
  await back.focus();
  await page.keyboard.press("Enter");
  await chip.waitFor();
  expect(await chip.evaluate((button) => button === document.activeElement)).toBe(true);
  expect(new URL(page.url()).searchParams.has("without")).toBe(false);
});

test("results are narrowed down by what they are, by keyboard alone, and widened again", async () => {
  const page = await openAsked(QUESTION);
  const all = await results(page);
  const group = page.locator("#facets details", { hasText: "What it is" });
  await group.locator("summary").focus();
  await page.keyboard.press("Enter");
  const box = group.getByRole("checkbox", { name: /^record \(/ });
  await box.focus();
  await page.keyboard.press("Space");
  await page.waitForURL(/type=record/);
  await untilAnswered(page);
  expect(await results(page)).toEqual(records(QUESTION));
  expect(await box.evaluate((it) => it === document.activeElement)).toBe(true);
  await page.keyboard.press("Enter"); // Nothing is to be sent here: the question would be lost.
  expect(new URL(page.url()).searchParams.get("q")).toBe(QUESTION);
  await page.keyboard.press("Space");
  await page.waitForURL((url) => !url.searchParams.has("type"));
  await untilAnswered(page);
  expect(await results(page)).toEqual(all);
});

test("the numbers beside what can be chosen are true", async () => {
  const page = await openAsked(QUESTION);
  for (const kind of await page.locator("#facets details").all()) await kind.locator("summary").click();
  const labels = await page.locator("#facets details", { hasText: "Model year" }).locator("label").allTextContents();
  expect(labels.map((label) => label.trim())).toEqual(
    knowledge.catalog.years.flatMap((one) => {
      const count = records(`${system?.label} ${one}`).length;
      return count > 0 ? [`${one} (${count})`] : [];
    }),
  );
});

test("the way back leads to the question before, and forward again", async () => {
  const page = await openAsked(QUESTION);
  const before = await results(page);
  const input = page.getByRole("searchbox");
  await input.fill(String(year));
  await input.press("Enter");
  await page.getByRole("button", { name: `Year: ${year}` }).waitFor();
  await page.goBack();
  await page.getByRole("button", { name: `System: ${system?.label}` }).waitFor();
  await untilAnswered(page);
  expect(await input.inputValue()).toBe(QUESTION);
  expect(await results(page)).toEqual(before);
  await page.goForward();
  await page.getByRole("button", { name: `Year: ${year}` }).waitFor();
  expect(await input.inputValue()).toBe(String(year));
});

test("an address that was sent on shows what its sender saw", async () => {
  const page = await openAsked({ q: `${system?.label} ${year}`, without: String(year), type: "record" });
  expect(await page.getByRole("button", { name: `Put back: not used: ${year}` }).isVisible()).toBe(true);
  expect(await page.getByRole("checkbox", { name: /^record/ }).isChecked()).toBe(true);
  expect(await results(page)).toEqual(records(String(system?.label)));
});

describe("a part is found by its number however it is written", () => {
  const some = parts.filter((_, i) => i % Math.ceil(parts.length / 3) === 0);
  const lettered = parts.find((number) => /\d.*[A-Z]/.test(number));
  const WRITTEN: readonly [how: string, write: (number: string) => string][] = [
    ["as it is", (number) => number],
    ["without signs", (number) => number.replaceAll(/[^\p{L}\p{N}]/gu, "")],
    ["with spaces", (number) => number.replaceAll(/[^\p{L}\p{N}]/gu, " ")],
    ["with dots", (number) => number.replaceAll(/[^\p{L}\p{N}]/gu, ".")],
    ["in small letters", (number) => number.toLowerCase()],
  ];
  test.each(WRITTEN)("%s", async (_, write) => {
    const { page } = await open("/ask/");
    const input = page.getByRole("searchbox");
    for (const number of [...some, ...(lettered ? [lettered] : [])]) {
      await input.fill(write(number));
      await input.press("Enter");
      await untilAnswered(page);
      const first = await page.locator("#results > li > a").first().getAttribute("href");
      expect.soft(first && new URL(first).pathname, write(number)).toBe(`/parts/${number}/`);
    }
  });
});

test("a slip of spelling and the trade's slang find the same as the word of the records", async () => {
  const page = await openAsked("what changed on the breaks");
  expect(onlyRecords(await results(page))).toEqual(records(QUESTION));
  expect(await page.getByRole("button", { name: `System: ${system?.label}` }).isVisible()).toBe(true);
});

test("an empty question shows the lists, and no results", async () => {
  const { page, complaints } = await open("/ask/?q=");
  await page.getByRole("searchbox").press("Enter");
  expect(await page.locator("#lists").isVisible()).toBe(true);
  expect(await page.locator("#asked").isVisible()).toBe(false);
  expect(await page.locator("#status").textContent()).toBe("");
  expect(complaints).toEqual([]);
});

test("a question that finds nothing says so, and says what to do", async () => {
  const page = await openAsked("zzzz qqqq");
  const status = page.getByRole("status");
  expect(await status.textContent()).toBe("Nothing was found. Take a chip away or try other words.");
  expect(await results(page)).toEqual([]);
});

test("markup in a question is text", async () => {
  const dialogs: string[] = [];
  const nasty = `"><img src=x onerror=alert(1)><script>alert(2)</script> ${QUESTION}`;
  const { page, complaints } = await open(`/ask/?${new URLSearchParams({ q: nasty, without: nasty, type: nasty })}`);
  page.on("dialog", (dialog) => {
    dialogs.push(dialog.message());
    void dialog.dismiss();
  });
  await untilAnswered(page);
  expect(await page.getByRole("searchbox").inputValue()).toBe(nasty);
  expect(await page.locator("#reading").textContent()).toContain("img src x onerror alert");
  expect(await page.locator("main img, main script, main [onerror]").count()).toBe(0);
  expect(dialogs).toEqual([]);
  expect(complaints).toEqual([]);
});

test("when the search cannot be loaded the page says so and shows the lists, and the next question tries again", async () => {
  const { page } = await open("/ask/");
  const words = "**/data/vocabulary.json";
  await page.route(words, (route) => route.abort());
  await page.getByRole("searchbox").fill(QUESTION);
  await page.keyboard.press("Enter");
  await page.getByText("The search could not be opened").waitFor();
  expect(await page.locator("#lists").isVisible()).toBe(true);
  await page.unroute(words);
  await page.keyboard.press("Enter");
  await page.locator("#results > li").first().waitFor();
  expect(await page.locator("#lists").isVisible()).toBe(false);
});
