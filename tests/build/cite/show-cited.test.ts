import { expect, test } from "vitest";
import type { CiteFinding } from "../../../src/build/cite/cite-document.ts";
import { countCited, showCited, showMended, showStrange } from "../../../src/build/cite/show-cited.ts";

const FINDING: CiteFinding = {
  ...{ file: "letters/may.md", line: 3, column: 5, written: "HY-1", mended: "HY59-01", shown: "See HY-1." },
  ...{ rule: "moved", message: "record HY-1 is HY59-01 now", hint: "renamed", instead: "HY59-01", certain: true },
};

test("the place, the line, why, and the citation as it should be", () => {
  const text = `letters/may.md:3:5: error: record HY-1 is HY59-01 now
     3 | See HY-1.
       |     ^^^^
    → renamed`;
  expect(showCited(FINDING)).toBe(`${text}\n    → HY59-01 (--fix writes it)`);
  expect(showCited({ ...FINDING, certain: false })).toBe(`${text}\n    → HY59-01`);
  const { mended: _, ...unknown } = FINDING;
  expect(showCited({ ...unknown, file: "may.md" })).toBe(text.replace("letters/", ""));
});

test("what was mended is said in a line", () => {
  expect(showMended(FINDING)).toBe("letters/may.md:3:5: mended: HY-1 → HY59-01 (record HY-1 is HY59-01 now)");
});

test("a code of somebody else is said in a line", () => {
  expect(showStrange({ ...FINDING, message: "'X-1' is none", hint: "leave it" })).toBe(
    "letters/may.md:3:5: 'X-1' is none; leave it",
  );
});

test("all of it is counted", () => {
  expect(countCited(1, 1, 0, 0)).toBe("1 document, 1 citation: nothing to mend");
  expect(countCited(2, 5, 2, 0)).toBe("2 documents, 5 citations: 2 to look at");
  expect(countCited(2, 5, 0, 1)).toBe("2 documents, 5 citations: 1 mended");
  expect(countCited(1, 1, 0, 0, 2)).toBe("1 document, 1 citation: nothing to mend; 2 codes of somebody else");
  expect(countCited(2, 5, 2, 1)).toBe("2 documents, 5 citations: 1 mended, 2 to look at");
});
