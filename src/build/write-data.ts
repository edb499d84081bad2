/** What machines read: the graph, the lines, the schemas. */
import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { toDocument } from "../engine/graph/document.ts";
import { toGexf } from "../engine/graph/to-gexf.ts";
import { linesIndexOf } from "../engine/records/lines-index.ts";
import { sliceOf } from "../engine/records/slice.ts";
import type { Site } from "../site/site.ts";
import { answerSchemas, editorSchemas } from "./schemas.ts";

/** By its name in data/: a document, made when it is asked for. */
export function dataDocuments({ knowledge }: Site): Map<string, () => string> {
  const { catalog } = knowledge;
  const json = (value: unknown): string => `${JSON.stringify(value)}\n`;
  return new Map([
    ["graph.json", () => json(toDocument(knowledge.graph))],
    ["graph.gexf", () => toGexf(knowledge.graph, catalog.maker.title)],
    ["lines.json", () => json(linesIndexOf(catalog))],
    ...catalog.lines.map((line) => [`lines/${line.id}.json`, () => json(sliceOf(catalog, line))] as const),
    ...[...answerSchemas(), ...editorSchemas()].map(
      ([name, schema]) => [`schemas/${name}`, () => `${JSON.stringify(schema, null, 2)}\n`] as const,
    ),
  ]);
}

/** Returns how many files were written. */
export async function writeData(site: Site, folder: string): Promise<number> {
  for (const inner of ["schemas", "lines"]) await mkdir(join(folder, "data", inner), { recursive: true });
  const documents = dataDocuments(site);
  for (const [name, text] of documents) await writeFile(join(folder, "data", name), text());
  return documents.size;
}
