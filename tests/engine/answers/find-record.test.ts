import { expect, test } from "vitest";
import { findRecord } from "../../../src/engine/answers/find-record.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const { catalog } = tinyKnowledge();

// as typed, the record
const CASES: [string, string | undefined][] = [
  ["HY59-01", "HY59-01"],
  [" hy59-01 ", "HY59-01"],
  ["hy 59 01", "HY59-01"],
  ["HY59–01", "HY59-01"], // a dash from a text program
  ["HY59-0", undefined],
  ["HY59-011", undefined],
  ["", undefined],
];
test.each(CASES)("'%s' is %s", (typed, id) => {
  expect(findRecord(catalog, typed)?.id).toBe(id);
});
