/** What is drawn: of all that passes the filters, a part that can be read and that a slow machine can move. */
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
  /** The neighbourhood of the selected node, to be lit up. */
  readonly near: ReadonlySet<string>;
  readonly nearEdges: ReadonlySet<MapEdge>;
  /** Where each node is drawn; nothing where the places of the published graph hold. */
  readonly places: ReadonlyMap<string, Place> | undefined;
  /**
   * everything  all that passes
   * around      the neighbourhood, because it was asked for
   * too-many    the neighbourhood, because all would be too much
   * overview    systems, lines and years alone, because all would be too much and nothing is selected
   * cut         the first nodes of a neighbourhood that is itself too large
   */
  readonly extent: "everything" | "around" | "too-many" | "overview" | "cut";
}

/**
 * If more passes than can be drawn, only the neighbourhood of the selected node is drawn, and without a selection only
 * systems, lines and years. Lines and years are tied to nearly every record, so these ties are drawn only where they
 * touch the selected node. A neighbourhood that is drawn alone gets places of its own, where its labels have room.
 */
export function picture(graph: MapGraph, view: View, through: Passing, most = MOST_NODES): Picture {
  const { focus } = view;
  const drawable = (edge: MapEdge): boolean =>
    through.edges.has(edge) && (edge.relation !== "concerns" || edge.source === focus || edge.target === focus);
  const near =
    focus === undefined ? undefined : neighbourhood(graph, { start: focus, steps: view.steps, allowed: drawable });
  const tooMany = through.nodes.size > most;
  let nodes: ReadonlySet<string>;
  let extent: Picture["extent"];
  if (near && (view.only || tooMany)) {
    nodes = near.nodes.size > most ? new Set([...near.nodes].slice(0, most)) : near.nodes;
    extent = near.nodes.size > most ? "cut" : tooMany ? "too-many" : "around";
  } else if (tooMany) {
    nodes = new Set([...through.nodes].filter((key) => /^(system|line|year):/.test(key)));
    extent = "overview";
  } else {
    nodes = through.nodes;
    extent = "everything";
  }
  const edges = new Set<MapEdge>();
  for (const key of nodes)
    for (const edge of graph.out(key)) if (nodes.has(edge.target) && drawable(edge)) edges.add(edge);
  const alone = extent === "around" || extent === "too-many" || extent === "cut";
  return {
    nodes,
    edges,
    focus,
    near: near?.nodes ?? new Set(),
    nearEdges: near?.edges ?? new Set(),
    places: alone && focus !== undefined ? ringPlaces(graph, { start: focus, nodes, edges }) : undefined,
    extent,
  };
}
