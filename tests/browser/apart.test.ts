/** The page "tell apart": mark by mark it says what the engine answers, with a car and without, and with no script at all. */
import { expect, test } from "vitest";
import { answerTellApart } from "../../src/engine/answers/answer-tell-apart.ts";
import type { TellApartAnswer } from "../../src/engine/answers/shapes/tell-apart.ts";
import type { Feature } from "../../src/engine/records/catalog.ts";
import { sliceOf } from "../../src/engine/records/slice.ts";
import { linesAndYears } from "../helpers/cars-of-site.ts";
import { demoKnowledge } from "../helpers/demo-data.ts";
import { DESK, openBrowser, PHONE } from "./open-browser.ts";

const { open } = await openBrowser();
const knowledge = await demoKnowledge();
const { catalog } = knowledge;
const CARS = linesAndYears(catalog);

/** The components of which at least two parts have marks on record. */
const COMPONENTS = [...catalog.components.values()].flatMap(({ id, name }) => {
  const parts = [...catalog.parts.values()].filter((part) => part.component === id);
  return parts.filter((part) => Object.keys(part.marks).length > 0).length > 1 ? [{ id, name, parts }] : [];
});

type Seen = Readonly<Record<string, string>>;
interface Case {
  readonly component: string;
  readonly seen: Seen;
  readonly answer: TellApartAnswer;
}

function answerTo(component: string, seen: Seen): Case {
  return { component, seen, answer: answerTellApart(knowledge, { component, seen }) };
}

/** Everything that pressing answers to the next mark may lead to. */
function reached(component: string, seen: Seen = {}): Case[] {
  const here = answerTo(component, seen);
  const { next } = here.answer;
  if (!next) return [here];
  return [here, ...next.options.flatMap(({ value }) => reached(component, { ...seen, [next.feature]: value }))];
}

const REACHED = COMPONENTS.flatMap(({ id }) => reached(id));

function longest(verdict: TellApartAnswer["verdict"]): Case {
  const cases = REACHED.filter(({ answer }) => answer.verdict === verdict);
  return cases.sort((a, b) => Object.keys(b.seen).length - Object.keys(a.seen).length)[0] as Case;
}

function address({ component, seen }: { component: string; seen: Seen }, car = ""): string {
  const said = Object.entries(seen).map((pair) => pair.join("="));
  return `/apart/?${car}component=${component}&seen=${encodeURIComponent(said.join("; "))}`;
}

/** A machine that is busy takes its time to load a page. */
function poll<T>(what: () => Promise<T> | T) {
  return expect.poll(what, { timeout: 20_000 });
}

test("mark by mark to one part, and back", async () => {
  const { component, seen, answer } = longest("one part");
  const marks = Object.entries(seen);
  const { page, complaints } = await open(`/apart/?component=${component}`, PHONE);
  for (const [i, [mark, value]] of marks.entries()) {
    const { next, words } = answerTo(component, Object.fromEntries(marks.slice(0, i))).answer;
    await poll(() => page.locator("#apart-status").textContent()).toBe(words);
    const option = next?.options.findIndex((it) => it.value === value) ?? -1;
    expect(next?.feature).toBe(mark);
    await page.locator(".next .choice").nth(option).click();
  }
  await poll(() => page.locator(".big").textContent()).toContain(answer.words);
  expect(await page.locator("#apart-status").textContent()).toBe(answer.words);
  expect(await page.locator(".possible a.id").allTextContents()).toEqual(answer.parts.map((it) => it.number));
  expect(await page.locator(".ruled-out a.id").allTextContents()).toEqual(answer.ruledOut.map((it) => it.number));
  const cited = await page.locator(".answer .cite").allTextContents();
  expect(cited).toEqual(answer.because.map((it) => it.record));
  expect(await page.locator("#apart-tables").isVisible()).toBe(false);
  await page.locator(".seen .take-back").last().click();
  const before = answerTo(component, Object.fromEntries(marks.slice(0, -1))).answer;
  await poll(() => page.locator("#apart-status").textContent()).toBe(before.words);
  await page.goBack();
  await poll(() => page.locator(".big").textContent()).toContain(answer.words);
  expect(complaints).toEqual([]);
});

test("parts that the records cannot tell apart are said loudly", async () => {
  const found = longest("cannot be told apart");
  const { page, complaints } = await open(address(found), PHONE);
  await poll(() => page.locator(".big").textContent()).toContain(found.answer.words);
  const groups = found.answer.alike.flatMap((it) => it.parts);
  expect(groups.length).toBeGreaterThan(1);
  expect(await page.locator(".alike a.id").allTextContents()).toEqual(groups);
  expect(complaints).toEqual([]);
});

test("observations that contradict each other are named, and either can be taken back", async () => {
  const [found] = COMPONENTS.flatMap(({ id, parts }) =>
    parts.flatMap((one) =>
      parts.flatMap((other) => {
        const [first, second] = one.features.filter(
          ({ id: mark }) => one.marks[mark] !== undefined && other.marks[mark] !== undefined,
        ) as [Feature?, Feature?];
        if (!first || !second) return [];
        const shown = (part: typeof one, { id: mark, unit = "" }: Feature) => `${part.marks[mark]} ${unit}`.trim();
        const seen = { [first.id]: shown(one, first), [second.id]: shown(other, second) };
        const it = answerTo(id, seen);
        return it.answer.conflict?.smallest.length === 2 ? [it] : [];
      }),
    ),
  ) as [Case];
  const { page, complaints } = await open(address(found), DESK);
  await poll(() => page.locator(".big").textContent()).toContain(found.answer.words);
  expect(await page.locator(".conflict .choice").count()).toBe(2);
  await page.locator(".conflict .choice").first().click();
  const [gone] = found.answer.conflict?.smallest ?? [];
  const left = Object.fromEntries(Object.entries(found.seen).filter(([mark]) => mark !== gone?.feature));
  const { words } = answerTo(found.component, left).answer;
  await poll(() => page.locator("#apart-status").textContent()).toBe(words);
  expect(complaints).toEqual([]);
});

test("by keyboard: a component typed by a word of it, an answer, one that cannot be seen, and all taken back", async () => {
  const { component, seen } = longest("one part");
  const { name, parts } = COMPONENTS.find(({ id }) => id === component) as (typeof COMPONENTS)[number];
  const [mark] = Object.keys(seen);
  const { page } = await open("/apart/", DESK);
  await page.locator("#component").focus();
  await page.keyboard.type(name.toUpperCase());
  await page.locator("#apart [aria-label='Components that may be meant'] button").first().waitFor();
  await page.keyboard.press("Enter");
  await page.locator(".next").waitFor();
  expect(new URL(page.url()).searchParams.get("component")).toBe(component);
  expect(await page.locator("#apart-answer").evaluate((it) => it === document.activeElement)).toBe(true);
  await page.locator(".next .cannot").focus();
  await page.keyboard.press("Enter");
  await expect
    .poll(() => page.locator("#apart-status").textContent())
    .toBe(answerTo(component, { [mark ?? ""]: "not seen" }).answer.words);
  await page.locator(".seen .take-back").focus();
  await page.keyboard.press("Space");
  await poll(() => page.locator("#apart-status").textContent()).toBe(answerTo(component, {}).answer.words);
  // The number of one of its parts means the component too.
  await page.locator("#component").fill(parts[0]?.number.toLowerCase() ?? "");
  await page.keyboard.press("Enter");
  await poll(() => new URL(page.url()).searchParams.get("component")).toBe(component);
});

test("a measure is read in any unit; what is none is refused beside the field", async () => {
  const [found] = REACHED.filter(({ answer: { next } }) => next?.unit === "in");
  const { component, seen, answer } = found as Case;
  const { page, complaints } = await open(address({ component, seen }), PHONE);
  const field = page.locator(".next input");
  await field.fill("no such measure");
  await page.keyboard.press("Enter");
  await poll(() => field.getAttribute("aria-invalid")).toBe("true");
  expect(await page.locator(".next .wrong").textContent()).toContain("On record:");
  expect(await page.locator(".seen").count()).toBe(Object.keys(seen).length > 0 ? 1 : 0);
  const [option] = answer.next?.options ?? [];
  const typed = `${Number.parseFloat(option?.value ?? "") * 25.4} mm`;
  await field.fill(typed);
  await page.keyboard.press("Enter");
  const { words } = answerTo(component, { ...seen, [answer.next?.feature ?? ""]: typed }).answer;
  await poll(() => page.locator("#apart-status").textContent()).toBe(words);
  expect(complaints).toEqual([]);
});

test("with the car known each part says whether the plant built it in", async () => {
  const cases = CARS.flatMap((car) =>
    COMPONENTS.map(({ id }) => ({
      ...{ car, component: id },
      answer: answerTellApart(knowledge, { component: id, car: { facts: car.facts } }),
    })),
  );
  const kinds = ({ answer }: (typeof cases)[number]): number => new Set(answer.parts.map((it) => it.builtHere)).size;
  const [{ car, component, answer }] = cases.sort((a, b) => kinds(b) - kinds(a)) as [(typeof cases)[number]];
  const { page, complaints } = await open(address({ component, seen: {} }, `${car.query}&`), PHONE);
  await poll(() => page.locator("#apart-status").textContent()).toBe(answer.words);
  const tags = await page.locator(".possible .tag").allTextContents();
  expect(tags.map((tag) => /^Built into this car/.test(tag))).toEqual(answer.parts.map((it) => it.builtHere === "yes"));
  expect(complaints).toEqual([]);
});

test("a part that only other lines were built with is not said to have been built into no car", async () => {
  const ofOthers = CARS.flatMap((car) =>
    COMPONENTS.flatMap(({ id, parts }) => {
      const { parts: own } = answerTellApart(knowledge, { component: id, car: { facts: car.facts } });
      const { relatives = {} } = sliceOf(catalog, car.line);
      const isOther = parts.some(({ number }) => relatives[number] && own.some((it) => it.number === number));
      return isOther ? [{ car, component: id }] : [];
    }),
  );
  const [{ car, component }] = ofOthers as [(typeof ofOthers)[number]];
  const { page } = await open(address({ component, seen: {} }, `${car.query}&`), PHONE);
  await poll(() => page.locator(".possible .tag").count()).toBeGreaterThan(1);
  for (const tag of await page.locator(".possible .tag").allTextContents()) expect(tag).not.toContain("any car");
});

test("what is no component is said so, and a word leads to those that may be meant", async () => {
  const { page } = await open("/apart/?component=no%20such%20thing", PHONE);
  await poll(() => page.locator("#apart .box").textContent()).toContain("no such thing");
  const { id, name } = COMPONENTS[0] as (typeof COMPONENTS)[number];
  await page.locator("#component").fill(name.split(" ").at(-1) ?? "");
  await page
    .locator("#apart .choices .choice", { hasText: new RegExp(`^\\s*${name}`, "i") })
    .first()
    .click();
  await poll(() => new URL(page.url()).searchParams.get("component")).toBe(id);
});

test("a part's page shows its marks drawn and leads to the answer", async () => {
  const { component, answer } = longest("one part");
  const { page, complaints } = await open(`/parts/${answer.parts[0]?.number}/`, PHONE);
  await page.getByRole("link", { name: "Tell it apart, mark by mark" }).click();
  await poll(() => page.locator("#apart-status").textContent()).toBe(answerTo(component, {}).answer.words);
  expect(new URL(page.url()).hash).toBe("");
  expect(complaints).toEqual([]);
});

test("without a script every component has its table of parts and marks, with drawings in words", async () => {
  const { page } = await open("/apart/", { ...DESK, javaScriptEnabled: false });
  const sections = page.locator("#apart-tables section.told");
  expect(await sections.count()).toBe(COMPONENTS.length);
  for (const { id, parts } of COMPONENTS) {
    const numbers = await page.locator(`section[aria-labelledby="${id}"] a.part`).allTextContents();
    expect(numbers.sort()).toEqual(parts.map((part) => part.number).sort());
  }
  const words = await page.locator("svg.drawing").evaluateAll((all) => all.map((it) => it.getAttribute("aria-label")));
  expect(words.length).toBeGreaterThan(COMPONENTS.length);
  expect(words.every((it) => (it ?? "").length > 3)).toBe(true);
});
