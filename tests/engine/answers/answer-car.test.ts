import { expect, test } from "vitest";
import type { CarAnswer } from "../../../src/engine/answers/shapes/car-answer.ts";
import { lawfulAnswer } from "../../helpers/answer-laws.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const knowledge = tinyKnowledge();
const ask = (car: object): CarAnswer => lawfulAnswer(knowledge, { question: "car", car }) as unknown as CarAnswer;

// car, verdict of the whole, of each record, what to look at next
const CASES: [object, string, string[], string | undefined][] = [
  [{ plate: "B9K0412" }, "known", ["FR58-01 yes", "HY59-01 yes"], undefined],
  [{ facts: { line: "H" } }, "known", ["FR58-01 yes", "HY59-01 no"], undefined],
  [{ facts: { line: "B" } }, "look first", ["FR58-01 look first", "HY59-01 look first"], "my"],
  [{ facts: { line: "H", my: 1957 } }, "no such car", ["FR58-01 no such car", "HY59-01 no such car"], undefined],
];
test.each(CASES)("%j: %s", (car, verdict, records, next) => {
  const answer = ask(car);
  expect([answer.verdict, answer.records.map((it) => `${it.record} ${it.verdict}`), answer.ask?.trait]).toEqual([
    verdict,
    records,
    next,
  ]);
});

test("each record says whether it is a trap, whether it was cancelled, and what to look at where it is open", () => {
  const { records } = ask({ facts: { line: "B", my: 1959 } });
  expect(records).toMatchObject([
    { record: "FR58-01", trap: false, cancelled: [{ record: "HY59-01", verdict: "yes" }] },
    { record: "HY59-01", trap: true, systems: ["hydraulics"], ask: { trait: "plant" } },
  ]);
  expect(records[0]?.ask).toBeUndefined();
});
