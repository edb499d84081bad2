/** The page "this car": what it shows is what the engine answers, step by step, by plate, by keyboard, on a phone, on paper. */
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { answerCar } from "../../src/engine/answers/answer-car.ts";
import { answerMayFit } from "../../src/engine/answers/answer-may-fit.ts";
import { answerNetChange } from "../../src/engine/answers/answer-net-change.ts";
import { answerPlate } from "../../src/engine/answers/answer-plate.ts";
import { readCar } from "../../src/engine/answers/car.ts";
import { CarList } from "../../src/engine/answers/car-list.ts";
import { applies } from "../../src/engine/scope/applies.ts";
import { pick, sayCar } from "../../src/engine/scope/pick.ts";
import { conflictOf, linesAndYears, traitOf } from "../helpers/cars-of-site.ts";
import { demoKnowledge } from "../helpers/demo-data.ts";
import { DESK, openBrowser, PHONE } from "./open-browser.ts";

const { open } = await openBrowser();
const knowledge = await demoKnowledge();
const { catalog } = knowledge;
const CARS = linesAndYears(catalog);
const [FIRST] = CARS as [(typeof CARS)[number]];
const EXAMPLE = catalog.plates[0]?.example ?? "";

/** The verdicts are there, and everything that is worked out after them. */
async function untilSettled(page: Page): Promise<void> {
  await expect.poll(() => page.locator("#car-status").textContent(), { timeout: 20_000 }).toMatch(/do not apply/);
  const open = page.locator(".open-list .judged > li");
  await expect
    .poll(async () => (await open.count()) - (await page.locator(".open-list .judged > li > .look").count()), {
      timeout: 20_000,
    })
    .toBe(0);
}

async function idsIn(page: Page, list: string): Promise<string[]> {
  const more = page.locator(`.${list}-list .more button`);
  if (await more.isVisible()) await more.click();
  return page.locator(`.${list}-list .judged > li > a .id`).allTextContents();
}

function expectedIds(query: string, verdict: string): string[] {
  const params = new URLSearchParams(query);
  const facts = Object.fromEntries(params.getAll("fact").map((text) => text.split(":") as [string, string]));
  return answerCar(knowledge, { car: { facts } })
    .records.filter((record) => record.verdict === verdict)
    .map(({ record }) => record)
    .sort();
}

// The engine is asked about every line elsewhere; what the page does with the answer is the same for all.
describe.each(CARS.slice(0, 2))("a car of line $line.id", ({ query, year, facts, line }) => {
  test("every record stands in the list of its verdict, open ones with what to look at", async () => {
    const { page, complaints } = await open(`/car/?${query}`, PHONE);
    await untilSettled(page);
    for (const [list, verdict] of [
      ["yes", "yes"],
      ["open", "look first"],
    ] as const)
      expect((await idsIn(page, list)).sort()).toEqual(expectedIds(query, verdict));
    // The page knows the records of this line only; all others do not apply.
    const no = await idsIn(page, "no");
    expect(expectedIds(query, "no")).toEqual(expect.arrayContaining(no));
    const trapsFirst = await page.locator(".open-list h3").allTextContents();
    expect(trapsFirst.includes("Traps") ? trapsFirst[0] : "Traps").toBe("Traps");
    expect(complaints).toEqual([]);
  });

  test("the net change against the year before is the engine's", async () => {
    const { page } = await open(`/car/?${query}&known=${year - 1}`, DESK);
    await untilSettled(page);
    const net = answerNetChange(knowledge, { car: { facts }, from: year - 1 });
    await expect.poll(() => page.locator(".changes > li").count(), { timeout: 20_000 }).toBe(net.changes.length);
    const names = await page.locator(".changes > li > b").allTextContents();
    expect(names.sort()).toEqual(net.changes.map(({ name }) => name).sort());
    expect(line.id).toBe(Object.values(facts)[0]);
  });
});

test("step by step: line, year, an answer, 'I don't know'; each step is in the address and can be taken back", async () => {
  const { page, complaints } = await open("/car/", PHONE);
  await page.getByRole("button", { name: FIRST.line.name }).click();
  await untilSettled(page);
  const question = page.locator("#question");
  expect(await question.evaluate((heading) => heading === document.activeElement)).toBe(true);
  const yearLabel = catalog.space.trait(catalog.space.role("year") as number).label;
  expect((await question.textContent())?.toLowerCase()).toBe(`${yearLabel}?`);
  await page.getByRole("button", { name: "I don’t know" }).isVisible();
  await page
    .locator(".choices")
    .getByRole("button", { name: String(FIRST.year), exact: true })
    .click();
  await untilSettled(page);
  expect(new URL(page.url()).search).toBe(`?${FIRST.query}`);
  const asked = await question.textContent();
  await page.getByRole("button", { name: "I don’t know" }).click();
  await untilSettled(page);
  expect(new URL(page.url()).search).toMatch(/&skip=/);
  expect(await question.textContent()).not.toBe(asked);
  // What nobody knows changes no verdict.
  expect((await idsIn(page, "open")).sort()).toEqual(expectedIds(FIRST.query, "look first"));
  await page.getByRole("button", { name: /^Ask again/ }).click();
  await untilSettled(page);
  expect(await question.textContent()).toBe(asked);
  // Undo goes back to the state before, also where the last step took something back.
  await page.getByRole("button", { name: "Undo the last step" }).click();
  await page.waitForURL(/&skip=/);
  await page.getByRole("button", { name: "Undo the last step" }).click();
  await page.waitForURL(new RegExp(`\\?${FIRST.query}$`));
  await untilSettled(page);
  await page.getByRole("button", { name: "Start again" }).click();
  expect(await page.locator("#car-status").textContent()).toBe("");
  await page.goBack();
  await untilSettled(page);
  expect(new URL(page.url()).search).toBe(`?${FIRST.query}`);
  await page.reload();
  await untilSettled(page);
  expect((await idsIn(page, "yes")).sort()).toEqual(expectedIds(FIRST.query, "yes"));
  expect(complaints).toEqual([]);
});

test("a number that cannot be is refused with what can be; one that can is taken as people write it", async () => {
  const sequence = catalog.space.role("sequence") as number;
  const { id } = catalog.space.trait(sequence);
  const list = new CarList(knowledge);
  const [line, year] = [traitOf(catalog, "line"), traitOf(catalog, "year")];
  const asked = catalog.lines
    .flatMap((one) => catalog.years.map((my) => ({ facts: { [line]: one.id, [year]: my }, one, my })))
    .map(({ facts, one, my }) => ({
      query: `fact=${line}:${one.id}&fact=${year}:${my}`,
      ...readCar(knowledge, { facts }),
    }))
    .find(({ cars }) => {
      const open = list.records.filter(
        (record) => applies(catalog.space.sets, cars, record.scope.cars) === "look first",
      );
      return [...list.questions(cars, open)].some(({ trait }) => trait === sequence);
    });
  if (!asked) throw new Error("no car of a line and year is asked for its number");
  const { page, complaints } = await open(`/car/?${asked.query}`, PHONE);
  await untilSettled(page);
  const box = page.locator("#value");
  if (!(await box.isVisible())) {
    await page.getByText("Something else is easier to see?").click();
    await page
      .locator(".others")
      .getByRole("button", { name: new RegExp(catalog.space.trait(sequence).label, "i") })
      .click();
  }
  const last = /to (\S+)\.$/.exec((await page.locator("#value-hint").textContent()) ?? "")?.[1] ?? "";
  await box.fill("1");
  await box.press("Enter");
  await page.locator(".wrong").waitFor();
  expect(new URL(page.url()).search).toBe(`?${asked.query}`);
  await box.fill(`F ${last.slice(0, -3)} ${last.slice(-3)}`);
  await box.press("Enter");
  await untilSettled(page);
  expect(new URL(page.url()).search).toBe(`?${asked.query}&fact=${id}:${last}`);
  expect(complaints).toEqual([]);
});

test("a car from before the point of a running change is told so, with what it has", async () => {
  const sequence = catalog.space.role("sequence") as number;
  const { sets } = catalog.space;
  const running = [...catalog.records.values()].filter((it) => it.facts.kinds.includes("running"));
  const missed = running.flatMap((record) => {
    const cars = sets.minus(
      sets.forget(sets.and(catalog.buildable, record.scope.cars), new Set([sequence])),
      record.scope.cars,
    );
    const car = pick(sets.and(cars, catalog.buildable));
    return car && sets.traitsOf(record.scope.cars).has(sequence) ? [{ record, car }] : [];
  });
  const [first] = missed;
  if (!first) throw new Error("no running change goes by the sequence number");
  const facts = Object.entries(sayCar(catalog.space, first.car)).map(([trait, value]) => `fact=${trait}:${value}`);
  const { page } = await open(`/car/?${facts.join("&")}`, PHONE);
  await untilSettled(page);
  expect(await page.locator(".beside-list").textContent()).toContain(first.record.id);
  expect(await idsIn(page, "no")).toContain(first.record.id);
});

test("more answers leave fewer questions, until nothing is left to look at", async () => {
  const { page } = await open(`/car/?${FIRST.query}`, DESK);
  await untilSettled(page);
  for (let steps = 0; steps < 40; steps++) {
    if ((await page.locator("#question").textContent()) === "Nothing more to look at") break;
    const open = Number(await page.locator(".tally b").nth(1).textContent());
    const address = page.url();
    const choice = page.locator("section:has(> #question) .choice:not(.unsure)").first();
    if (await choice.isVisible()) await choice.click();
    else {
      const hint = (await page.locator("#value-hint").textContent()) ?? "";
      await page.locator("#value").fill(/From (\S+) to/.exec(hint)?.[1] ?? "");
      await page.locator("#value").press("Enter");
    }
    await page.waitForURL((url) => url.href !== address);
    await untilSettled(page);
    expect(Number(await page.locator(".tally b").nth(1).textContent())).toBeLessThanOrEqual(open);
  }
  expect(await page.locator("#question").textContent()).toBe("Nothing more to look at");
  expect(await page.locator(".open-list .judged").count()).toBe(0);
});

test("the number on the plate is read, with spaces or without", async () => {
  const { page } = await open("/car/", PHONE);
  await page.locator("#plate").fill(EXAMPLE);
  await page.locator("#plate").press("Enter");
  await untilSettled(page);
  expect(new URL(page.url()).searchParams.get("plate")).toBe(EXAMPLE.toUpperCase().replaceAll(" ", ""));
  const { facts } = answerPlate(knowledge, EXAMPLE);
  const known = await page.locator(".known li").first().textContent();
  for (const { trait } of facts)
    expect(known?.toLowerCase()).toContain(
      catalog.space.trait(catalog.space.find(trait) as number).label.toLowerCase(),
    );
  expect(await page.locator("#plate").count()).toBe(0);
});

test("a misread character is said, with what it could have been, and put right by pressing that", async () => {
  const plain = EXAMPLE.replaceAll(/[^A-Z0-9]/gi, "");
  const wrong = `0${plain.slice(1)}`;
  const { page } = await open(`/car/?plate=${wrong}`, PHONE);
  const box = page.getByRole("alert");
  await box.waitFor();
  const { slips } = answerPlate(knowledge, wrong);
  expect(slips[0]?.place).toBe(1);
  expect(await box.textContent()).toContain("Character 1");
  expect(await page.locator("#car-status").textContent()).toContain("was not read");
  await box.getByRole("button", { name: `${plain[0]} in place 1` }).click();
  await untilSettled(page);
  expect(new URL(page.url()).searchParams.get("plate")).toBe(plain);
});

test("facts that no car was built with: a smallest set of them is shown, and taking one back helps", async () => {
  const { line, trait, value } = conflictOf(catalog);
  const { page } = await open(`/car/?fact=${traitOf(catalog, "line")}:${line.id}&fact=${trait}:${value}`, PHONE);
  const box = page.getByRole("alert");
  await box.waitFor();
  expect(await box.locator("li").count()).toBe(2);
  expect(await page.locator(".judged").count()).toBe(0);
  await box
    .getByRole("button", { name: /^Take back/ })
    .last()
    .click();
  await untilSettled(page);
  expect(await page.getByRole("alert").count()).toBe(0);
});

test("what is found on the car comes before what was built; a part that nobody knows is refused", async () => {
  const { line, trait, value } = conflictOf(catalog);
  const { page } = await open(`/car/?fact=${traitOf(catalog, "line")}:${line.id}&found=${trait}:${value}`, DESK);
  await untilSettled(page);
  expect(await page.locator(".known").first().textContent()).toContain("as found");
  await page.getByText("Is something no longer as built?").click();
  await page.locator("#fitted").fill("no such part");
  await page.locator("#fitted").press("Enter");
  expect(await page.locator(".changed-car .wrong").textContent()).toContain("no such part");
  expect(new URL(page.url()).searchParams.get("fitted")).toBeNull();
});

test("a part that no scope asks for is taken as fitted, and a refused one is said to be refused", async () => {
  const refused = CARS.flatMap(({ query, facts }) =>
    [...catalog.parts.keys()]
      .filter((part) => catalog.space.askedFitted(part) === undefined)
      .map((part) => ({ query, part, answer: answerMayFit(knowledge, { part, car: { facts } }) })),
  ).find(({ answer }) => answer.verdict === "goes on but must not be used");
  if (!refused) throw new Error("the data refuses no part");
  const { page, complaints } = await open(`/car/?${refused.query}`, PHONE);
  await untilSettled(page);
  await page.getByText("Is something no longer as built?").click();
  await page.locator("#fitted").fill(refused.part);
  await page.locator("#fitted").press("Enter");
  await untilSettled(page);
  const known = page.locator(".known").first();
  await expect.poll(() => known.textContent()).toContain("The records refuse it on this car");
  for (const reason of refused.answer.because.filter((it) => it.statement.startsWith("stands-in")))
    expect(await known.textContent()).toContain(reason.record);
  await page.emulateMedia({ media: "print" });
  await expect.poll(() => page.locator(".sheet").textContent()).toContain(refused.part);
  expect(complaints).toEqual([]);
});

test("an address with mistakes: what is not understood is said, and the rest counts", async () => {
  const { page, complaints } = await open(
    `/car/?${FIRST.query}&fact=nonsense:1&fact=${traitOf(catalog, "year")}&known=x`,
  );
  await untilSettled(page);
  expect(await page.locator(".known .wrong").textContent()).toContain("No trait is called 'nonsense'");
  expect((await idsIn(page, "yes")).sort()).toEqual(expectedIds(FIRST.query, "yes"));
  expect(complaints).toEqual([]);
});

test("why: the facts that carry the verdict and those that do not", async () => {
  const { page } = await open(`/car/?${FIRST.query}`);
  await untilSettled(page);
  const why = page.locator(".yes-list .why").first();
  await why.locator("summary").click();
  await expect.poll(() => why.textContent()).toMatch(/It applies to every car that this can be\./);
});

test("recent cars stay in this browser, lead back, and can be removed", async () => {
  const { page } = await open("/car/", PHONE);
  await page.locator("#plate").fill(EXAMPLE);
  await page.locator("#plate").press("Enter");
  await untilSettled(page);
  await page.goto(page.url().replace(/\?.*/, ""));
  await page.getByText("Recent cars").click();
  const link = page.locator(".recent a");
  expect(await link.count()).toBe(1);
  await link.click();
  await untilSettled(page);
  await page.goto(page.url().replace(/\?.*/, ""));
  await page.getByText("Recent cars").click();
  await page.getByRole("button", { name: /^Remove(?! all)/ }).click();
  expect(await page.locator(".recent").count()).toBe(0);
});

test("on paper there is the bay sheet alone: the car, boxes to tick, cautions, a code, on two pages at most", async () => {
  const { page } = await open(`/car/?${FIRST.query}&known=${FIRST.year - 1}`);
  await untilSettled(page);
  await page.locator(".changes").first().waitFor();
  expect(await page.locator(".sheet").isVisible()).toBe(false);
  await page.emulateMedia({ media: "print" });
  await page.locator(".sheet").waitFor();
  for (const hidden of [".head", ".foot", ".tally", "#who", "#question", ".open-list", ".changes"])
    for (const element of await page.locator(hidden).all()) expect(await element.isVisible(), hidden).toBe(false);
  expect(await page.locator(".sheet").textContent()).toContain("Caution");
  expect(await page.locator(".sheet img").evaluate((code) => (code as HTMLImageElement).naturalWidth)).toBeGreaterThan(
    0,
  );
  expect(await page.locator(".sheet").textContent()).toContain(page.url());
  const pdf = (await page.pdf({ format: "A4" })).toString("latin1");
  expect(pdf.match(/\/Type\s*\/Page\b/g)?.length).toBeLessThanOrEqual(2);
});

test("by keyboard alone: from the plate to an answer", async () => {
  const { page } = await open("/car/");
  await page.locator("#plate").waitFor();
  for (let presses = 0; presses < 60; presses++) {
    await page.keyboard.press("Tab");
    if (await page.evaluate(() => document.activeElement?.id === "plate")) break;
  }
  await page.keyboard.type(EXAMPLE);
  await page.keyboard.press("Enter");
  await untilSettled(page);
  expect(await page.evaluate(() => document.activeElement?.id)).toBe("question");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await untilSettled(page);
  expect(new URL(page.url()).search).toMatch(/&(fact|skip)=/);
});

test("without a script the page leads to the page of every line and year", async () => {
  const { page } = await open("/car/", { javaScriptEnabled: false });
  const links = await page.locator("main table a").evaluateAll((all) => all.map((link) => link.getAttribute("href")));
  const expected = catalog.lines.flatMap((line) => catalog.years.map((year) => `../lines/${line.id}/${year}/`));
  expect(links).toEqual(expect.arrayContaining(expected.filter((href) => links.includes(href))));
  expect(links.length).toBeGreaterThan(catalog.lines.length);
});
