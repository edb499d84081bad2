import { describe, expect, test } from "vitest";
import { type Finding, readFolder } from "../../../src/build/data/read-folder.ts";
import { countFindings, showFinding } from "../../../src/build/data/show-findings.ts";
import { onDisk, type Spoil, spoiled } from "../../helpers/tiny-folder.ts";

/** What a person sees in the terminal when the folder is called data. */
async function shown(spoil: Spoil): Promise<string> {
  const { findings } = await readFolder(await onDisk(spoiled(spoil)));
  return findings.map((finding) => showFinding(finding, "data")).join("\n\n");
}

test("a finding shows its place, the line with a mark under the fault, and what to do", async () => {
  expect(
    await shown({
      "changes/1959/HY59-01.md": ["place: lift arms, part: none", "place: lift arm, part: HT-l02"],
      "maker.yaml": ["title: Hollin", "titel: Hollin"],
    }),
  ).toBe(`data/changes/1959/HY59-01.md:12:14: error: no place is called 'lift arm'
    12 |   - { place: lift arm, part: HT-l02, scope: line=H }
       |              ^^^^^^^^
    → did you mean 'lift arms'?

data/changes/1959/HY59-01.md:12:30: error: no part is called 'HT-l02'
    12 |   - { place: lift arm, part: HT-l02, scope: line=H }
       |                              ^^^^^^
    → did you mean 'HT-102'?

data/maker.yaml:1:1: error: 'title' is missing
     1 | name: Hollin Tractor Works
       | ^
    → What the site is called.

data/maker.yaml:2:1: error: no field is called 'titel' here
     2 | titel: Hollin model changes
       | ^^^^^
    → did you mean 'title'?`);
});

test("a missing file has no line to show", async () => {
  expect(await shown({ "vehicles/traits.yaml": undefined })).toBe(
    `data/vehicles/traits.yaml:1:1: error: the file is missing
    → describe there by which traits cars differ; the README shows one`,
  );
});

describe("the mark stands under the fault", () => {
  const finding = (text: string, column: number, length: number): Finding => ({
    severity: "error",
    rule: "shape",
    file: "x.yaml",
    path: [],
    message: "wrong",
    hint: "mend it",
    position: { line: 7, column, length },
    shown: text,
  });
  /** The characters over the mark. */
  const marked = (text: string, column: number, length: number): [string, string] => {
    const [, line = "", mark = ""] = showFinding(finding(text, column, length), "data").split("\n");
    return [line.slice(9), line.slice(mark.indexOf("^"), mark.lastIndexOf("^") + 1)];
  };

  // text, column, length, the line as shown, the marked piece
  const CASES: [string, string, number, number, string, string][] = [
    ["a short line", "name: wrong", 7, 5, "name: wrong", "wrong"],
    ["tabs become blanks", "\tname:\twrong", 8, 5, " name: wrong", "wrong"],
    ["signs that colour a terminal become blanks", "a\u001b[31mwrong\u001b[0m", 7, 5, "a [31mwrong [0m", "wrong"],
    ["signs that turn the line round become blanks", "a\u202ewrong", 3, 5, "a wrong", "wrong"],
    ["a mark never runs over the end of the line", "name: wrong", 7, 500, "name: wrong", "wrong"],
    ["a long line is cut before the fault", `${"x".repeat(150)}wrong`, 151, 5, `…${"x".repeat(49)}wrong`, "wrong"],
    ["a long line is cut behind the fault", `ab wrong${"x".repeat(150)}`, 4, 5, `ab wrong${"x".repeat(92)}…`, "wrong"],
    [
      "a long line is cut on both sides",
      `${"x".repeat(150)}wrong${"y".repeat(150)}`,
      151,
      5,
      `…${"x".repeat(49)}wrong${"y".repeat(46)}…`,
      "wrong",
    ],
  ];
  test.each(CASES)("%s", (_, text, column, length, line, piece) => {
    expect(marked(text, column, length)).toEqual([line, piece]);
  });

  test("what a file says cannot colour the message either", () => {
    const told = showFinding({ ...finding("x", 1, 1), message: "no part '\u001b[31m'", hint: "\u0007" }, "data");
    expect(told).toBe("data/x.yaml:7:1: error: no part ' [31m'\n     7 | x\n       | ^\n    →  ");
  });
});

describe("findings are counted in words", () => {
  const CASES: [number, number, string][] = [
    [0, 0, "0 errors"],
    [1, 0, "1 error"],
    [2, 0, "2 errors"],
    [0, 1, "1 warning"],
    [2, 1, "2 errors, 1 warning"],
    [1, 2, "1 error, 2 warnings"],
  ];
  test.each(CASES)("%i and %i: %s", (errors, warnings, words) => {
    const some = (count: number, severity: "error" | "warning"): Finding[] =>
      Array.from({ length: count }, () => ({ severity }) as Finding);
    expect(countFindings([...some(errors, "error"), ...some(warnings, "warning")])).toBe(words);
  });
});
