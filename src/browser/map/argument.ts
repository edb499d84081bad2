/** The argument of an answer on the map: the nodes that the answer names, and what its records state between them. */
import type { MapEdge, MapGraph } from "./map-graph.ts";

export interface Argument {
  /** In the order of the answer, the part asked first. */
  readonly nodes: ReadonlySet<string>;
  readonly edges: ReadonlySet<MapEdge>;
  readonly records: number;
}

/**
 * Of all that joins the nodes of a proof, only what a record of the same proof states belongs to the argument: another
 * record may well speak of the same pair, but the answer does not rest on it. That one record is to be read along with
 * another carries nothing either.
 */
export function argument(graph: MapGraph, proof: readonly string[]): Argument {
  const nodes = new Set(proof);
  const edges = new Set<MapEdge>();
  for (const key of nodes)
    for (const edge of graph.out(key))
      if (carries(edge) && nodes.has(edge.target) && nodes.has(`record:${edge.from}`)) edges.add(edge);
  return { nodes, edges, records: proof.filter((key) => graph.nodes.get(key)?.kind === "record").length };
}

function carries({ source, relation, target }: MapEdge): boolean {
  return source !== target && relation !== "links-to";
}

/** What a page says of it in a line. */
export function argumentWords({ edges, records }: Argument): string {
  const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? "" : "s"}`;
  if (records === 0) return "The argument of an answer: it rests on no record.";
  if (edges.size === 0)
    return `The argument of an answer: ${counted(records, "record")}, and no statement between what is named.`;
  return `The argument of an answer: ${counted(edges.size, "statement")} of ${counted(records, "record")}.`;
}
