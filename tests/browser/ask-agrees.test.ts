/**
 * The site's text search and the command line's index of stems say of the same words that the same records hold them, and so the
 * same records come out on top. Both stem by Snowball's English rules; they differ in a few stems and in what they take for a
 * piece of a word put together by signs (the letters of a record's number), which is why a few words are let pass.
 */
import { expect, test } from "vitest";
import { askIndexOf, recordsWith } from "../../src/engine/answers/ask-index.ts";
import { cardAddress } from "../../src/engine/ask/card.ts";
import type { Card } from "../../src/engine/ask/card-shape.ts";
import { findRecords, systemsFor } from "../../src/engine/ask/find-records.ts";
import { readQuestion } from "../../src/engine/ask/read-question.ts";
import { demoKnowledge } from "../helpers/demo-data.ts";
import { fixtureRows } from "../helpers/fixture-rows.ts";
import { openBrowser } from "./open-browser.ts";

/** Of a hundred words, so many may be told differently. */
const LET_PASS = 3;

const { open } = await openBrowser();
const { catalog } = await demoKnowledge();
const index = askIndexOf(catalog);
const questions = fixtureRows("questions").map(([, question = ""]) => question);
const readings = questions.map((question) => readQuestion(index.vocabulary, question, index.numbers));
const words = [...new Set(readings.flatMap(({ rest, phrases }) => [...rest.split(" ").filter(Boolean), ...phrases]))];

test("the same words are held by the same records, and the same record comes out on top", async () => {
  const { page } = await open("/ask/");
  const systems = catalog.systems.map(({ id }) => id);
  // As a text, or the test runner would take the import for one of its own.
  const { held, cards } = (await page.evaluate(`(async () => {
    const root = new URL("../", location.href);
    const pagefind = await import(new URL("pagefind/pagefind.js", root).href);
    await pagefind.options({ baseUrl: root.pathname });
    await pagefind.init();
    const held = [];
    for (const word of ${JSON.stringify(words)}) {
      const { results } = await pagefind.search('"' + word + '"');
      held.push([word, results.map((result) => result.id)]);
    }
    const files = await Promise.all(
      ${JSON.stringify(systems)}.map((id) => fetch(new URL("data/ask/systems/" + id + ".json", root))),
    );
    return { held, cards: (await Promise.all(files.map((file) => file.json()))).flat() };
  })()`)) as { held: [string, string[]][]; cards: Card[] };
  const pages = new Map(cards.map((card) => [card.page, cardAddress(card)]));
  const published = new Map(held.map(([word, ids]) => [word, new Set(ids.map((id) => pages.get(id) ?? id))]));
  const differ = words.filter((word) => {
    const [here, there] = [recordsWith(index, word), published.get(word) ?? new Set()];
    return here.size !== there.size || [...here].some((address) => !there.has(address));
  });
  expect(words.length).toBeGreaterThan(300);
  expect(differ.length, differ.join(", ")).toBeLessThan((words.length * LET_PASS) / 100);
  const none: ReadonlySet<string> = new Set();
  const first = (holders: (word: string) => ReadonlySet<string>) =>
    readings.map((reading) => {
      const own = systemsFor(reading, index.vocabulary, []);
      const some = index.cards.filter(({ systems: its }) => its.some((id) => own.includes(id)));
      return findRecords(some, { reading, vocabulary: index.vocabulary, holders }).records[0]?.card.id;
    });
  const [here, there] = [first((word) => recordsWith(index, word)), first((word) => published.get(word) ?? none)];
  const other = questions.filter((_, i) => here[i] !== there[i]);
  expect(other.length, other.join("\n")).toBeLessThanOrEqual(questions.length / 50);
});

test("what a page loads of records is what the command line has, but for the names of the text search", async () => {
  const { page } = await open("/ask/");
  for (const { id } of catalog.systems) {
    const published: Card[] = await page.evaluate(
      async (path) => (await fetch(new URL(`../${path}`, location.href))).json(),
      `data/ask/systems/${id}.json`,
    );
    const own = index.cards.filter(({ systems }) => systems.length === 0 || systems.includes(id));
    expect(published.map(({ page: _, ...card }) => card)).toEqual(JSON.parse(JSON.stringify(own)));
    expect(published.every((card) => card.page !== undefined)).toBe(true);
  }
});
