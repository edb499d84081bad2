import { expect, test } from "vitest";
import { factsOf } from "../../../src/build/write/facts-of.ts";
import { sourceOf, TINY } from "../../helpers/tiny-folder.ts";

test("the facts of a Markdown file stand between its first two lines of '---'", () => {
  const text = "---\nid: A\n---\n\nStory\n---\nmore\n";
  const halves = factsOf("change", text);
  expect(halves?.yaml).toBe("id: A\n");
  expect(text.slice(halves?.at).startsWith("id: A")).toBe(true);
  expect(text.slice(halves?.bodyAt)).toBe("\nStory\n---\nmore\n");
});

test("with a byte order mark and the line ends of Windows", () => {
  const text = "\uFEFF---\r\nid: A\r\n---\r\nStory";
  const halves = factsOf("bulletin", text);
  expect(halves).toMatchObject({ yaml: "id: A\r\n", body: "text" });
  expect(text.slice(halves?.bodyAt)).toBe("Story");
});

test("a YAML file is all facts", () => {
  expect(factsOf("parts", "a: 1\n")).toEqual({ yaml: "a: 1\n", at: 0, body: undefined, bodyAt: 5 });
});

test("where there are none, the reader of the folder finds none either", () => {
  for (const text of ["", "id: A\n---\n", "---\nid: A\n", "\n---\nid: A\n---\n"]) {
    expect(factsOf("change", text)).toBeUndefined();
    expect(sourceOf("changes/1959/A.md", text).faults).toHaveLength(1);
  }
  expect(factsOf("change", TINY["changes/1958/FR58-01.md"] as string)).toBeDefined();
});
