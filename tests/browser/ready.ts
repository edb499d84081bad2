/** When a page has become what it will be: scripts that draw are done. */
import type { Page } from "playwright-core";
import { inject } from "vitest";
import { linesAndYears } from "../helpers/cars-of-site.ts";
import { demoKnowledge } from "../helpers/demo-data.ts";
import { type PageType, pageTypes } from "../helpers/page-types.ts";

export interface State extends PageType {
  /** What is on the page when it is ready; at once where nothing is named. */
  readonly ready?: string;
}

const [car] = linesAndYears((await demoKnowledge()).catalog);

/** The page types as a browser meets them; the ask page also with an answer on it. */
export function pageStates(): State[] {
  return [
    ...pageTypes(inject("siteFolder")).map((type): State => {
      return type.name === "map" ? { ...type, ready: "#map-canvas canvas" } : type;
    }),
    { name: "this car, asked", address: `/car/?${car?.query}&known=${(car?.year ?? 0) - 1}`, ready: ".look" },
    { name: "this car, misread plate", address: "/car/?plate=0", ready: ".plate .box" },
    { name: "ask, answered", address: "/ask/?q=brake+pad+of+last+year", ready: "#results > li" },
  ];
}

export async function untilReady(page: Page, { ready }: State): Promise<void> {
  if (ready !== undefined) await page.locator(ready).first().waitFor({ state: "attached" });
}
