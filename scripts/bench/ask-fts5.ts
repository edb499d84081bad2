/** SQLite's own full text search, with stems, by BM25: records that hold any of the words. */
import { DatabaseSync } from "node:sqlite";
import type { SearchResult } from "./ask-score.ts";
import type { RecordText } from "./ask-texts.ts";

export function openFts5(texts: readonly RecordText[]): (text: string) => SearchResult {
  const database = new DatabaseSync(":memory:");
  database.exec("CREATE VIRTUAL TABLE texts USING fts5(id UNINDEXED, text, tokenize = 'porter unicode61')");
  const add = database.prepare("INSERT INTO texts (id, text) VALUES (?, ?)");
  for (const { id, text } of texts) add.run(id, text);
  const find = database.prepare("SELECT id FROM texts WHERE texts MATCH ? ORDER BY bm25(texts), id");
  return (text) => {
    const words = text.match(/\S*[\p{Letter}\p{Number}]\S*/gu) ?? [];
    if (words.length === 0) return { records: [] };
    // In quotation marks a number like 7-0815 is a phrase of two words, and "or" a word.
    const any = words.map((word) => `"${word.replaceAll('"', "")}"`).join(" OR ");
    return { records: find.all(any).map(({ id }) => String(id)) };
  };
}
