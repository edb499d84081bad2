/** What a card says about the neighbours of a node: grouped by relation, in the words for its direction. */
import type { MapEdge, MapGraph, MapNode } from "./map-graph.ts";

export interface Statement {
  /** The record or bulletin that says so. */
  readonly by: MapNode | undefined;
  /** What limits it, in words. */
  readonly limits: readonly string[];
}

export interface NeighbourGroup {
  /** "supersedes", or "superseded by" where the relation leads to the node. */
  readonly words: string;
  readonly neighbours: readonly { readonly node: MapNode; readonly statements: readonly Statement[] }[];
}

/**
 * In the order of the relations, for each first what leads away from the node, then what leads to it. A neighbour stands
 * once in a group, with everyone who says so.
 */
export function neighbourGroups(
  graph: MapGraph,
  key: string,
  allowed: (edge: MapEdge) => boolean = () => true,
): NeighbourGroup[] {
  const groups: NeighbourGroup[] = [];
  for (const [relation, words] of Object.entries(graph.document.relations))
    for (const direction of ["forward", "backward"] as const) {
      const edges = (direction === "forward" ? graph.out(key) : graph.into(key)).filter(
        (edge) => edge.relation === relation && allowed(edge),
      );
      if (edges.length > 0)
        groups.push({
          words: words[direction],
          neighbours: together(graph, edges, direction === "forward" ? "target" : "source"),
        });
    }
  return groups;
}

function together(graph: MapGraph, edges: readonly MapEdge[], end: "source" | "target"): NeighbourGroup["neighbours"] {
  const found = new Map<string, { node: MapNode; statements: Statement[] }>();
  for (const edge of edges) {
    const node = graph.nodes.get(edge[end]);
    if (!node) continue;
    const entry = found.get(node.key) ?? { node, statements: [] };
    found.set(node.key, entry);
    const by = statedBy(graph, edge);
    const limited = limits(edge);
    if (by || limited.length > 0) entry.statements.push({ by, limits: limited });
  }
  return [...found.values()];
}

/** The record or bulletin that states a relation, unless it is itself one end of it. */
function statedBy(graph: MapGraph, { from, source, target }: MapEdge): MapNode | undefined {
  const by = graph.nodes.get(`record:${from}`) ?? graph.nodes.get(`bulletin:${from}`);
  return by && by.key !== source && by.key !== target ? by : undefined;
}

function limits({ relation, verdict, scope }: MapEdge): string[] {
  const words: string[] = [];
  if (verdict !== undefined && verdict !== "yes") words.push(verdict.replaceAll("-", " "));
  // Who concerns which line or year is said by the scope itself: there it limits nothing.
  if (scope !== undefined && relation !== "concerns") words.push("some cars only");
  return words;
}
