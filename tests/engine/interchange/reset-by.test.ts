import { expect, test } from "vitest";
import { openPartIndex } from "../../../src/engine/interchange/part-index.ts";
import { resetBy } from "../../../src/engine/interchange/reset-by.ts";
import { openSets } from "../../helpers/sets-folder.ts";

const { catalog, badgers } = openSets(
  ["place: pump, part: A-1, scope: line=B"],
  ['part: A-2, for: A-1, verdict: "yes"'],
  `settings:
  - { name: lift play, window: 1..2, unit: mm, scope: fitted=A-2 }
  - { name: lift play, window: 3..4, unit: mm, scope: fitted!=A-2 }
  - { name: arm height, window: 5..6, unit: mm, scope: line=B }
  - { name: with both, window: 7..8, unit: mm, scope: fitted=A-2; fitted=B-2 }`,
);
const index = openPartIndex(catalog);

// parts that go on, settings that hold from then on
test.each([
  [["A-2"], ["lift play 1"]],
  [["B-2"], []],
  [
    ["A-2", "B-2"],
    ["lift play 1", "with both 7"],
  ],
  [["C-2"], []],
  [[], []],
])("with %j", (parts, expected) => {
  expect(resetBy(index, badgers, parts).map((it) => `${it.name} ${it.low}`)).toEqual(expected);
});
