/** A JSON document for each record and part: the same answers that the command line gives. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setImmediate as nextTurn } from "node:timers/promises";
import { answerPart } from "../engine/answers/answer-part.ts";
import { answerRecord } from "../engine/answers/answer-record.ts";
import type { Knowledge } from "../engine/answers/knowledge.ts";

/**
 * Returns how many files were written. Not by Eleventy, which keeps in memory whatever it writes.
 *
 * To wait for the disk after each of thousands of small files takes three times as long as to write them at once; but
 * what else is under way (the search index is) gets a turn after each.
 */
export async function writeAnswers(knowledge: Knowledge, folder: string): Promise<number> {
  const { records, parts } = knowledge.catalog;
  const write = (name: string, answer: object): Promise<void> => {
    writeFileSync(join(folder, "data", name), `${JSON.stringify(answer, null, 1)}\n`);
    return nextTurn();
  };
  for (const kind of ["records", "parts"]) mkdirSync(join(folder, "data", kind), { recursive: true });
  for (const id of records.keys()) await write(`records/${id}.json`, answerRecord(knowledge, id));
  for (const number of parts.keys()) await write(`parts/${number}.json`, answerPart(knowledge, number));
  return records.size + parts.size;
}
