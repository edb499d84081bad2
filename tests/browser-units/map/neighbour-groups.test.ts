import { expect, test } from "vitest";
import { neighbourGroups } from "../../../src/browser/map/neighbour-groups.ts";
import { edge, graphOf, MADE_UP, node } from "./made-up.ts";

/** Words and what follows them, as a card would read. */
function card(key: string, graph = MADE_UP): string[] {
  return neighbourGroups(graph, key).flatMap(({ words, neighbours }) =>
    neighbours.map(({ node: { id }, statements }) =>
      [words, id, ...statements.map(({ by, limits }) => `[${[...limits, by?.id].filter(Boolean).join(", ")}]`)].join(
        " ",
      ),
    ),
  );
}

test("each end reads the relation in its own direction, with the record that says so", () => {
  expect(card("part:1-200")).toContain("supersedes 1-100 [some cars only, R1]");
  expect(card("part:1-100")).toContain("superseded by 1-200 [some cars only, R1]");
});

test("a record does not name itself as its own witness", () => {
  expect(card("record:R1")).toEqual(["changes door", "concerns A", "concerns 1"]);
  expect(card("component:door")).toContain("changed by R1");
});

test("a neighbour stands once under a relation, with everyone who says so", () => {
  const graph = graphOf(
    [node("part", "1"), node("part", "2"), node("record", "R1"), node("record", "R2")],
    [
      edge("part:1", "not-interchangeable-with", "part:2", { from: "R1", verdict: "does-not-go-on" }),
      edge("part:1", "not-interchangeable-with", "part:2", {
        from: "R2",
        verdict: "must-not-be-used",
        scope: "line=A",
      }),
      edge("part:2", "stands-in-for", "part:1", { from: "R2", verdict: "yes" }),
    ],
  );
  expect(card("part:2", graph)).toEqual([
    "may stand in for 1 [R2]",
    "must not be replaced by 1 [does not go on, R1] [must not be used, some cars only, R2]",
  ]);
});

test("a relation that is not allowed is not told", () => {
  expect(neighbourGroups(MADE_UP, "part:1-200", ({ relation }) => relation === "supersedes")).toHaveLength(1);
});
