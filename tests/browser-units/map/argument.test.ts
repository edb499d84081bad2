import { expect, test } from "vitest";
import { argument, argumentWords } from "../../../src/browser/map/argument.ts";
import { edge, graphOf, MADE_UP, node } from "./made-up.ts";

const KITCHEN = graphOf(
  [node("part", "1"), node("part", "2"), node("component", "c"), ...["R1", "R2", "R3"].map((id) => node("record", id))],
  [
    edge("part:1", "stands-in-for", "part:2", { from: "R1" }),
    edge("part:1", "not-interchangeable-with", "part:2", { from: "R3" }),
    edge("record:R2", "brings", "part:2", { from: "R2" }),
    edge("record:R2", "changes", "component:c", { from: "R2" }),
    edge("part:1", "belongs-to", "component:c"),
    edge("record:R1", "links-to", "record:R2", { from: "R1" }),
  ],
);

// the nodes of an answer, what its records state between them, in a line
const CASES = [
  [["part:1", "part:2", "record:R1"], ["part:1 stands-in-for part:2"], "1 statement of 1 record."],
  [
    ["part:1", "part:2", "record:R1", "record:R2"],
    ["part:1 stands-in-for part:2", "record:R2 brings part:2"],
    "2 statements of 2 records.",
  ],
  [["part:1", "component:c", "record:R2"], ["record:R2 changes component:c"], "1 statement of 1 record."],
  [["part:1", "record:R2"], [], "1 record, and no statement between what is named."],
  [["part:1", "part:2"], [], "it rests on no record."],
] as const;

test.each(CASES)("of %j the argument is %j", (proof, stated, words) => {
  const found = argument(KITCHEN, proof);
  expect([...found.nodes]).toEqual(proof);
  expect([...found.edges].map(({ source, relation, target }) => `${source} ${relation} ${target}`)).toEqual(stated);
  expect(argumentWords(found)).toBe(`The argument of an answer: ${words}`);
});

test("no nodes are no argument", () => {
  expect(argument(MADE_UP, [])).toEqual({ nodes: new Set(), edges: new Set(), records: 0 });
});
