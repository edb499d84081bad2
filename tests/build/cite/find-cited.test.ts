import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { findCited } from "../../../src/build/cite/find-cited.ts";
import { SEED } from "../../helpers/seed.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";

const catalog = catalogOf(spoiled({ "moved.yaml": ["from: HY-1,", "from: HY57-01,"] }));
const found = (text: string): string[] =>
  findCited(text, catalog).map(({ as, id, kinds, from, to, idFrom, idTo }) => {
    expect(text.slice(idFrom, idTo).replace("\u2011", "-")).toBe(id);
    return `${as} ${kinds.length === 1 ? kinds[0] : "any"} ${text.slice(from, to)}`;
  });

// text, what is found in it
const TEXTS: [text: string, found: string[]][] = [
  [
    "See [[HY59-01]] and [[ HT-101 |the short one]].",
    ["citation any [[HY59-01]]", "citation any [[ HT-101 |the short one]]"],
  ],
  ["[[nothing]] [[", ["citation any [[nothing]]"]],
  ["[[HY59 01]] if [[ -f file ]] [[Some page]] [[]] [[ ]]", ["citation any [[HY59 01]]"]],
  [
    "<https://hollin.example/changes/records/HY59-01/>.",
    ["link record https://hollin.example/changes/records/HY59-01/"],
  ],
  ["http://HOLLIN.example/changes/parts/HT-101.", ["link part http://HOLLIN.example/changes/parts/HT-101"]],
  [
    "https://hollin.example/changes/data/records/HY59-01.json?x",
    ["link record https://hollin.example/changes/data/records/HY59-01"],
  ],
  [
    "https://hollin.example/changes/systems/hydraulics/#a",
    ["link system https://hollin.example/changes/systems/hydraulics/"],
  ],
  ["https://hollin.example/records/HY59-02/ https://other.example/changes/records/HY59-03/", []],
  [
    "HY59-01 (XY12-34), HY57-01; HY59\u201101",
    ["text record HY59-01", "text record XY12-34", "text record HY57-01", "text record HY59\u201101"],
  ],
  ["hy59-01 HY5901 HY59-1 HY59-O1x HY59-01-2", ["text record hy59-01", "text record HY5901", "text record HY59-1"]],
  ["TB-1 TB-2", ["text bulletin TB-1"]],
  ["HT-101, pump, HT-999, 1959-02-01, 12-34, R-12, T-7", []],
  ["`HY59-01`\n```\nFR58-01\n```", ["text record HY59-01", "text record FR58-01"]],
  ['<a href="/records/HY59-01/">', ["text record HY59-01"]],
];

describe("what cites the records", () => {
  test.each(TEXTS)("%s", (text, what) => {
    expect(found(text)).toEqual(what);
  });

  test("a part that looks like a record is none", () => {
    const catalog = catalogOf(
      spoiled({
        "parts/gasket.yaml": ["HT-290, name", "HT59-90, name"],
        "changes/1959/HY59-01.md": ["kit: HT-290", "kit: HT59-90"],
      }),
    );
    expect(findCited("HT59-90 HT59-91", catalog).map(({ id }) => id)).toEqual(["HT59-91"]);
  });
});

test("whatever a document holds, each place lies in it, and none in another", () => {
  const piece = fc.oneof(
    fc.string({ maxLength: 8 }),
    fc.constantFrom(
      "[[",
      "]]",
      "|",
      "HY59-01",
      "HY59",
      "-01",
      "https://hollin.example/changes/records/",
      "..",
      "\u2011",
      "😀",
      "\n",
    ),
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 20 }), (pieces) => {
      const text = pieces.join("");
      let last = 0;
      for (const { from, to, idFrom, idTo, id } of findCited(text, catalog)) {
        expect([last <= from, from <= idFrom, idFrom < idTo, idTo <= to, to <= text.length]).toEqual(
          Array(5).fill(true),
        );
        expect(id).not.toBe("");
        last = to;
      }
    }),
    { seed: SEED, numRuns: 2000 },
  );
});
