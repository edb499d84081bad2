/** What is typed by hand and what a job fills in, when the car changes. */
import { expect, test } from "vitest";
import { clear, emptyDesk, fillIn, originOf, type, withdraw, wordsOf, work } from "../../../src/browser/sums/desk.ts";
import type { JobShown } from "../../../src/engine/answers/shapes/sum.ts";
import { SUMS } from "../../../src/engine/settings/sums/all.ts";

const sum = SUMS.displacement;

/** A job that gives the bore and, if the car is known, the stroke. */
function job(bore: string, stroke?: string): JobShown {
  return {
    ...{ title: "a job", sum: sum.id, component: "piston", record: "T-1" },
    inputs: [
      { input: "bore", typed: bore, why: "T-1 says so", because: [] },
      { input: "stroke", ...(stroke === undefined ? {} : { typed: stroke }), why: "by car", because: [] },
    ],
  };
}

test("figures of another car take the place of those filled in, not of what was typed by hand", () => {
  const desk = emptyDesk(sum);
  fillIn(desk, job("4 in", "3 in"));
  type(desk, "cylinders", "8");
  type(desk, "stroke", "3.1 in");
  withdraw(desk);
  expect(desk.typed).toEqual({ cylinders: "8", stroke: "3.1 in" });
  expect(desk.out).toBeUndefined();
  fillIn(desk, job("5 in", "6 in"));
  expect(desk.typed).toEqual({ bore: "5 in", cylinders: "8", stroke: "3.1 in" });
  expect(desk.out?.as).toBe("worked out");
});

test("a result goes as soon as a figure changes, and comes back when it is asked for", () => {
  const desk = emptyDesk(sum);
  fillIn(desk, job("4 in", "3 in"));
  expect(wordsOf(desk)).toMatch(/: still needed: /);
  type(desk, "cylinders", "8");
  expect([desk.out, wordsOf(desk)]).toEqual([undefined, ""]);
  work(desk);
  expect(wordsOf(desk)).toMatch(new RegExp(`^${sum.name}: .+\\.$`));
  clear(desk);
  expect(desk).toEqual(emptyDesk(sum));
});

test("a field says where its figure comes from only as long as it is that figure", () => {
  const desk = emptyDesk(sum);
  fillIn(desk, job("4 in"));
  expect(originOf(desk, "bore")?.why).toBe("T-1 says so");
  expect(originOf(desk, "stroke")).toMatchObject({ why: "by car" });
  type(desk, "bore", "4.1 in");
  type(desk, "stroke", "3 in");
  expect([originOf(desk, "bore"), originOf(desk, "stroke")]).toEqual([undefined, undefined]);
});
