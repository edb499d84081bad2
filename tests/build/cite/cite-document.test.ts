import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { expect, test } from "vitest";
import { citeDocument } from "../../../src/build/cite/cite-document.ts";
import { openReading } from "../../../src/build/cite/judge-cited.ts";
import { citations } from "../../../src/engine/records/citations.ts";
import { DATA, demoKnowledge, plainFiles } from "../../helpers/demo-data.ts";
import { SEED } from "../../helpers/seed.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";

const reading = openReading(catalogOf(spoiled({ "moved.yaml": ["from: HY-1,", "from: HY57-01,"] })));
const LETTER = `\uFEFF---\r
date: 1958-06-01\r
---\r
HY57-01, [[HY57-01|the pump]] and https://hollin.example/changes/records/HY57-01/.\r
FR58-01 holds; HY57-O1 does not.\r
`;

test("each finding has its place, its line and the mended citation", () => {
  const { citations, findings } = citeDocument(reading, "letter.md", LETTER);
  expect(citations).toBe(5);
  expect(
    findings.map(({ line, column, rule, written, mended }) => `${line}:${column} ${rule} ${written} → ${mended}`),
  ).toEqual([
    "4:1 moved HY57-01 → HY59-01",
    "4:10 moved [[HY57-01|the pump]] → [[HY59-01|the pump]]",
    "4:35 moved https://hollin.example/changes/records/HY57-01/ → https://hollin.example/changes/records/HY59-01/",
    "5:1 cancelled in part FR58-01 → undefined",
    "5:16 unknown HY57-O1 → undefined",
  ]);
  expect(findings[4]?.shown).toBe("FR58-01 holds; HY57-O1 does not.");
});

test("mended is only what is certain, and every other byte stays", () => {
  const { fixed } = citeDocument(reading, "letter.md", LETTER);
  expect(fixed).toBe(LETTER.replaceAll("HY57-01", "HY59-01"));
  expect(citeDocument(reading, "letter.md", fixed).fixed).toBe(fixed);
});

test("the day may be given", () => {
  const said = (text: string, day?: string): string | undefined =>
    citeDocument(reading, "a.txt", text, day).findings[0]?.message;
  expect(said("FR58-01")).toMatch(/issued 1959-02-01$/);
  expect(said("FR58-01", "1958-12-31")).toMatch(/since, on 1959-02-01$/);
  expect(said("---\ndate: 1958-06-01\n---\nFR58-01", "1960-01-01")).toMatch(/already on 1959-02-01$/);
});

test("what a page does not show is not read", () => {
  expect(citeDocument(reading, "page.html", "<!-- HY57-01 --><p>HY57-01").findings.map(({ column }) => column)).toEqual(
    [20],
  );
});

test("whatever a document holds, its findings show what stands there", () => {
  const piece = fc.oneof(
    fc.string({ maxLength: 6, unit: "grapheme" }),
    fc.constantFrom(
      "[[HY57-01]]",
      "HY57-01",
      " ",
      "\n",
      "\r\n",
      "<!--",
      "<script>",
      "FR58-01",
      "HT-101",
      "[[HT-101|",
      "]]",
    ),
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 15 }), fc.constantFrom("a.md", "a.html"), (pieces, name) => {
      const text = pieces.join("");
      const { findings, fixed } = citeDocument(reading, name, text);
      for (const { line, column, written } of findings) {
        const rest = text
          .replace(/^\uFEFF/, "")
          .split("\n")
          .slice(line - 1)
          .join("\n");
        expect(rest.slice(column - 1, column - 1 + written.length)).toBe(written);
      }
      expect(citeDocument(reading, name, fixed).findings.filter(({ certain }) => certain)).toEqual([]);
    }),
    { seed: SEED, numRuns: 1000 },
  );
});

test("in the records and bulletins of the demonstration there is nothing to mend", async () => {
  const demo = openReading((await demoKnowledge()).catalog);
  for (const { path, text } of [...plainFiles("bulletins/"), ...plainFiles("changes/")]) {
    const { findings, citations: found } = citeDocument(demo, path, readFileSync(join(DATA, path), "utf8"));
    expect(findings, path).toEqual([]);
    expect(found, path).toBeGreaterThanOrEqual(citations(text).length);
  }
});
