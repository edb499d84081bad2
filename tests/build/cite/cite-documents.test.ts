import { expect, test } from "vitest";
import { citeDocuments } from "../../../src/build/cite/cite-documents.ts";
import { openReading } from "../../../src/build/cite/judge-cited.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";

const reading = openReading(
  catalogOf(
    spoiled({
      "moved.yaml": "moved:\n  - { kind: record, from: FRAME-HOLES-1, to: FR58-01, why: renamed }\n",
      "changes/1959/HY59-01.md": ["{ record: FR58-01, scope: line=B }", "{ record: FR58-01 }"],
    }),
  ),
);
const A = { file: "a.md", text: "[[FRAME-HOLES-1]], [[HT-999]]" };
const B = { file: "b.md", text: "[[HY59-01]] ends [[FRAME-HOLES-1]]" };
const shown = (found: readonly { file: string; line: number; column: number; rule: string }[]): string[] =>
  found.map(({ file, line, column, rule }) => `${file}:${line}:${column} ${rule}`);

test("what there is to look at, and nothing is mended unasked", () => {
  const { citations, mended, findings, faults } = citeDocuments(reading, [A, B]);
  expect(citations).toBe(4);
  expect(shown(findings)).toEqual(["a.md:1:1 moved", "a.md:1:1 cancelled", "a.md:1:20 unknown", "b.md:1:18 moved"]);
  expect([mended, faults]).toEqual([[], []]);
});

test("codes of somebody else are told apart, before and after mending, and are no citations", () => {
  const letter = { file: "c.md", text: "[[FRAME-HOLES-1]] and your XY12-34" };
  const before = citeDocuments(reading, [letter]);
  expect([before.citations, shown(before.strange)]).toEqual([1, ["c.md:1:28 strange"]]);
  expect(shown(before.findings)).toEqual(["c.md:1:1 moved", "c.md:1:1 cancelled"]);
  const after = citeDocuments(reading, [letter], { write: () => undefined });
  expect([after.citations, shown(after.strange), shown(after.findings)]).toEqual([
    1,
    ["c.md:1:22 strange"],
    ["c.md:1:1 cancelled"],
  ]);
});

test("what is left after mending is told at its place in the document as it is then", () => {
  const written = new Map<string, string>();
  const { mended, findings, faults } = citeDocuments(reading, [A, B], {
    write: (file, text, read) => {
      written.set(file, text);
      // What the writer compares with what lies there by then.
      expect(read).toBe((file === "a.md" ? A : B).text);
      return undefined;
    },
  });
  expect(written).toEqual(
    new Map([
      ["a.md", "[[FR58-01]], [[HT-999]]"],
      ["b.md", "[[HY59-01]] ends [[FR58-01]]"],
    ]),
  );
  expect(shown(mended)).toEqual(["a.md:1:1 moved", "b.md:1:18 moved"]);
  expect(shown(findings)).toEqual(["a.md:1:1 cancelled", "a.md:1:14 unknown"]);
  expect(faults).toEqual([]);
});

test("what cannot be written is not mended, and the others are", () => {
  const { mended, findings, faults } = citeDocuments(reading, [A, B], {
    write: (file) => (file === "a.md" ? "EACCES: permission denied. Nothing was written." : undefined),
  });
  expect(shown(mended)).toEqual(["b.md:1:18 moved"]);
  expect(shown(findings)).toEqual(["a.md:1:1 moved", "a.md:1:1 cancelled", "a.md:1:20 unknown"]);
  expect(faults).toEqual(["a.md: EACCES: permission denied. Nothing was written."]);
});
