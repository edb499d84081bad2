import { expect, test } from "vitest";
import type { Mention, Renamed } from "../../../src/build/write/rename-id.ts";
import { showNotRenamed, showRenamed } from "../../../src/build/write/show-renamed.ts";

const at = (file: string, line: number, as: Mention["as"], shown: string, why?: string): Mention => {
  return { file, line, column: 3, as, shown, ...(why === undefined ? {} : { why }) };
};
const RENAMED: Renamed = {
  kind: "bulletin",
  files: new Map([
    ["bulletins/TB-2.md", ""],
    ["moved.yaml", ""],
  ]),
  gone: new Map([["bulletins/TB-1.md", "bulletins/TB-2.md"]]),
  mentions: [
    at("bulletins/TB-1.md", 2, "reference", "id: TB-1"),
    at("bulletins/TB-1.md", 9, "text", "  TB-1 says so."),
    ...Array.from({ length: 12 }, (_, i) => at("words.yaml", i + 1, "left", "- TB-1", "another sort of name")),
  ],
  moved: ["'TB-1' leads to 'TB-2'"],
};
const RENAMING = { old: "TB-1", next: "TB-2", why: "Renamed." };

test("references are counted, words are shown, of what was left not all", () => {
  const text = showRenamed(RENAMED, RENAMING, "data", false);
  expect(text.split("\n").filter((line) => !/words\.yaml:([2-9]|1\d):|- TB-1/.test(line))).toEqual([
    "Renamed the bulletin TB-1 to TB-2.",
    "1 reference in 1 file",
    "1 mention in texts:",
    "  data/bulletins/TB-1.md:9:3",
    "      TB-1 says so.",
    "Left as they are, look yourself:",
    "  data/words.yaml:1:3 (another sort of name)",
    "  and 2 more",
    "data/bulletins/TB-1.md becomes data/bulletins/TB-2.md",
    "moved.yaml: 'TB-1' leads to 'TB-2'",
    "",
    "2 files written. Next: npm run check, and npm run cite for documents that lie elsewhere.",
  ]);
});

test("what would be done is said as such", () => {
  const text = showRenamed(RENAMED, RENAMING, "data", true);
  expect(text).toMatch(/^Would rename/);
  expect(text).toMatch(/Nothing was written\. Leave --dry-run out to do it\.$/);
});

test("why it was refused, and each finding behind it", () => {
  const position = { line: 1, column: 7, length: 4 };
  const finding = {
    severity: "error",
    file: "maker.yaml",
    message: "no",
    hint: "mend it",
    shown: "name: nome",
    position,
  };
  expect(showNotRenamed({ refused: "the folder has errors", findings: [finding as never] }, "data")).toBe(
    "the folder has errors\n\ndata/maker.yaml:1:7: error: no\n     1 | name: nome\n       |       ^^^^\n    → mend it",
  );
});
