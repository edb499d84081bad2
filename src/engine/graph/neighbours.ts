/** What stands around a node. Direction is never lost: these two functions are the only way the engine walks the graph. */
import type { Graph } from "./build-graph.ts";
import type { NodeFacts } from "./node.ts";
import type { RelationFacts } from "./relation.ts";

export interface Neighbour {
  readonly direction: "out" | "in";
  readonly facts: RelationFacts;
  readonly node: NodeFacts;
}

/** The relations that lead away from a node: one other end after another, in the order in which the records first name them. */
export function outOf(graph: Graph, key: string): Neighbour[] {
  return graph.mapOutEdges(key, (_, facts, __, ___, ____, node) => ({ direction: "out", facts, node }));
}

/** The relations that lead to a node, in the same order. */
export function into(graph: Graph, key: string): Neighbour[] {
  return graph.mapInEdges(key, (_, facts, __, ___, node) => ({ direction: "in", facts, node }));
}

export function neighbours(graph: Graph, key: string): Neighbour[] {
  return [...outOf(graph, key), ...into(graph, key)];
}
