import { expect, test } from "vitest";
import { renamedMoves } from "../../../src/build/write/renamed-moves.ts";
import type { Move } from "../../../src/engine/records/catalog.ts";

const moves = (...rows: string[]): Move[] =>
  rows.map((row) => {
    const [kind, from, to] = row.split(" ");
    return { kind, from, ...(to === undefined ? {} : { to }), why: "w" } as Move;
  });

// what stands there, the renaming of a record, what stands there afterwards, what is said
const CASES: [string[], [old: string, next: string], string[], string[]][] = [
  [[], ["B", "C"], ["record B C"], ["'B' leads to 'C'"]],
  [["record A B"], ["B", "C"], ["record A C", "record B C"], ["'A' leads to 'C' now", "'B' leads to 'C'"]],
  [["record A B"], ["B", "A"], ["record B A"], ["'A' is used again, so it no longer leads to 'B'", "'B' leads to 'A'"]],
  [["part A B", "record X"], ["B", "C"], ["part A B", "record X", "record B C"], ["'B' leads to 'C'"]],
];

test.each(CASES)("%j, %j", (before, [old, next], after, said) => {
  const renamed = renamedMoves(moves(...before), { old, next, kind: "record", why: "w" });
  expect(renamed).toEqual({ moved: moves(...after), said });
});
