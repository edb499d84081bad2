import { expect, test } from "vitest";
import { type Point, stretch } from "../../../scripts/bench/stretches.ts";

const start = (year: number): Point => ({ year, sequence: undefined });
const running = (year: number): Point => ({ year, sequence: 500 });

// from, until, scope
const CASES: [from: Point | undefined, until: Point | undefined, scope: string][] = [
  [undefined, start(1963), "line=A,B; my<=1962"],
  [start(1963), undefined, "line=A,B; my>=1963"],
  [start(1963), start(1964), "line=A,B; my=1963"],
  [start(1963), start(1966), "line=A,B; my=1963-1965"],
  [undefined, running(1963), "line=A,B; at=P1963#500- || line=A,B; plant!=P; my<=1963"],
  [running(1963), undefined, "line=A,B; at=P1963#500+ || line=A,B; plant!=P; my>=1964"],
  [running(1963), start(1964), "line=A,B; at=P1963#500+; my<=1963"],
  [running(1963), start(1966), "line=A,B; at=P1963#500+; my<=1965 || line=A,B; plant!=P; my=1964-1965"],
  [start(1963), running(1966), "line=A,B; at=P1966#500-; my>=1963 || line=A,B; plant!=P; my=1963-1966"],
  [running(1963), running(1964), "line=A,B; at=P1963#500+; at=P1964#500- || line=A,B; plant!=P; my=1964"],
];

test.each(CASES)("from %j until %j", (from, until, scope) => {
  expect(stretch(["A", "B"], "P", from, until)).toBe(scope);
});
