/** What every rival searches: a text for each record, the same that our own search looks through. */
import { recordText } from "../../src/engine/ask/record-text.ts";
import type { Catalog } from "../../src/engine/records/catalog.ts";

export interface RecordText {
  readonly id: string;
  readonly title: string;
  readonly text: string;
}

export function textsOf(catalog: Catalog): RecordText[] {
  return [...catalog.records.values()].map((record) => ({
    id: record.id,
    title: record.facts.title,
    text: recordText(catalog, record),
  }));
}
