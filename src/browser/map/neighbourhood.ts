/** What stands around a node. */
import { HUBS } from "./kinds.ts";
import type { MapEdge, MapGraph } from "./map-graph.ts";

export interface Neighbourhood {
  /** The node itself and what is reached, nearest first. */
  readonly nodes: ReadonlySet<string>;
  /** The relations that were walked. */
  readonly edges: ReadonlySet<MapEdge>;
}

/**
 * From the start along every relation, in both directions, as many steps as asked. The walk does not go on from a model
 * line or year that it comes to: nearly everything hangs on those, and nothing would be left out.
 */
export function neighbourhood(
  graph: MapGraph,
  { start, steps, allowed }: { start: string; steps: number; allowed: (edge: MapEdge) => boolean },
): Neighbourhood {
  const nodes = new Set([start]);
  const edges = new Set<MapEdge>();
  let rim: readonly string[] = [start];
  for (let step = 0; step < steps; step++) {
    const next: string[] = [];
    for (const key of rim) {
      const kind = graph.nodes.get(key)?.kind;
      if (key !== start && kind !== undefined && HUBS.has(kind)) continue;
      for (const relation of [...graph.out(key), ...graph.into(key)]) {
        if (!allowed(relation)) continue;
        edges.add(relation);
        const other = relation.source === key ? relation.target : relation.source;
        if (nodes.has(other)) continue;
        nodes.add(other);
        next.push(other);
      }
    }
    rim = next;
  }
  return { nodes, edges };
}
