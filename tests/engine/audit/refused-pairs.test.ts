import { expect, test } from "vitest";
import { refusedPairs } from "../../../src/engine/audit/refused-pairs.ts";
import { openPartIndex } from "../../../src/engine/interchange/part-index.ts";
import { catalogOf, type Spoil, spoiled } from "../../helpers/tiny-folder.ts";

function pairsOf(spoil: Spoil): string[] {
  const catalog = catalogOf(spoiled(spoil));
  const world = { catalog, index: openPartIndex(catalog), checks: { rules: [], plausible: [], "never-say": [] } };
  return [...refusedPairs(world)].map(({ one, other, refusal }) => `${one.number} ${other.number} ${refusal.verdict}`);
}

test("two parts of one component of which one must not be used for the other are a pair, once", () => {
  expect(pairsOf({})).toEqual(["HT-101 HT-102 must-not-be-used"]);
  const both =
    "why: It runs dry. }\n  - { part: HT-102, for: HT-101, verdict: must-not-be-used, why: Too long., scope: my=1957 }";
  expect(pairsOf({ "changes/1959/HY59-01.md": ["why: It runs dry. }", both] })).toHaveLength(1);
});

test("what does not go on at all need not be told apart, nor parts of two components", () => {
  expect(pairsOf({ "changes/1959/HY59-01.md": ["verdict: must-not-be-used", "verdict: does-not-go-on"] })).toEqual([]);
  expect(pairsOf({ "changes/1959/HY59-01.md": ["part: HT-101, for: HT-102", "part: HT-201, for: HT-102"] })).toEqual(
    [],
  );
});
