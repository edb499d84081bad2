import { expect, test } from "vitest";
import { onPageFiles } from "../../../src/build/dev/on-page-files.ts";

test("the script is one that a browser reads, and the style sheet is there", async () => {
  const { script, style } = await onPageFiles();
  expect(script).toContain("new EventSource(");
  expect(script).not.toMatch(/\binterface\b|\bimport\b/);
  expect(style).toContain(".yearmark-dev {");
});
