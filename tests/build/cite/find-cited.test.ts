import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { findCited } from "../../../src/build/cite/find-cited.ts";
import { plainDashes } from "../../../src/build/cite/id-shapes.ts";
import { seenText } from "../../../src/build/cite/readable-text.ts";
import { SEED } from "../../helpers/seed.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";

const catalog = catalogOf(spoiled({ "moved.yaml": ["from: HY-1,", "from: HY57-01,"] }));
const found = (text: string): string[] =>
  findCited(text, catalog).map(({ as, id, kinds, from, to, idFrom, idTo }) => {
    expect(plainDashes(decodeURIComponent(seenText(text.slice(idFrom, idTo)).text))).toBe(id);
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
  // A cell ends where the next begins.
  ["| https://other.example/|HY59-01|", ["text record HY59-01"]],
  [
    "| https://other.example/a|https://hollin.example/changes/records/HY59-02/|",
    ["link record https://hollin.example/changes/records/HY59-02/"],
  ],
  // Questions about a part or a component; of the rest of the address nothing.
  ["https://hollin.example/changes/fit/?fact=line:B&part=HT-101&x=HY59-01", ["link part part=HT-101"]],
  [
    "(https://hollin.example/changes/apart/?component=pump#pump) HY59-01",
    ["link component component=pump", "text record HY59-01"],
  ],
  [
    '"http://hollin.example/changes/fit?component=pump&amp;part=HT%2D999." https://hollin.example/changes/map/?focus=part:HT-101 https://other.example/changes/fit/?part=HT-102',
    ["link component component=pump", "link part part=HT%2D999"],
  ],
  // What is seen as an id is one.
  [
    "HY59&#45;01, HY59&#x2D;02; [[HT&ndash;101]]",
    ["text record HY59&#45;01", "text record HY59&#x2D;02", "citation any [[HT&ndash;101]]"],
  ],
  [
    "HY59\\-01 HY59-<wbr>01 HY59\u00AD-01 hy59\u201101",
    ["text record HY59\\-01", "text record HY59-<wbr>01", "text record HY59\u00AD-01", "text record hy59\u201101"],
  ],
  [
    "https://hollin.example/changes/records/HY59%2D04/",
    ["link record https://hollin.example/changes/records/HY59%2D04/"],
  ],
  ["https://hollin.example/changes/records/HY59%2001/", ["link record https://hollin.example/changes/records/HY59"]],
  [
    "https://hollin.example/changes/Records/HY59\u201104",
    ["link record https://hollin.example/changes/Records/HY59\u201104"],
  ],
  [
    "https://hollin.example/changes/records/HY59%e2%80%9104\u2013see",
    ["link record https://hollin.example/changes/records/HY59%e2%80%9104"],
  ],
  ["HY59-01.md HY59 -01", []],
];

describe("what cites the records", () => {
  test.each(TEXTS)("%s", (text, what) => {
    expect(found(text)).toEqual(what);
  });

  test("a code with letters that no id here has is strange, unless it is one slip away from an id", () => {
    // HY57-01 moved, TB-1 is a bulletin.
    const text = "XY12-34 HY12-34 HX59-01 TB12-34 [[XY12-34]] https://hollin.example/changes/records/XY12-34/";
    expect(findCited(text, catalog).map(({ id, as, strange }) => [id, as, strange])).toEqual([
      ["XY12-34", "text", true],
      ["HY12-34", "text", undefined],
      ["HX59-01", "text", undefined],
      ["TB12-34", "text", undefined],
      ["XY12-34", "citation", undefined],
      ["XY12-34", "link", undefined],
    ]);
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

test("a long row of hyphens takes no longer than its length", () => {
  expect(findCited("A-".repeat(200_000), catalog)).toEqual([]);
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
      "&#45;",
      "\\-",
      "<wbr>",
      "https://hollin.example/changes/fit/?part=",
      "&amp;component=pump",
      "%2D",
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
