/**
 * Where the map draws each node. The same graph gives the same places: nodes start on a ring in the order of the graph
 * (systems apart, what belongs to a system near it), then the forces run a fixed number of rounds.
 */
import forceAtlas2 from "graphology-layout-forceatlas2";
import type { Graph } from "./build-graph.ts";
import { nodeKey } from "./node.ts";

const ROUNDS = 300;
/** Up to here the rounds are full; beyond it there are fewer, so that a large graph costs no more than this one by much. */
const FULL = 1000;
const FEWEST = 15;

export function layOut(graph: Graph): void {
  startOnRings(graph);
  if (graph.order > 1)
    forceAtlas2.assign(graph, {
      iterations: Math.round(Math.max(FEWEST, ROUNDS * Math.min(1, FULL / graph.order) ** 1.5)),
      getEdgeWeight: (_, facts) => (facts.relation === "belongs-to" ? 4 : facts.relation === "concerns" ? 0.05 : 1),
      settings: {
        ...forceAtlas2.inferSettings(graph),
        barnesHutOptimize: graph.order > 500,
        adjustSizes: false,
        linLogMode: true,
        gravity: 1.5,
      },
    });
  graph.updateEachNodeAttributes((_, facts) => ({ ...facts, x: round(facts.x), y: round(facts.y) }), {
    attributes: ["x", "y"],
  });
}

function startOnRings(graph: Graph): void {
  const systems = graph.filterNodes((_, facts) => facts.kind === "system");
  const angle = new Map(systems.map((key, i) => [key, (2 * Math.PI * i) / systems.length]));
  let i = 0;
  graph.updateEachNodeAttributes((key, facts) => {
    i++;
    const own = angle.get(facts.kind === "system" ? key : nodeKey("system", facts.systems[0] ?? ""));
    // The golden angle spreads what starts at one place evenly, without chance.
    const spread = i * 2.399963;
    const near = { x: Math.cos(spread) * Math.sqrt(i), y: Math.sin(spread) * Math.sqrt(i) };
    const centre = own === undefined ? { x: 0, y: 0 } : { x: 100 * Math.cos(own), y: 100 * Math.sin(own) };
    return { ...facts, x: centre.x + near.x, y: centre.y + near.y };
  });
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
