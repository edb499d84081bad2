import { mkdtemp, readdir, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { answerSchemas, editorSchemas } from "../../src/build/schemas.ts";
import { writeData } from "../../src/build/write-data.ts";
import { toDocument } from "../../src/engine/graph/document.ts";
import { Site } from "../../src/site/site.ts";
import { judgedBy } from "../helpers/judged-by-ajv.ts";
import { tinyKnowledge } from "../helpers/tiny-knowledge.ts";

async function written(): Promise<{ count: number; files: Map<string, string> }> {
  const folder = await mkdtemp(join(tmpdir(), "yearmark-data-"));
  onTestFinished(() => rm(folder, { recursive: true }));
  const count = await writeData(new Site(tinyKnowledge()), folder);
  const names = (await readdir(folder, { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
  const texts = await Promise.all(
    names.map(
      async (name) => [name.slice(folder.length + 1).replaceAll("\\", "/"), await readFile(name, "utf8")] as const,
    ),
  );
  return { count, files: new Map(texts) };
}

test("the graph, the lines and every schema are written, and counted", async () => {
  const { count, files } = await written();
  expect(count).toBe(files.size);
  expect([...files.keys()].sort()).toEqual(
    [
      "data/graph.gexf",
      "data/graph.json",
      "data/lines.json",
      "data/lines/B.json",
      "data/lines/H.json",
      ...[...editorSchemas().keys(), ...answerSchemas().keys()].map((name) => `data/schemas/${name}`),
    ].sort(),
  );
  expect(JSON.parse(files.get("data/graph.json") as string)).toEqual(toDocument(tinyKnowledge().graph));
  expect(files.get("data/graph.gexf")).toContain("<description>Hollin model changes</description>");
});

test("what is written holds for the schema that is written beside it", async () => {
  const { files } = await written();
  for (const name of ["graph.json"]) {
    const judge = judgedBy(JSON.parse(files.get(`data/schemas/${name}`) as string));
    expect(judge(JSON.parse(files.get(`data/${name}`) as string))).toEqual([]);
  }
});

test("the same records give the same bytes", async () => {
  expect((await written()).files).toEqual((await written()).files);
});
