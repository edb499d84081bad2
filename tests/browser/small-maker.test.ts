/** A maker of a few records: what pages say without systems, without a list of words, and with a single model line. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, describe, expect, test } from "vitest";
import { readFolder } from "../../src/build/data/read-folder.ts";
import { serve } from "../../src/build/serve.ts";
import { answerAsk } from "../../src/engine/answers/answer-ask.ts";
import { type Knowledge, openKnowledge } from "../../src/engine/answers/knowledge.ts";
import { buildByCommand } from "../helpers/build-by-command.ts";
import { onDisk } from "../helpers/tiny-folder.ts";
import { openBrowser, PHONE } from "./open-browser.ts";

/** One model line, one component, and numbers of three signs; nothing that a folder may do without. */
const WIPERS: Readonly<Record<string, string>> = {
  "vehicles/traits.yaml": `traits:
  - { id: line, role: line, kind: list, label: model line, find: the badge, effort: 1, phrase: "{}", otherwise: "not {}", values: [{ id: L, label: Linnet }] }
  - { id: my, role: year, kind: whole, from: 1960, to: 1962, label: model year, find: the plate, effort: 2, phrase: "of {}", otherwise: "not of {}" }
`,
  "vehicles/linnet.yaml": "line: L\nbuilt: [all]\n",
  "components/wipers.yaml": `id: wipers
name: Wipers
order: 1
components:
  - { id: wiper-arm, name: wiper arm, places: [wiper arm] }
`,
  "parts/wiper-arm.yaml": `component: wiper-arm
parts:
  - { number: 44-1, name: long wiper arm }
  - { number: "007", name: short wiper arm }
`,
  "changes/1961/EL61-01.md": `---
id: EL61-01
title: Twelve volts
issued: 1960-09-01
kinds: [part]
starts: start of 1961
scope: my>=1961
---

The battery has twelve volts in place of six.
`,
  "changes/1962/WI62-01.md": `---
id: WI62-01
title: Longer wiper arms
issued: 1961-09-01
kinds: [part]
components: [wiper-arm]
starts: start of 1962
scope: my=1962
built:
  - { place: wiper arm, part: 44-1, scope: my=1962 }
  - { place: wiper arm, part: "007", scope: my<=1961 }
---

The arms are longer.
`,
};

const home = await mkdtemp(join(tmpdir(), "yearmark-small-"));
const closing: (() => Promise<void>)[] = [];
afterAll(async () => {
  for (const close of closing) await close();
  await rm(home, { recursive: true });
});
const { newPage } = await openBrowser();

interface Small {
  readonly knowledge: Knowledge;
  open(address: string): Promise<Page>;
}

async function built(name: string, data: string): Promise<Small> {
  const { catalog } = await readFolder(data);
  if (!catalog) throw new Error(`${name} has errors`);
  const site = join(home, name);
  buildByCommand({ data, site });
  const served = await serve({ folder: site, port: 0 });
  closing.push(() => served.close());
  return {
    knowledge: openKnowledge(catalog, { layout: false }),
    open: async (address) => {
      const { page } = await newPage(PHONE);
      await page.goto(new URL(address.slice(1), served.url).href);
      return page;
    },
  };
}

/** The words of the answer, and the records that are listed. */
async function asked(page: Page): Promise<[words: string | null, records: string[]]> {
  await expect.poll(() => page.locator("#asked").getAttribute("aria-busy")).toBe("false");
  const links = await page
    .locator(".found .records > li > a")
    .evaluateAll((all) => all.map((a) => (a as HTMLAnchorElement).href));
  return [await page.locator("#status").textContent(), links.map((href) => new URL(href).pathname)];
}

function answered({ knowledge }: Small, text: string): [words: string, records: string[]] {
  const { words, records } = answerAsk(knowledge, { text, car: {} });
  return [words, records.map(({ address }) => address)];
}

test("without any component the ask page finds what the command line finds, by title and by text", async () => {
  const none = await built("none", "tests/fixtures/nearly-empty");
  for (const question of ["only", "nothing else", "zeppelin"]) {
    const page = await none.open(`/ask/?${new URLSearchParams({ q: question })}`);
    expect([question, await asked(page)]).toEqual([question, answered(none, question)]);
  }
  expect(answered(none, "nothing else")).toEqual(["One record.", ["/records/R1/"]]);
});

describe("with one line and one component", () => {
  let small: Promise<Small> | undefined;
  const wipers = (): Promise<Small> => {
    small ??= onDisk(WIPERS).then((data) => built("wipers", data));
    return small;
  };

  test("the ask page says what the command line says, of records under no component and of short part numbers too", async () => {
    const one = await wipers();
    for (const question of ["battery", "what changed on the wipers", "44-1 fit a 60", "does 007 go on a 60"]) {
      const page = await one.open(`/ask/?${new URLSearchParams({ q: question })}`);
      expect([question, await asked(page)]).toEqual([question, answered(one, question)]);
      expect(await page.locator("mark").allTextContents()).not.toContain("the");
    }
    expect(answered(one, "battery")).toEqual(["One record.", ["/records/EL61-01/"]]);
  });

  test("telling apart without a car says nothing of what the plant built into it; with one it does", async () => {
    const one = await wipers();
    const plain = await one.open("/apart/?component=wiper-arm");
    await expect.poll(() => plain.locator(".possible li").count()).toBe(2);
    expect(await plain.locator(".possible .tag").allTextContents()).toEqual([]);
    const ofCar = await one.open("/apart/?fact=my:1962&component=wiper-arm");
    await expect.poll(() => ofCar.locator(".possible .tag").count()).toBe(2);
    expect((await ofCar.locator(".possible .tag").allTextContents())[0]).toBe("Built into this car");
  });
});
