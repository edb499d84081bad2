import { answerPart } from "../../engine/answers/answer-part.ts";
import type { Part } from "../../engine/records/catalog.ts";
import type { Site } from "../site.ts";

interface Data {
  readonly site: Site;
  readonly part: Part;
}

export const data = {
  pagination: { data: "site.parts", size: 1, alias: "part" },
  permalink: ({ part }: Data) => `/data/parts/${part.number}.json`,
};

export function render({ site, part }: Data): string {
  return `${JSON.stringify(answerPart(site.knowledge, part.number), null, 1)}\n`;
}
