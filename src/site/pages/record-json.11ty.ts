import { answerRecord } from "../../engine/answers/answer-record.ts";
import type { ChangeRecord } from "../../engine/records/catalog.ts";
import type { Site } from "../site.ts";

interface Data {
  readonly site: Site;
  readonly record: ChangeRecord;
}

export const data = {
  pagination: { data: "site.records", size: 1, alias: "record" },
  permalink: ({ record }: Data) => `/data/records/${record.id}.json`,
};

export function render({ site, record }: Data): string {
  return `${JSON.stringify(answerRecord(site.knowledge, record.id), null, 1)}\n`;
}
