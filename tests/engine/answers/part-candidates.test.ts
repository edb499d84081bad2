import { expect, test } from "vitest";
import { partCandidates } from "../../../src/engine/answers/part-candidates.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const { catalog } = tinyKnowledge();

// typed, the parts that may be meant
test.each<[string, string[]]>([
  ["HT-1", ["HT-101", "HT-102"]],
  ["ht l0", ["HT-101", "HT-102"]],
  ["HT 1O2", ["HT-102"]],
  ["101", ["HT-101"]],
  ["long pump", ["HT-102"]],
  ["hydraulic", ["HT-101", "HT-102"]],
  ["gasket", ["HT-201", "HT-290"]],
  ["roof", []],
  ["  ", []],
])("'%s': %j", (typed, expected) => {
  expect(partCandidates(catalog, typed, 10).map((it) => it.number)).toEqual(expected);
});

test("no more than asked for", () => {
  expect(partCandidates(catalog, "ht", 2)).toHaveLength(2);
});
