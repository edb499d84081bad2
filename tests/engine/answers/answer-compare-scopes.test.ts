import { expect, test } from "vitest";
import type { CompareScopesAnswer } from "../../../src/engine/answers/shapes/compare-scopes.ts";
import { lawfulAnswer } from "../../helpers/answer-laws.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const knowledge = tinyKnowledge();
const ask = (a: string, b: string): CompareScopesAnswer =>
  lawfulAnswer(knowledge, { question: "compare-scopes", a, b }) as unknown as CompareScopesAnswer;

// two scopes, how they lie, a trait of the car that shows it, on both sides, only in the first, only in the second
const CASES: [string, string, string, string[]][] = [
  ["my=1957", "my=1957; plant=K", "equal", ["both"]], // in 1957 there was only one plant
  ["line=B || line=H", "all", "equal", ["both"]],
  ["all", "line=B", "covers", ["both", "onlyA"]],
  ["line=B; my=1959", "my=1959", "is covered", ["both", "onlyB"]],
  ["line=B", "my=1959", "overlaps", ["both", "onlyA", "onlyB"]],
  ["line=B", "line=H", "disjoint", ["onlyA", "onlyB"]],
  ["plant=D; my=1957", "line=B", "disjoint", ["onlyB"]], // the first holds for no car
];
test.each(CASES)("'%s' and '%s': %s", (a, b, verdict, shown) => {
  const answer = ask(a, b);
  expect(answer.verdict).toBe(verdict);
  expect(Object.keys(answer).filter((key) => ["both", "onlyA", "onlyB"].includes(key))).toEqual(shown);
});

test("the car that shows it can be asked with again", () => {
  const { onlyA } = ask("line=B", "my=1959");
  expect(onlyA).toMatchObject({ line: "B" });
  expect(onlyA?.my).not.toBe("1959");
  expect(
    lawfulAnswer(knowledge, { question: "applies", scope: "line=B; my!=1959", car: { facts: onlyA } }).verdict,
  ).toBe("yes");
});
