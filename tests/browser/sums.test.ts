/** The page "shop sums": every sum as the engine does it, for a car or for none, and readable without a script. */
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { answerConvert } from "../../src/engine/answers/answer-convert.ts";
import { answerSum } from "../../src/engine/answers/answer-sum.ts";
import type { SumAnswer } from "../../src/engine/answers/shapes/sum.ts";
import { SUMS } from "../../src/engine/settings/sums/all.ts";
import type { Sum } from "../../src/engine/settings/sums/sum.ts";
import { workOut } from "../../src/engine/settings/sums/work-out.ts";
import { linesAndYears } from "../helpers/cars-of-site.ts";
import { demoKnowledge } from "../helpers/demo-data.ts";
import { DESK, openBrowser, PHONE } from "./open-browser.ts";

const { open } = await openBrowser();
const knowledge = await demoKnowledge();
const { catalog } = knowledge;
const CARS = linesAndYears(catalog);
const ALL = Object.values(SUMS).map((sum): [string, Sum] => [sum.id, sum]);

interface AtJob {
  readonly title: string;
  readonly sum: string;
  readonly query: string;
  readonly answer: SumAnswer;
}

function answersTo(verdict: SumAnswer["verdict"]): AtJob[] {
  const without = { query: "", facts: {} };
  return catalog.sums.flatMap(({ title, sum }) =>
    [without, ...CARS].flatMap(({ query, facts }) => {
      const answer = answerSum(knowledge, { job: title, car: { facts } }, catalog.sums);
      return answer.verdict === verdict ? [{ title, sum, query, answer }] : [];
    }),
  );
}

const addressOf = ({ title, sum, query }: AtJob): string =>
  `/sums/?${query}${query === "" ? "" : "&"}sum=${sum}&job=${encodeURIComponent(title)}`;

/** The numbers that stand large in the result. */
const resultsOn = (page: Page, sum: string): Promise<string[]> =>
  page.locator(`#do-${sum} .results b`).allTextContents();

const saidBy = ({ results = [] }: SumAnswer): string[] => results.map((it) => `${it.shown} ${it.unit}`.trim());

test("worked examples, typed in by keyboard, give what the paper says", async () => {
  const { page, complaints } = await open("/sums/", PHONE);
  for (const [id, sum] of ALL) {
    const { inputs } = sum.example;
    for (const [input, typed] of Object.entries(inputs)) {
      const field = page.locator(`#${id}-${input}`);
      if (sum.inputs.find((it) => it.id === input)?.choices) await field.selectOption(typed);
      else await field.fill(typed);
    }
    await page.locator(`#do-${id} input[type=text]`).first().press("Enter");
    await page.locator(`#worked-${id}`).waitFor();
    const out = workOut(sum, inputs);
    if (out.as !== "worked out") throw new Error(`the example of ${id} is ${out.as}`);
    expect(await resultsOn(page, id)).toEqual(out.results.map((it) => `${it.shown} ${it.unit}`.trim()));
    expect(await page.locator(`#do-${id} .steps li`).allTextContents()).toEqual(out.steps);
    const [first] = out.results;
    expect(await page.locator("#sums-status").textContent()).toContain(`${first?.label} ${first?.shown}`);
  }
  expect(complaints).toEqual([]);
});

test("a wrong figure is said beside its field, which is where to go on; the result goes with the figures", async () => {
  const [id, sum] = ALL.find(([, it]) => it.inputs.some((input) => input.whole)) as (typeof ALL)[number];
  const { page } = await open("/sums/", DESK);
  for (const [input, typed] of Object.entries(sum.example.inputs)) await page.locator(`#${id}-${input}`).fill(typed);
  await page.locator(`#do-${id} [type=submit]`).click();
  await page.locator(`#worked-${id}`).waitFor();
  const input = sum.inputs.find((it) => it.whole)?.id;
  const field = page.locator(`#${id}-${input}`);
  await field.fill("many");
  expect(await page.locator(`#worked-${id}`).count()).toBe(0);
  await page.locator(`#do-${id} [type=submit]`).click();
  expect(await field.getAttribute("aria-invalid")).toBe("true");
  expect(await page.locator(`#do-${id} [aria-invalid]`).count()).toBe(1);
  const message = page.locator(`#${id}-${input}-wrong`);
  expect((await field.getAttribute("aria-describedby"))?.split(" ")).toContain(await message.getAttribute("id"));
  expect(await message.textContent()).toContain("'many'");
  expect(await page.evaluate(() => document.activeElement?.id)).toBe(`${id}-${input}`);
  expect(await page.locator("#sums-status").textContent()).toContain("'many'");
});

test("what is missing is named", async () => {
  const [id, sum] = ALL[0] as (typeof ALL)[number];
  const { page } = await open("/sums/", PHONE);
  await page.locator(`#do-${id} [type=submit]`).click();
  const out = workOut(sum, {});
  const missing = out.as === "missing" ? out.missing.map((it) => it.what) : [];
  expect(missing.length).toBeGreaterThan(0);
  expect(await page.locator(`#do-${id} .out li`).allTextContents()).toEqual(missing);
});

describe("sums on record", () => {
  test("one with figures for every car: a press fills them in and works them out, and the address holds it", async () => {
    const job = answersTo("worked out").find(({ query }) => query === "") as AtJob;
    const { page, complaints } = await open("/sums/", PHONE);
    await page.getByRole("button", { name: job.title, exact: true }).click();
    await expect.poll(() => resultsOn(page, job.sum)).toEqual(saidBy(job.answer));
    const records = [...new Set(job.answer.because.map((it) => it.record))];
    const cited = await page.locator(`#do-${job.sum} .with .cite`).allTextContents();
    expect([...new Set(cited)].sort()).toEqual(records.sort());
    await expect.poll(() => new URL(page.url()).searchParams.get("job")).toBe(job.title);
    expect(complaints).toEqual([]);
  });

  test("the figures are those of the car, where they differ by car", async () => {
    const open_ = new Set(answersTo("missing").flatMap(({ query, title }) => (query === "" ? [title] : [])));
    const job = answersTo("worked out").find(({ query, title }) => query !== "" && open_.has(title)) as AtJob;
    const { page } = await open(addressOf({ ...job, query: "" }), DESK);
    await page.locator(`#do-${job.sum} .from`, { hasText: "Not filled in" }).first().waitFor();
    await page.locator(`#do-${job.sum} .out`, { hasText: "Still needed" }).waitFor();
    await page.goto(new URL(addressOf(job).slice(1), new URL("../", page.url())).href);
    await expect.poll(() => resultsOn(page, job.sum), { timeout: 20_000 }).toEqual(saidBy(job.answer));
    const own = Object.entries(job.answer.inputs ?? {});
    for (const [input, typed] of own) expect(await page.locator(`#${job.sum}-${input}`).inputValue()).toBe(typed);
  });

  test("on paper stands the sum that was worked out, with its figures, and no other", async () => {
    const job = answersTo("worked out").find(({ query }) => query === "") as AtJob;
    const { page } = await open(addressOf(job), DESK);
    await page.locator(`#worked-${job.sum}`).waitFor();
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(`#do-${job.sum} .with`).isVisible()).toBe(true);
    expect(await page.locator(`#do-${job.sum} form`).isVisible()).toBe(false);
    expect(await page.locator(".sum > h2:visible").count()).toBe(1);
  });

  test("the page of its component leads to it", async () => {
    const job = answersTo("worked out").find(({ query }) => query === "") as AtJob;
    const component = catalog.sums.find((it) => it.title === job.title)?.component;
    const { page } = await open(`/components/${component}/`, PHONE);
    await page.locator("#sums ~ ul a").getByText(job.title, { exact: true }).click();
    await expect.poll(() => resultsOn(page, job.sum)).toEqual(saidBy(job.answer));
  });
});

describe("units", () => {
  test("a unit that may mean several things is asked about; a press answers", async () => {
    const typed = "5 gal";
    const asked = answerConvert(undefined, { value: typed });
    expect(asked.verdict).toBe("choose");
    const { page, complaints } = await open("/sums/", PHONE);
    await page.locator("#convert-value").fill(typed);
    await page.keyboard.press("Enter");
    const choices = page.locator("#do-convert .choice");
    await expect.poll(() => choices.count()).toBe(asked.choices.length);
    expect(await page.locator("#sums-status").textContent()).toBe(asked.words);
    const [first] = asked.choices;
    await choices.first().click();
    const answer = answerConvert(undefined, { value: first?.typed ?? "" });
    await expect.poll(() => resultsOn(page, "convert")).toEqual([answer.result?.shown]);
    expect(await page.locator("#sums-status").textContent()).toBe(answer.words);
    expect(complaints).toEqual([]);
  });

  test("a length has its drills, and the wrong dimension is refused beside the field", async () => {
    const { page } = await open("/sums/", PHONE);
    await page.locator("#convert-value").fill("7/64 in");
    await page.locator("#convert-to").fill("mm");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator("#do-convert .worked").textContent()).toContain("Drills: 7/64");
    await page.locator("#convert-to").fill("psi");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator("#convert-wrong").textContent()).toContain("psi");
    expect(await page.locator("#do-convert .worked").count()).toBe(0);
  });
});

test("without a script every sum has its formula, its worked example and its drawing", async () => {
  const { page } = await open("/sums/", { ...PHONE, javaScriptEnabled: false });
  for (const [id, sum] of ALL) {
    const section = page.locator(`section[aria-labelledby="${id}"]`);
    expect(await section.locator(".formula").textContent()).toContain(sum.formula.split(/;\s+/)[0]);
    expect(await section.locator(".drawing").isVisible()).toBe(true);
    const example = section.locator(".example");
    expect(await example.isVisible()).toBe(true);
    const shown = await example.textContent();
    for (const text of [...Object.values(sum.example.inputs), ...Object.values(sum.example.results)])
      expect(shown).toContain(text);
    expect(await page.locator(`a[href="#${id}"]`).isVisible()).toBe(true);
  }
});
