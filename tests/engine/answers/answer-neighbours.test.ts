import { describe, expect, test } from "vitest";
import { answerNeighbours } from "../../../src/engine/answers/answer-neighbours.ts";
import { lawfulAnswer } from "../../helpers/answer-laws.ts";
import { tinyKnowledge } from "../../helpers/tiny-knowledge.ts";

const knowledge = tinyKnowledge();

// typed, node that is meant
const NODES: [string, string][] = [
  ["part:HT-101", "part HT-101"],
  ["HT-101", "part HT-101"],
  [" ht 1o1 ", "part HT-101"],
  ["HY59-01", "record HY59-01"],
  ["hy59-01", "record HY59-01"],
  ["pump", "component pump"],
  ["hydraulic pump", "component pump"],
  ["hydraulics", "system hydraulics"],
  ["Badger", "line B"],
  ["B", "line B"],
  ["1959", "year 1959"],
  ["TB-1", "bulletin TB-1"],
  ["Pumps", "bulletin TB-1"],
];
test.each(NODES)("'%s' is %s", (typed, node) => {
  const answer = lawfulAnswer(knowledge, { question: "neighbours", node: typed }) as ReturnType<
    typeof answerNeighbours
  >;
  expect(`${answer.node?.kind} ${answer.node?.id}`).toBe(node);
});

// typed, what may be meant
test.each([
  ["HT-109", ["HT-101"]],
  ["part:", []],
  ["toString", []],
])("nothing is called '%s'", (typed, options) => {
  expect(answerNeighbours(knowledge, typed)).toEqual({
    question: "neighbours",
    verdict: "not on record",
    because: [],
    ask: { what: `Nothing in the graph is called '${typed}'.`, options },
    neighbours: [],
  });
});

describe("what stands around a part", () => {
  const { neighbours, because } = answerNeighbours(knowledge, "HT-101");

  test("every relation is read from its side, with the record that says so", () => {
    expect(neighbours.map((one) => `${one.words} ${one.node.id}, ${one.record ?? "parts list"}`).sort()).toEqual([
      "belongs to pump, parts list",
      "brought by HY59-01, HY59-01",
      "brought by HY59-01, HY59-01",
      "may be replaced by HT-102, HY59-01",
      "must not stand in for HT-102, HY59-01",
      "superseded by HT-102, HY59-01",
    ]);
    expect(because.map((reason) => reason.record)).toEqual(["HY59-01"]);
  });

  test("direction and scope are kept", () => {
    const of = (relation: string): object | undefined => neighbours.find((one) => one.relation === relation);
    expect(of("stands-in-for")).toMatchObject({ direction: "in", scope: "fitted=HT-201" });
    expect(of("not-interchangeable-with")).toMatchObject({ direction: "out" });
    expect(of("not-interchangeable-with")).not.toHaveProperty("scope");
  });

  test("a bulletin that cites it is a reason of its own kind", () => {
    expect(answerNeighbours(knowledge, "HT-102").because).toContainEqual({
      record: "TB-1",
      statement: "bulletin",
      text: "Pumps",
      address: "/bulletins/TB-1/",
    });
  });
});
