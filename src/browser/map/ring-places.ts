/** Places for a neighbourhood that is drawn alone: the selected node in the middle, its neighbours on rings around it. */
import type { MapEdge, MapGraph } from "./map-graph.ts";

export interface Place {
  readonly x: number;
  readonly y: number;
}

/**
 *              d   e               ring 2: each node in the sector of the neighbour that it was reached by
 *            ┌─a───────┐
 *            │         │
 *          c─┤  start  ├─b         ring 1: the neighbours, those of one relation side by side
 *            │         │
 *            └─────────┘
 *
 * A neighbour has a sector as wide as it has nodes behind it, at least one. A ring is so large that its nodes stand one
 * unit apart, and the inner one lies no nearer to the middle than halfway.
 */
export function ringPlaces(
  graph: MapGraph,
  { start, nodes, edges }: { start: string; nodes: ReadonlySet<string>; edges: ReadonlySet<MapEdge> },
): Map<string, Place> {
  const behind = new Map<string, string[]>();
  const placed = new Set([start]);
  const reach = (key: string): string[] => {
    const reached: string[] = [];
    const touching = [...graph.out(key), ...graph.into(key)].filter((edge) => edges.has(edge));
    for (const edge of byRelation(graph, touching)) {
      const other = edge.source === key ? edge.target : edge.source;
      if (placed.has(other) || !nodes.has(other)) continue;
      placed.add(other);
      reached.push(other);
    }
    return reached;
  };
  const first = reach(start);
  for (const key of first) behind.set(key, reach(key));

  const second = [...behind.values()].flat().length;
  const sectors = first.reduce((sum, key) => sum + Math.max(1, behind.get(key)?.length ?? 0), 0);
  const needed = Math.max(2, first.length / (2 * Math.PI));
  const outer = Math.max(needed + 1.5, second / (2 * Math.PI));
  const inner = second === 0 ? needed : Math.max(needed, outer / 2);
  const places = new Map<string, Place>([[start, { x: 0, y: 0 }]]);
  let taken = 0;
  for (const key of first) {
    const own = behind.get(key) ?? [];
    const width = Math.max(1, own.length);
    places.set(key, at(inner, (taken + width / 2) / sectors));
    for (const [i, child] of own.entries()) places.set(child, at(outer, (taken + i + 0.5) / sectors));
    taken += width;
  }
  return places;
}

/** Relations in their published order; the sort keeps the order of the records among equals. */
function byRelation(graph: MapGraph, edges: readonly MapEdge[]): MapEdge[] {
  const order = Object.keys(graph.document.relations);
  return edges.toSorted((a, b) => order.indexOf(a.relation) - order.indexOf(b.relation));
}

/** No line of a small ring stands upright, where words on it have no left and right. */
const TILT = 0.01;

/** `turn` from 0 to 1, beginning at the top, clockwise. */
function at(radius: number, turn: number): Place {
  const angle = 2 * Math.PI * (turn + TILT);
  return { x: radius * Math.sin(angle), y: radius * Math.cos(angle) };
}
