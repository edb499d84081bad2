import { existsSync, globSync } from "node:fs";
import { expect, test } from "vitest";
import { editorSettings } from "../../../src/build/write/editor-settings.ts";
import { kindOf } from "../../../src/engine/records/file-kinds.ts";

const schemas = (editorSettings("schemas", "data") as { "yaml.schemas": Record<string, string[]> })["yaml.schemas"];

test("every YAML file of the demonstration is checked by the schema of its kind, and by no other", () => {
  const paths = globSync("data/**/*.yaml").map((path) => path.replaceAll("\\", "/"));
  expect(paths.length).toBeGreaterThan(50);
  const checked = Object.entries(schemas).flatMap(([schema, globs]) => {
    const not = globs.filter((glob) => glob.startsWith("!")).map((glob) => glob.slice(1));
    return globSync(globs.filter((glob) => !glob.startsWith("!")))
      .filter((path) => !not.includes(path))
      .map((path) => `${path} ${schema}`);
  });
  expect(checked.sort()).toEqual(paths.map((path) => `${path} ./schemas/${kindOf(path.slice(5))}.json`).sort());
});

test("the schemas are there", () => {
  for (const schema of Object.keys(schemas))
    if (!schema.endsWith("/checks.json")) expect(existsSync(schema), schema).toBe(true);
});
