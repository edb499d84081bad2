/** A table of tests/fixtures: lines of fields with tabs between them, without comments and the row that names the columns. */
import { readFileSync } from "node:fs";

export function fixtureRows<T extends readonly string[]>(name: string): T[] {
  return readFileSync(`tests/fixtures/${name}.tsv`, "utf8")
    .split("\n")
    .filter((line) => line !== "" && !line.startsWith("#"))
    .slice(1)
    .map((line) => line.split("\t") as unknown as T);
}
