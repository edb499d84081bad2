/** The pages "may it go on?" and "retrofit paths": they say what the engine answers, and lead on from there. */
import { describe, expect, test } from "vitest";
import { answerMayFit } from "../../src/engine/answers/answer-may-fit.ts";
import { answerRetrofits } from "../../src/engine/answers/answer-retrofits.ts";
import type { MayFitAnswer } from "../../src/engine/answers/shapes/may-fit.ts";
import { linesAndYears } from "../helpers/cars-of-site.ts";
import { demoKnowledge } from "../helpers/demo-data.ts";
import { DESK, openBrowser, PHONE } from "./open-browser.ts";

const { open } = await openBrowser();
const knowledge = await demoKnowledge();
const { catalog } = knowledge;
const CARS = linesAndYears(catalog);
const [FIRST] = CARS as [(typeof CARS)[number]];

/** One question for each verdict that the data has for a line and a year, with most to show. */
function oneOfEach(): [MayFitAnswer["verdict"], string, (typeof CARS)[number], MayFitAnswer][] {
  const found = new Map<string, [MayFitAnswer["verdict"], string, (typeof CARS)[number], MayFitAnswer]>();
  for (const car of CARS)
    for (const part of catalog.parts.keys()) {
      const answer = answerMayFit(knowledge, { part, car: { facts: car.facts } });
      const before = found.get(answer.verdict)?.[3];
      if (!before || size(answer) > size(before)) found.set(answer.verdict, [answer.verdict, part, car, answer]);
    }
  return [...found.values()];
}

function size({ order, because, places }: MayFitAnswer): number {
  return 10 * order.length + because.length + places.length;
}

const EACH = oneOfEach();

test("the data has a question for most verdicts", () => {
  expect(EACH.length).toBeGreaterThan(5);
});

test.each(EACH)("%s: %s", async (verdict, part, { query }, answer) => {
  const { page, complaints } = await open(`/fit/?${query}&part=${encodeURIComponent(part)}`, PHONE);
  await expect.poll(() => page.locator(".big").textContent(), { timeout: 20_000 }).toContain(answer.words);
  expect(await page.locator("#fit-status").textContent()).toBe(answer.words);
  expect(await page.locator(".order li .id").allTextContents()).toEqual(answer.order);
  const cited = await page.locator(".answer .cite").allTextContents();
  expect([...new Set(cited)]).toEqual(expect.arrayContaining([...new Set(answer.because.map((it) => it.record))]));
  if (verdict === "look first" && answer.ask) {
    const [first] = answer.ask.outcomes;
    await page.locator(".look .choice").first().click();
    const next = answerMayFit(knowledge, {
      part,
      car: {
        facts: {
          ...Object.fromEntries(new URLSearchParams(query).getAll("fact").map((it) => it.split(":"))),
          [answer.ask.trait]: first?.values ?? "",
        },
      },
    });
    await expect.poll(() => page.locator(".big").textContent()).toContain(next.words);
    await page.goBack();
    await expect.poll(() => page.locator(".big").textContent()).toContain(answer.words);
  }
  expect(complaints).toEqual([]);
});

describe("the part", () => {
  const [part] = [...catalog.parts.values()].filter((it) => /\d0/.test(it.number) && catalog.parts.size > 0);
  const number = part?.number ?? "";

  test("typed as it is misread, by keyboard alone", async () => {
    const { page } = await open(`/fit/?${FIRST.query}`, DESK);
    await page.locator("#part").focus();
    await page.keyboard.type(number.toLowerCase().replaceAll("0", "o").replaceAll("-", " "));
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator("#answer .id, #fit .wrong, #fit .none").first().textContent()).toMatch(/./);
    expect(new URL(page.url()).searchParams.get("part")).toBeTruthy();
  });

  test("picked from what is typed so far", async () => {
    const [, asked, car] = EACH.find(([verdict]) => verdict === "as built") ?? [];
    const component = catalog.components.get(catalog.parts.get(asked ?? "")?.component ?? "");
    const { page } = await open(`/fit/?${car?.query}`, PHONE);
    await page.locator("#part").fill(component?.name ?? "");
    const choice = page.locator(".choices .choice", {
      has: page.locator(".id", { hasText: new RegExp(`^${asked}$`) }),
    });
    await choice.click();
    await expect.poll(() => page.locator("#answer .id").textContent()).toBe(asked);
  });

  test("a name that may mean several parts is a choice and no error", async () => {
    const [, asked, car] = EACH.find(([verdict]) => verdict === "as built") ?? [];
    const component = catalog.components.get(catalog.parts.get(asked ?? "")?.component ?? "");
    const { page } = await open(`/fit/?${car?.query}&part=${encodeURIComponent(component?.name ?? "")}`, PHONE);
    await page.locator("#fit .choices .choice").first().waitFor();
    expect(await page.locator("#fit .wrong").count()).toBe(0);
    expect(await page.locator("#fit-status").textContent()).toBe("Pick the part that is meant.");
  });

  test("where nothing is found the search is a press away", async () => {
    const { page } = await open(`/fit/?${FIRST.query}&part=no%20such%20thing`, PHONE);
    const link = page.getByRole("link", { name: "Search everything for “no such thing”" });
    expect(await link.getAttribute("href")).toMatch(/\/ask\/\?q=no%20such%20thing$/);
    expect(await page.locator("#fit .wrong").count()).toBe(1);
  });

  test("a casting number is told apart", async () => {
    const cast = [...catalog.parts.values()].find((it) => it.castings.length > 0);
    const car = CARS.find(
      ({ facts }) => answerMayFit(knowledge, { part: cast?.number ?? "", car: { facts } }).verdict !== "not on record",
    );
    const { page } = await open(`/fit/?${car?.query}`, PHONE);
    await page.locator("#part").fill(cast?.castings[0] ?? "");
    await expect.poll(() => page.locator("#fit").textContent()).toContain("it is not a part number");
  });
});

test("without a car the page asks which one, and a recent one is a press away", async () => {
  const { page, complaints } = await open(`/car/?${FIRST.query}`, PHONE);
  await page.locator(".tally").waitFor();
  await page.locator(".choice").first().click();
  await expect.poll(() => page.evaluate(() => localStorage.length)).toBeGreaterThan(0);
  await page.goto(`${new URL("../fit/?part=x", page.url()).href}`);
  await page.locator("#fit h3 + ul a").first().click();
  await page.locator("#fit .chips").waitFor();
  expect(new URL(page.url()).searchParams.get("part")).toBe("x");
  expect(complaints).toEqual([]);
});

test.each(["fit/?part=x", "retrofits/"])("%s without a car says what to pick first", async (address) => {
  const { page } = await open(`/${address}`, PHONE);
  await page.locator("main .box", { hasText: "Pick the car first" }).last().waitFor();
  expect(await page.locator("main [role=status]").first().textContent()).toBe(
    "Pick the car first: its model line at least.",
  );
});

test("to say more of the car and come back asks the same part again", async () => {
  const [, part] = EACH.find(([verdict]) => verdict === "as built") ?? [];
  const { page } = await open(`/fit/?${FIRST.query}&part=${encodeURIComponent(part ?? "")}`, PHONE);
  await page.getByText("Say more about this car").click();
  await page.locator("#question + * ~ .choices .choice, #question ~ p .choice").first().click();
  await page.locator(".onward a", { hasText: part ?? "" }).click();
  await page.locator("#answer").waitFor();
  expect(new URL(page.url()).searchParams.get("part")).toBe(part);
});

test("an order says how many and is copied so; on paper the last line says when, and where to look", async () => {
  const [, part, car, answer] = EACH.find(
    ([, , , { places, order }]) =>
      order.length > 0 && places.some((at) => at.fits.some((fit) => (fit.ways[0]?.do.length ?? 0) > 0)),
  ) as (typeof EACH)[number];
  const { page } = await open(`/fit/?${car.query}&part=${encodeURIComponent(part)}`, DESK);
  await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
  await page.getByRole("button", { name: "Copy the list" }).click();
  await expect.poll(() => page.locator(".order [role=status]").textContent()).toBe("Copied.");
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  const work = answer.places.flatMap((at) => at.fits.flatMap((fit) => fit.ways[0]?.do ?? []));
  expect(copied.split("\n").slice(answer.order.length)).toEqual([...new Set(work)].map((it) => `Note: ${it}`));
  expect(await page.locator(".printed").isVisible()).toBe(false);
  await page.emulateMedia({ media: "print" });
  expect(await page.locator(".printed").textContent()).toMatch(/^Printed .*\. Check before use\. http/);
  expect(await page.locator(".printed").isVisible()).toBe(true);
  expect(await page.getByText("Say more about this car").isVisible()).toBe(false);
});

describe("retrofit paths", () => {
  const { query, facts } = CARS.at(-1) as (typeof CARS)[number];
  const answer = answerRetrofits(knowledge, { car: { facts } });

  test("every open and closed way, by system; the filter narrows them; each leads to its whole answer", async () => {
    const { page, complaints } = await open(`/retrofits/?${query}`, DESK);
    const [ways, closed] = [page.locator("#open-ways ~ .ways > li"), page.locator("#closed-ways ~ .ways > li")];
    // The same parts, in whatever order, are one way.
    const sets = new Set(answer.paths.map(({ set }) => JSON.stringify(set.map((it) => it.part).sort())));
    await expect.poll(() => ways.count(), { timeout: 20_000 }).toBe(sets.size);
    expect(await closed.count()).toBe(answer.blocked.length);
    const [path] = answer.paths;
    await page.locator("#component").fill(path?.part ?? "");
    await expect.poll(() => ways.count()).toBeLessThan(sets.size);
    expect(await page.locator("#by-record").isVisible()).toBe(false);
    await ways.first().locator("summary").click();
    const set = await ways.first().locator("ol a.id").allTextContents();
    expect(set.sort()).toEqual(path?.set.map((it) => it.part).sort());
    const asked = await ways.first().locator("summary .id").textContent();
    await ways.first().getByText("The whole answer").click();
    await expect.poll(() => page.locator("#answer .id").textContent(), { timeout: 20_000 }).toBe(asked);
    expect(complaints).toEqual([]);
  });

  test("the list of an order is copied", async () => {
    const { page } = await open(`/retrofits/?${query}`, DESK);
    await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
    const way = page.locator("#open-ways ~ .ways > li").first();
    await way.locator("summary").click();
    const wanted = await way.locator("ol a.id").allTextContents();
    await way.getByRole("button", { name: /Copy the order/ }).click();
    await expect.poll(() => way.locator("[role=status]").textContent()).toBe("Copied.");
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(copied.split("\n").map((line) => line.split(" ")[0])).toEqual(wanted);
  });
});
