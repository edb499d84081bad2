import { expect, test } from "vitest";
import { builtWith, perhapsBuiltWith, placesOf } from "../../../src/engine/answers/fitted.ts";
import { NONE } from "../../../src/engine/scope/diagram.ts";
import { readScope } from "../../../src/engine/scope/read-scope.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const knowledge = tinyKnowledge();
const { space } = knowledge.catalog;
const cars = (text: string) => {
  const read = readScope(space, text);
  if (!("scope" in read)) throw new Error(text);
  return read.scope.cars;
};

// part, its places, certainly built into, perhaps built into
const CASES: [string, string[], string | undefined, string | undefined][] = [
  ["HT-101", ["pump"], "line=B; at=K59#0412-", "line=H; my=1959"],
  ["HT-102", ["pump"], "line=B; at=K59#0412+", "line=H; my=1959"],
  ["HT-201", [], undefined, undefined], // for repair only, in place of nothing
  ["HT-999", [], undefined, undefined],
];
test.each(CASES)("%s fills %j", (part, places, built, perhaps) => {
  expect([...placesOf(knowledge, part)]).toEqual(places);
  expect(builtWith(knowledge, part)).toBe(built === undefined ? NONE : cars(built));
  expect(perhapsBuiltWith(knowledge, part)).toBe(perhaps === undefined ? NONE : cars(perhaps));
});

test("a part that no car was built with sits where those sit that it stands in for", () => {
  const later = tinyKnowledge({
    "changes/1959/HY59-01.md": [
      '  - { part: HT-102, for: none, verdict: "yes", scope: line=H }',
      '  - { part: HT-290, for: HT-101, verdict: "yes" }',
    ],
  });
  expect([...placesOf(later, "HT-290")]).toEqual(["pump"]);
});
