/** The ask page: a question in the trade's words finds what the engine finds for it, by keyboard alone, and can be sent on. */
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { answerAsk } from "../../src/engine/answers/answer-ask.ts";
import { askIndexOf } from "../../src/engine/answers/ask-index.ts";
import { demoKnowledge } from "../helpers/demo-data.ts";
import { openBrowser, PHONE, siteAddress } from "./open-browser.ts";

const QUESTION = "what changed on the brakes";

const { open } = await openBrowser();
const knowledge = await demoKnowledge();
const ask = (text: string) => answerAsk(knowledge, { text, car: {} });
const system = ask(QUESTION).reading.chips[0]?.label ?? "";
const year = knowledge.catalog.years.at(-1);
const [line] = knowledge.catalog.lines;
const parts = [...knowledge.catalog.parts.keys()];

/** The addresses of the records that the engine finds for such a car, the best first. */
function records(question: string): string[] {
  return ask(question)
    .records.filter(({ misses }) => misses.length === 0)
    .map(({ address }) => address);
}

async function openAsked(query: Record<string, string> | string): Promise<Page> {
  const asked = typeof query === "string" ? { q: query } : query;
  const { page } = await open(`/ask/?${new URLSearchParams(asked)}`);
  await untilAnswered(page);
  return page;
}

/** The answer comes after the records; it is there when the page says so. */
async function untilAnswered(page: Page): Promise<void> {
  await expect.poll(() => page.locator("#asked").getAttribute("aria-busy")).toBe("false");
}

/** The addresses of the records listed for such a car, opened where they are folded away. */
async function results(page: Page): Promise<string[]> {
  const more = page.getByRole("button", { name: "Show more" });
  while (await more.isVisible()) {
    const before = await page.locator(".found .records > li").count();
    await more.click();
    await expect.poll(() => page.locator(".found .records > li").count()).toBeGreaterThan(before);
  }
  const addresses = await page.locator(".found .records > li > a").evaluateAll((links) =>
    links
      .filter((link) => !link.closest(".others"))
      .map((link) => new URL((link as HTMLAnchorElement).href).pathname)
      .filter((path) => path.startsWith("/records/")),
  );
  return addresses;
}

const sorted = (addresses: readonly string[]): string[] => [...addresses].sort();

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
    expect(await page.getByRole("button", { name: `Take away: System: ${system}` }).isVisible()).toBe(true);
    await tabTo(page, ".found .records a");
    await page.keyboard.press("Enter");
    await page.waitForURL(/\/records\//);
    expect(records(QUESTION)).toContain(new URL(page.url()).pathname);
    await page.goBack();
    await untilAnswered(page);
    const found = await results(page);
    expect(sorted(found)).toEqual(sorted(records(QUESTION)));
    const own = knowledge.recordsBySystem.get(ask(QUESTION).reading.chips[0]?.ids[0] ?? "") ?? [];
    expect(sorted(found)).toEqual(sorted(own.map(({ id }) => `/records/${id}/`)));
    expect(complaints).toEqual([]);
  });
});

test("as one types the records come, without a key to send it, and the way back leads to the page before", async () => {
  const { page } = await open("/");
  await page.goto(siteAddress("/ask/"));
  await page.getByRole("searchbox").pressSequentially(QUESTION);
  await page.locator(".found .records a").first().waitFor();
  await expect.poll(() => new URL(page.url()).searchParams.get("q")).toBe(QUESTION);
  await page.goBack();
  await page.waitForURL(siteAddress("/"));
});

test("a question about fitting is answered above the records, with the records that say so", async () => {
  const refusal = [...knowledge.catalog.records.values()]
    .flatMap((record) => record.statements)
    .find((it) => it.type === "stands-in" && it.verdict === "must-not-be-used" && it.for !== undefined && !it.scope);
  if (refusal?.type !== "stands-in") throw new Error("No record refuses a part everywhere.");
  const question = `does ${refusal.part} fit instead of ${refusal.for}`;
  const expected = ask(question);
  const page = await openAsked(question);
  const shown = page.locator(".answer, .look").first();
  await shown.waitFor();
  expect(expected.answers.length).toBeGreaterThan(0);
  const text = (await page.locator("#asked").textContent()) ?? "";
  expect(text).not.toMatch(/✓/);
  expect(await page.locator(`#asked a[href*="/records/${refusal.record}/"]`).count()).toBeGreaterThan(0);
});

test("a part off a car of another line is judged for the car at hand, as on the command line", async () => {
  const names = knowledge.catalog.lines.map((it) => it.name);
  const questions = [...knowledge.catalog.components.values()]
    .filter(({ places }) => places.length === 1)
    .flatMap(({ name }) => names.flatMap((a) => names.map((b) => [a, b, name] as const)))
    .filter(([a, b]) => a !== b)
    .map(([a, b, name]) => `${year} ${a} ${name} on a ${year} ${b}`);
  const refused = questions.find((question) => /must not|does not go on/.test(ask(question).answers[0]?.verdict ?? ""));
  if (refused === undefined) throw new Error("No part off another line is refused.");
  const page = await openAsked(refused);
  expect(await page.locator(".answer").textContent()).toContain(ask(refused).answers[0]?.says);
});

test("a chip is taken away and put back, and the keyboard stays on it", async () => {
  const page = await openAsked(`${system} ${year}`);
  expect(sorted(await results(page))).toEqual(sorted(records(`${system} ${year}`)));
  const chip = page.getByRole("button", { name: `Year: ${year}` });
  await chip.focus();
  await page.keyboard.press("Enter");
  const back = page.getByRole("button", { name: `Put back: not used: ${year}` });
  await back.waitFor();
  await untilAnswered(page);
  expect(sorted(await results(page))).toEqual(sorted(records(system)));
  expect(new URL(page.url()).searchParams.getAll("without")).toEqual([String(year)]);
  await back.focus();
  await page.keyboard.press("Enter");
  await chip.waitFor();
  expect(await chip.evaluate((button) => button === document.activeElement)).toBe(true);
  expect(new URL(page.url()).searchParams.has("without")).toBe(false);
});

test("the same words may mean several things: one is chosen, and the address holds the choice", async () => {
  const words = [...askedNames()].find(([, ids]) => ids.length > 1)?.[0];
  if (words === undefined) throw new Error("No words name two components.");
  const page = await openAsked(words);
  const group = page.getByRole("group", { name: /may mean/ }).first();
  const first = group.getByRole("radio").first();
  await first.check();
  await page.waitForURL(/as=/);
  await untilAnswered(page);
  expect(await group.getByRole("radio").first().isChecked()).toBe(true);
});

test("a word that lies as near to several is read as one of them, and the others are one press away", async () => {
  // A letter left out of each word that the vocabulary knows: one of them is as near to another word.
  const words = askIndexOf(knowledge.catalog).vocabulary.names.flatMap(({ say }) =>
    say.flatMap((said) => said.split(" ")),
  );
  const slips = words.flatMap((word) => [...word].map((_, i) => word.slice(0, i) + word.slice(i + 1)));
  const slip = slips.find((it) => (ask(it).reading.corrected[0]?.readAs.length ?? 0) > 1);
  if (slip === undefined) throw new Error("No slip lies as near to two words.");
  const [, other = ""] = ask(slip).reading.corrected[0]?.readAs ?? [];
  const page = await openAsked(slip);
  await page.getByRole("button", { name: other, exact: true }).click();
  await expect.poll(() => new URL(page.url()).searchParams.get("q")).toBe(other);
});

/** By words, the components that they name. */
function askedNames(): Map<string, string[]> {
  const names = new Map<string, string[]>();
  for (const { id, aliases } of knowledge.catalog.components.values())
    for (const alias of aliases) names.set(alias, [...(names.get(alias) ?? []), id]);
  return names;
}

test("results are narrowed down by year, by keyboard alone, and widened again; the numbers beside are true", async () => {
  const page = await openAsked(QUESTION);
  const all = await results(page);
  const group = page.locator("#facets details", { hasText: "Model year" });
  await group.locator("summary").focus();
  await page.keyboard.press("Enter");
  const labels = await group.locator("label").allTextContents();
  const counted = ask(QUESTION).facets.year.map(({ label, count }) => `${label} (${count})`);
  expect(labels.map((label) => label.trim())).toEqual(counted);
  const box = group.getByRole("checkbox", { name: new RegExp(`^${year} \\(`) });
  await box.focus();
  await page.keyboard.press("Space");
  await page.waitForURL(new RegExp(`year=${year}`));
  await untilAnswered(page);
  const narrowed = await results(page);
  expect(narrowed.length).toBe(ask(QUESTION).facets.year.find(({ id }) => id === String(year))?.count);
  expect(narrowed.every((address) => all.includes(address))).toBe(true);
  expect(await box.evaluate((it) => it === document.activeElement)).toBe(true);
  await page.keyboard.press("Space");
  await page.waitForURL((url) => !url.searchParams.has("year"));
  await untilAnswered(page);
  expect(await results(page)).toEqual(all);
});

test("where the answer depends on the line, the line is asked, and one press adds it", async () => {
  const [component] = [...knowledge.catalog.components.values()].filter(({ places }) => places.length === 1);
  const page = await openAsked(`current ${component?.name}`);
  const boxes = page.locator("#asked .look .choice, #asked .answer");
  await boxes.first().waitFor();
  const choice = page.locator("#asked .look .choice").filter({ hasText: line?.name ?? "" });
  if ((await choice.count()) > 0) {
    await choice.first().click();
    await page.waitForURL(new RegExp(`q=.*${line?.name}`));
    await untilAnswered(page);
    expect(await page.getByRole("button", { name: `Line: ${line?.name}` }).isVisible()).toBe(true);
  }
});

describe.each([
  ["typed at once", () => Promise.resolve()],
  ["typed slowly", (page: Page) => page.waitForURL(new RegExp(`q=${year}$`))],
])("a question, %s,", (_, typeOn) => {
  test("is one step: the way back leads to the question before, and forward again", async () => {
    const page = await openAsked(QUESTION);
    const before = await results(page);
    const input = page.getByRole("searchbox");
    await input.fill(String(year));
    await typeOn(page);
    await input.press("Enter");
    await page.getByRole("button", { name: `Year: ${year}` }).waitFor();
    expect(await input.inputValue()).toBe(String(year));
    await page.goBack();
    await page.getByRole("button", { name: `System: ${system}` }).waitFor();
    await untilAnswered(page);
    expect(await input.inputValue()).toBe(QUESTION);
    expect(await results(page)).toEqual(before);
    await page.goForward();
    await page.getByRole("button", { name: `Year: ${year}` }).waitFor();
    expect(await input.inputValue()).toBe(String(year));
  });
});

test("what is half typed is no step of its own, and is there again after a look at a record", async () => {
  const page = await openAsked(QUESTION);
  const input = page.getByRole("searchbox");
  const steps = await page.evaluate(() => history.length);
  for (const typed of [String(year), `${year} `, `${year} ${line?.name}`]) {
    await input.fill(typed);
    await page.waitForURL((url) => url.searchParams.get("q") === typed.trim());
  }
  expect(await page.evaluate(() => history.length)).toBe(steps + 1);
  await input.fill(String(year));
  await page.getByRole("button", { name: `Line: ${line?.name}` }).waitFor({ state: "detached" });
  await page.locator(".found .records a").first().click();
  await page.waitForURL(/\/records\//);
  await page.goBack();
  await page.getByRole("button", { name: `Year: ${year}` }).waitFor();
  expect(await input.inputValue()).toBe(String(year));
});

test("an address that was sent on shows what its sender saw", async () => {
  const page = await openAsked({ q: `${system} ${year}`, without: String(year), line: line?.id ?? "" });
  expect(await page.getByRole("button", { name: `Put back: not used: ${year}` }).isVisible()).toBe(true);
  expect(await page.getByRole("checkbox", { name: new RegExp(`^${line?.name} `) }).isChecked()).toBe(true);
});

// That every number of the data is read in all its writings is held by the tests of the reading.
test("a part is found by its number, written without signs and in small letters, too", async () => {
  const number = parts.find((one) => /\d.*[A-Z]/.test(one)) ?? (parts[0] as string);
  const { page } = await open("/ask/");
  const input = page.getByRole("searchbox");
  for (const written of [number, number.replaceAll(/[^\p{L}\p{N}]/gu, "").toLowerCase()]) {
    await input.fill(written);
    await input.press("Enter");
    await untilAnswered(page);
    const first = await page.locator(".things a").first().getAttribute("href");
    expect.soft(first && new URL(first).pathname, written).toBe(`/parts/${number}/`);
  }
});

test("an empty question shows the lists, and no results", async () => {
  const { page, complaints } = await open("/ask/?q=");
  await page.getByRole("searchbox").press("Enter");
  expect(await page.locator("#lists").isVisible()).toBe(true);
  expect(await page.locator("#asked").textContent()).toBe("");
  expect(await page.locator("#status").textContent()).toBe("");
  expect(complaints).toEqual([]);
});

test("a question about what no record speaks of says so, and what it understood", async () => {
  const page = await openAsked("zzzz qqqq");
  await page.getByText("Nothing is on record about 'zzzz' or 'qqqq'").first().waitFor();
  expect(await results(page)).toEqual([]);
});

test("markup in a question is text", async () => {
  const dialogs: string[] = [];
  const nasty = `"><img src=x onerror=alert(1)><script>alert(2)</script> ${QUESTION}`;
  const { page, complaints } = await open(
    `/ask/?${new URLSearchParams({ q: nasty, without: nasty, line: nasty, as: nasty })}`,
  );
  page.on("dialog", (dialog) => {
    dialogs.push(dialog.message());
    void dialog.dismiss();
  });
  await untilAnswered(page);
  expect(await page.getByRole("searchbox").inputValue()).toBe(nasty);
  expect(await page.locator("main img, main script, main [onerror]").count()).toBe(0);
  expect(dialogs).toEqual([]);
  expect(complaints).toEqual([]);
});

test("when the words cannot be loaded the page says so and shows the lists, and the next question tries again", async () => {
  const { page } = await open("/ask/");
  const words = "**/data/vocabulary.json";
  await page.route(words, (route) => route.abort());
  await page.getByRole("searchbox").fill(QUESTION);
  await page.keyboard.press("Enter");
  await page.getByText("The search could not be opened").waitFor();
  expect(await page.locator("#lists").isVisible()).toBe(true);
  await page.unroute(words);
  await page.keyboard.press("Enter");
  await page.locator(".found .records > li").first().waitFor();
  expect(await page.locator("#lists").isVisible()).toBe(false);
});

test("without the text search a question still finds what records are called, and the page says what is missing", async () => {
  const { page } = await open("/ask/");
  await page.route("**/pagefind/**", (route) => route.abort());
  await page.getByRole("searchbox").fill(`${QUESTION} zzzz`);
  await page.keyboard.press("Enter");
  await page.getByText("The text search could not be loaded").waitFor();
  expect((await results(page)).length).toBeGreaterThan(0);
});
