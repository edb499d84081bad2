import fc from "fast-check";
import { expect, test } from "vitest";
import { readAddress, writeAddress } from "../../../src/browser/map/address.ts";
import { KIND_ORDER } from "../../../src/browser/map/kinds.ts";
import { FIRST_VIEW, settled, type View } from "../../../src/browser/map/view.ts";
import { RELATIONS, type Relation } from "../../../src/engine/graph/relation.ts";
import { MADE_UP } from "./made-up.ts";

const read = (search: string): View => readAddress(search, MADE_UP);

test("an address without a query is the first view", () => {
  expect(read("")).toEqual(FIRST_VIEW);
  expect(writeAddress(FIRST_VIEW)).toBe("");
});

// address, what it changes in the first view
const CASES: readonly (readonly [string, Partial<View>])[] = [
  ["?focus=part:1-100", { focus: "part:1-100", only: true }],
  ["?focus=part:1-100&rest=yes", { focus: "part:1-100" }],
  ["?focus=part:1-100&steps=2", { focus: "part:1-100", only: true, steps: 2 }],
  [
    "?focus=part:1-200&proof=part:1-200,part:1-100,record:R1",
    { focus: "part:1-200", only: true, proof: ["part:1-200", "part:1-100", "record:R1"] },
  ],
  ["?focus=record:R1&proof=part:1-200,record:R1&rest=yes", { focus: "record:R1", proof: ["part:1-200", "record:R1"] }],
  ["?view=table&page=3", { as: "table", page: 3 }],
  ["?hide=part&hide=record", { hiddenKinds: ["part", "record"] }],
  ["?without=goes-with", { hiddenRelations: ["goes-with"] }],
  ["?system=oven&system=hob", { systems: ["oven", "hob"] }],
  ["?line=A&year=1&year=2", { lines: ["A"], years: [1, 2] }],
  ["?at=0.5,0.25,0.3", { camera: { x: 0.5, y: 0.25, ratio: 0.3 } }],
];

test.each(CASES)("%s is read and written again", (address, change) => {
  expect(read(address)).toEqual({ ...FIRST_VIEW, ...change });
  expect(writeAddress(read(address))).toBe(address);
});

// what nobody wrote, and is passed over
const STRANGE = [
  "?focus=part:9-999",
  "?focus=",
  "?rest=yes",
  "?steps=7",
  "?view=<script>",
  "?hide=toString&hide=wheel",
  "?without=__proto__",
  "?system=constructor",
  "?line=Z&year=1066&year=1.0",
  "?page=-4",
  "?page=x",
  "?at=1,2",
  "?at=,,",
  "?at=1,2,0",
  "?at=1,2,Infinity",
  "?at=1,2,3,4",
];

test.each(STRANGE)("%s shows the first view", (address) => {
  expect(read(address)).toEqual(FIRST_VIEW);
});

// address, the same as it is written
const PROOFS = [
  ["?proof=part:1-200,part:1-100", "?focus=part:1-200&proof=part:1-200,part:1-100"],
  ["?focus=part:9-999&proof=part:1-200", "?focus=part:1-200&proof=part:1-200"],
  ["?focus=part:1-100&proof=part:9-999,part:1-100,constructor,,part:1-100", "?focus=part:1-100&proof=part:1-100"],
  ["?focus=part:2-100&proof=part:1-200,record:R1", "?focus=part:2-100"],
  ["?focus=part%3A1-100&proof=part%3A1-100%2Crecord%3AR1", "?focus=part:1-100&proof=part:1-100,record:R1"],
  ["?proof=part:9-999", ""],
] as const;

test.each(PROOFS)("the argument of %s is read as %s", (address, written) => {
  expect(writeAddress(read(address))).toBe(written);
});

test("every view comes back from its address", () => {
  const some = <T>(values: readonly T[]) => fc.uniqueArray(fc.constantFrom(...values));
  const rounded = fc.integer({ min: -20000, max: 20000 }).map((value) => value / 10000);
  const view = fc
    .record<View>({
      as: fc.constantFrom("map", "table"),
      focus: fc.constantFrom(undefined, ...MADE_UP.nodes.keys()),
      proof: some([...MADE_UP.nodes.keys()]),
      steps: fc.constantFrom(1, 2),
      only: fc.boolean(),
      hiddenKinds: some(KIND_ORDER),
      hiddenRelations: some(Object.keys(RELATIONS) as Relation[]),
      systems: some(["oven", "hob"]),
      lines: some(["A", "B"]),
      years: some([1, 2]),
      camera: fc.option(
        fc.record({ x: rounded, y: rounded, ratio: fc.integer({ min: 1, max: 30000 }).map((value) => value / 10000) }),
        { nil: undefined },
      ),
      page: fc.integer({ min: 1, max: 99 }),
    })
    .map(settled);
  fc.assert(
    fc.property(view, (made) => {
      const back = read(writeAddress(made));
      // -0 is written as 0.
      expect(JSON.stringify(back)).toBe(JSON.stringify(made));
    }),
  );
});
