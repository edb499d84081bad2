/** The least that a check has to do: every file of a data folder read, and parsed by the YAML library. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "yaml";

const [, , folder = ""] = process.argv;
let files = 0;
for (const path of readdirSync(folder, { recursive: true, encoding: "utf8" })) {
  if (!/\.(yaml|md)$/.test(path)) continue;
  const text = readFileSync(join(folder, path), "utf8");
  parse(path.endsWith(".md") ? text.slice(4, text.indexOf("\n---\n", 4)) : text);
  files++;
}
console.log(`${files} files`);
