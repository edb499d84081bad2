/** What is drawn: of all that passes the filters, a part that can be read and that a slow machine can move. */
import { argument } from "./argument.ts";
import { argumentPlaces } from "./argument-places.ts";
import type { MapEdge, MapGraph } from "./map-graph.ts";
import { neighbourhood } from "./neighbourhood.ts";
import type { Passing } from "./passing.ts";
import { type Place, ringPlaces } from "./ring-places.ts";
import type { View } from "./view.ts";

/** More nodes than this are never drawn at once. */
export const MOST_NODES = 1500;

export interface Picture {
  readonly nodes: ReadonlySet<string>;
  readonly edges: ReadonlySet<MapEdge>;
  readonly focus: string | undefined;
  /** What is lit up is the argument of an answer, and not the neighbourhood of the selected node. */
  readonly argued: boolean;
  /** The neighbourhood of the selected node or the argument, to be lit up. */
  readonly near: ReadonlySet<string>;
  readonly nearEdges: ReadonlySet<MapEdge>;
  /** Where each node is drawn; nothing where the places of the published graph hold. */
  readonly places: ReadonlyMap<string, Place> | undefined;
  /**
   * everything  all that passes
   * around      the neighbourhood or the argument, because it was asked for
   * too-many    the same, because all would be too much
   * overview    systems, lines and years alone, because all would be too much and nothing is selected
   * cut         its first nodes, because it is itself too large
   */
  readonly extent: "everything" | "around" | "too-many" | "overview" | "cut";
}

/**
 * If more passes than can be drawn, only the neighbourhood of the selected node is drawn, and without a selection only
 * systems, lines and years. Lines and years are tied to nearly every record, so these ties are drawn only where they
 * touch the selected node. A neighbourhood that is drawn alone gets places of its own, where its labels have room.
 *
 * The argument of an answer, where there is one, takes the place of the neighbourhood, ties to lines and years and all;
 * drawn alone, it shows no relation but its own.
 */
export function picture(graph: MapGraph, view: View, through: Passing, most = MOST_NODES): Picture {
  const { focus } = view;
  const argued = view.proof.length > 0;
  const reasons = argument(graph, view.proof);
  const drawable = (edge: MapEdge): boolean =>
    through.edges.has(edge) &&
    (edge.relation !== "concerns" || edge.source === focus || edge.target === focus || reasons.edges.has(edge));
  const around = (start: string) => neighbourhood(graph, { start, steps: view.steps, allowed: drawable });
  const near = argued || focus === undefined ? reasons : around(focus);
  const tooMany = through.nodes.size > most;
  let nodes: ReadonlySet<string>;
  let extent: Picture["extent"];
  if (near.nodes.size > 0 && (view.only || tooMany)) {
    nodes = near.nodes.size > most ? new Set([...near.nodes].slice(0, most)) : near.nodes;
    extent = near.nodes.size > most ? "cut" : tooMany ? "too-many" : "around";
  } else if (tooMany) {
    nodes = new Set([...through.nodes].filter((key) => /^(system|line|year):/.test(key)));
    extent = "overview";
  } else {
    nodes = through.nodes;
    extent = "everything";
  }
  const alone = extent === "around" || extent === "too-many" || extent === "cut";
  const edges = new Set<MapEdge>();
  for (const key of nodes)
    for (const edge of graph.out(key))
      if (nodes.has(edge.target) && (argued && alone ? reasons.edges.has(edge) : drawable(edge))) edges.add(edge);
  return {
    nodes,
    edges,
    focus,
    argued,
    near: near.nodes,
    nearEdges: near.edges,
    places: alone ? placesAlone(graph, { start: focus, argued, nodes, edges }) : undefined,
    extent,
  };
}

function placesAlone(
  graph: MapGraph,
  { start, argued, nodes, edges }: Pick<Picture, "argued" | "nodes" | "edges"> & { start: string | undefined },
): ReadonlyMap<string, Place> | undefined {
  if (argued) return argumentPlaces(graph, { nodes, edges });
  return start === undefined ? undefined : ringPlaces(graph, { start, nodes, edges });
}
