import { expect, test } from "vitest";
import type { Cited } from "../../../src/build/cite/find-cited.ts";
import { judgeCited, openReading } from "../../../src/build/cite/judge-cited.ts";
import type { Move } from "../../../src/engine/records/catalog.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";

const MOVED =
  "moved:\n  - { kind: record, from: HY-1, to: HY-2, why: renamed }\n  - { kind: record, from: HY-2, to: HY59-01, why: again }\n  - { kind: part, from: HT-099, why: never delivered }\n";
const folder = spoiled({ "moved.yaml": MOVED });
const whole = spoiled({
  "moved.yaml": MOVED,
  "changes/1959/HY59-01.md": ["{ record: FR58-01, scope: line=B }", "{ record: FR58-01 }"],
});
const renamedToEnded = spoiled({
  "moved.yaml": "moved:\n  - { kind: record, from: HY-1, to: FR58-01, why: renamed }\n",
  "changes/1959/HY59-01.md": ["{ record: FR58-01, scope: line=B }", "{ record: FR58-01 }"],
});
const all = spoiled({
  "changes/1959/HY59-01.md": ["{ record: FR58-01, scope: line=B }", "{ record: FR58-01, scope: my>=1957 }"],
});
const gone = spoiled({
  "changes/1958/FR58-01.md": ["starts:", "withdrawn: The frame was not drilled.\ninstead: [HY59-01]\nstarts:"],
});
const nothing = spoiled({
  "changes/1958/FR58-01.md": ["starts:", "withdrawn: It was a slip.\nstarts:"],
  "changes/1959/HY59-01.md": ["cancels:\n  - { record: FR58-01, scope: line=B }\n", ""],
});
const some = spoiled({
  "changes/1959/HY59-01.md": ["new: HT-102, with: [HT-201] }", "new: HT-102, with: [HT-201], scope: line=B }"],
});

const cited = (kinds: Move["kind"][], id: string): Cited => ({
  as: "citation",
  id,
  kinds,
  from: 0,
  to: 0,
  idFrom: 0,
  idTo: 0,
});
test("a code that only looks like an id is strange, and not compared with ids", () => {
  const strange: Cited = { ...cited(["record"], "XY12-34"), as: "text", strange: true };
  expect(judgeCited(openReading(catalogOf(folder)), strange, new Set())).toEqual([
    {
      rule: "strange",
      message: "'XY12-34' looks like the id of a record and is none: no id here has its letters",
      hint: "leave it where somebody else's code is meant",
    },
  ]);
});
const ANY: Move["kind"][] = ["record", "part", "component", "bulletin"];

// folder, kinds, id, other ids in the document, its day; rule and message, hint, what to cite instead
const CASES: [typeof folder, Move["kind"][], string, string[], string | undefined, string[]][] = [
  [folder, ANY, "HY59-01", [], undefined, []],
  [folder, ANY, "pump", [], undefined, []],
  [folder, ANY, "HT-102", [], undefined, []],
  [folder, ["system"], "hydraulics", [], undefined, []],
  [
    folder,
    ANY,
    "HY59-1",
    [],
    undefined,
    ["unknown: no record, part, component or bulletin is called 'HY59-1'", "did you mean 'HY59-01'?", "HY59-01"],
  ],
  [folder, ["part"], "HY59-01", [], undefined, ["unknown: no part is called 'HY59-01'", "mend the id"]],
  [folder, ["record"], "HY-1", [], undefined, ["moved: record HY-1 is HY59-01 now", "renamed", "HY59-01"]],
  [
    renamedToEnded,
    ["record"],
    "HY-1",
    [],
    undefined,
    [
      "moved: record HY-1 is FR58-01 now",
      "renamed",
      "FR58-01",
      "cancelled: record FR58-01 is cancelled by HY59-01, issued 1959-02-01",
      "cite HY59-01, which says what to do",
      "HY59-01",
    ],
  ],
  [folder, ANY, "HT-099", [], undefined, ["withdrawn: part HT-099 was withdrawn", "never delivered"]],
  [
    gone,
    ANY,
    "FR58-01",
    [],
    undefined,
    ["withdrawn: record FR58-01 was withdrawn: The frame was not drilled.", "read HY59-01", "HY59-01"],
  ],
  [
    nothing,
    ANY,
    "FR58-01",
    [],
    undefined,
    ["withdrawn: record FR58-01 was withdrawn: It was a slip.", "nothing follows it"],
  ],
  [
    folder,
    ANY,
    "FR58-01",
    [],
    undefined,
    [
      "cancelled in part: record FR58-01 is cancelled for Badger by HY59-01, issued 1959-02-01",
      "cite HY59-01 beside it for these cars",
    ],
  ],
  [
    whole,
    ANY,
    "FR58-01",
    [],
    undefined,
    [
      "cancelled: record FR58-01 is cancelled by HY59-01, issued 1959-02-01",
      "cite HY59-01, which says what to do",
      "HY59-01",
    ],
  ],
  [
    all,
    ANY,
    "FR58-01",
    [],
    undefined,
    [
      "cancelled: record FR58-01 is cancelled by HY59-01, issued 1959-02-01",
      "cite HY59-01, which says what to do",
      "HY59-01",
    ],
  ],
  [
    whole,
    ANY,
    "FR58-01",
    [],
    "1958-12-01",
    [
      "cancelled: record FR58-01 is cancelled by HY59-01 since, on 1959-02-01",
      "cite HY59-01, which says what to do",
      "HY59-01",
    ],
  ],
  [
    whole,
    ANY,
    "FR58-01",
    [],
    "1959-02-01",
    [
      "cancelled: record FR58-01 is cancelled by HY59-01, already on 1959-02-01",
      "cite HY59-01, which says what to do",
      "HY59-01",
    ],
  ],
  [whole, ANY, "FR58-01", ["HY59-01"], undefined, []],
  [
    folder,
    ANY,
    "HT-101",
    [],
    undefined,
    [
      "superseded: part HT-101 is superseded by HT-102 (HY59-01), issued 1959-02-01",
      "a delivery rule, no promise that it fits: see whether HT-102 or HY59-01 belongs beside it",
      "HT-102",
    ],
  ],
  [
    some,
    ANY,
    "HT-101",
    [],
    undefined,
    [
      "superseded: part HT-101 is superseded for Badger by HT-102 (HY59-01), issued 1959-02-01",
      "a delivery rule, no promise that it fits: see whether HT-102 or HY59-01 belongs beside it",
    ],
  ],
  [folder, ANY, "HT-101", ["HT-102"], undefined, []],
];

test.each(CASES)("%#: %j %s", (folder, kinds, id, others, day, said) => {
  const judged = judgeCited(openReading(catalogOf(folder)), cited(kinds, id), new Set([id, ...others]), day);
  expect(
    judged.flatMap(({ rule, message, hint, instead }) => [`${rule}: ${message}`, hint, ...(instead ? [instead] : [])]),
  ).toEqual(said);
  expect(judged.filter(({ certain }) => certain).map(({ rule }) => rule)).toEqual(
    judged.filter(({ rule }) => rule === "moved").map(() => "moved"),
  );
});
