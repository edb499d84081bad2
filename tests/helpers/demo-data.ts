/** The data folder of the repository: as the engine reads it, and once more plainly, with a YAML reader alone. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "yaml";
import { readFolder } from "../../src/build/data/read-folder.ts";
import { type Knowledge, openKnowledge } from "../../src/engine/answers/knowledge.ts";
import { inShort } from "./tiny-folder.ts";

export const DATA = "data";

export async function demoKnowledge(): Promise<Knowledge> {
  const { catalog, findings } = await readFolder(DATA);
  if (!catalog) throw new Error(findings.map(inShort).join("\n"));
  return openKnowledge(catalog, { layout: false });
}

export interface PlainFile {
  /** Path inside the data folder. */
  readonly path: string;
  /** The facts of a Markdown file, or the whole of a YAML file. */
  // biome-ignore lint/suspicious/noExplicitAny: what a file holds is not known before it is looked at.
  readonly facts: any;
  /** The text below the facts. */
  readonly text: string;
}

/** Every file of the data folder whose path begins so. */
export function plainFiles(under = ""): PlainFile[] {
  return readdirSync(DATA, { recursive: true, encoding: "utf8" })
    .map((path) => path.replaceAll("\\", "/"))
    .filter((path) => path.startsWith(under) && /\.(yaml|md)$/.test(path))
    .sort()
    .map((path) => {
      const whole = readFileSync(join(DATA, path), "utf8");
      const [, facts = whole, text = ""] = path.endsWith(".md")
        ? (/^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(whole) ?? [])
        : [];
      return { path, facts: parse(facts), text };
    });
}
