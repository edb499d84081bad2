/** A small made-up graph for the tests of the map: two systems, a few parts, records of two years. */
import { type MapGraph, mapGraph } from "../../../src/browser/map/map-graph.ts";
import type { GraphDocument } from "../../../src/engine/graph/document.ts";
import { address, type NodeKind } from "../../../src/engine/graph/node.ts";
import { RELATIONS, type Relation } from "../../../src/engine/graph/relation.ts";

type Node = GraphDocument["nodes"][number];

export function node(kind: NodeKind, id: string, label = id, more: Partial<Node> = {}): Node {
  const key = `${kind}:${id}`;
  return { key, kind, id, label, address: address(kind, id), systems: [], lines: [], years: [], x: 0, y: 0, ...more };
}

export function edge(
  source: string,
  relation: Relation,
  target: string,
  more: Partial<GraphDocument["edges"][number]> = {},
): GraphDocument["edges"][number] {
  return { source, relation, target, ...more };
}

export function graphOf(nodes: readonly Node[], edges: readonly GraphDocument["edges"][number][]): MapGraph {
  const named = (kind: NodeKind): Record<string, string> =>
    Object.fromEntries(nodes.filter((each) => each.kind === kind).map((each) => [each.id, each.label]));
  return mapGraph({
    format: "yearmark-graph/1",
    relations: RELATIONS,
    names: { systems: named("system"), lines: named("line") },
    nodes: [...nodes],
    edges: [...edges],
  });
}

/**
 *   system:oven ← component:door ← part:1-100, part:1-200          1-200 supersedes 1-100 (says R1)
 *   system:hob  ← component:ring ← part:2-100                      2-100 needs 1-200 (says R2)
 *   record R1 (line A, year 1) changes door;  record R2 (lines A and B, year 2) changes ring, brings 2-100
 *   bulletin N cites R2
 */
export const MADE_UP = graphOf(
  [
    node("line", "A", "Alpha", { lines: ["A"] }),
    node("line", "B", "Beta", { lines: ["B"] }),
    node("year", "1", "1", { years: [1] }),
    node("year", "2", "2", { years: [2] }),
    node("system", "oven", "Oven", { systems: ["oven"] }),
    node("system", "hob", "Hob", { systems: ["hob"] }),
    node("component", "door", "oven door", { systems: ["oven"] }),
    node("component", "ring", "hob ring", { systems: ["hob"] }),
    node("part", "1-100", "1-100 hinge", { systems: ["oven"] }),
    node("part", "1-200", "1-200 hinge, stronger", { systems: ["oven"] }),
    node("part", "2-100", "2-100 ring, crème", { systems: ["hob"] }),
    node("record", "R1", "R1 Hinge made stronger", { systems: ["oven"], lines: ["A"], years: [1] }),
    node("record", "R2", "R2 Ring in another colour", { systems: ["hob"], lines: ["A", "B"], years: [2] }),
    node("bulletin", "N", "News of the kitchen"),
  ],
  [
    edge("component:door", "belongs-to", "system:oven"),
    edge("component:ring", "belongs-to", "system:hob"),
    edge("part:1-100", "belongs-to", "component:door"),
    edge("part:1-200", "belongs-to", "component:door"),
    edge("part:2-100", "belongs-to", "component:ring"),
    edge("record:R1", "changes", "component:door", { from: "R1" }),
    edge("record:R1", "concerns", "line:A", { from: "R1" }),
    edge("record:R1", "concerns", "year:1", { from: "R1" }),
    edge("part:1-200", "supersedes", "part:1-100", { from: "R1", scope: "line=A" }),
    edge("record:R2", "changes", "component:ring", { from: "R2" }),
    edge("record:R2", "brings", "part:2-100", { from: "R2" }),
    edge("record:R2", "concerns", "line:A", { from: "R2" }),
    edge("record:R2", "concerns", "line:B", { from: "R2" }),
    edge("record:R2", "concerns", "year:2", { from: "R2" }),
    edge("part:2-100", "goes-with", "part:1-200", { from: "R2" }),
    edge("bulletin:N", "cites", "record:R2", { from: "N" }),
  ],
);

/** Keys in the order of the graph, good to compare. */
export function sorted(keys: Iterable<string>): string[] {
  return [...keys].sort();
}
