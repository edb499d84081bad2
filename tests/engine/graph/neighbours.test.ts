import { expect, test } from "vitest";
import { buildGraph } from "../../../src/engine/graph/build-graph.ts";
import { into, type Neighbour, neighbours, outOf } from "../../../src/engine/graph/neighbours.ts";
import { catalogOf } from "../../helpers/tiny-folder.ts";

const graph = buildGraph(catalogOf());
const inShort = ({ direction, facts, node }: Neighbour): string =>
  direction === "out" ? `${facts.relation} > ${node.id}` : `< ${facts.relation} ${node.id}`;

test("what leads away from a part is never mixed up with what leads to it", () => {
  expect(outOf(graph, "part:HT-102").map(inShort).sort()).toEqual([
    "belongs-to > pump",
    "goes-with > HT-201",
    "goes-with > HT-201",
    "retrofittable-to > H",
    "stands-in-for > HT-101",
    "supersedes > HT-101",
  ]);
  expect(into(graph, "part:HT-102").map(inShort).sort()).toEqual([
    "< brings HY59-01",
    "< brings HY59-01",
    "< cites TB-1",
    "< not-interchangeable-with HT-101",
  ]);
  expect(neighbours(graph, "part:HT-102")).toEqual([...outOf(graph, "part:HT-102"), ...into(graph, "part:HT-102")]);
});

test("from the other end the same relations are seen the other way round", () => {
  for (const key of graph.nodes())
    for (const { facts, node } of outOf(graph, key))
      expect(into(graph, `${node.kind}:${node.id}`).map(({ facts: back, node: from }) => [back, from])).toContainEqual([
        facts,
        graph.getNodeAttributes(key),
      ]);
  const away = graph.nodes().flatMap((key) => outOf(graph, key));
  const towards = graph.nodes().flatMap((key) => into(graph, key));
  expect([away.length, towards.length]).toEqual([graph.size, graph.size]);
});

test("one other end comes after another, in the order in which the records first name them", () => {
  const ends = outOf(graph, "record:HY59-01").map(({ node }) => node.id);
  expect([...new Set(ends)]).toEqual(["pump", "gasket", "B", "1959", "1960", "HT-101", "HT-102", "HT-201", "FR58-01"]);
  expect(ends.filter((id, i) => id !== ends[i - 1])).toEqual([...new Set(ends)]);
});

test("a node that nothing speaks of has no neighbours", () => {
  expect(neighbours(graph, "system:frame")).toEqual([]);
});
