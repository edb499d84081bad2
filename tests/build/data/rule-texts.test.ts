import { expect, test } from "vitest";
import { canBeSet, RULE_TEXTS } from "../../../src/build/data/rule-texts.ts";

test("every rule has an id of its own", () => {
  expect(new Set(RULE_TEXTS.map(({ id }) => id)).size).toBe(RULE_TEXTS.length);
});

test("what cannot be read cannot be excused; all else can", () => {
  expect(RULE_TEXTS.filter((rule) => !canBeSet(rule)).map(({ id }) => id)).toEqual([
    ...["missing-file", "unreadable", "shape", "unknown-name", "scope", "disagreement"],
    "published-address",
  ]);
});
