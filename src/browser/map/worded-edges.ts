/** Which lines carry their words: one of each pair of nodes, so that no words lie on others. */
import type { MapEdge } from "./map-graph.ts";
import { RELATION_LOOK, type RelationLook } from "./relation-look.ts";

const FIRST: readonly RelationLook[] = ["must-not", "may", "say", "order"];

/**
 * Of all that is said of a pair the refusal comes first, then what may be, then the rest; the card has it all. Beyond
 * `most` pairs the words would hide the lines, and none are shown.
 */
export function wordedEdges(edges: Iterable<MapEdge>, most: number): Set<MapEdge> {
  const pairs = new Map<string, MapEdge>();
  for (const edge of edges) {
    const pair = [edge.source, edge.target].sort().join(" ");
    const before = pairs.get(pair);
    if (!before || weight(edge) < weight(before)) pairs.set(pair, edge);
  }
  return pairs.size > most ? new Set() : new Set(pairs.values());
}

function weight({ relation }: MapEdge): number {
  return FIRST.indexOf(RELATION_LOOK[relation]);
}
