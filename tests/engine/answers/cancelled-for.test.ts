import { expect, test } from "vitest";
import { cancelledFor, cancelsFor } from "../../../src/engine/answers/cancelled-for.ts";
import { readCar } from "../../../src/engine/answers/car.ts";
import type { ChangeRecord } from "../../../src/engine/records/catalog.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

// FR58-01 is about cars from 1958 on; HY59-01 cancels it for line B.
const knowledge = tinyKnowledge();
const record = knowledge.catalog.records.get("FR58-01") as ChangeRecord;
const cancelled = (facts: object) =>
  cancelledFor(knowledge, readCar(knowledge, { facts: facts as never }).cars, record);

// facts, what is said
const CASES: [object, object][] = [
  [{ line: "B", my: 1959 }, { cancelled: [{ record: "HY59-01", verdict: "yes" }] }],
  [{ my: 1959 }, { cancelled: [{ record: "HY59-01", verdict: "look first" }] }],
  [{ line: "H" }, {}],
  [{ line: "B", my: 1957 }, {}], // it never held for this car
];
test.each(CASES)("%j: %j", (facts, expected) => {
  expect(cancelled(facts)).toEqual(expected);
});

test("a record that nobody cancels stays in force; without a scope the whole of it ends", () => {
  expect(
    cancelledFor(knowledge, knowledge.catalog.buildable, knowledge.catalog.records.get("HY59-01") as ChangeRecord),
  ).toEqual({});
  const whole = tinyKnowledge({
    "changes/1959/HY59-01.md": ["{ record: FR58-01, scope: line=B }", "{ record: FR58-01 }"],
  });
  const [cancel] = cancelsFor(whole, whole.catalog.buildable, whole.catalog.records.get("FR58-01") as ChangeRecord);
  expect([cancel?.cancel.target, cancel?.verdict]).toEqual(["FR58-01", "yes"]);
});
