import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { readFolder } from "../../src/build/data/read-folder.ts";
import { writeAnswers } from "../../src/build/write-answers.ts";
import { answerPart } from "../../src/engine/answers/answer-part.ts";
import { answerRecord } from "../../src/engine/answers/answer-record.ts";
import { openKnowledge } from "../../src/engine/answers/knowledge.ts";

test("every record and part gets one document, which is the answer of the command line", async () => {
  const { catalog } = await readFolder("tests/fixtures/another-maker");
  if (!catalog) throw new Error("the fixture has errors");
  const knowledge = openKnowledge(catalog, { layout: false });
  const folder = mkdtempSync(join(tmpdir(), "answers-"));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const written = await writeAnswers(knowledge, folder);
  const read = (path: string): unknown => JSON.parse(readFileSync(join(folder, "data", path), "utf8"));
  const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));
  expect(readdirSync(join(folder, "data/records"))).toHaveLength(catalog.records.size);
  expect(readdirSync(join(folder, "data/parts"))).toHaveLength(catalog.parts.size);
  expect(written).toBe(catalog.records.size + catalog.parts.size);
  for (const id of catalog.records.keys())
    expect(read(`records/${id}.json`)).toEqual(plain(answerRecord(knowledge, id)));
  for (const id of catalog.parts.keys()) expect(read(`parts/${id}.json`)).toEqual(plain(answerPart(knowledge, id)));
});
