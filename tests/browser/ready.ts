/** When a page has become what it will be: scripts that draw are done. */
import type { Page } from "playwright-core";
import { inject } from "vitest";
import { answerSetting } from "../../src/engine/answers/answer-setting.ts";
import { statementsOf } from "../../src/engine/records/statement.ts";
import { linesAndYears, traitOf } from "../helpers/cars-of-site.ts";
import { demoKnowledge } from "../helpers/demo-data.ts";
import { type PageType, pageTypes } from "../helpers/page-types.ts";

export interface State extends PageType {
  /** What is on the page when it is ready; at once where nothing is named. */
  readonly ready?: string;
  /** On a page that answers, where the answer stands; all else on it is as it was before. */
  readonly changes?: string;
  /** It goes to another address by itself, and the next page must not be asked for before it is there. */
  readonly leadsOn?: boolean;
}

const { catalog } = await demoKnowledge();
const [car] = linesAndYears(catalog);
const lineTrait = traitOf(catalog, "line");
/** A part that may only be used along with others has the longest answers. */
const standIn = [...catalog.records.values()]
  .flatMap((record) => statementsOf(record.statements, "stands-in"))
  .find((it) => it.with.length > 1);

const [sum] = catalog.sums;
/** A part whose component has most marks. */
const [marked] = [...catalog.parts.values()].sort((a, b) => b.features.length - a.features.length);
/** A figure that depends, with something to look at. */
const setting =
  car &&
  answerSetting(await demoKnowledge(), { car: { facts: car.facts } }).settings.find(
    (it) => it.verdict === "look first",
  );

/** The page types as a browser meets them; the ask page also with an answer on it. */
export function pageStates(): State[] {
  return [
    ...pageTypes(inject("siteFolder")).map((type): State => {
      if (type.name === "map") return { ...type, ready: "#map-canvas canvas" };
      return { ...type, leadsOn: type.name === "moved" };
    }),
    {
      name: "this car, asked",
      address: `/car/?${car?.query}&known=${(car?.year ?? 0) - 1}`,
      ready: ".look",
      changes: "#car",
    },
    { name: "this car, misread plate", address: "/car/?plate=0", ready: ".plate .box", changes: "#car" },
    {
      name: "may it go on, asked",
      address: `/fit/?fact=${lineTrait}:${car?.line.id}&part=${encodeURIComponent(standIn?.part ?? "")}`,
      ready: ".answer",
      changes: "#fit",
    },
    { name: "retrofit paths, asked", address: `/retrofits/?${car?.query}`, ready: ".ways", changes: "#retrofits" },
    {
      name: "settings, one asked and a reading judged",
      address: `/settings/?${car?.query}&setting=${encodeURIComponent(setting?.name ?? "")}&value=${encodeURIComponent(`1 ${setting?.figures[0]?.unit}`)}`,
      ready: ".judged",
      changes: "#settings",
    },
    {
      name: "tell apart, asked",
      address: `/apart/?component=${marked?.component}`,
      ready: ".answer",
      changes: "#apart",
    },
    {
      name: "shop sums, worked out",
      address: `/sums/?sum=${sum?.sum}&job=${encodeURIComponent(sum?.title ?? "")}`,
      ready: ".worked",
      changes: `#do-${sum?.sum}`,
    },
    {
      name: "ask, answered",
      address: `/ask/?q=${encodeURIComponent(`does ${standIn?.part} fit a ${car?.year} ${car?.line.name} with ${marked?.name}`)}`,
      ready: '#asked[aria-busy="false"]',
      changes: "main",
    },
  ];
}

export async function untilReady(page: Page, { ready }: State): Promise<void> {
  if (ready !== undefined) await page.locator(ready).first().waitFor({ state: "attached" });
}
