import { describe, expect, test } from "vitest";
import { answerSchemas, editorSchemas } from "../../src/build/schemas.ts";
import { QUESTIONS } from "../../src/engine/answers/questions.ts";
import { FILE_KINDS } from "../../src/engine/records/file-kinds.ts";
import { judgedBy } from "../helpers/judged-by-ajv.ts";

type Schema = { $schema?: string; description?: string; properties?: Record<string, object>; required?: string[] };

describe("schemas for editors", () => {
  test("there is one for each kind of file, and it says which file it is about", () => {
    expect([...editorSchemas().keys()]).toEqual(Object.keys(FILE_KINDS).map((kind) => `${kind}.json`));
    for (const [, schema] of editorSchemas()) expect((schema as Schema).description).toMatch(/^\S+\.(yaml|md): /);
  });

  test("the text below the facts is no field that an editor could complete", () => {
    for (const [name, field] of [
      ["change.json", "story"],
      ["bulletin.json", "text"],
    ] as const) {
      const { properties, required } = editorSchemas().get(name) as Schema;
      expect(properties).not.toHaveProperty(field);
      expect(required).not.toContain(field);
      expect(required).toContain("title");
    }
  });

  test("a field with a default may be left out", () => {
    expect((editorSchemas().get("maker.json") as Schema).required).toEqual(["name", "title", "about", "site"]);
  });
});

describe("schemas for programs", () => {
  test("there is one for every answer, and for a question, a car, the graph, the words, the manifest and findings", () => {
    expect([...answerSchemas().keys()].sort()).toEqual(
      [
        ...Object.keys(QUESTIONS).map((name) => `answer-${name}.json`),
        "question.json",
        "car.json",
        "graph.json",
        "vocabulary.json",
        "manifest.json",
        "findings.json",
      ].sort(),
    );
  });

  test("no name stands in both, for they are published in one folder", () => {
    const names = [...editorSchemas().keys(), ...answerSchemas().keys()];
    expect(new Set(names).size).toBe(names.length);
  });
});

test.each([...editorSchemas(), ...answerSchemas()])("%s is a JSON Schema 2020-12 that Ajv can use", (_, schema) => {
  expect((schema as Schema).$schema).toBe("https://json-schema.org/draft/2020-12/schema");
  expect(judgedBy(schema)(7)).not.toEqual([]);
});
