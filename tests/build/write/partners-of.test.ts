import { expect, test } from "vitest";
import { partnersOf } from "../../../src/build/write/partners-of.ts";

// old entries, new entries, the old one that each new one continues
const CASES: [unknown[], unknown[], (number | undefined)[]][] = [
  [
    ["a", "b"],
    ["b", "a", "c"],
    [1, 0, undefined],
  ],
  [
    ["a", "a"],
    ["a", "a", "a"],
    [0, 1, undefined],
  ],
  [
    ["a", "b"],
    ["c", "b"],
    [0, 1],
  ],
  [
    [{ id: 1, x: 1 }, { id: 2 }],
    [{ id: 2, x: 3 }, { id: 1 }],
    [1, 0],
  ],
  [
    [
      { number: "A", name: "n" },
      { number: "B", name: "n" },
    ],
    [{ number: "B", name: "m" }],
    [1],
  ],
  // A new number: what is left at its place.
  [[{ number: "A", name: "m" }], [{ number: "C", name: "n" }], [0]],
  [[], ["a"], [undefined]],
];

test.each(CASES)("%j, %j: %j", (old, next, partners) => {
  expect(partnersOf(old, next)).toEqual(partners);
});
