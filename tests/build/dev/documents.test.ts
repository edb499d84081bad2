import { expect, test } from "vitest";
import { Documents, LAID_OUT } from "../../../src/build/dev/documents.ts";
import { Site } from "../../../src/site/site.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const documents = new Documents(new Site(tinyKnowledge()));
const NONE = new Map<string, string>();

// That they are what the build writes is tested beside dev-server.ts.
test.each([
  "lines.json",
  "lines/B.json",
  "records/HY59-01.json",
  "parts/HT-102.json",
  "schemas/change.json",
  "vocabulary.json",
  "ask/systems/hydraulics.json",
  ...LAID_OUT,
])("there is %s", (name) => {
  expect(documents.find(name, NONE)).toMatch(/^[{[<]/);
});

test("what the text search calls a record stands in its card", () => {
  const cards = documents.find("ask/systems/hydraulics.json", new Map([["/records/HY59-01/", "en_1"]]));
  expect(JSON.parse(cards as string)).toContainEqual(expect.objectContaining({ id: "HY59-01", page: "en_1" }));
});

test.each(["records/HY60-01.json", "ask/systems/brakes.json", "", "toString"])("there is no %s", (name) => {
  expect(documents.find(name, NONE)).toBeUndefined();
});
