import { existsSync, globSync } from "node:fs";
import { expect, test } from "vitest";
import { editorSettings } from "../../../src/build/write/editor-settings.ts";
import { kindOf } from "../../../src/engine/records/file-kinds.ts";

type Schemas = Record<string, string[]>;
const PATHS = globSync("**/*.yaml", { cwd: "data" }).map((path) => path.replaceAll("\\", "/"));
const SCHEMAS = (editorSettings("schemas", "data", PATHS) as { "yaml.schemas": Schemas })["yaml.schemas"];

test("every YAML file of the demonstration is checked by the schema of its kind, and by no other", () => {
  expect(PATHS.length).toBeGreaterThan(50);
  const checked = Object.entries(SCHEMAS).flatMap(([schema, globs]) =>
    globSync(globs).map((path) => `${path.replaceAll("\\", "/")} ${schema}`),
  );
  expect(checked.sort()).toEqual(PATHS.map((path) => `data/${path} ./schemas/${kindOf(path)}.json`).sort());
});

test("files to come are checked where no other kind lies", () => {
  expect(SCHEMAS["./schemas/parts.json"]).toEqual(["data/parts/*.yaml"]);
  expect(SCHEMAS["./schemas/vehicles.json"]?.join()).not.toContain("*");
});

test("the schemas are there", () => {
  for (const [schema, [file = ""]] of Object.entries(SCHEMAS))
    if (globSync(file).length > 0) expect(existsSync(schema), schema).toBe(true);
});
