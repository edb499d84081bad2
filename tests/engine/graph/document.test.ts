import { MultiDirectedGraph } from "graphology";
import { describe, expect, test } from "vitest";
import { buildGraph, type Graph } from "../../../src/engine/graph/build-graph.ts";
import { type GraphDocument, graphDocument, toDocument } from "../../../src/engine/graph/document.ts";
import { layOut } from "../../../src/engine/graph/lay-out.ts";
import type { NodeFacts } from "../../../src/engine/graph/node.ts";
import { RELATIONS, type RelationFacts } from "../../../src/engine/graph/relation.ts";
import { catalogOf } from "../../helpers/tiny-folder.ts";

const graph = buildGraph(catalogOf());
layOut(graph);
const document = toDocument(graph);

/** A graph again, from what was published and nothing else. */
function readBack({ nodes, edges }: GraphDocument): Graph {
  const again: Graph = new MultiDirectedGraph<NodeFacts, RelationFacts>();
  for (const { key, ...facts } of nodes) again.addNode(key, facts);
  for (const { source, target, relation, from, scope, verdict } of edges)
    again.addDirectedEdge(source, target, { relation, from, scope, verdict });
  return again;
}

describe("the graph as it is published", () => {
  test("keeps its published shape", () => {
    expect(graphDocument.parse(document)).toEqual(document);
    expect(document.format).toBe("yearmark-graph/1");
    expect(document.relations).toEqual(RELATIONS);
    expect(document.names).toEqual({
      systems: { hydraulics: "Hydraulics", frame: "Frame" },
      lines: { B: "Badger", H: "Heron" },
    });
  });

  test("read back from its text it is the same graph", () => {
    const again = readBack(graphDocument.parse(JSON.parse(JSON.stringify(document))));
    expect(again.nodes()).toEqual(graph.nodes());
    expect(again.mapNodes((_, facts) => facts)).toEqual(graph.mapNodes((_, facts) => facts));
    const edges = (one: Graph): unknown[] => one.mapEdges((_, facts, source, target) => [source, target, facts]);
    expect(edges(again)).toEqual(edges(graph));
    expect(toDocument(again)).toEqual(document);
  });

  test("says nothing where a statement has no scope, no record or no verdict", () => {
    const edge = (relation: string): object | undefined => document.edges.find((one) => one.relation === relation);
    expect(edge("belongs-to")).toStrictEqual({
      source: "component:lift",
      target: "system:hydraulics",
      relation: "belongs-to",
    });
    expect(edge("not-interchangeable-with")).toStrictEqual({
      source: "part:HT-101",
      target: "part:HT-102",
      relation: "not-interchangeable-with",
      from: "HY59-01",
      verdict: "must-not-be-used",
    });
  });

  test("is a copy: what a reader does to it leaves the graph alone", () => {
    const copy = toDocument(graph);
    for (const node of copy.nodes) {
      node.systems.push("x");
      node.years.push(1);
    }
    expect(toDocument(graph)).toEqual(document);
  });

  test("its shape refuses a relation that nobody knows, a node without a place and a field too many", () => {
    const [node, edge] = [document.nodes[0], document.edges[0]];
    const spoiled = [
      { ...document, edges: [{ ...edge, relation: "resembles" }] },
      { ...document, nodes: [{ ...node, x: undefined }] },
      { ...document, nodes: [{ ...node, x: Number.NaN }] },
      { ...document, edges: [{ ...edge, weight: 1 }] },
      { ...document, format: "yearmark-graph/2" },
    ];
    expect(spoiled.map((one) => graphDocument.safeParse(one).success)).toEqual(spoiled.map(() => false));
  });
});
