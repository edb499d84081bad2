import { expect, test } from "vitest";
import { findPart } from "../../../src/engine/answers/part-number.ts";
import { catalogOf, spoiled } from "../../helpers/tiny-folder.ts";

// Pumps HT-101 and HT-102 (4411 is cast into the long one), gaskets HT-201 and HT-290; beside them some that look alike.
const catalog = catalogOf(
  spoiled({
    "parts/gasket.yaml": [
      "parts:\n",
      `parts:
  - { number: 7O-1O, name: gasket, castings: ["55-1", "HT-101"] }
  - { number: 70-1L, name: left gasket, castings: ["55-1"] }
  - { number: AB-12, name: gasket }
  - { number: A-B12, name: gasket }
`,
    ],
  }),
);

// typed, what it is taken for, parts
const TYPED: [string, string, ...string[]][] = [
  ["HT-101", "part number", "HT-101"],
  [" HT-101\n", "part number", "HT-101"],
  ["ht-101", "part number", "HT-101"],
  ["HT 101", "part number", "HT-101"],
  ["HT101", "part number", "HT-101"],
  ["HT–101", "part number", "HT-101"],
  ["H.T.1-0-1", "part number", "HT-101"],

  // a worn number misread
  ["HT-1O1", "part number", "HT-101"],
  ["HT-I01", "part number", "HT-101"],
  ["ht-lol", "part number", "HT-101"],
  ["HT-2O1", "part number", "HT-201"],
  ["7O-1O", "part number", "7O-1O"],
  ["70-10", "part number", "7O-1O"],
  ["70-1L", "part number", "70-1L"], // an L that is there is no 1
  ["70-11", "part number", "70-1L"],

  // several are spelt so
  ["AB12", "several", "AB-12", "A-B12"],
  ["ab-i2", "several", "AB-12", "A-B12"],
  ["AB-12", "part number", "AB-12"],
  ["A-B12", "part number", "A-B12"],

  // cast into them
  ["4411", "casting number", "HT-102"],
  ["44-11", "casting number", "HT-102"],
  ["44II", "casting number", "HT-102"],
  ["55-1", "casting number", "7O-1O", "70-1L"],
  ["551", "casting number", "7O-1O", "70-1L"],

  // nothing
  ["HT-103", "unknown"],
  ["HT-10", "unknown"],
  ["HT-1011", "unknown"],
  ["HT-1Q1", "unknown"],
  ["", "unknown"],
  [" - . ", "unknown"],
  ["pump", "unknown"],
];

test.each(TYPED)("'%s' is taken for a %s: %s", (typed, as, ...parts) => {
  const found = findPart(catalog, typed);
  const named = "part" in found ? [found.part] : "parts" in found ? found.parts : [];
  expect([found.as, ...named.map((part) => part.number)]).toEqual([as, ...parts]);
});
