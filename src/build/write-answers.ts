/** A JSON document for each record and part: the same answers that the command line gives. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setImmediate as nextTurn } from "node:timers/promises";
import { answerPart } from "../engine/answers/answer-part.ts";
import { answerRecord } from "../engine/answers/answer-record.ts";
import type { Knowledge } from "../engine/answers/knowledge.ts";

/** By its name in data/: a document, made when it is asked for. */
export function answerDocuments(knowledge: Knowledge): Map<string, () => string> {
  const { records, parts } = knowledge.catalog;
  const text = (answer: object): string => `${JSON.stringify(answer, null, 1)}\n`;
  return new Map([
    ...[...records.keys()].map((id) => [`records/${id}.json`, () => text(answerRecord(knowledge, id))] as const),
    ...[...parts.keys()].map((number) => [`parts/${number}.json`, () => text(answerPart(knowledge, number))] as const),
  ]);
}

/**
 * Returns how many files were written. Not by Eleventy, which keeps in memory whatever it writes.
 *
 * To wait for the disk after each of thousands of small files takes three times as long as to write them at once; but
 * what else is under way (the search index is) gets a turn after each.
 */
export async function writeAnswers(knowledge: Knowledge, folder: string): Promise<number> {
  for (const kind of ["records", "parts"]) mkdirSync(join(folder, "data", kind), { recursive: true });
  const documents = answerDocuments(knowledge);
  for (const [name, text] of documents) {
    writeFileSync(join(folder, "data", name), text());
    await nextTurn();
  }
  return documents.size;
}
