import { describe, expect, test } from "vitest";
import type { Finding } from "../../../src/build/data/read-folder.ts";
import { sayChange, sayFindings } from "../../../src/build/dev/say-change.ts";

// files, whether the data is good, what is said
test.each([
  [["a.md"], true, "a.md: shown after 0.31 s"],
  [["a.md", "b.md", "c.md"], true, "a.md, b.md, c.md: shown after 0.31 s"],
  [["a.md", "b.md", "c.md", "d.md", "e.md"], true, "a.md, b.md, c.md and 2 more: shown after 0.31 s"],
  [["a.md"], false, "a.md: there are errors, so the pages stay as they were"],
  [[], true, "the folder: shown after 0.31 s"],
])("a change of %j, good: %s", (files, isGood, said) => {
  expect(sayChange({ files, isGood }, 312)).toBe(said);
});

describe("complaints", () => {
  const finding = (file: string, severity: Finding["severity"] = "error"): Finding => ({
    ...{ severity, rule: "shape", file, path: [], message: "wrong", hint: "mend it" },
    ...{ position: { line: 1, column: 2, length: 1 }, shown: "" },
  });
  const [a, b, c] = [finding("a.md"), finding("b.md"), finding("c.md", "warning")];
  const shown = (name: string, severity = "error"): string => `\ndata/${name}:1:2: ${severity}: wrong\n    → mend it`;

  // now, before, what is said
  test.each([
    ["the first ones", [a, c], [], `${shown("a.md")}\n${shown("c.md", "warning")}\n\n1 error, 1 warning.`],
    ["none at all", [], [], undefined],
    ["the same", [a, c], [a, c], undefined],
    ["one more", [a, b], [a], `${shown("b.md")}\n\n2 errors, 1 of them known.`],
    ["one less", [a], [a, b], "1 error, 1 of them known."],
    ["none any more", [], [a], "Nothing to complain about any more."],
  ] as const)("%s", (_, now, before, said) => {
    expect(sayFindings(now, before, "data")).toBe(said);
  });

  test("hundreds do not fill the terminal", () => {
    const many = Array.from({ length: 25 }, (_, i) => finding(`${i}.md`));
    expect(sayFindings(many, [], "data")).toMatch(
      /19\.md.*\n.*\n\nand 5 more: npm run check shows all\n\n25 errors\.$/,
    );
  });
});
