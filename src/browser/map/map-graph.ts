/** The published graph, made ready for walking: every node by its key, and the relations at each of its ends. */
import type { GraphDocument } from "../../engine/graph/document.ts";
import type { NodeKind } from "../../engine/graph/node.ts";
import type { Relation } from "../../engine/graph/relation.ts";

export type MapNode = GraphDocument["nodes"][number];
export type MapEdge = GraphDocument["edges"][number];
export type { NodeKind, Relation };

export interface MapGraph {
  readonly document: GraphDocument;
  readonly nodes: ReadonlyMap<string, MapNode>;
  /** The relations that lead away from a node. */
  out(key: string): readonly MapEdge[];
  /** The relations that lead to a node. */
  into(key: string): readonly MapEdge[];
}

export function mapGraph(document: GraphDocument): MapGraph {
  const out = new Map<string, MapEdge[]>();
  const into = new Map<string, MapEdge[]>();
  for (const edge of document.edges) {
    add(out, edge.source, edge);
    add(into, edge.target, edge);
  }
  return {
    document,
    nodes: new Map(document.nodes.map((node) => [node.key, node])),
    out: (key) => out.get(key) ?? [],
    into: (key) => into.get(key) ?? [],
  };
}

function add(lists: Map<string, MapEdge[]>, key: string, edge: MapEdge): void {
  const list = lists.get(key);
  if (list) list.push(edge);
  else lists.set(key, [edge]);
}
