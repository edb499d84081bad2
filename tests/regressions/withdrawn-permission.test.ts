/** A record that was withdrawn permits nothing, delivers nothing and states no figure; its page stays. */
import { expect, test } from "vitest";
import { answerMayFit } from "../../src/engine/answers/answer-may-fit.ts";
import { answerRecord } from "../../src/engine/answers/answer-record.ts";
import type { CarInput } from "../../src/engine/answers/shapes/car.ts";
import { statementsOf } from "../../src/engine/records/statement.ts";
import { tinyKnowledge } from "../helpers/tiny-knowledge.ts";

const WHOLE = tinyKnowledge();
const [PERMIT] = [...WHOLE.catalog.records.values()].flatMap((record) =>
  statementsOf(record.statements, "stands-in").filter((it) => it.verdict === "yes" || it.verdict === "on-conditions"),
);
const CARS: CarInput[] = WHOLE.catalog.lines.map((line) => ({ facts: { line: line.id } }));

test("the made-up data permits something by one record", () => {
  expect(PERMIT).toBeDefined();
});

test("withdrawn, it no longer permits it, and its page still says what it said", () => {
  const id = PERMIT?.record ?? "";
  const file = WHOLE.catalog.records.get(id)?.file ?? "";
  const without = tinyKnowledge({ [file]: ["kinds:", "withdrawn: It was wrong.\nkinds:"] });
  for (const car of CARS) {
    const answer = answerMayFit(without, { part: PERMIT?.part ?? "", car });
    expect(answer.because.map((it) => it.record)).not.toContain(id);
  }
  const before = answerRecord(WHOLE, id);
  const after = answerRecord(without, id);
  expect(after.verdict).toBe("withdrawn");
  expect(JSON.stringify(after.record?.standsIn)).toBe(JSON.stringify(before.record?.standsIn));
});
