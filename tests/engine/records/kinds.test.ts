import { expect, test } from "vitest";
import { KIND_WORDS } from "../../../src/engine/records/kinds.ts";
import { KINDS } from "../../../src/engine/records/terms.ts";

test("every kind of change has words, and no others have", () => {
  expect(Object.keys(KIND_WORDS).sort()).toEqual([...KINDS].sort());
});

test("no two kinds are asked for by the same words", () => {
  const said = Object.values(KIND_WORDS).flatMap(({ label, aliases }) => [label, ...aliases]);
  expect(said.filter((words, i) => said.indexOf(words) !== i)).toEqual([]);
  expect(said.filter((words) => words !== words.trim().toLowerCase())).toEqual([]);
});
