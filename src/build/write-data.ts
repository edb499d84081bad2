/** What machines read: the graph, the lines, the schemas. */
import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { toDocument } from "../engine/graph/document.ts";
import { toGexf } from "../engine/graph/to-gexf.ts";
import { linesIndexOf } from "../engine/records/lines-index.ts";
import { sliceOf } from "../engine/records/slice.ts";
import type { Site } from "../site/site.ts";
import { answerSchemas, editorSchemas } from "./schemas.ts";

/** Returns how many files were written. */
export async function writeData(site: Site, folder: string): Promise<number> {
  const { catalog, graph } = site.knowledge;
  const json = (value: unknown): string => `${JSON.stringify(value)}\n`;
  const files = new Map<string, string>([
    ["graph.json", json(toDocument(graph))],
    ["graph.gexf", toGexf(graph, catalog.maker.title)],
    ["lines.json", json(linesIndexOf(catalog))],
    ...catalog.lines.map((line): [string, string] => [`lines/${line.id}.json`, json(sliceOf(catalog, line))]),
    ...[...answerSchemas(), ...editorSchemas()].map(([name, schema]): [string, string] => [
      `schemas/${name}`,
      `${JSON.stringify(schema, null, 2)}\n`,
    ]),
  ]);
  for (const inner of ["schemas", "lines"]) await mkdir(join(folder, "data", inner), { recursive: true });
  for (const [name, text] of files) await writeFile(join(folder, "data", name), text);
  return files.size;
}
